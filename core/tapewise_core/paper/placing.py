"""Where pieces lie on a grid of pages, so that few are printed and no neckline is split.

A small search: several orders, each piece where it then costs least. It is
deterministic, and good rather than best.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Vector
from tapewise_core.paper.drawing import Drawing
from tapewise_core.paper.grid import Cell, Grid, Touched, printed
from tapewise_core.paper.packing import BORDER, GAP, overlaps
from tapewise_core.paper.shapes import Shape

CLEAR = 9.0
"""Left between a piece and a line of the grid it is laid against, for the letter there [mm]."""


@dataclass(frozen=True, slots=True)
class Layout:
    """Where pieces lie: the boxes of their ink, in the order given, and what the search counts."""

    shapes: tuple[Shape, ...]
    boxes: tuple[Box, ...]
    splits: int
    pages: int

    def pieces(self) -> list[Drawing]:
        """Return the pieces, moved to their places."""
        return [
            shape.drawing.moved(Vector(box.left - shape.box.left, box.top - shape.box.top))
            for shape, box in zip(self.shapes, self.boxes, strict=True)
        ]


def placed(shapes: Sequence[Shape], grid: Grid, *, thorough: bool = False) -> Layout:
    """Return the pieces placed on the grid: fewest avoidable splits first, then fewest pages.

    Pieces may come out turned a quarter. ``thorough`` tries more orders, for few
    and costly pages.
    """
    columns = _columns(shapes, grid)
    tries = [
        _Try(grid, columns + more).run(shapes, order)
        for more in (0, 1)
        for order in _orders(shapes, thorough)
    ]
    return min(tries, key=lambda layout: (layout.splits, layout.pages))


def _columns(shapes: Sequence[Shape], grid: Grid) -> int:
    """How many pages wide: as many as the widest piece asks, or about a square."""
    widest = max((shape.box.width for shape in shapes), default=0.0)
    total = sum((shape.box.width + GAP) * (shape.box.height + GAP) for shape in shapes)
    fits = math.ceil((widest + 2 * BORDER - grid.reach) / grid.width)
    return max(1, fits, round(math.sqrt(total) / grid.width))


def _orders(shapes: Sequence[Shape], thorough: bool) -> list[list[int]]:
    """Largest first, and tallest first; if asked also widest first, and longest side first."""
    sizes = [(shape.box.width, shape.box.height) for shape in shapes]
    rules = [[-w * h for w, h in sizes], [-h for _, h in sizes]]
    if thorough:
        rules += [[-w for w, _ in sizes], [-max(size) for size in sizes]]
    orders: list[list[int]] = []
    for rule in rules:
        order = [i for _, i in sorted(zip(rule, range(len(rule)), strict=True))]
        if order not in orders:
            orders.append(order)
    return orders


@dataclass(frozen=True, slots=True)
class _Place:
    """A place for one piece: what it costs, least first, and what it takes."""

    cost: tuple[float, ...]
    shape: Shape
    box: Box
    cells: frozenset[Cell]


class _Try:
    """One way of placing all pieces, one after another."""

    def __init__(self, grid: Grid, columns: int) -> None:
        self.grid, self.columns = grid, columns
        self.cells: set[Cell] = set()
        self.placed: dict[int, _Place] = {}

    def run(self, shapes: Sequence[Shape], order: Sequence[int]) -> Layout:
        for index in order:
            ways = [self._best(way, number) for number, way in enumerate(shapes[index].ways)]
            self.placed[index] = min((way for way in ways if way), key=lambda way: way.cost)
            self.cells |= self.placed[index].cells
        places = [self.placed[index] for index in range(len(shapes))]
        return Layout(
            tuple(place.shape for place in places),
            tuple(place.box for place in places),
            sum(int(place.cost[0]) for place in places),
            self._pages(places),
        )

    def _pages(self, places: Sequence[_Place]) -> int:
        """How many pages all pieces together need, their strips taken into account."""
        touched: Touched = {}
        for place in places:
            footprint, row, column = place.shape.footprint(self.grid, place.box.left, place.box.top)
            for (down, right), strips in footprint.touched.items():
                touched.setdefault((row + down, column + right), set()).update(strips)
        return len(printed(touched))

    def _best(self, shape: Shape, turned: int) -> _Place | None:
        """The cheapest free place: by splits, new pages, torn label, turning, then how low."""
        taken = [place.box for place in self.placed.values()]
        best: _Place | None = None
        width, height = self.grid.width, self.grid.height
        across = [(x, *_cuts(shape, x, width, _sides)) for x in self._across(shape, taken)]
        for y in self._down(shape, taken):
            level, crease = _cuts(shape, y, height, _ends)
            lowest = (y + shape.box.height) // height
            for x, upright, fold in across:
                splits, box = level + upright, shape.box_at(x, y)
                if (best and splits > best.cost[0]) or overlaps(box, taken):
                    continue
                footprint, row, column = shape.footprint(self.grid, x, y)
                cells = frozenset((row + r, column + c) for r, c in footprint.needed)
                torn = crease + fold
                cost = (splits, len(cells - self.cells), torn, turned, lowest, y, x)
                if best is None or cost < best.cost:
                    best = _Place(cost, shape, box, cells)
        return best

    def _across(self, shape: Shape, taken: Sequence[Box]) -> list[float]:
        width, reach = self.grid.width, self.grid.reach
        room = self.columns * width + reach - BORDER - shape.box.width + 1e-6
        starts = [BORDER, *(box.right + GAP for box in taken)]
        for column in range(self.columns):
            starts += _aligned(column * width, width, reach, shape.box.width)
            for box in shape.whole:
                starts += [x - box.left for x in _aligned(column * width, width, 0.0, box.width)]
        return _sorted(x for x in starts if BORDER - 1e-6 <= x <= max(room, BORDER))

    def _down(self, shape: Shape, taken: Sequence[Box]) -> list[float]:
        height, reach = self.grid.height, self.grid.reach
        lowest = max((box.bottom for box in taken), default=0.0) + GAP
        starts = [BORDER, lowest, *(box.bottom + GAP for box in taken)]
        for row in range(math.ceil(lowest / height) + 1):
            starts += _aligned(row * height, height, reach, shape.box.height)
            for box in shape.whole:
                starts += [y - box.top for y in _aligned(row * height, height, 0.0, box.height)]
        return _sorted(y for y in starts if y >= BORDER - 1e-6)


def _sides(box: Box) -> tuple[float, float]:
    return box.left, box.right


def _ends(box: Box) -> tuple[float, float]:
    return box.top, box.bottom


def _cuts(
    shape: Shape, start: float, pitch: float, span: Callable[[Box], tuple[float, float]]
) -> tuple[int, int]:
    """How many grid lines of one direction run through what is kept whole, and the label."""

    def lines(boxes: Sequence[Box]) -> int:
        return sum(_between(start + low, start + high, pitch) for low, high in map(span, boxes))

    return lines(shape.whole), lines(shape.label)


def _aligned(start: float, pitch: float, reach: float, size: float) -> list[float]:
    """Where something starts that lies against the beginning or the end of a cell."""
    first = start + (CLEAR if start else BORDER)
    return [first, start + pitch - size - CLEAR, start + pitch + reach - size - BORDER]


def _between(low: float, high: float, pitch: float) -> int:
    """Grid lines inside a stretch; none are counted where the stretch is longer than a page."""
    if high - low > pitch:
        return 0
    return math.floor(high / pitch) - math.floor(low / pitch)


def _sorted(starts: Iterable[float]) -> list[float]:
    return sorted({round(start, 3) for start in starts})
