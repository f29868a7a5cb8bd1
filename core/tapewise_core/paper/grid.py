"""A grid of pages over a canvas, and which of its cells carry ink."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from enum import IntEnum
from itertools import pairwise

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Ink, Stroke

FLAT = 0.2
"""How far the line looked at may be from the true curve [mm]; less than a drawn line is wide."""

Cell = tuple[int, int]
"""Row and column, counted from 0."""


class Near(IntEnum):
    """Where ink lies within its cell, from the grid line before it on."""

    STRIP = 0
    """On the strip that the page before prints too."""
    BORDER = 1
    """Beyond that strip, where the page before has blank paper."""
    OPEN = 2


class Grid(Frozen):
    """Equal cells from the canvas's corner, in mm.

    Each page also shows ``reach`` of the next two cells, and has ``border`` of blank paper beyond.
    """

    width: float
    height: float
    reach: float = 0.0
    border: float = 0.0

    def cell(self, point: Point) -> Cell:
        """Return the cell a point lies in."""
        return math.floor(point.y / self.height), math.floor(point.x / self.width)

    def place(self, point: Point) -> Place:
        """Return the cell a point lies in, and where in it."""
        row, column = cell = self.cell(point)
        above, left = point.y - row * self.height, point.x - column * self.width
        return cell, (self.near(above), self.near(left))

    def near(self, beyond: float) -> Near:
        """Say where ink lies so many mm beyond the grid line before it."""
        if beyond < self.reach:
            return Near.STRIP
        return Near.BORDER if beyond < self.reach + self.border else Near.OPEN


Place = tuple[Cell, tuple[Near, Near]]
"""A cell, and where in it: from the page above and from the page before."""

Touched = dict[Cell, set[tuple[Near, Near]]]
"""Per cell with ink: where it lies, from the page above and from the page before."""


def carrying(inks: Iterable[Ink], grid: Grid) -> list[Cell]:
    """Return the cells that must be printed, row by row."""
    touched: Touched = {}
    for cell, near in _places(inks, grid):
        touched.setdefault(cell, set()).add(near)
    return printed(touched)


def printed(touched: Touched) -> list[Cell]:
    """Return the cells to print of those with ink, row by row.

    At the end of a row or column a cell is left out when all its ink already shows on the
    strip that the page before it prints beyond its own cell, and no other page covers it there:
    what shows on the page above lies under the page to the left, blank border and all.
    """
    last: dict[int, int] = {}
    lowest: dict[int, int] = {}
    for row, column in touched:
        last[row] = max(column, last.get(row, column))
        lowest[column] = max(row, lowest.get(column, row))
    cells: list[Cell] = []
    for row, column in sorted(touched):
        beside = (row, column - 1) in cells
        left = column == last[row] and beside
        above = row == lowest[column] and (row - 1, column) in cells
        if not all(_seen(near, left, above, beside) for near in touched[row, column]):
            cells.append((row, column))
    return cells


def _seen(near: tuple[Near, Near], left: bool, above: bool, beside: bool) -> bool:
    """Say whether ink of a page that is left out stays in sight once the others are joined."""
    down, across = near
    if across is Near.STRIP and left:
        return True
    covered = beside and across is Near.BORDER
    return down is Near.STRIP and above and not covered


def _places(inks: Iterable[Ink], grid: Grid) -> Iterator[Place]:
    """Yield where each stretch of ink lies between two grid lines or edges of a strip."""
    for ink in inks:
        ends = ((point, grid.place(point)) for point in line_of(ink, FLAT))
        for (a, start), (b, end) in pairwise(ends):
            if start == end:  # as most do
                yield start
            else:
                yield from map(grid.place, _middles(a, b, grid))


def line_of(ink: Ink, tolerance: float) -> list[Point]:
    """Return the points of a flattened stroke, closed if it is, or of the box round words."""
    if isinstance(ink, Stroke):
        points = ink.path.flattened(tolerance)
        return [*points, points[0]] if ink.closed else points
    low_left, high_left, low_right, high_right = ink.corners()
    return [low_left, high_left, high_right, low_right, low_left]


def _middles(a: Point, b: Point, grid: Grid) -> Iterator[Point]:
    """One point in each stretch of a straight line between those lines."""
    shares = [0.0, 1.0]
    shifts = (0.0, grid.reach, grid.reach + grid.border)
    shares += _crossings(a.x, b.x, grid.width, shifts)
    shares += _crossings(a.y, b.y, grid.height, shifts)
    for first, last in pairwise(sorted(shares)):
        if last > first:
            yield a.toward(b, (first + last) / 2)


def _crossings(
    start: float, end: float, pitch: float, shifts: tuple[float, float, float]
) -> list[float]:
    """Shares of the way at which a grid line, or an edge of its strip or border, is crossed."""
    low, high = min(start, end), max(start, end)
    shares = []
    for shift in shifts:
        first = math.floor((low - shift) / pitch) + 1
        last = math.ceil((high - shift) / pitch) - 1
        shares += [(k * pitch + shift - start) / (end - start) for k in range(first, last + 1)]
    return shares
