"""How allowances meet: the line outside one edge with its ends, and what lies between two."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.cut_ends import end_of, folds, outward
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.point import Point, Vector, crossing

FINE = 0.03
"""Flattening used under a cut line [mm]; well below what scissors can follow."""

MITRE = 3.0
"""A corner longer than this many allowances is blunted, as in the SVG and PDF stroke rules."""

LEVEL = 1e-6
"""Two directions that span no more run straight on."""


class Corner(Frozen):
    """Where one edge of a closed outline ends, ``coming``, and the next leaves, ``going``."""

    edge: Margin
    after: Margin
    coming: Vector
    going: Vector

    @property
    def at(self) -> Point:
        """Where it lies."""
        return self.edge.path.end

    @property
    def turn(self) -> float:
        """The sine of the turn from one edge into the next: above 0 the corner points outwards,
        below 0 inwards."""
        return self.coming.cross(self.going)

    @property
    def mirrored(self) -> bool:
        """Whether a hem turns up there."""
        return self.edge.turned != self.after.turned and folds(self.coming, self.going)

    @property
    def tip(self) -> Point | None:
        """Where the lines outside the two edges meet beyond a corner that points outwards; None
        where it is blunted, or a wide allowance steps down to a narrow one."""
        first = self.at + outward(self.coming) * self.edge.width
        last = self.at + outward(self.going) * self.after.width
        met = crossing(first, self.coming, last, self.going)
        most = MITRE * max(self.edge.width, self.after.width)
        if met is None or (met - self.at).length() > most:
            return None
        steps = (met - first).dot(self.coming) < 0 or (last - met).dot(self.going) < 0
        return None if steps else met


def corners(margins: Sequence[Margin]) -> list[Corner]:
    """Return the corner at the end of every edge of a closed outline."""
    pairs = zip(margins, [*margins[1:], margins[0]], strict=True)
    return [Corner(one, two, one.path.arriving(), two.path.leaving()) for one, two in pairs]


def outer_lines(corners: Sequence[Corner]) -> list[list[Point]]:
    """Return the line outside every edge, from the corner before it to its own."""
    return [_outer_line(corners[index - 1], corner) for index, corner in enumerate(corners)]


def _outer_line(start: Corner, end: Corner) -> list[Point]:
    """The line outside one edge by its allowance, its ends square, or trimmed where a hem turns;
    the edge itself where it has none."""
    edge = end.edge
    if edge.width <= 0:
        return edge.path.flattened(FINE)
    line = edge.path.beside(edge.width, FINE)
    first = end_of(edge, start.edge, edge.path.start, start.going, start.coming)
    last = end_of(edge, end.after, end.at, end.coming, end.going)
    if first:
        line = [first.inner, *first.ended(line[::-1])[::-1]]
    if last:
        line = [*last.ended(line), last.inner]
    return line
