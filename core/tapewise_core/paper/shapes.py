"""Pieces as the search for their places sees them: where they have ink, what must stay whole."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from itertools import pairwise

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Drawing, Stroke, extent
from tapewise_core.paper.grid import Cell, Grid, line_of
from tapewise_core.paper.packing import ink_box

COARSE = 20.0
"""Ink is looked at in squares of this size [mm] while searching; pages are exact later."""


@dataclass(frozen=True, eq=False)
class Shape:
    """A piece as the search sees it, its ink's upper left corner at the origin."""

    drawing: Drawing
    grid: Grid
    known: dict[tuple[float, float], frozenset[Cell]] = field(default_factory=dict)

    def cells(self, x: float, y: float) -> Iterator[Cell]:
        """Yield the cells the piece needs when its corner lies at a place on the canvas."""
        column, right = divmod(x, self.grid.width)
        row, down = divmod(y, self.grid.height)
        phase = (round(right, 2), round(down, 2))
        if phase not in self.known:
            self.known[phase] = self._cells(*phase)
        return ((r + int(row), c + int(column)) for r, c in self.known[phase])

    def _cells(self, x: float, y: float) -> frozenset[Cell]:
        """Cells with ink, but for those that the strips of pages before them show already."""
        columns = _numbers(self.spots[0], x, self.grid.width, self.grid.reach)
        rows = _numbers(self.spots[1], y, self.grid.height, self.grid.reach)
        touched = set(zip(rows, columns, strict=True))
        needed = {(row, column) for (row, low), (column, right) in touched if not low and not right}
        for (row, low), (column, right) in sorted(touched):
            shown = {(row - low, column - right), (row, column - right), (row - low, column)}
            if not (shown - {(row, column)}) & needed:
                needed.add((row, column))
        return frozenset(needed)

    @cached_property
    def box(self) -> Box:
        """The box round the ink, where it was drawn."""
        return ink_box(self.drawing)

    @cached_property
    def spots(self) -> tuple[tuple[float, ...], tuple[float, ...]]:
        """Places with ink, across and down, one in each coarse square and the outermost ones."""
        home = Vector(-self.box.left, -self.box.top)
        found: dict[tuple[int, int], Point] = {}
        for ink in self.drawing.inks:
            for at in _stepped(line_of(ink, 1.0)):
                point = at + home
                found.setdefault((int(point.x // COARSE), int(point.y // COARSE)), point)
                for side in _outermost(point, self.box):
                    found.setdefault(side, point)
        return tuple(p.x for p in found.values()), tuple(p.y for p in found.values())

    @cached_property
    def whole(self) -> tuple[Box, ...]:
        """Places not to split, measured from the piece's corner."""
        home = Vector(-self.box.left, -self.box.top)
        return tuple(box.moved(home) for box in kept_whole(self.drawing))


def kept_whole(drawing: Drawing) -> tuple[Box, ...]:
    """Return the places better not split; a neckline that is drawn, where none are given."""
    if drawing.whole:
        return drawing.whole
    necks = (ink for ink in drawing.inks if isinstance(ink, Stroke) and "neckline" in ink.name)
    return tuple(extent([neck], 2.0) for neck in necks)


def _outermost(point: Point, box: Box) -> Iterator[tuple[int, int]]:
    """A name for each side of the piece's box that a point touches."""
    if point.x < 0.01 or point.x > box.width - 0.01:
        yield (-1, int(point.x > 1))
    if point.y < 0.01 or point.y > box.height - 0.01:
        yield (-2, int(point.y > 1))


def _stepped(points: Sequence[Point]) -> Iterator[Point]:
    for a, b in pairwise(points):
        steps = max(1, math.ceil((b - a).length() / COARSE))
        yield from (a.toward(b, i / steps) for i in range(steps + 1))


_Number = tuple[int, bool]
"""A row or column, and whether a place lies in the strip that the page before it shows too."""


def _numbers(spots: Iterable[float], start: float, pitch: float, reach: float) -> list[_Number]:
    found = [divmod(start + spot, pitch) for spot in spots]
    return [(int(number), rest < reach and number > 0) for number, rest in found]
