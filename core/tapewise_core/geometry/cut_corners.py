"""How allowances meet: the line outside one edge with its ends, and what lies between two."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tapewise_core.geometry.cut_ends import end_of, folds, outward
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.point import Point, crossing

FINE = 0.03
"""Flattening used under a cut line [mm]; well below what scissors can follow."""

MITRE = 3.0
"""A corner longer than this many allowances is blunted, as in the SVG and PDF stroke rules."""

LEVEL = 1e-6
"""Two directions that span no more run straight on."""


def neighbours(margins: Sequence[Margin]) -> Iterator[tuple[Margin, Margin, Margin]]:
    """Yield every edge of a closed outline between the ones before and after it."""
    return zip([margins[-1], *margins[:-1]], margins, [*margins[1:], margins[0]], strict=True)


def outer_line(before: Margin, edge: Margin, after: Margin) -> list[Point]:
    """Return the line outside one edge by its allowance, its ends square, or trimmed where a hem
    turns; the edge itself where it has none."""
    if edge.width <= 0:
        return edge.path.flattened(FINE)
    line = edge.path.beside(edge.width, FINE)
    start = end_of(edge, before, edge.path.start, edge.path.leaving(), before.path.arriving())
    end = end_of(edge, after, edge.path.end, edge.path.arriving(), after.path.leaving())
    if start:
        line = [start.inner, *start.ended(line[::-1])[::-1]]
    if end:
        line = [*end.ended(line), end.inner]
    return line


def turn(edge: Margin, after: Margin) -> float:
    """Return the sine of the turn from an edge into the next: above 0 the corner points outwards,
    below 0 inwards."""
    return edge.path.arriving().cross(after.path.leaving())


def mirrored(edge: Margin, after: Margin) -> bool:
    """Say whether a hem turns up at the corner between two edges."""
    return edge.turned != after.turned and folds(edge.path.arriving(), after.path.leaving())


def tip(edge: Margin, after: Margin) -> Point | None:
    """Return where the lines outside two edges meet beyond a corner that points outwards; None
    where the corner is blunted, or a wide allowance steps down to a narrow one."""
    coming, going = edge.path.arriving(), after.path.leaving()
    corner = edge.path.end
    first = corner + outward(coming) * edge.width
    last = corner + outward(going) * after.width
    met = crossing(first, coming, last, going)
    if met is None or (met - corner).length() > MITRE * max(edge.width, after.width):
        return None
    steps = (met - first).dot(coming) < 0 or (last - met).dot(going) < 0
    return None if steps else met
