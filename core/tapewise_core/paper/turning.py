"""A drawing turned by any angle: paper has no grain, the arrow drawn on the piece says it."""

from __future__ import annotations

import math
from collections.abc import Sequence

from msgspec.structs import replace

from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Ink, TextLine
from tapewise_core.paper.packing import ink_box, turned

_ORIGIN, _ACROSS = Point(0, 0), Point(1, 0)

ANGLES = (0.0, 90.0, 45.0, 135.0)
"""Ways a piece is laid on long paper [degrees]; a quarter of a ring is narrowest at 45."""


def rotated(drawing: Drawing, degrees: float) -> Drawing:
    """Return the drawing turned clockwise about the origin, words and all."""
    if degrees == 0.0:
        return drawing
    if degrees == 90.0:
        return turned(drawing)
    turn = math.radians(degrees)
    return replace(
        drawing,
        box=_box(drawing.box, turn),
        inks=tuple(_ink(ink, turn, degrees) for ink in drawing.inks),
        whole=tuple(_box(box, turn) for box in drawing.whole),
    )


def ways(drawing: Drawing, angles: Sequence[float] = ANGLES) -> list[Drawing]:
    """Return the drawing turned every way there is, and the narrowest of all ways.

    The narrowest is looked for in steps of five degrees (our choice).
    """
    narrowest = min(range(0, 180, 5), key=lambda degrees: _width(drawing, math.radians(degrees)))
    chosen = dict.fromkeys((*angles, float(narrowest)))
    return [rotated(drawing, degrees) for degrees in chosen]


def _width(drawing: Drawing, turn: float) -> float:
    box = _hull(drawing, turn)
    return box.width


def _hull(drawing: Drawing, turn: float) -> Box:
    return box_of(_point(p, turn) for ink in drawing.inks for p in ink.corners())


def _point(point: Point, turn: float) -> Point:
    cos, sin = math.cos(turn), math.sin(turn)
    return Point(cos * point.x - sin * point.y, sin * point.x + cos * point.y)


def _ink(ink: Ink, turn: float, degrees: float) -> Ink:
    """Two mirrorings in lines half the angle apart make a turn."""
    if isinstance(ink, TextLine):
        return replace(ink, at=_point(ink.at, turn), angle=ink.angle + degrees)
    half = Point(math.cos(turn / 2), math.sin(turn / 2))
    return replace(ink, path=ink.path.mirrored(_ORIGIN, _ACROSS).mirrored(_ORIGIN, half))


def _box(box: Box, turn: float) -> Box:
    corners = [Point(x, y) for x in (box.left, box.right) for y in (box.top, box.bottom)]
    return box_of(_point(corner, turn) for corner in corners)


def least_width(drawing: Drawing) -> float:
    """Return how wide paper must be for the drawing, whichever way it is turned [mm]."""
    return min(ink_box(way).width for way in ways(drawing))
