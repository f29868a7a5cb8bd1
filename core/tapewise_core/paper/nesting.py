"""Pieces laid by their true outlines into a strip, as near its beginning as they go.

Every piece is a pile of rows of small squares, each row one whole number with a bit a square, so
that a look for room is a few shifts. It is deterministic, and good rather than best.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from tapewise_core.geometry.outline import Box
from tapewise_core.paper.drawing import Drawing
from tapewise_core.paper.packing import BORDER, GAP, ink_box, moved_to
from tapewise_core.paper.solid import solid

FINE = 8.0
"""The side of a square [mm]: half of it, on the average, is lost on each side of a piece."""


@dataclass(frozen=True, eq=False)
class _Way:
    """A piece turned one way."""

    drawing: Drawing

    @cached_property
    def box(self) -> Box:
        return ink_box(self.drawing)

    @cached_property
    def rows(self) -> list[list[tuple[int, int]]]:
        """For each row of squares the runs that are taken: first square and how many.

        Taken is each that comes nearer than half a gap: two pieces keep a whole one.
        """
        import shapely

        taken = solid(self.drawing.inks).buffer(GAP / 2 + FINE * 0.71)
        box = self.box.grown(GAP / 2)
        down = [box.top + FINE * (row + 0.5) for row in range(math.ceil(box.height / FINE))]
        across = [box.left + FINE * (x + 0.5) for x in range(math.ceil(box.width / FINE))]
        shapely.prepare(taken)
        return [_runs(shapely.contains_xy(taken, across, [y] * len(across)).tolist()) for y in down]


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

    Largest first and longest first are tried, and the shorter strip taken. The
    result keeps the order given; every way must fit the width.
    """
    ways = [[_Way(drawing) for drawing in piece] for piece in pieces]
    rules = (_area, _longest)
    tries = [_strip(ways, sorted(range(len(ways)), key=lambda i: (-rule(ways[i][0]), i)), width)
             for rule in rules]  # fmt: skip
    return min(tries, key=lambda laid: max((ink_box(one).bottom for one in laid), default=0.0))


def _area(way: _Way) -> float:
    return way.box.width * way.box.height


def _longest(way: _Way) -> float:
    return max(way.box.width, way.box.height)


def _strip(ways: Sequence[Sequence[_Way]], order: Sequence[int], width: float) -> list[Drawing]:
    taken: list[int] = []
    columns = int((width - 2 * BORDER + GAP) / FINE)
    laid: dict[int, Drawing] = {}
    for index in order:
        found = [(*_first_free(way, taken, columns), way) for way in ways[index]]
        row, column, way = min(found, key=lambda f: (f[0] + len(f[2].rows), f[1]))
        _take(way, taken, row, column)
        laid[index] = moved_to(way.drawing, BORDER + column * FINE, BORDER + row * FINE)
    return [laid[index] for index in range(len(ways))]


def _first_free(way: _Way, taken: Sequence[int], columns: int) -> tuple[int, int]:
    """The first row, and in it the first column, where no square is taken twice."""
    places = max(columns - math.ceil((way.box.width + GAP) / FINE), 0) + 1
    whole = (1 << places) - 1
    for row in range(len(taken) + 1):
        blocked = 0
        for number, runs in enumerate(way.rows[: len(taken) - row], row):
            for first, count in runs:
                blocked |= _smeared(taken[number], count) >> first
            if blocked & whole == whole:
                break
        free = whole & ~blocked
        if free:
            return row, (free & -free).bit_length() - 1
    raise AssertionError("beyond all that is taken everything is free")


def _smeared(row: int, count: int) -> int:
    """Each bit set also in the ``count`` - 1 places before it."""
    done = 1
    while done < count:
        step = min(done, count - done)
        row |= row >> step
        done += step
    return row


def _take(way: _Way, taken: list[int], row: int, column: int) -> None:
    taken.extend([0] * (row + len(way.rows) - len(taken)))
    for number, runs in enumerate(way.rows, row):
        for first, count in runs:
            taken[number] |= ((1 << count) - 1) << (first + column)
