"""Arrows and notches on a picture."""

from __future__ import annotations

import math

from tapewise_core.drafting.marks import NotchMark
from tapewise_core.drafting.picturing.ground import Place
from tapewise_core.drafting.picturing.sheet import Sheet
from tapewise_core.paper.drawing import Layer

HEAD, WING = 1.7, 17.0
"""How long an arrow's head is [mm], and how far its wings stand off [degrees]."""

THIN = 0.3
"""The pen of arrows [mm]."""

HEAVY, LIGHT = 0.75, 0.4
"""The pen of notches that a step marks, and of others [mm]."""

OFFS = (4.6, -4.6, 9.2, -9.2, 13.8, -13.8)
"""How far beside its line a measure is drawn where another lies on it, best first [mm]."""

SAME = 0.7
"""Two lines nearer to each other than this lie on each other [mm]."""

OUT, IN, APART = 2.6, 0.8, 1.2
"""How far a notch reaches out of its line and into it, and its two strokes apart [mm]."""


def arrow(sheet: Sheet, a: Place, b: Place) -> None:
    """Draw a line with a head at both ends, in one stroke; heads are small where the line is
    short."""
    x, y = b[0] - a[0], b[1] - a[1]
    length = math.hypot(x, y)
    if length < 0.3:
        return
    size = min(HEAD, length * 0.35)
    places: list[Place] = []
    for tip, angle in ((a, math.atan2(y, x)), (b, math.atan2(-y, -x))):
        wings = (angle + math.radians(WING), angle - math.radians(WING))
        one, other = ((tip[0] + size * math.cos(w), tip[1] + size * math.sin(w)) for w in wings)
        places += (tip, one, tip, other, tip)
    sheet.stroke(places[1:-1], Layer.MARKS, width=THIN)


def overlaps(one: tuple[Place, Place], other: tuple[Place, Place]) -> bool:
    """Say whether two straight lines lie on each other for more than a point."""
    (ax, ay), (bx, by) = other
    length = math.dist(*other)
    if length < SAME:
        return False
    x, y = (bx - ax) / length, (by - ay) / length
    if any(abs((px - ax) * y - (py - ay) * x) > SAME for px, py in one):
        return False
    low, high = sorted((px - ax) * x + (py - ay) * y for px, py in one)
    return min(high, length) - max(low, 0.0) > SAME


def set_off(sheet: Sheet, a: Place, b: Place) -> tuple[Place, Place]:
    """Draw a measure beside its line, thin lines leading to it; return where it is drawn."""
    length = max(math.dist(a, b), 1e-6)
    x, y = (b[0] - a[0]) / length, (b[1] - a[1]) / length
    moved = [((a[0] - y * off, a[1] + x * off), (b[0] - y * off, b[1] + x * off)) for off in OFFS]
    inside = [line for line in moved if all(map(sheet.inside, line))]
    free = (line for line in inside if not sheet.placing.ground.crosses(*line))
    line = next(free, inside[0] if inside else (a, b))
    for near, far in zip((a, b), line, strict=True):
        if near != far:
            sheet.stroke((near, far), Layer.GUIDE, width=0.15)
    arrow(sheet, *line)
    return line


def notch(sheet: Sheet, mark: NotchMark, *, heavy: bool) -> None:
    """Draw a notch across its line, in one stroke or two."""
    if not sheet.holds(mark.at):
        return
    x, y = sheet.at(mark.at)
    out, along = mark.out, mark.out.square()
    for aside in (0.0,) if mark.strokes == 1 else (-APART / 2, APART / 2):
        at_x, at_y = x + along.x * aside, y + along.y * aside
        inner = (at_x - out.x * IN, at_y - out.y * IN)
        outer = (at_x + out.x * OUT, at_y + out.y * OUT)
        sheet.stroke((inner, outer), Layer.MARKS, width=HEAVY if heavy else LIGHT)
