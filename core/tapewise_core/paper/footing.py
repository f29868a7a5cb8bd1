"""A piece turned one way on a grid of pages: what each of its places costs."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import cached_property
from itertools import product

import numpy as np

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.paper.grid import Near
from tapewise_core.paper.lattice import Flags, Floats, Lattice, Whole
from tapewise_core.paper.packing import GAP
from tapewise_core.paper.shapes import SQUARE, Shape

THIN = 0.025
"""A page of which less than this share is pattern is avoided where that costs no other page; it
is a little more than the fiftieth that people are promised."""


class Footing(Frozen, eq=False, dict=True):
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

        Spots are counted on a table that has a line for each group of them; a cell, or a strip of
        one, is a rectangle of that table at every step, so that four of its sums say what it has.
        """
        lattice, spots = self.lattice, self.shape.spots
        row, down = _grouped(spots[:, 1], lattice.borders(1, self.rows))
        column, across = _grouped(spots[:, 0], lattice.borders(0, self.columns))
        sums = np.zeros((down.max() + 1, across.max() + 1), np.int32)
        sums[row + 1, column + 1] = 1
        sums = sums.cumsum(0).cumsum(1)
        inked = np.diff(np.diff(sums[down], axis=1)[:, :, across], axis=3) > 0
        steps = (lattice.down, self.rows, 3, lattice.across, self.columns, 3)
        return np.asarray(inked.reshape(steps).transpose(0, 3, 1, 4, 2, 5))

    @cached_property
    def leaning(self) -> tuple[Flags, Flags]:
        """Pages it touches and does not need as long as no page follows: to the right in the same
        row, or below in the same column; as ``needed``."""
        near = _near_first(self.touched)
        spared = _steps_first(np.any(near, axis=(0, 1))) & ~self.needed
        over = _steps_first(np.any(near[Near.STRIP, Near.BORDER :], axis=0))
        return spared & ~over, spared & over

    @cached_property
    def patterns(self) -> tuple[Whole, Whole]:
        """The few ways in which ``needed`` is filled, as numbers, a row a way; and the row of each
        place, one place after another."""
        ways = self.needed.reshape(self.lattice.down * self.lattice.across, -1)
        codes = np.packbits(ways, axis=1)
        codes = codes.view(f"V{codes.shape[1]}").ravel()
        _, first, row = np.unique(codes, return_index=True, return_inverse=True)
        return ways[first].astype(np.int64), row.ravel()

    @cached_property
    def alone(self) -> Floats:
        """What each place costs by itself, in pages: splits above all, thin ones, a torn label,
        turning."""
        thin = (self.needed & (self.covered < THIN)).sum(axis=(2, 3))
        return np.asarray(1000.0 * self.splits + 0.05 * thin + 0.1 * self.torn + 0.01 * self.turned)

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


def _grouped(spots: Floats, borders: Floats) -> tuple[Whole, Whole]:
    """Spots between which there is no border are one group, and groups are counted along.

    Return the group of each spot, and for each border the first group beyond it.
    """
    order = np.argsort(spots)
    first = np.searchsorted(spots[order], borders)
    begins = np.zeros(len(spots) + 1, np.int64)
    begins[first] = 1
    number = begins.cumsum()
    group = np.empty(len(spots), np.int64)
    group[order] = number[:-1]
    return group, number[first]


def _between(sums: Floats, at: Floats) -> Floats:
    """Rows of a table between which others lie, in proportion."""
    low = np.minimum(at.astype(np.int64), len(sums) - 2)
    return np.asarray(sums[low] + (at - low)[:, None] * (sums[low + 1] - sums[low]))


def printed_at(touched: Flags) -> Flags:
    """Which pages must be printed, many layouts at once: see :func:`grid.printed`."""
    (corner, under, at_top), *inner = _near_first(touched)
    at_left = inner[0][0] | inner[1][0]
    in_sight = inner[0][1] | inner[0][2] | inner[1][1] | inner[1][2]
    inked = corner | under | at_top | at_left | in_sight
    last, lowest = ~further(inked, 1), ~further(inked, 0)
    needed = np.zeros_like(inked)
    none: Flags = np.zeros_like(inked[0, 0])
    for at in product(range(inked.shape[0]), range(inked.shape[1])):
        row, column = at
        beside = needed[row, column - 1] if column else none
        left = beside & last[at]
        above = needed[row - 1, column] & lowest[at] if row else none
        needed[at] = in_sight[at] | (at_left[at] & ~left) | (corner[at] & ~left & ~above)
        needed[at] |= (at_top[at] & ~above) | (under[at] & ~(above & ~beside))
    return _steps_first(needed)


def _near_first(touched: Flags) -> Flags:
    """The table with its axes in another order: where in the page, page, step. numpy is quick along
    the last axes only if they are long."""
    return np.ascontiguousarray(touched.transpose(4, 5, 2, 3, 0, 1))


def _steps_first(pages: Flags) -> Flags:
    return np.ascontiguousarray(pages.transpose(2, 3, 0, 1))


def further(flags: Flags, axis: int) -> Flags:
    """Say for each place whether any further along an axis is set."""
    along = np.moveaxis(flags, axis, 0)
    found = np.zeros_like(along)
    found[:-1] = np.logical_or.accumulate(along[:0:-1])[::-1]
    return np.moveaxis(found, 0, axis)
