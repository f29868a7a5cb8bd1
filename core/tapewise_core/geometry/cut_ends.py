"""Where an allowance ends: square, mirrored where a hem turns up, or at a slant.

The line that an end is cut along goes out from the corner; what lies beyond it is given up.
"""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.point import Point, Vector, crossing

SLANT = 1.2
"""Beside a narrower allowance a wide one gains its width over so many widths (our choice)."""

STEEP = 40.0
"""A hem that turns less into its neighbour is clipped, not mirrored [degrees]."""


def outward(direction: Vector) -> Vector:
    """Return the way out of a piece that is walked clockwise."""
    return -direction.square()


class End(Frozen):
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


def end_of(edge: Margin, other: Margin, corner: Point, along: Vector, beside: Vector) -> End | None:
    """Return where an edge's allowance ends at a corner where one of the two turns up, or where it
    would lie under a narrower one's."""
    if not folds(along, beside):
        return None
    wider = edge.width > other.width and not (edge.turned or other.fold)
    if wider and _points_in(edge, corner, along, beside):
        return _slanted(edge, other.width, corner, along)
    if edge.turned == other.turned:
        return None
    hem, side = (along, beside) if edge.turned else (beside, along)
    width = other.width if edge.turned else edge.width
    on_hem = crossing(corner, hem, corner + outward(side) * width, side)
    if on_hem is None:
        return None
    if not edge.turned:
        return _trimmed(corner, on_hem, on_hem, hem, edge, along)
    slant = side if other.fold else _reflected(side, hem)
    outer = crossing(corner + outward(along) * edge.width, along, on_hem, slant)
    return None if outer is None else _trimmed(corner, on_hem, outer, slant, edge, along)


def _points_in(edge: Margin, corner: Point, along: Vector, beside: Vector) -> bool:
    """Say whether a corner points into the piece."""
    turn = beside.cross(along) if corner == edge.path.start else along.cross(beside)
    return turn < 0


def _slanted(edge: Margin, narrow: float, corner: Point, along: Vector) -> End:
    """The end of a wide allowance at a corner that points inwards, beside a narrower one.

    A square end would lie all but against the neighbour's curved edge, with a slit between: so
    it runs out at a slant from where it is as wide as the neighbour's.
    """
    onward = along if corner == edge.path.start else -along
    cut = onward * SLANT + outward(along)
    inner = corner + outward(along) * narrow
    return _trimmed(corner, inner, inner + cut * (edge.width - narrow), cut, edge, along)


def folds(along: Vector, beside: Vector) -> bool:
    """Say whether a hem meets its neighbour steeply enough to turn up with a mirrored corner."""
    return STEEP <= along.angle_to(beside) <= 180 - STEEP


def _trimmed(
    corner: Point, inner: Point, outer: Point, cut: Vector, edge: Margin, along: Vector
) -> End:
    at_start = corner == edge.path.start
    onward = along if at_start else -along
    side = 1.0 if onward.cross(cut) > 0 else -1.0
    return End(inner, outer, cut, side)


def _reflected(direction: Vector, line: Vector) -> Vector:
    return line * (2 * direction.dot(line)) - direction
