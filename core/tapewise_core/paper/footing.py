"""A piece turned one way on a grid of pages: what each of its places costs."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import cached_property
from itertools import product

import numpy as np
from numpy.typing import NDArray

from tapewise_core.frozen import dataclass
from tapewise_core.geometry.outline import Box
from tapewise_core.paper.grid import Near
from tapewise_core.paper.lattice import Flags, Floats, Lattice, Whole
from tapewise_core.paper.packing import GAP
from tapewise_core.paper.shapes import SQUARE, Shape


@dataclass(frozen=True, eq=False)
class Footing:
    """Tables over the steps of a lattice, down and across, at which the piece's corner may lie."""

    shape: Shape
    turned: bool
    lattice: Lattice

    @cached_property
    def rows(self) -> int:
        """How many rows of pages it can touch."""
        return self.lattice.count(self.shape.box.height, 1)

    @cached_property
    def columns(self) -> int:
        """How many columns of pages it can touch."""
        return self.lattice.count(self.shape.box.width, 0)

    @cached_property
    def needed(self) -> Flags:
        """Which pages it needs: step down, step across, row, column, counted from its corner's."""
        return printed_at(self.touched)

    @cached_property
    def touched(self) -> Flags:
        """Where it has ink: as ``needed``, and where in the page, see :class:`Near`.

        Whether two sets of spots meet is one product of two tables of noughts and ones.
        """
        spots = self.shape.spots
        down = _table(self.lattice.cells(spots[:, 1], 1), 3 * self.rows)
        across = _table(self.lattice.cells(spots[:, 0], 0), 3 * self.columns)
        steps = (self.lattice.down, self.rows, 3, self.lattice.across, self.columns, 3)
        return np.asarray((down @ across.T > 0).reshape(steps).transpose(0, 3, 1, 4, 2, 5))

    @cached_property
    def leaning(self) -> tuple[Flags, Flags]:
        """Pages it touches and does not need as long as no page follows: to the right in the same
        row, or below in the same column; as ``needed``."""
        touched, strip = self.touched, int(Near.STRIP)
        spared = np.asarray(touched.any(axis=(4, 5))) & ~self.needed
        over = np.delete(touched[..., strip, :], strip, axis=-1).any(axis=-1)
        return spared & ~over, spared & over

    @cached_property
    def weights(self) -> NDArray[np.float32]:
        """``needed`` as numbers, a row a place."""
        return self.needed.reshape(self.lattice.down * self.lattice.across, -1).astype(np.float32)

    @cached_property
    def splits(self) -> Whole:
        """How many grid lines run through what is kept whole."""
        return self._crossed(self.shape.whole)

    @cached_property
    def torn(self) -> Whole:
        """How many grid lines run through its label."""
        return self._crossed(self.shape.label)

    def _crossed(self, boxes: Sequence[Box]) -> Whole:
        count = np.zeros((self.lattice.down, self.lattice.across), np.int64)
        for box in boxes:
            count += self.lattice.crossed(box.top, box.bottom, 1)[:, None]
            count += self.lattice.crossed(box.left, box.right, 0)[None, :]
        return count

    @cached_property
    def taken(self) -> Flags:
        """Squares of the lattice that come nearer than half a gap: two pieces keep a whole one."""
        near = math.hypot(self.lattice.wide, self.lattice.high) / 2
        return self.shape.squares(self.lattice.wide, self.lattice.high, GAP / 2, GAP / 2 + near)

    @cached_property
    def covered(self) -> Floats:
        """Shares of each page that are pattern: as ``needed``."""
        before, grid = self.shape.solid_sums, self.lattice.grid
        down = self._edges(before, 1, self.rows, grid.height)
        across = self._edges(before.T, 0, self.columns, grid.width)
        sums = _between(_between(before, down).T, across).T
        steps = (self.lattice.down, self.rows + 1, self.lattice.across, self.columns + 1)
        at = sums.reshape(steps).transpose(0, 2, 1, 3)
        return np.asarray(np.diff(np.diff(at, axis=2), axis=3) / (grid.width * grid.height))

    def _edges(self, sums: Floats, way: int, count: int, pitch: float) -> Floats:
        """Where pages begin and end on the piece, in squares, for each step it may lie at."""
        edges = pitch * np.arange(count + 1)[None, :] - self.lattice.starts(way)[:, None]
        return np.clip(edges / SQUARE, 0, len(sums) - 1).ravel()


def _table(numbers: Whole, count: int) -> NDArray[np.float32]:
    """For each step and number up to ``count`` a row that says which spots have it."""
    steps, spots = numbers.shape
    table = np.zeros((steps * count, spots), np.float32)
    table[numbers + count * np.arange(steps)[:, None], np.arange(spots)[None, :]] = 1
    return table


def _between(sums: Floats, at: Floats) -> Floats:
    """Rows of a table between which others lie, in proportion."""
    low = np.minimum(at.astype(np.int64), len(sums) - 2)
    return np.asarray(sums[low] + (at - low)[:, None] * (sums[low + 1] - sums[low]))


def printed_at(touched: Flags) -> Flags:
    """Which pages must be printed, many layouts at once: see :func:`grid.printed`."""
    strip, border = int(Near.STRIP), int(Near.BORDER)
    inked: Flags = np.any(touched, axis=(4, 5))
    inner = np.delete(touched, strip, axis=4)
    in_sight: Flags = np.any(np.delete(inner, strip, axis=5), axis=(4, 5))
    at_left: Flags = np.any(inner[..., strip], axis=4)
    at_top, under, corner = (touched[..., strip, n] for n in (int(Near.OPEN), border, strip))
    needed = np.zeros_like(inked)
    none: Flags = np.zeros(inked.shape[:2], bool)
    for row, column in product(range(inked.shape[2]), range(inked.shape[3])):
        at = (slice(None), slice(None), row, column)
        beside = needed[:, :, row, column - 1] if column else none
        left = beside & ~np.any(inked[:, :, row, column + 1 :], axis=2)
        over = needed[:, :, row - 1, column] if row else none
        above = over & ~np.any(inked[:, :, row + 1 :, column], axis=2)
        needed[at] = in_sight[at] | (at_left[at] & ~left) | (corner[at] & ~left & ~above)
        needed[at] |= (at_top[at] & ~above) | (under[at] & ~(above & ~beside))
    return needed
