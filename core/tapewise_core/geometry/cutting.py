"""The line to cut along, outside a closed outline by each edge's own allowance."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, NamedTuple

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

STEEP = 40.0
"""A hem that turns less into its neighbour is clipped, not mirrored [degrees]."""


def cut_line(margins: Sequence[Margin]) -> list[Point]:
    """Return the closed line to cut along, clockwise, for a closed outline of edges.

    Every edge is offset along its exact normals; neighbours meet in a mitre, and
    at a turned edge in the mirror image of what lies beside it, so that the hem
    turns up as wide as what it is sewn to. The first point is not repeated.
    """
    from shapely import make_valid, union_all
    from shapely.geometry.polygon import orient

    inside = polygon([p for m in margins for p in m.path.flattened(FINE)[:-1]])
    shapes = [inside]
    for before, edge, after in _neighbours(margins):
        if edge.width > 0:
            shapes.append(polygon(_strip(before, edge, after)))
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


def _outward(direction: Vector) -> Vector:
    return -direction.square()


def _strip(before: Margin, edge: Margin, after: Margin) -> list[Point]:
    """The allowance along one edge, its ends square, or trimmed where a hem turns."""
    inner, outer = [], []
    for segment in edge.path.segments:
        for at, along in segment.walked(FINE):
            inner.append(at)
            outer.append(Point(at.x + along.y * edge.width, at.y - along.x * edge.width))
    start = _end_of(edge, before, edge.path.start, edge.path.leaving(), before.path.arriving())
    end = _end_of(edge, after, edge.path.end, edge.path.arriving(), after.path.leaving())
    if start:
        inner, outer = [start.inner, *inner], start.ended(outer[::-1])[::-1]
    if end:
        inner, outer = [*inner, end.inner], end.ended(outer)
    return inner + outer[::-1]


class _End(NamedTuple):
    """Where an allowance ends at a turned corner.

    ``cut`` runs from its inner to its outer end, which is ``outer`` where the edge runs straight
    on; what is kept lies to the ``side`` of it.
    """

    inner: Point
    outer: Point
    cut: Vector
    side: float

    def ended(self, points: list[Point]) -> list[Point]:
        """Return an allowance's outer line, walked towards this end, ended exactly on the cut.

        Points are given up from the end only, so that a curved edge that comes near the cut's
        line further along keeps its allowance there.
        """
        kept, beyond = list(points), None
        while len(kept) > 1 and not self._keeps(kept[-1]):
            beyond = kept.pop()
        if beyond is None:
            return [*kept, self.outer]
        met = crossing(kept[-1], beyond - kept[-1], self.inner, self.cut)
        return [*kept, met or self.outer]

    def _keeps(self, point: Point) -> bool:
        return (point - self.inner).cross(self.cut) * self.side > 0


def _end_of(
    edge: Margin, other: Margin, corner: Point, along: Vector, beside: Vector
) -> _End | None:
    """Return where an edge's allowance ends at a corner where one of the two turns up."""
    if edge.turned == other.turned or not _folds(along, beside):
        return None
    hem, side = (along, beside) if edge.turned else (beside, along)
    width = other.width if edge.turned else edge.width
    on_hem = crossing(corner, hem, corner + _outward(side) * width, side)
    if on_hem is None:
        return None
    if not edge.turned:
        return _trimmed(corner, on_hem, on_hem, hem, edge, along)
    slant = side if other.fold else _reflected(side, hem)
    outer = crossing(corner + _outward(along) * edge.width, along, on_hem, slant)
    return None if outer is None else _trimmed(corner, on_hem, outer, slant, edge, along)


def _folds(along: Vector, beside: Vector) -> bool:
    """Say whether a hem meets its neighbour steeply enough to turn up with a mirrored corner."""
    return STEEP <= along.angle_to(beside) <= 180 - STEEP


def _trimmed(
    corner: Point, inner: Point, outer: Point, cut: Vector, edge: Margin, along: Vector
) -> _End:
    at_start = corner == edge.path.start
    onward = along if at_start else -along
    side = 1.0 if onward.cross(cut) > 0 else -1.0
    return _End(inner, outer, cut, side)


def _reflected(direction: Vector, line: Vector) -> Vector:
    return line * (2 * direction.dot(line)) - direction


def _corner(edge: Margin, after: Margin) -> list[Point]:
    """The patch between two square ends where a corner points outwards; empty elsewhere."""
    coming, going = edge.path.arriving(), after.path.leaving()
    mirrored = edge.turned != after.turned and _folds(coming, going)
    if mirrored or after.width <= 0:
        return []
    if abs(coming.cross(going)) < 1e-6:
        return _sealed(edge.path.end, coming, min(edge.width, after.width))
    if coming.cross(going) < 0:
        return []
    corner = edge.path.end
    first = corner + _outward(coming) * edge.width
    last = corner + _outward(going) * after.width
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
    before, after, out = along * -SEAL, along * SEAL, _outward(along) * width
    return [corner + before, corner + before + out, corner + after + out, corner + after]


def _tidy(points: list[Point]) -> list[Point]:
    """Drop points that lie within a thousandth of a millimetre of the one before."""
    kept = [points[0]]
    for point in points[1:]:
        if (point - kept[-1]).length() > 1e-3:
            kept.append(point)
    return kept
