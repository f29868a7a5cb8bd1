"""Pieces as the search for their places sees them: where they have ink, what must stay whole."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from itertools import pairwise

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Drawing, Stroke, TextLine, extent
from tapewise_core.paper.grid import Cell, Grid, Near, Touched, line_of, printed
from tapewise_core.paper.packing import ink_box, turned

COARSE = 28.0
"""Ink is looked at in squares of this size [mm] while searching; pages are exact later."""


_MANY = 1 << 16
"""More than three times the pages any piece goes over."""


@dataclass(frozen=True, slots=True)
class Footprint:
    """The cells a piece has ink in, and those it would need if it were alone."""

    touched: Touched
    needed: tuple[Cell, ...]


@dataclass(frozen=True, eq=False)
class Shape:
    """A piece as the search sees it, its ink's upper left corner at the origin."""

    drawing: Drawing
    known: dict[tuple[Grid, float, float], Footprint] = field(default_factory=dict)
    numbers: dict[tuple[int, float, float, float, float], list[int]] = field(default_factory=dict)

    def footprint(self, grid: Grid, x: float, y: float) -> tuple[Footprint, int, int]:
        """Return the cells round the piece's corner at a place, and the corner's row and column.

        Where the corner lies within its cell decides, so that much is worked out once.
        """
        column, right = divmod(x, grid.width)
        row, down = divmod(y, grid.height)
        place = (grid, round(right, 2), round(down, 2))
        if place not in self.known:
            self.known[place] = self._footprint(*place)
        return self.known[place], int(row), int(column)

    def _footprint(self, grid: Grid, x: float, y: float) -> Footprint:
        """Rows and columns are added up as single numbers, which are quicker to compare."""
        columns = self._numbers(0, x, grid)
        rows = self._numbers(1, y, grid)
        touched: Touched = {}
        for code in {row * _MANY + column for row, column in zip(rows, columns, strict=True)}:
            (row, low), (column, right) = (divmod(part, 3) for part in divmod(code, _MANY))
            touched.setdefault((row, column), set()).add((Near(low), Near(right)))
        return Footprint(touched, tuple(printed(touched)))

    def _numbers(self, way: int, start: float, grid: Grid) -> list[int]:
        """Columns (way 0) or rows (way 1) of the spots, one for each.

        Three times that, and more near the page before: see :class:`Near`.
        """
        pitch = (grid.width, grid.height)[way]
        key = (way, start, pitch, grid.reach, grid.border)
        if key not in self.numbers:
            found = [divmod(start + spot, pitch) for spot in self.spots[way]]
            self.numbers[key] = [
                3 * int(n) + (grid.near(rest) if n > 0 else Near.OPEN) for n, rest in found
            ]
        return self.numbers[key]

    @cached_property
    def box(self) -> Box:
        """The box round the ink, where it was drawn."""
        return ink_box(self.drawing)

    def box_at(self, x: float, y: float) -> Box:
        """The box round the ink when its upper left corner lies at a place on the canvas."""
        return Box(x, y, x + self.box.width, y + self.box.height)

    @cached_property
    def ways(self) -> tuple[Shape, ...]:
        """The piece as it is and turned a quarter, its words too: paper has no grain."""
        return self, Shape(turned(self.drawing))

    @cached_property
    def spots(self) -> tuple[tuple[float, ...], tuple[float, ...]]:
        """Places with ink, across and down, one in each coarse square and the outermost ones."""
        box = self.box
        found: dict[tuple[int, int], tuple[float, float]] = {}
        for ink in self.drawing.inks:
            for at_x, at_y in _stepped(line_of(ink, 1.0)):
                x, y = at_x - box.left, at_y - box.top
                found.setdefault((int(x // COARSE), int(y // COARSE)), (x, y))
                if x < 0.01 or y < 0.01 or x > box.width - 0.01 or y > box.height - 0.01:
                    found.setdefault((-1 - (x < 0.01), -1 - (y < 0.01)), (x, y))
                    found.setdefault((-3 - (x > 1), -3 - (y > 1)), (x, y))
        return tuple(x for x, _ in found.values()), tuple(y for _, y in found.values())

    @cached_property
    def whole(self) -> tuple[Box, ...]:
        """Places not to split, measured from the piece's corner."""
        home = Vector(-self.box.left, -self.box.top)
        return tuple(box.moved(home) for box in kept_whole(self.drawing))

    @cached_property
    def label(self) -> tuple[Box, ...]:
        """The column of words under the piece's name, measured from the piece's corner."""
        words = [ink for ink in self.drawing.inks if isinstance(ink, TextLine)]
        title = next((ink for ink in words if ink.bold), None)
        if title is None:
            return ()
        column = [ink for ink in words if _below(title, ink)]
        return (extent(column).moved(Vector(-self.box.left, -self.box.top)),)


def _below(title: TextLine, words: TextLine) -> bool:
    """Say whether words stand in the column of lines that a title begins."""
    along = Vector(1, 0).turned(title.angle)
    return words.angle == title.angle and abs((words.at - title.at).dot(along)) < 0.01


def kept_whole(drawing: Drawing) -> tuple[Box, ...]:
    """Return the places better not split; a neckline that is drawn, where none are given."""
    if drawing.whole:
        return drawing.whole
    necks = (ink for ink in drawing.inks if isinstance(ink, Stroke) and "neckline" in ink.name)
    return tuple(extent([neck], 2.0) for neck in necks)


def _stepped(points: Sequence[Point]) -> Iterator[tuple[float, float]]:
    for a, b in pairwise(points):
        x, y = b.x - a.x, b.y - a.y
        steps = int(math.hypot(x, y) / COARSE) + 1
        yield from ((a.x + x * i / steps, a.y + y * i / steps) for i in range(steps + 1))
