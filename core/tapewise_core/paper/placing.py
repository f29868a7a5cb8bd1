"""Where pieces lie on a grid of pages, so that few are printed and no neckline is split.

A search by true outlines: piece after piece is laid where it costs least, and the best few
beginnings are gone on with. It is deterministic, and good rather than best.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from tapewise_core.paper.apart import Apart
from tapewise_core.paper.begun import Begun, Tries, joined
from tapewise_core.paper.footing import Footing
from tapewise_core.paper.grid import Grid
from tapewise_core.paper.lattice import Flags, Floats, Lattice
from tapewise_core.paper.packing import BORDER, GAP
from tapewise_core.paper.settling import Layout, settled
from tapewise_core.paper.shapes import Shape

KEPT = 12
"""Beginnings that are gone on with after each piece (our choice)."""

TRIED = 4
"""Places tried for each piece and beginning, each in a page of its own (our choice)."""

SETTLED = 3
"""How many layouts settle at most (our choice)."""


def placed(shapes: Sequence[Shape], *grids: Grid) -> Layout:
    """Return the pieces placed on that of some grids which costs least: fewest avoidable splits,
    then fewest pages. Pieces may come out turned a quarter.

    The pieces settle in one layout after another, until no other seems to need fewer pages.
    """
    found = sorted((one for grid in grids for one in _tried(shapes, grid)), key=lambda f: f.cost)
    best: Layout | None = None
    for begun in found[:SETTLED]:
        if best is None or begun.cost[:3] < best.cost[:3]:
            layout = settled(begun.laid())
            best = layout if best is None else min(best, layout, key=lambda one: one.cost)
    assert best
    return best


def _tried(shapes: Sequence[Shape], grid: Grid) -> Begun:
    """The best few ways of laying the pieces on one grid."""
    lattice = Lattice.over(grid)
    ways = [[Footing(way, bool(n), lattice) for n, way in enumerate(one.ways)] for one in shapes]
    columns = _columns(shapes, grid) + 1
    search = _Search(lattice, columns)
    begun = Begun.nothing(0, columns + max((way.columns for one in ways for way in one), default=0))
    for index in sorted(range(len(shapes)), key=lambda i: (-_area(shapes[i]), i)):
        begun = search.further(begun, index, ways[index])
    return begun


def _area(shape: Shape) -> float:
    return shape.box.width * shape.box.height


def _columns(shapes: Sequence[Shape], grid: Grid) -> int:
    """How many pages wide: as many as the widest piece asks, or about a square."""
    widest = max((shape.box.width for shape in shapes), default=0.0)
    total = sum((shape.box.width + GAP) * (shape.box.height + GAP) for shape in shapes)
    fits = math.ceil((widest + 2 * BORDER - grid.reach) / grid.width)
    return max(1, fits, round(math.sqrt(total) / grid.width))


class _Search:
    """The best few ways of laying pieces one after another on so many columns of pages."""

    def __init__(self, lattice: Lattice, columns: int) -> None:
        self.lattice, self.columns, self.apart = lattice, columns, Apart()

    def further(self, begun: Begun, index: int, ways: Sequence[Footing]) -> Begun:
        """Return the best beginnings with one piece more, no two on the same pages."""
        rows = [lowest // self.lattice.down + 2 for lowest in begun.lowest()]
        begun = begun.with_rows(max(rows) + max(way.rows for way in ways))
        tries = [self._tries(begun, rows, way) for way in ways]
        found = joined([begun.then(index, one) for one in tries])
        order = np.argsort(np.concatenate([one.after for one in tries]), kind="stable")
        return found[order.tolist()].best(KEPT)

    def _tries(self, begun: Begun, rows: Sequence[int], way: Footing) -> Tries:
        """For each beginning the cheapest free place in each page for a piece's corner, of the
        pages in which that costs least; ``rows`` of pages are looked at."""
        lattice, columns = self.lattice, self.columns
        cost = self._cost(begun, way, max(rows))
        np.copyto(cost, np.inf, where=self._blocked(begun, way, max(rows)))
        least = cost.argmin(axis=2)
        value = np.take_along_axis(cost, least[:, :, None], axis=2)[:, :, 0]
        value[np.arange(value.shape[1]) >= columns * np.array(rows)[:, None]] = np.inf
        pages = np.argsort(value, axis=1, kind="stable")[:, :TRIED]
        after, rank = np.nonzero(np.take_along_axis(value, pages, axis=1) < np.inf)
        page = pages[after, rank]
        cell, inside = np.divmod(page, columns), np.divmod(least[after, page], lattice.across)
        at = [cell[0] * lattice.down + inside[0], cell[1] * lattice.across + inside[1]]
        return Tries(way, after, np.stack(at, axis=1))

    def _cost(self, begun: Begun, way: Footing, rows: int) -> Floats:
        """What each place costs, beginning by beginning and page by page: new pages, and what the
        piece costs there by itself."""
        new = ~begun.pages[:, : rows + way.rows, : self.columns + way.columns]
        seen = np.lib.stride_tricks.sliding_window_view(new, (way.rows, way.columns), (1, 2))
        patches = seen[:, :rows, : self.columns].astype(np.int64)
        patterns, row = way.patterns
        # Whole numbers: for a product of floats numpy wakes threads, which takes longer than it.
        count = patches.reshape(-1, patterns.shape[1]) @ patterns.T
        cost = count[:, row] + way.alone.ravel()
        return np.asarray(cost.reshape(len(new), rows * self.columns, -1))

    def _blocked(self, begun: Begun, way: Footing, rows: int) -> Flags:
        """Places where the piece would meet another or leave the pages to the right, in order as
        ``_cost`` has them."""
        lattice = self.lattice
        steps = (len(begun.placed), rows, lattice.down, self.columns, lattice.across)
        blocked = np.zeros((steps[0], rows * lattice.down, self.columns * lattice.across), bool)
        room = self.columns * lattice.grid.width + lattice.grid.reach - 2 * BORDER
        last = max(int((room - way.shape.box.width) / lattice.wide), 0)
        blocked[:, :, last + 1 :] = True
        for one, placed in zip(blocked, begun.placed, strict=True):
            for other in placed:
                self.apart.mark(one, other.footing, other.at, way)
        by_page = blocked.reshape(steps).transpose(0, 1, 3, 2, 4)
        return by_page.reshape(steps[0], rows * self.columns, -1)
