"""Letters on the edges that two pages share."""

from __future__ import annotations

import math
from collections.abc import Collection, Iterator, Mapping, Sequence
from itertools import count, pairwise, product
from string import ascii_uppercase

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Drawing
from tapewise_core.paper.grid import Cell, Grid, line_of
from tapewise_core.paper.packing import ink_box

_SHARES = (0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88)
"""Places along an edge where its letter may stand, best first."""


class PageJoin(Frozen):
    """The letter shared by two pages, and how far along their common edge it stands [mm]."""

    letter: str
    along: float


Border = tuple[Cell, Cell]
"""Two neighbouring cells, the one before first."""


class Neighbours(Frozen):
    """The joins of one page, None where no page follows, and where its blank border is cut off.

    A border is cut off also where no page follows if it would cover a page beside that one.
    """

    left: PageJoin | None
    right: PageJoin | None
    above: PageJoin | None
    below: PageJoin | None
    trim_left: bool
    trim_top: bool

    @staticmethod
    def of(cell: Cell, pairs: Mapping[Border, PageJoin], near: Collection[Cell]) -> Neighbours:
        """Return the joins of a cell; ``near`` are the pages it becomes one sheet with."""
        row, column = cell
        before, over = (row, column - 1), [(row - 1, column + step) for step in (-1, 0, 1)]
        return Neighbours(
            pairs.get(((row, column - 1), cell)),
            pairs.get((cell, (row, column + 1))),
            pairs.get(((row - 1, column), cell)),
            pairs.get((cell, (row + 1, column))),
            before in near or over[0] in near,
            any(place in near for place in over),
        )


def letters(canvas: Drawing, grid: Grid, cells: Sequence[Cell]) -> dict[Border, PageJoin]:
    """Return a letter for every edge between two printed pages, in reading order.

    Each stands where it hides no line of the pattern, if there is such a place.
    """
    inked = _inked(canvas)
    names = _names()
    pairs: dict[Border, PageJoin] = {}
    for row, column in cells:
        if (row, column + 1) in cells:
            start = Point((column + 1) * grid.width, row * grid.height)
            along = _free(inked, start, Vector(0, 1), grid.height)
            pairs[(row, column), (row, column + 1)] = PageJoin(next(names), along)
        if (row + 1, column) in cells:
            start = Point(column * grid.width, (row + 1) * grid.height)
            along = _free(inked, start, Vector(1, 0), grid.width)
            pairs[(row, column), (row + 1, column)] = PageJoin(next(names), along)
    return pairs


def crossed(
    pairs: Mapping[Border, PageJoin], spans: Sequence[Collection[Cell]]
) -> dict[Border, PageJoin]:
    """Return the joins whose edge a piece runs across; other pages stay apart."""
    return {
        edge: join
        for edge, join in pairs.items()
        if any(edge[0] in span and edge[1] in span for span in spans)
    }


def spans(pieces: Sequence[Drawing], grid: Grid) -> list[set[Cell]]:
    """Return the cells each piece goes over."""
    return [_span(ink_box(piece), grid) for piece in pieces]


def _span(box: Box, grid: Grid) -> set[Cell]:
    first = grid.cell(Point(box.left, box.top))
    last = grid.cell(Point(box.right, box.bottom))
    return set(product(range(first[0], last[0] + 1), range(first[1], last[1] + 1)))


_BIN = 4.0


def _inked(canvas: Drawing) -> set[tuple[int, int]]:
    """Squares of a few millimetres that hold ink."""
    bins: set[tuple[int, int]] = set()
    for ink in canvas.inks:
        for a, b in pairwise(line_of(ink, 1.0)):
            x, y = b.x - a.x, b.y - a.y
            steps = int(math.hypot(x, y) / _BIN) + 1
            bins.update(
                (int((a.x + x * i / steps) // _BIN), int((a.y + y * i / steps) // _BIN))
                for i in range(steps + 1)
            )
    return bins


def _free(inked: Collection[tuple[int, int]], start: Point, along: Vector, length: float) -> float:
    """How far along an edge the square of two letters covers least ink."""

    def ink(share: float) -> int:
        at = start + along * (length * share)
        column, row = int(at.x // _BIN), int(at.y // _BIN)
        near = product(range(column - 2, column + 3), range(row - 2, row + 3))
        return sum(place in inked for place in near)

    return length * min(_SHARES, key=ink)


def _names() -> Iterator[str]:
    """A, B … Z, AA, AB …"""
    for size in count(1):
        yield from map("".join, product(ascii_uppercase, repeat=size))
