"""Some pieces laid on a grid of pages, others still waiting."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tapewise_core.frozen import dataclass
from tapewise_core.paper.footing import Footing
from tapewise_core.paper.grid import Cell
from tapewise_core.paper.settling import THIN, Cost, Laid


@dataclass(frozen=True, slots=True)
class Placed:
    """One piece at a place, steps down and across from the canvas's corner."""

    index: int
    footing: Footing
    at: tuple[int, int]

    @property
    def inside(self) -> tuple[int, int]:
        """The place within its cell, as the footing's tables have it."""
        lattice = self.footing.lattice
        return self.at[0] % lattice.down, self.at[1] % lattice.across

    def cells(self, table: NDArray[Any]) -> Iterator[tuple[Cell, Any]]:
        """Yield the cells for which a table of its pages has something, and what."""
        lattice, found = self.footing.lattice, table[self.inside]
        row, column = self.at[0] // lattice.down, self.at[1] // lattice.across
        for down, across in zip(*np.nonzero(found), strict=True):
            yield (row + int(down), column + int(across)), found[down, across]


@dataclass(frozen=True, slots=True)
class Begun:
    """Some pieces placed, the pages they need, and what share of each is pattern.

    ``leaning`` are pages that are needed as soon as another follows, to the right in the same
    row, or below in the same column. ``cost`` is, least first: avoidable splits, pages, thin
    pages, torn labels, pieces turned, and how far down and across all goes.
    """

    placed: tuple[Placed, ...] = ()
    pages: frozenset[Cell] = frozenset()
    leaning: tuple[frozenset[Cell], frozenset[Cell]] = (frozenset(), frozenset())
    shares: tuple[tuple[Cell, float], ...] = ()
    cost: Cost = (0, 0, 0, 0, 0)

    def then(self, one: Placed) -> Begun:
        """Return it with one piece more."""
        footing, at = one.footing, one.inside
        leaning = (
            self.leaning[0] | {cell for cell, _ in one.cells(footing.leaning[0])},
            self.leaning[1] | {cell for cell, _ in one.cells(footing.leaning[1])},
        )
        pages = _with_leaning(self.pages | {cell for cell, _ in one.cells(footing.needed)}, leaning)
        shares = dict(self.shares)
        for cell, share in one.cells(footing.covered):
            shares[cell] = shares.get(cell, 0.0) + float(share)
        cost = (
            self.cost[0] + int(footing.splits[at]),
            len(pages),
            sum(shares.get(cell, 0.0) < THIN for cell in pages),
            self.cost[3] + int(footing.torn[at]),
            self.cost[4] + footing.turned,
            *_spread(pages),
        )
        return Begun((*self.placed, one), pages, leaning, tuple(shares.items()), cost)

    def laid(self) -> tuple[Laid, ...]:
        """Return the pieces at their places, in the order given."""
        ordered = sorted(self.placed, key=lambda one: one.index)
        return tuple(Laid(one.footing, one.footing.lattice.at(*one.at)) for one in ordered)


def _with_leaning(
    pages: frozenset[Cell], leaning: tuple[frozenset[Cell], frozenset[Cell]]
) -> frozenset[Cell]:
    """The pages, and those that another now follows."""
    if not any(leaning):
        return pages
    last: dict[int, int] = {}
    lowest: dict[int, int] = {}
    for row, column in pages:
        last[row] = max(column, last.get(row, column))
        lowest[column] = max(row, lowest.get(column, row))
    right = {cell for cell in leaning[0] if last.get(cell[0], -1) > cell[1]}
    below = {cell for cell in leaning[1] if lowest.get(cell[1], -1) > cell[0]}
    return pages | right | below


def _spread(pages: Iterable[Cell]) -> Cost:
    """How far down pages go, and how far down and across altogether."""
    rows, columns = zip(*pages, strict=True)
    return max(rows), sum(rows), sum(columns)
