"""A cut line round a piece and its allowances, joined as shapes: right however they overlap."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from tapewise_core.geometry.cut_corners import FINE, LEVEL, Corner, corners, outer_lines
from tapewise_core.geometry.cut_ends import outward
from tapewise_core.geometry.outline import Margin, polygon
from tapewise_core.geometry.path import joined
from tapewise_core.geometry.point import Point, Vector

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

GRID = 1e-7
"""Shapes are joined on a grid this fine [mm], so that rounding leaves no slit along a slanting
edge between a piece and its allowance."""

SEAL = 0.05
"""Half the width of a sliver that closes a slit between two allowances [mm]."""

FAR = 10000.0
"""Further than any piece reaches [mm]."""


def joined_round(margins: Sequence[Margin]) -> list[Point]:
    """Return the closed line, clockwise, round a piece and all its allowances."""
    from shapely import make_valid, union_all
    from shapely.geometry.polygon import orient

    shapes = [polygon(joined(margin.path for margin in margins).flattened(FINE)[:-1])]
    turns = corners(margins)
    for corner, line in zip(turns, outer_lines(turns), strict=True):
        if corner.edge.width > 0:
            shapes.append(polygon([*corner.edge.path.flattened(FINE), *reversed(line)]))
            patch = _patch(corner)
            if patch:
                shapes.append(polygon(patch))
    whole = _kept_off_fold(union_all(make_valid(shapes), grid_size=GRID), margins)
    largest = max(getattr(whole, "geoms", [whole]), key=lambda part: part.area)
    ring = orient(largest, sign=1.0).exterior.coords[:-1]
    return [Point(x, y) for x, y in ring]


def _kept_off_fold(whole: BaseGeometry, margins: Sequence[Margin]) -> BaseGeometry:
    """Cut off what an allowance lays beyond a fold, which it meets at a slant or reaches over."""
    for edge in margins:
        if edge.fold:
            a, b = edge.path.start, edge.path.end
            along = (b - a).unit() * FAR
            inward = along.square()
            a, b = a + -along, b + along
            whole = whole.intersection(polygon([a, b, b + inward, a + inward]))
    return whole


def _patch(corner: Corner) -> list[Point]:
    """The patch between two square ends where a corner points outwards; empty elsewhere."""
    edge, after, at = corner.edge, corner.after, corner.at
    if corner.mirrored or after.width <= 0 or corner.turn <= -LEVEL:
        return []
    if corner.turn < LEVEL:
        return _sealed(at, corner.coming, min(edge.width, after.width))
    first, last = at + outward(corner.coming) * edge.width, at + outward(corner.going) * after.width
    met = corner.tip
    return [at, first, *([met] if met else []), last]


def _sealed(corner: Point, along: Vector, width: float) -> list[Point]:
    """A sliver over the line at which two allowances meet that run straight on.

    Their square ends lie on each other to the last digit or not quite, which may leave a slit.
    """
    before, after, out = along * -SEAL, along * SEAL, outward(along) * width
    return [corner + before, corner + before + out, corner + after + out, corner + after]
