"""The line to cut along, outside a closed outline by each edge's own allowance."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from tapewise_core.geometry.cut_ends import end_of, folds, outward
from tapewise_core.geometry.outline import Margin, polygon
from tapewise_core.geometry.point import Point, Vector, crossing

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

FINE = 0.03
"""Flattening used under a cut line [mm]; well below what scissors can follow."""

STRAIGHT = 1e-4
"""Points this near to a straight line between their neighbours are left out [mm]."""

GRID = 1e-7
"""Shapes are joined on a grid this fine [mm], so that rounding leaves no slit along a slanting
edge between a piece and its allowance."""

MITRE = 3.0
"""A corner longer than this many allowances is blunted, as in the SVG and PDF stroke rules."""


SEAL = 0.05
"""Half the width of a sliver that closes a slit between two allowances [mm]."""

FAR = 10000.0
"""Further than any piece reaches [mm]."""


def cut_line(margins: Sequence[Margin]) -> list[Point]:
    """Return the closed line to cut along, clockwise, for a closed outline of edges.

    Every edge is offset along its exact normals; neighbours meet in a mitre, and
    at a turned edge in the mirror image of what lies beside it, so that the hem
    turns up as wide as what it is sewn to. The first point is not repeated.
    """
    from shapely import make_valid, union_all
    from shapely.geometry.polygon import orient

    walks = [[part.walked(FINE) for part in margin.path.segments] for margin in margins]
    shapes = [polygon([point for walk in walks for point in _points(walk)[:-1]])]
    for (before, edge, after), walk in zip(_neighbours(margins), walks, strict=True):
        if edge.width > 0:
            shapes.append(polygon(_strip(before, edge, after, walk)))
            patch = _corner(edge, after)
            if patch:
                shapes.append(polygon(patch))
    whole = _kept_off_fold(union_all(make_valid(shapes), grid_size=GRID), margins)
    largest = max(getattr(whole, "geoms", [whole]), key=lambda part: part.area)
    ring = orient(largest.simplify(STRAIGHT), sign=1.0).exterior.coords[:-1]
    return _tidy([Point(x, y) for x, y in ring])


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


def _neighbours(margins: Sequence[Margin]) -> Iterable[tuple[Margin, Margin, Margin]]:
    return zip([margins[-1], *margins[:-1]], margins, [*margins[1:], margins[0]], strict=True)


Walk = Sequence[Sequence[tuple[Point, Vector]]]
"""Places along an edge, segment by segment, and the direction of travel at each."""


def _points(walk: Walk) -> list[Point]:
    """The places of a walk, those where segments join once."""
    return [walk[0][0][0], *(at for part in walk for at, _ in part[1:])]


def _strip(before: Margin, edge: Margin, after: Margin, walk: Walk) -> list[Point]:
    """The allowance along one edge, its ends square, or trimmed where a hem turns."""
    inner, outer = [], []
    for part in walk:
        for at, along in part:
            inner.append(at)
            outer.append(Point(at.x + along.y * edge.width, at.y - along.x * edge.width))
    start = end_of(edge, before, edge.path.start, edge.path.leaving(), before.path.arriving())
    end = end_of(edge, after, edge.path.end, edge.path.arriving(), after.path.leaving())
    if start:
        inner, outer = [start.inner, *inner], start.ended(outer[::-1])[::-1]
    if end:
        inner, outer = [*inner, end.inner], end.ended(outer)
    return inner + outer[::-1]


def _corner(edge: Margin, after: Margin) -> list[Point]:
    """The patch between two square ends where a corner points outwards; empty elsewhere."""
    coming, going = edge.path.arriving(), after.path.leaving()
    mirrored = edge.turned != after.turned and folds(coming, going)
    if mirrored or after.width <= 0:
        return []
    if abs(coming.cross(going)) < 1e-6:
        return _sealed(edge.path.end, coming, min(edge.width, after.width))
    if coming.cross(going) < 0:
        return []
    corner = edge.path.end
    first = corner + outward(coming) * edge.width
    last = corner + outward(going) * after.width
    tip = crossing(first, coming, last, going)
    if tip is None or (tip - corner).length() > MITRE * max(edge.width, after.width):
        return [corner, first, last]
    if (tip - first).dot(coming) < 0 or (last - tip).dot(going) < 0:
        return [corner, first, last]  # a wide allowance steps down to a narrow one
    return [corner, first, tip, last]


def _sealed(corner: Point, along: Vector, width: float) -> list[Point]:
    """A sliver over the line at which two allowances meet that run straight on.

    Their square ends lie on each other to the last digit or not quite, which may leave a slit.
    """
    before, after, out = along * -SEAL, along * SEAL, outward(along) * width
    return [corner + before, corner + before + out, corner + after + out, corner + after]


def _tidy(points: list[Point]) -> list[Point]:
    """Drop points that lie within a thousandth of a millimetre of the one before."""
    kept = [points[0]]
    for point in points[1:]:
        if (point - kept[-1]).length() > 1e-3:
            kept.append(point)
    return kept
