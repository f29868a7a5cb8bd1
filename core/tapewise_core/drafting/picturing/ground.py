"""What of a picture is taken already, as rows of cells; quick to mark and to ask."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise
from operator import and_

Place = tuple[float, float]
"""Across and down on the picture [mm]."""

CELL = 0.5
"""The side of a cell [mm]."""

Rows = list[tuple[int, int]]
"""Rows of cells with the cells in each, as bits."""


class Ground:
    """Cells that are taken; each row is one number whose bits are its cells."""

    def __init__(self, width: float, height: float) -> None:
        self.columns, self.many = math.ceil(width / CELL), math.ceil(height / CELL)
        self.width, self.height = width, height
        self.rows = [0] * self.many

    def line(self, a: Place, b: Place, pad: float = 0.0) -> None:
        """Take what a straight line covers, ``pad`` to each side of it [mm]."""
        self._mark(self.rows, (a, b), pad)

    def polyline(self, places: Iterable[Place], pad: float = 0.0) -> None:
        """Take what several straight lines cover."""
        self._mark(self.rows, places, pad)

    def covered(self, corners: Sequence[Place]) -> Rows | None:
        """Return the cells of a convex shape, None if it is not wholly on the picture."""
        xs, ys = [x for x, _ in corners], [y for _, y in corners]
        if min(xs) < 0 or min(ys) < 0 or max(xs) > self.width or max(ys) > self.height:
            return None
        first = int(min(ys) / CELL)
        left = [math.inf] * (int(max(ys) / CELL) - first + 1)
        right = [-math.inf] * len(left)
        for a, b in pairwise((*corners, corners[0])):
            _reach(a, b, first, left, right)
        rows: Rows = []
        for row, low, high in zip(range(first, self.many), left, right, strict=False):
            begin = int(low / CELL)
            rows.append((row, ((2 << (int(high / CELL) - begin)) - 1) << begin))
        return rows

    def is_free(self, rows: Rows) -> bool:
        """Say whether none of some cells is taken."""
        own = self.rows
        return not any(own[row] & bits for row, bits in rows)

    def box(self, x: float, y: float, across: float, up: float) -> Rows | None:
        """Return the cells of an upright box about a middle, None if one of them is taken or it is
        not wholly on the picture."""
        found = next(self.boxes([(x, y)], across, up), None)
        return found and found[1]

    def boxes(
        self,
        middles: Iterable[Place],
        across: float,
        up: float,
        at: Place = (0.0, 0.0),
    ) -> Iterator[tuple[Place, Rows]]:
        """Yield those middles, told from a place, about which an upright box is free and wholly on
        the picture, with its cells.

        Looking for room is a third of what a picture takes, so all is in one loop; the first row
        alone refuses four of five.
        """
        own, many, width, height = self.rows, self.many, self.width, self.height
        at_x, at_y = at
        for aside, down in middles:
            x, y = at_x + aside, at_y + down
            left, top, right, bottom = x - across, y - up, x + across, y + up
            if left < 0 or top < 0 or right > width or bottom > height:
                continue
            first = int(left / CELL)
            bits = ((2 << (int(right / CELL) - first)) - 1) << first
            row = int(top / CELL)
            if own[row] & bits:
                continue
            end = int(bottom / CELL) + 1
            for taken in own[row + 1 : end]:
                if taken & bits:
                    break
            else:
                yield (x, y), [(one, bits) for one in range(row, min(end, many))]

    def meets(self, x: float, y: float, others: Iterable[Place]) -> bool:
        """Say whether the cell at one of some places, told from another, is taken; what lies off
        the picture is."""
        own, many = self.rows, self.many
        for aside, down in others:
            across, row = x + aside, int((y + down) / CELL)
            if not 0 <= row < many or across < 0 or own[row] >> int(across / CELL) & 1:
                return True
        return False

    def take(self, rows: Rows) -> None:
        """Take cells."""
        for row, bits in rows:
            self.rows[row] |= bits

    def crosses(self, a: Place, b: Place) -> bool:
        """Say whether a straight line runs over a taken cell."""
        own = [0] * self.many
        self._mark(own, (a, b), 0.0)
        return any(map(and_, self.rows, own))

    def _mark(self, rows: list[int], places: Iterable[Place], pad: float) -> None:
        """Mark the cells that straight lines cover, ``pad`` to each side of them [mm].

        All in one loop and counted in cells: a set has thousands of lines.
        """
        pad, below = pad / CELL, self.many - 1
        for (ax, ay), (bx, by) in pairwise([(x / CELL, y / CELL) for x, y in places]):
            if ay > by:
                ax, ay, bx, by = bx, by, ax, ay
            least, most = (ax - pad, bx + pad) if ax <= bx else (bx - pad, ax + pad)
            first, last = int(ay - pad), int(by + pad)
            first, last = first if first > 0 else 0, last if last < below else below
            if first >= last or by - ay < 1 or ax == bx:
                bits = self._bits(least, most)
                for row in range(first, last + 1):
                    rows[row] |= bits
                continue
            slope = (bx - ax) / (by - ay)
            reach = abs(slope) / 2 + pad * math.sqrt(1 + slope * slope)  # half a row, and the pad
            for row in range(first, last + 1):
                x = ax + slope * (row + 0.5 - ay)
                low, high = x - reach, x + reach
                begin, end = int(low if low > least else least), int(high if high < most else most)
                if end >= begin >= 0:
                    rows[row] |= ((2 << (end - begin)) - 1) << begin
                elif end >= 0 > begin:
                    rows[row] |= (2 << end) - 1

    def _bits(self, low: float, high: float) -> int:
        """The cells of a row from one place across to another, both counted in cells."""
        first = int(low) if low > 0 else 0
        last = int(high) if high < self.columns else self.columns
        return ((2 << (last - first)) - 1) << first if last >= first else 0


def _reach(a: Place, b: Place, first: int, left: list[float], right: list[float]) -> None:
    """Let rows reach as far across as a straight line does that runs through them [mm].

    The rows are counted from the ``first``; the line lies wholly on the picture.
    """
    (ax, ay), (bx, by) = (a, b) if a[1] <= b[1] else (b, a)
    begins, ends = int(ay / CELL), int(by / CELL)
    flat = begins == ends or by - ay < 1e-9
    slope = 0.0 if flat else (bx - ax) / (by - ay)
    above = ax
    for row in range(begins, ends + 1):
        if flat:
            below = bx
        else:
            deep = (row + 1) * CELL
            below = ax + slope * ((deep if deep < by else by) - ay)
        low, high = (above, below) if above < below else (below, above)
        at = row - first
        if low < left[at]:
            left[at] = low
        if high > right[at]:
            right[at] = high
        above = ax if flat else below
