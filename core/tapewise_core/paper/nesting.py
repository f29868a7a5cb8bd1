"""Pieces laid by their true outlines into a strip, as near its beginning as they go.

Every piece is a pile of rows of small squares, each row one whole number with a bit a square, so
that a look for room is a few shifts. It is deterministic, and good rather than best.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import cached_property
from typing import TYPE_CHECKING

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing
from tapewise_core.paper.packing import BORDER, GAP, ink_box

if TYPE_CHECKING:
    from tapewise_core.paper.shapes import Shape

FINE = 8.0
"""The side of a square [mm]: half of it, on the average, is lost on each side of a piece."""


class _Way(Frozen, eq=False, dict=True):
    """A piece turned one way."""

    shape: Shape

    @cached_property
    def rows(self) -> list[list[tuple[int, int]]]:
        """For each row of squares the runs that are taken: first square and how many.

        Taken is each that comes nearer than half a gap: two pieces keep a whole one.
        """
        taken = self.shape.squares(FINE, FINE, GAP / 2, GAP / 2 + FINE * 0.71)
        return [_runs(row) for row in taken.tolist()]


def _runs(taken: Sequence[bool]) -> list[tuple[int, int]]:
    runs: list[tuple[int, int]] = []
    for place, yes in enumerate(taken):
        if yes and runs and sum(runs[-1]) == place:
            runs[-1] = (runs[-1][0], runs[-1][1] + 1)
        elif yes:
            runs.append((place, 1))
    return runs


def nested(pieces: Sequence[Sequence[Drawing]], width: float) -> list[Drawing]:
    """Return the pieces laid in a strip [mm], each given in the ways it may be turned.

    The result keeps the order given; every way must fit the width.
    """
    return [one for page in nested_pages(pieces, width, math.inf) for one in page]


def nested_pages(
    pieces: Sequence[Sequence[Drawing]], width: float, longest: float
) -> list[list[Drawing]]:
    """Return the pieces laid on pages no longer than so much [mm], each on the first with room.

    Largest first and longest first are tried, and what takes fewer and then shorter pages is
    kept. On a page they keep the order given; every way must fit one.
    """
    from tapewise_core.paper.shapes import Shape

    ways = [[_Way(Shape(drawing)) for drawing in piece] for piece in pieces]
    rules = (_area, _longest)
    tries = [
        _pages(ways, sorted(range(len(ways)), key=lambda i: (-rule(ways[i][0]), i)), width, longest)
        for rule in rules
    ]
    return min(tries, key=lambda pages: (len(pages), sum(map(_length, pages))))


def _area(way: _Way) -> float:
    return way.shape.box.width * way.shape.box.height


def _longest(way: _Way) -> float:
    return max(way.shape.box.width, way.shape.box.height)


def _length(page: Sequence[Drawing]) -> float:
    return max(ink_box(one).bottom for one in page)


def _pages(
    ways: Sequence[Sequence[_Way]], order: Sequence[int], width: float, longest: float
) -> list[list[Drawing]]:
    columns = int((width - 2 * BORDER + GAP) / FINE)
    pages: list[_Page] = []
    for index in order:
        if not any(page.take(index, ways[index], longest) for page in pages):
            pages.append(_Page(columns))
            pages[-1].take(index, ways[index], math.inf)
    return [[page.laid[index] for index in sorted(page.laid)] for page in pages]


class _Page:
    """A page, or a strip, while pieces are laid on it; rows of squares as whole numbers."""

    def __init__(self, columns: int) -> None:
        self.columns = columns
        self.taken: list[int] = []
        self.laid: dict[int, Drawing] = {}

    def take(self, index: int, ways: Sequence[_Way], longest: float) -> bool:
        """Lay a piece where its end comes nearest the beginning; say whether the page has room."""
        smeared: dict[tuple[int, int], int] = {}
        found = [(*self._first_free(way, smeared), way) for way in ways]
        row, column, way = min(found, key=lambda f: (f[0] + len(f[2].rows), f[1]))
        top = BORDER + row * FINE
        if top + way.shape.box.height + BORDER > longest:
            return False
        self._mark(way, row, column)
        self.laid[index] = way.shape.at(Point(BORDER + column * FINE, top))
        return True

    def _first_free(self, way: _Way, smeared: dict[tuple[int, int], int]) -> tuple[int, int]:
        """The first row, and in it the first column, where no square is taken twice."""
        taken = self.taken
        places = max(self.columns - math.ceil((way.shape.box.width + GAP) / FINE), 0) + 1
        whole = (1 << places) - 1
        for row in range(len(taken) + 1):
            blocked = 0
            for number, runs in enumerate(way.rows[: len(taken) - row], row):
                for first, count in runs:
                    if (number, count) not in smeared:
                        smeared[number, count] = _smeared(taken[number], count)
                    blocked |= smeared[number, count] >> first
                if blocked & whole == whole:
                    break
            free = whole & ~blocked
            if free:
                return row, (free & -free).bit_length() - 1
        raise AssertionError("beyond all that is taken everything is free")

    def _mark(self, way: _Way, row: int, column: int) -> None:
        self.taken.extend([0] * (row + len(way.rows) - len(self.taken)))
        for number, runs in enumerate(way.rows, row):
            for first, count in runs:
                self.taken[number] |= ((1 << count) - 1) << (first + column)


def _smeared(row: int, count: int) -> int:
    """Each bit set also in the ``count`` - 1 places before it."""
    done = 1
    while done < count:
        step = min(done, count - done)
        row |= row >> step
        done += step
    return row
