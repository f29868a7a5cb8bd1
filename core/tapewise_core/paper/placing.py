"""Where pieces lie on a grid of pages, so that few are printed and no neckline is split.

A search by true outlines: piece after piece is laid where it costs least, and the best few
beginnings are gone on with. It is deterministic, and good rather than best.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import numpy as np

from tapewise_core.paper.apart import Apart
from tapewise_core.paper.begun import Begun, Placed
from tapewise_core.paper.footing import Footing
from tapewise_core.paper.grid import Cell, Grid
from tapewise_core.paper.lattice import Flags, Floats, Lattice
from tapewise_core.paper.packing import BORDER, GAP
from tapewise_core.paper.settling import THIN, Layout, settled
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


def _tried(shapes: Sequence[Shape], grid: Grid) -> list[Begun]:
    """The best few ways of laying the pieces on one grid."""
    lattice = Lattice.over(grid)
    ways = [[Footing(way, bool(n), lattice) for n, way in enumerate(one.ways)] for one in shapes]
    search = _Search(lattice, _columns(shapes, grid) + 1)
    begun = [Begun()]
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

    def further(self, begun: Sequence[Begun], index: int, ways: Sequence[Footing]) -> list[Begun]:
        """Return the best beginnings with one piece more, no two on the same pages."""
        best: dict[frozenset[Cell], Begun] = {}
        for one in begun:
            for way in ways:
                for at in self._places(one, way):
                    more = one.then(Placed(index, way, at))
                    known = best.setdefault(more.pages, more)
                    if more.cost < known.cost:
                        best[more.pages] = more
        return sorted(best.values(), key=lambda one: one.cost)[:KEPT]

    def _places(self, begun: Begun, way: Footing) -> Iterator[tuple[int, int]]:
        """The cheapest free place in each page for a piece's corner, of some pages."""
        lattice, columns = self.lattice, self.columns
        lowest = max((one.at[0] + len(one.footing.taken) for one in begun.placed), default=0)
        rows = lowest // lattice.down + 2
        cost = self._cost(begun, way, rows)
        cost[self._blocked(begun, way, rows)] = np.inf
        steps = (rows, lattice.down, columns, lattice.across)
        flat = cost.reshape(steps).transpose(0, 2, 1, 3).reshape(rows * columns, -1)
        least = flat.argmin(axis=1)
        value = flat[np.arange(len(flat)), least]
        for page in np.argsort(value, kind="stable")[:TRIED]:
            if value[page] < np.inf:
                row, column = divmod(int(page), columns)
                down, across = divmod(int(least[page]), lattice.across)
                yield row * lattice.down + down, column * lattice.across + across

    def _cost(self, begun: Begun, way: Footing, rows: int) -> Floats:
        """What each place costs: splits above all, new pages, thin ones, a torn label, turning."""
        free = np.ones((rows + way.rows, self.columns + way.columns), np.float32)
        for row, column in begun.pages:
            if row < len(free) and column < len(free[0]):
                free[row, column] = 0
        seen = np.lib.stride_tricks.sliding_window_view(free, (way.rows, way.columns))
        patches = seen[:rows, : self.columns].reshape(rows * self.columns, -1)
        new = (way.weights @ patches.T).astype(np.float64)
        lattice = self.lattice
        shaped = new.reshape(lattice.down, lattice.across, rows, self.columns)
        thin = (way.needed & (way.covered < THIN)).sum(axis=(2, 3))
        alone = 1000.0 * way.splits + 0.05 * thin + 0.1 * way.torn + 0.01 * way.turned
        cost = shaped.transpose(2, 0, 3, 1) + alone[None, :, None, :]
        return np.asarray(cost.reshape(rows * lattice.down, self.columns * lattice.across))

    def _blocked(self, begun: Begun, way: Footing, rows: int) -> Flags:
        """Places where the piece would meet another or leave the pages to the right."""
        lattice = self.lattice
        blocked = np.zeros((rows * lattice.down, self.columns * lattice.across), bool)
        room = self.columns * lattice.grid.width + lattice.grid.reach - 2 * BORDER
        last = max(int((room - way.shape.box.width) / lattice.wide), 0)
        blocked[:, last + 1 :] = True
        for one in begun.placed:
            self.apart.mark(blocked, one.footing, one.at, way)
        return blocked
