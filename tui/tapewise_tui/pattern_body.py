"""The body behind the pattern: its half width at every level, and the garment's beside it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tapewise_core.drafting.facts import Level
from tapewise_core.geometry.point import Point
from tapewise_tui.canvas import Canvas
from tapewise_tui.pattern_places import Placed

BODY = "body"
"""The tone."""

TRUNK = ("back", "front")
"""The pieces that lie on the body's own heights, from the nape down."""

BESIDE = 20.0
"""A piece that reaches so far to either side of the centre is drawn whole [mm]."""


def draw_body(canvas: Canvas, places: Sequence[Placed], levels: Sequence[Level]) -> None:
    """Draw the body's side, dashed, from level to level, and at each level from there on to where
    the garment's side lies: short where it is close, long where it stands off."""
    trunk = [level for level in levels if level.below_nape is not None]
    for place in places:
        if place.piece.name in TRUNK:
            for way in _ways(place):
                _side(canvas, place, trunk, way)


def _ways(place: Placed) -> Iterator[float]:
    """To the right of the centre, to the left of it, or both."""
    if place.box.right > BESIDE:
        yield 1.0
    if place.box.left < -BESIDE:
        yield -1.0


def _side(canvas: Canvas, place: Placed, levels: Sequence[Level], way: float) -> None:
    body = [_at(level.body, level, way) for level in levels]
    canvas.polyline([place.dot(point) for point in body], "dashed", tone=BODY)
    for level, inner in zip(levels, body, strict=True):
        outer = _at(level.given, level, way)
        canvas.polyline([place.dot(inner), place.dot(outer)], tone=BODY)


def _at(girth: float, level: Level, way: float) -> Point:
    """A quarter of a girth from the centre, at the level's height on the piece [mm]."""
    return Point(way * girth / 4, level.below_nape or 0.0)
