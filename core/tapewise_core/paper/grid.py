"""A grid of pages over a canvas, and which of its cells carry ink."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Ink, Stroke

FLAT = 0.2
"""How far the line looked at may be from the true curve [mm]; less than a drawn line is wide."""

Cell = tuple[int, int]
"""Row and column, counted from 0."""


@dataclass(frozen=True, slots=True)
class Grid:
    """Equal cells from the canvas's corner; each page also shows ``reach`` mm of the next two."""

    width: float
    height: float
    reach: float = 0.0

    def cell(self, point: Point) -> Cell:
        """Return the cell a point lies in."""
        return math.floor(point.y / self.height), math.floor(point.x / self.width)


Touched = dict[Cell, set[tuple[bool, bool]]]
"""Per cell with ink: whether it lies in the strip shown by the page above, by the page before."""


def carrying(inks: Iterable[Ink], grid: Grid) -> list[Cell]:
    """Return the cells that must be printed, row by row."""
    touched: Touched = {}
    for point in spots(inks, grid):
        row, column = grid.cell(point)
        near_top = point.y - row * grid.height < grid.reach
        near_left = point.x - column * grid.width < grid.reach
        touched.setdefault((row, column), set()).add((near_top, near_left))
    return printed(touched)


def printed(touched: Touched) -> list[Cell]:
    """Return the cells to print of those with ink, row by row.

    At the end of a row or column a cell is left out when all its ink already
    shows on the strip that the page before it prints beyond its own cell.
    """
    last: dict[int, int] = {}
    lowest: dict[int, int] = {}
    for row, column in touched:
        last[row] = max(column, last.get(row, column))
        lowest[column] = max(row, lowest.get(column, row))
    cells: list[Cell] = []
    for row, column in sorted(touched):
        left = column == last[row] and (row, column - 1) in cells
        above = row == lowest[column] and (row - 1, column) in cells
        shown = {(False, True): left, (True, False): above, (True, True): left or above}
        if not all(shown.get(place, False) for place in touched[row, column]):
            cells.append((row, column))
    return cells


def spots(inks: Iterable[Ink], grid: Grid) -> Iterator[Point]:
    """Yield one point in each stretch of ink between two grid lines or edges of a strip."""
    for ink in inks:
        for a, b in pairwise(line_of(ink, FLAT)):
            yield from _middles(a, b, grid)


def line_of(ink: Ink, tolerance: float) -> list[Point]:
    """Return the points of a flattened stroke, closed if it is, or of the box round words."""
    if isinstance(ink, Stroke):
        points = ink.path.flattened(tolerance)
        return [*points, points[0]] if ink.closed else points
    low_left, high_left, low_right, high_right = ink.corners()
    return [low_left, high_left, high_right, low_right, low_left]


def _middles(a: Point, b: Point, grid: Grid) -> Iterator[Point]:
    shares = [0.0, 1.0]
    shares += _crossings(a.x, b.x, grid.width, grid.reach)
    shares += _crossings(a.y, b.y, grid.height, grid.reach)
    for first, last in pairwise(sorted(shares)):
        if last > first:
            yield a.toward(b, (first + last) / 2)


def _crossings(start: float, end: float, pitch: float, reach: float) -> list[float]:
    """Shares of the way at which a grid line, or the edge of its strip, is crossed."""
    low, high = min(start, end), max(start, end)
    shares = []
    for shift in (0.0, reach):
        first = math.floor((low - shift) / pitch) + 1
        last = math.ceil((high - shift) / pitch) - 1
        shares += [(k * pitch + shift - start) / (end - start) for k in range(first, last + 1)]
    return shares
