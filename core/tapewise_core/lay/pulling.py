"""Pulling pieces back into the room between others, which a search by whole columns passes over.

A column of :mod:`.profile` is taken as far as anything in it ends. Here it keeps its gaps, so that
a sleeve may lie in another piece's waist. Each piece moves along the cloth alone: never across it.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence

import numpy as np
from msgspec.structs import replace

from tapewise_core.lay.lying import Floats, Lying
from tapewise_core.lay.profile import GAP, STEP

Stretches = list[tuple[float, float]]
"""From where to where along the cloth a column is taken [mm]."""

Strips = dict[int, Stretches]
"""What is taken of each column, by its number."""

INSIDE = 1 - 1e-6
"""Outlines are drawn so much narrower, so that no corner lies just between two columns."""


def pulled(pieces: Sequence[Lying]) -> tuple[Lying, ...]:
    """Return pieces that do not lie over each other pulled to the beginning of the cloth.

    The ones nearest to it go first; as they were where that would take more of the cloth.
    """
    order = sorted(range(len(pieces)), key=lambda i: pieces[i].along)
    taken: defaultdict[int, Stretches] = defaultdict(list)
    lines = [one.lines() for one in pieces]
    found = list(pieces)
    for i in order:
        strips = _strips(_outermost(lines[i]) - (0.0, pieces[i].along))
        along = _first_free(strips, taken)
        found[i] = replace(pieces[i], along=along)
        for column, stretches in strips.items():
            for near in (column - 1, column, column + 1):
                taken[near] += [(low + along - GAP, high + along + GAP) for low, high in stretches]
    ends = [max(float(line[:, 1].max()) for line in own) for own in lines]
    moved = (end + now.along - was.along for end, now, was in zip(ends, found, pieces, strict=True))
    return tuple(found if max(moved, default=0.0) < max(ends, default=0.0) - 1e-6 else pieces)


def ending(pieces: Iterable[Lying]) -> float:
    """Return where the last of some pieces ends [mm]."""
    return max((one.box.bottom for one in pieces), default=0.0)


def _outermost(lines: Sequence[Floats]) -> Floats:
    """The outermost line of a piece."""
    return max(lines, key=lambda line: float(np.prod(np.ptp(line, 0))))


def _first_free(strips: Strips, taken: Strips) -> float:
    """How far along something has to lie at the least [mm], so that no column is taken twice."""
    barred = sorted(
        (start - high, end - low)
        for column, stretches in strips.items()
        for low, high in stretches
        for start, end in taken.get(column, ())
    )
    along = 0.0
    for start, end in barred:
        if start >= along:
            break
        along = max(along, end)
    return along


def _strips(line: Floats) -> Strips:
    """What an outline takes of each column: wherever a line runs in it, and whatever lies inside
    on its borders."""
    across = line[:, 0]
    middle = (across.max() + across.min()) / 2
    points = np.column_stack([(across - middle) * INSIDE + middle, line[:, 1]])
    found: defaultdict[int, Stretches] = defaultdict(list)
    borders: defaultdict[int, list[float]] = defaultdict(list)
    for ends in zip(points.tolist(), np.roll(points, -1, 0).tolist(), strict=True):
        for column, low, high, border in _parts(*sorted(ends)):
            found[column].append((low, high))
            if border is not None:
                borders[column + 1].append(border)
    for border, heights in borders.items():
        heights.sort()
        inside = list(zip(heights[::2], heights[1::2], strict=True))
        found[border - 1] += inside
        found[border] += inside
    return {column: _joined(stretches) for column, stretches in found.items()}


def _parts(
    start: Sequence[float], end: Sequence[float]
) -> Iterator[tuple[int, float, float, float | None]]:
    """A line's part in each column: the column, from where to where, and where it leaves it."""
    (x, y), (to_x, to_y) = start, end
    last, at = math.floor(to_x / STEP), y
    for column in range(math.floor(x / STEP), last + 1):
        border = (column + 1) * STEP
        then = to_y if column == last else y + (to_y - y) * (border - x) / (to_x - x)
        yield column, min(at, then), max(at, then), None if column == last else then
        at = then


def _joined(stretches: Stretches) -> Stretches:
    """The same with those that touch made one."""
    found: Stretches = []
    for low, high in sorted(stretches):
        if found and low <= found[-1][1]:
            found[-1] = found[-1][0], max(found[-1][1], high)
        else:
            found.append((low, high))
    return found
