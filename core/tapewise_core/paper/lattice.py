"""Places on a grid of pages where a piece may begin, in equal steps."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point
from tapewise_core.paper.grid import Grid
from tapewise_core.paper.packing import BORDER

STEP = 8.0
"""About how far apart two places are [mm]: half of it takes twice the time and saves no page in a
hundred (our choice)."""

FINE, NEAR = 1.0, 5
"""How far apart places about one are [mm], and how many of them lie each side (our choice)."""

SETTLES = STEP / 2
"""How far a piece may be expected to settle [mm]."""

WARY = 1.0
"""A strip counts as so much narrower [mm], since ink between two spots may reach further than they
do (our choice)."""

Flags = NDArray[np.bool_]
Floats = NDArray[np.float64]
Whole = NDArray[np.int64]


class Lattice(Frozen):
    """Steps across and down, counted from a place of the grid's first page [mm]."""

    grid: Grid
    first: Point
    wide: float
    high: float
    across: int
    down: int

    @staticmethod
    def over(grid: Grid) -> Lattice:
        """Return the steps of one cell, as many in every cell, a border from its corner."""
        across, down = round(grid.width / STEP), round(grid.height / STEP)
        first = Point(BORDER, BORDER)
        return Lattice(grid, first, grid.width / across, grid.height / down, across, down)

    @staticmethod
    def about(grid: Grid, place: Point) -> Lattice:
        """Return fine steps about a place [mm]."""
        first, count = Point(place.x - FINE * NEAR, place.y - FINE * NEAR), 2 * NEAR + 1
        return Lattice(grid, first, FINE, FINE, count, count)

    def at(self, down: int, across: int) -> Point:
        """Return the place so many steps down and across."""
        return Point(self.first.x + across * self.wide, self.first.y + down * self.high)

    def starts(self, way: int) -> Floats:
        """Return where the steps lie [mm], across (0) or down (1)."""
        first = (self.first.x, self.first.y)[way]
        count, step = ((self.across, self.wide), (self.down, self.high))[way]
        return first + step * np.arange(count, dtype=np.float64)

    def pitch(self, way: int) -> float:
        """How far two cells are apart [mm], across (0) or down (1)."""
        return (self.grid.width, self.grid.height)[way]

    def count(self, size: float, way: int) -> int:
        """How many cells a piece of a size [mm] can touch, across (0) or down (1)."""
        return math.floor((float(self.starts(way)[-1]) + size) / self.pitch(way)) + 1

    def borders(self, way: int, cells: int) -> Floats:
        """Return for each step (rows) where on the piece [mm] so many cells begin, and in each the
        parts of it that :class:`Near` tells apart; the last is where the next cell begins."""
        parts = 0.0, self.grid.reach - WARY, self.grid.reach + self.grid.border
        borders = self.pitch(way) * np.arange(cells + 1)[:, None] + np.array(parts)
        return np.asarray(borders.ravel()[: 3 * cells + 1] - self.starts(way)[:, None])

    def crossed(self, low: float, high: float, way: int) -> Whole:
        """Return for each step how many grid lines run through a stretch of a piece [mm].

        None are counted where the stretch is longer than a page, nor near its ends where steps
        are long: the piece will settle.
        """
        at, pitch = self.starts(way), self.pitch(way)
        if high - low > pitch:
            return np.zeros(len(at), np.int64)
        near = SETTLES if self.wide > FINE else 0.0
        ends = (at + high - near) / pitch, (at + low + near) / pitch
        return np.asarray(np.maximum(np.floor(ends[0]) - np.floor(ends[1]), 0), np.int64)
