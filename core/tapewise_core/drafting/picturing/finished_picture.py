"""The last picture of a piece: its dimensioned drawing, and how a hem's corner is mirrored."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.drafting.marks import Across, Finished, MirroredCorner
from tapewise_core.drafting.picturing.ground import Place
from tapewise_core.drafting.picturing.scene import Scene
from tapewise_core.drafting.picturing.sheet import Flattened, Sheet
from tapewise_core.drafting.picturing.signs import arrow, notch
from tapewise_core.drafting.picturing.words import Words
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Dash, Layer
from tapewise_core.units import Unit

WIDE, HIGH = 98.0, 106.0
"""A dimensioned drawing's largest size [mm]."""

ROOM = 15.0
"""Room round the piece for its sizes and the lengths of its edges [mm]."""

AWAY = 10.0
"""How far from the piece its height and width are written [mm]."""

SIZE = 3.0
"""Type of lengths [mm]."""

CORNER_WIDE, CORNER_HIGH = 70.0, 40.0
"""The size of a corner's picture [mm]."""

CORNER_SHOWS = 3.2
"""What a corner's picture shows is so many times as high as the allowance is mirrored."""

HOW = ("the hem's corner: the cutting line goes on", "as far below the fold line as above it")
"""Written below the corner's picture."""


def finished_sheets(scene: Scene, shown: Finished, flat: Flattened, unit: Unit) -> Iterator[Sheet]:
    """Yield the piece with its sizes, then how a corner of its hem is found, if it has one."""
    yield _dimensioned(scene, shown, flat, unit)
    if shown.corner is not None:
        yield _corner(shown.corner, scene, flat, unit)


def _dimensioned(scene: Scene, shown: Finished, flat: Flattened, unit: Unit) -> Sheet:
    lines = (*scene.lines, *scene.new_lines)
    box = box_of(point for path in lines for point in flat.points(path))
    wide, high = WIDE - 2 * ROOM, HIGH - 2 * ROOM
    scale = min(wide / max(box.width, 1.0), high / max(box.height, 1.0), 1.0)
    sheet = Sheet(box, scale, box.width * scale + 2 * ROOM, box.height * scale + 2 * ROOM)
    _outlines(scene, sheet, flat)
    for mark in (*scene.marks, *scene.new_marks):
        notch(sheet, mark, heavy=False)
    written = [_size(sheet, size, box) for size in shown.sizes]
    for size, (a, b) in zip(shown.sizes, written, strict=True):
        sheet.placing.along(Words.of(unit.spell(size.by.mm), size=SIZE, bold=True), a, b)
    for edge in shown.edges:
        words = Words.of(unit.spell(edge.by.mm), size=SIZE)
        x, y = sheet.at(edge.at)
        reach = words.across
        a = (x - edge.along.x * reach, y - edge.along.y * reach)
        b = (x + edge.along.x * reach, y + edge.along.y * reach)
        sheet.placing.along(words, a, b, (edge.along.y, -edge.along.x))
    return sheet


def _outlines(scene: Scene, sheet: Sheet, flat: Flattened) -> None:
    for path in scene.lines:
        sheet.draw(path, flat, Layer.STITCH, Dash.DASHED, 0.35)
    for path in scene.new_lines:
        sheet.draw(path, flat, Layer.CUT, width=0.6)


def _size(sheet: Sheet, size: Across, box: Box) -> tuple[Place, Place]:
    """Draw a size with its arrow, beside or below the piece if it is one from end to end."""
    a, b = sheet.at(size.start), sheet.at(size.end)
    if size.outside:
        left, low = sheet.at(Point(box.left, box.bottom))
        upright = abs(a[0] - b[0]) < abs(a[1] - b[1])
        far_a, far_b = (
            ((left - AWAY, a[1]), (left - AWAY, b[1]))
            if upright
            else ((a[0], low + AWAY), (b[0], low + AWAY))
        )
        for near, far in ((a, far_a), (b, far_b)):
            sheet.stroke((near, far), Layer.GUIDE, width=0.15)
        a, b = far_a, far_b
    arrow(sheet, a, b)
    return a, b


def _corner(corner: MirroredCorner, scene: Scene, flat: Flattened, unit: Unit) -> Sheet:
    """The corner enlarged: a point of the side's cutting line and its image below the fold."""
    span = (corner.below - corner.above).length()
    high = CORNER_SHOWS * span / 2
    wide = high * CORNER_WIDE / CORNER_HIGH
    at = corner.corner
    part = Box(at.x - wide / 2, at.y - high / 2, at.x + wide / 2, at.y + high / 2)
    sheet = Sheet(part, CORNER_HIGH / high, CORNER_WIDE, CORNER_HIGH)
    _outlines(scene, sheet, flat)
    foot = corner.above.toward(corner.below, 0.5)
    for spot in (corner.above, corner.below):
        arrow(sheet, sheet.at(spot), sheet.at(foot))
        sheet.dot(sheet.at(spot), 1.1)
    half = Words.of(unit.spell(span / 2), size=SIZE)
    for spot in (corner.above, corner.below):
        sheet.placing.along(half, sheet.at(spot), sheet.at(foot))
    ends = [at + corner.along * (wide / 2 * share) for share in (0.2, 0.9)]
    sheet.placing.along(Words.of("fold line", size=SIZE), *map(sheet.at, ends))
    _caption(sheet)
    return sheet


def _caption(sheet: Sheet) -> None:
    """Say below the corner's picture what it shows."""
    words = Words.of(*HOW, size=SIZE)
    sheet.height += 2 * words.up + 2
    sheet.placing.inks += words.set((sheet.width / 2, sheet.height - words.up - 1))
