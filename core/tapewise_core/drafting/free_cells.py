"""Cells of a piece that are free, in a frame turned as words are read; quick to search for the
largest type that has room."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import pairwise

from tapewise_core.drafting.picturing.ground import CELL, Ground, Place
from tapewise_core.drafting.piece_room import CLEAR


class FreeCells:
    """What lines and words leave of a piece, for words that are read along an angle [degrees]."""

    def __init__(
        self,
        cut: Sequence[Place],
        lines: Iterable[Sequence[Place]],
        words: Iterable[Sequence[Place]],
        angle: float,
    ) -> None:
        turn = math.radians(angle)
        self.angle, self._along = angle, (math.cos(turn), math.sin(turn))
        outline = [self._turned(place) for place in cut]
        self._left, self._top = min(x for x, _ in outline), min(y for _, y in outline)
        right, bottom = max(x for x, _ in outline), max(y for _, y in outline)
        ground = Ground(right - self._left, bottom - self._top)
        for line in lines:
            ground.polyline([self.into(place) for place in line], CLEAR + CELL / 2)
        for corners in words:
            ground.take(ground.covered([self.into(place) for place in corners]) or [])
        inside = _inside([self.into(place) for place in cut], ground.many)
        self._rows = [free & ~taken for free, taken in zip(inside, ground.rows, strict=True)]
        self._longest = [max(map(len, bin(row)[2:].split("0"))) for row in self._rows]
        self._most = max(self._longest, default=0)

    def into(self, place: Place) -> Place:
        """Return a place in this frame [mm]."""
        x, y = self._turned(place)
        return x - self._left, y - self._top

    def back(self, place: Place) -> Place:
        """Return where a place of this frame is on the piece [mm]."""
        (c, s), x, y = self._along, place[0] + self._left, place[1] + self._top
        return x * c - y * s, x * s + y * c

    def _turned(self, place: Place) -> Place:
        (c, s), (x, y) = self._along, place
        return x * c + y * s, y * c - x * s

    def room(self, wide: float, high: float, near: Place) -> Place | None:
        """Return where the upper left corner of a free box may lie, as near as it goes to a place
        of this frame; None if there is no such box."""
        across, down = math.ceil(wide / CELL) + 1, math.ceil(high / CELL) + 1
        if not self._may_have(across, down):
            return None
        rows = _all_down([_all_along(row, across) for row in self._rows], down)
        aim, best = (max(int(near[0] / CELL), 0), near[1] / CELL), math.inf
        found = None
        for number, bits in enumerate(rows):
            for column in _nearest(bits, aim[0]):
                off = math.hypot(column - aim[0], number - aim[1])
                if off < best:
                    best, found = off, (column * CELL, number * CELL)
        return found

    def _may_have(self, across: int, down: int) -> bool:
        """Say whether so many rows on end have so many free cells on end, wherever they lie."""
        if across > self._most or down > len(self._longest):
            return False
        found = 0
        for longest in self._longest:
            found = found + 1 if longest >= across else 0
            if found == down:
                return True
        return False


def _inside(outline: Sequence[Place], many: int) -> list[int]:
    """The cells of each row whose middle lies inside an outline."""
    meets: list[list[float]] = [[] for _ in range(many)]
    for (ax, ay), (bx, by) in pairwise((*outline, outline[0])):
        (ax, ay, bx, by) = (ax, ay, bx, by) if ay <= by else (bx, by, ax, ay)
        for row in range(math.ceil(ay / CELL - 0.5), math.ceil(by / CELL - 0.5)):
            if row < many:
                meets[row].append(ax + (bx - ax) * ((row + 0.5) * CELL - ay) / (by - ay))
    return [_spans(sorted(row)) for row in meets]


def _spans(xs: Sequence[float]) -> int:
    bits = 0
    for low, high in zip(xs[::2], xs[1::2], strict=False):
        first, last = math.ceil(low / CELL), math.floor(high / CELL)
        if last > first:
            bits |= ((1 << (last - first)) - 1) << first
    return bits


def _all_along(bits: int, many: int) -> int:
    """The cells that begin so many free ones."""
    done = 1
    while done < many and bits:
        step = min(done, many - done)
        bits &= bits >> step
        done += step
    return bits


def _all_down(rows: list[int], many: int) -> list[int]:
    """The same downwards."""
    done = 1
    while done < many:
        step = min(done, many - done)
        rows = [a & b for a, b in zip(rows, rows[step:], strict=False)]
        done += step
    return rows


def _nearest(bits: int, aim: int) -> Iterable[int]:
    """The free cell at a column or nearest to it on either side."""
    above = bits >> aim
    if above:
        yield aim + (above & -above).bit_length() - 1
    below = bits & ((1 << aim) - 1)
    if below:
        yield below.bit_length() - 1
