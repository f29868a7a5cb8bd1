"""Where a path is straight, and which of its points a hand needs to draw the rest of it."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import pairwise

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.segments import Line
from tapewise_core.geometry.spline import smooth

WITHIN = 0.5
"""A smooth line through the points and the true curve are nowhere further apart [mm] (our choice:
rounding, ruler and pencil take the rest of 2 mm)."""

RULED = 40.0
"""A straight part that is shorter is drawn as part of the curve beside it [mm] (our choice)."""

FINE = 0.1
"""A curve is compared by chords so near to it [mm]."""

NEAR = 15.0
"""A part of the smooth line is compared with so much more of the curve than lies beside it [mm]."""

CLOSEST = 8.0
"""Points are no closer than this [mm]: told to the millimetre, closer ones would make waves."""

MOST = 14
"""No run gets more points than these: what a rule cannot find, a test sees."""


class Run(Frozen):
    """A part of a path, ruled or bent."""

    path: Path
    straight: bool


def runs(path: Path) -> list[Run]:
    """Return a path's straight and bent parts in order; two ruled ones meet at a corner."""
    found: list[Run] = []
    for segment in path.segments:
        straight = isinstance(segment, Line) and segment.length() >= RULED
        part = Path((segment,))
        if found and not straight and not found[-1].straight:
            found[-1] = Run(found[-1].path.then(part), False)
        else:
            found.append(Run(part, straight))
    return found


def bent_points(path: Path, known: Iterable[float]) -> list[float]:
    """Return the walked distances [mm] of the points between which a bent path is drawn.

    Both ends, those ``known``, and as many more as a smooth line needs to come ``WITHIN``.
    """
    length, true = path.length(), _chords(path)
    at = sorted({0.0, length, *known})
    points = [path.at(distance)[0] for distance in at]
    while len(at) < MOST:
        drawn = smooth(points, path.leaving(), path.arriving())
        worst, gap = _worst(drawn, at, true)
        if worst <= WITHIN or at[gap + 1] - at[gap] < 2 * CLOSEST:
            break
        at.insert(gap + 1, (at[gap] + at[gap + 1]) / 2)
        points.insert(gap + 1, path.at(at[gap + 1])[0])
    return at


Chord = tuple[float, float, float, float, float, float]
"""How far along a chord begins and ends, where it begins, and its way [mm]."""


def _chords(path: Path) -> list[Chord]:
    found, walked = [], 0.0
    for a, b in pairwise(path.flattened(FINE)):
        x, y = b.x - a.x, b.y - a.y
        long = math.hypot(x, y)
        found.append((walked, walked + long, a.x, a.y, x, y))
        walked += long
    return found


def _worst(drawn: Path, at: Sequence[float], true: Sequence[Chord]) -> tuple[float, int]:
    """How far the smooth line strays [mm], and between which two points."""
    strays = []
    for segment, (low, high) in zip(drawn.segments, pairwise(at), strict=True):
        near = [chord for chord in true if chord[0] <= high + NEAR and chord[1] >= low - NEAR]
        strays.append(max(_off(segment.at(k / SAMPLES), near) for k in range(1, SAMPLES)))
    worst = max(strays)
    return worst, strays.index(worst)


SAMPLES = 8
"""Into so many parts each span is cut to be compared."""


def _off(point: Point, chords: Sequence[Chord]) -> float:
    """How far a point is from a line of chords [mm]."""
    px, py = point.x, point.y
    best = math.inf
    for *_, ax, ay, x, y in chords:
        dx, dy, long = px - ax, py - ay, x * x + y * y
        share = min(max((dx * x + dy * y) / long, 0.0), 1.0) if long else 0.0
        off = (dx - share * x) ** 2 + (dy - share * y) ** 2
        best = min(best, off)
    return math.sqrt(best)
