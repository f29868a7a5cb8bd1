"""A raster for line drawings in a terminal: eight dots a character, or plain ASCII.

Both take the same coordinates: dots, two across and four down to a character,
x to the right and y down from the upper left corner. Dots are about square.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from itertools import pairwise

from tapewise_core.geometry.clipping import inside
from tapewise_core.geometry.outline import Box

Dot = tuple[float, float]

_BITS = ((0x01, 0x08), (0x02, 0x10), (0x04, 0x20), (0x40, 0x80))
"""Braille dot weights by row and column, as Unicode's block U+2800 numbers them."""

_LOW = 0x04 | 0x20 | 0x40 | 0x80
"""The dots of a character's lower half."""

_GLYPHS = [" ", *(chr(0x2800 + bits) for bits in range(1, 256))]

_BREAKS = {
    "solid": (True,),
    "dashed": (True, True, True, True, False, False, False),
    "dotted": (True, False, False),
    "chain": (True,) * 5 + (False, False, True, False, False),
}
"""Which dots of a walked line are set, over and over."""

_FLAT, _STEEP = math.radians(26), math.radians(72)
"""Slopes up to which ``-`` and from which ``|`` looks most like the line."""


class Canvas:
    """Lines and words on ``width_cells`` by ``height_cells`` characters.

    ``tones`` remembers for each (column, row) what was drawn there last, so
    that a widget can colour it; the drawing reads without. In ASCII a
    character shows the mean slope of the lines through it, twice the angle
    being what is added up, since a line has no direction.
    """

    def __init__(self, width_cells: int, height_cells: int, *, ascii: bool = False) -> None:
        self.columns, self.rows = max(width_cells, 0), max(height_cells, 0)
        self.width, self.height = self.columns * 2, self.rows * 4
        self.ascii = ascii
        self.tones: dict[tuple[int, int], str] = {}
        self._cells = [0] * (self.columns * self.rows)
        self._words: dict[tuple[int, int], str] = {}
        self._slopes: dict[int, tuple[float, float, float, int]] = {}
        self._heavy: set[int] = set()

    def polyline(
        self, points: Iterable[Dot], pattern: str = "solid", *, width: int = 1, tone: str = ""
    ) -> None:
        """Draw through points [dots]; what lies outside is left out. ``width`` is in dots.

        ``pattern`` is solid, dashed, dotted or chain.
        """
        breaks, walked = _BREAKS[pattern], 0.0
        for a, b in pairwise(points):
            length = max(abs(b[0] - a[0]), abs(b[1] - a[1]))
            shares = _clipped(a, b, self.width, self.height)
            if shares is not None:
                self._segment(a, b, shares, breaks, walked, width, tone)
            walked += length

    def _segment(
        self,
        a: Dot,
        b: Dot,
        shares: tuple[float, float],
        breaks: tuple[bool, ...],
        walked: float,
        width: int,
        tone: str,
    ) -> None:
        dx, dy = b[0] - a[0], b[1] - a[1]
        length = max(abs(dx), abs(dy))
        steps = max(1, math.ceil(length))
        first, last = math.floor(shares[0] * steps), math.ceil(shares[1] * steps)
        many, begun = len(breaks), int(walked)
        lean = None if breaks is _BREAKS["dotted"] else 2 * math.atan2(-dy, dx)
        for step in range(first, last + 1):
            if many == 1 or breaks[(begun + step) % many]:
                t = step / steps
                self._dot(int(a[0] + dx * t), int(a[1] + dy * t), width, tone, lean)

    def _dot(self, x: int, y: int, width: int, tone: str, lean: float | None) -> None:
        """Set a square of dots round a place; in ASCII one dot, its character a heavy one."""
        if width == 1 or self.ascii:
            self._set(x, y, tone, lean)
            if width > 1 and 0 <= x < self.width and 0 <= y < self.height:
                self._heavy.add((y >> 2) * self.columns + (x >> 1))
            return
        back = (width - 1) // 2
        for right in range(width):
            for down in range(width):
                self._set(x + right - back, y + down - back, tone, lean)

    def _set(self, x: int, y: int, tone: str, lean: float | None) -> None:
        if not (0 <= x < self.width and 0 <= y < self.height):
            return
        cell = (y >> 2) * self.columns + (x >> 1)
        self._cells[cell] |= _BITS[y & 3][x & 1]
        if tone:
            self.tones[(x >> 1, y >> 2)] = tone
        if self.ascii and lean is not None:
            c, s, height, many = self._slopes.get(cell, (0.0, 0.0, 0.0, 0))
            found = (c + math.cos(lean), s + math.sin(lean), height + (y & 3), many + 1)
            self._slopes[cell] = found

    def wipe(self, points: Iterable[Dot], reach: int) -> None:
        """Clear a band along points, so that what is drawn there next stands free [dots]."""
        for a, b in pairwise(points):
            steps = max(1, math.ceil(max(abs(b[0] - a[0]), abs(b[1] - a[1]))))
            for step in range(steps + 1):
                t = step / steps
                x, y = int(a[0] + (b[0] - a[0]) * t), int(a[1] + (b[1] - a[1]) * t)
                self._wipe(x, y, reach)

    def _wipe(self, x: int, y: int, reach: int) -> None:
        for column in range(max(x - reach, 0), min(x + reach + 1, self.width)):
            for row in range(max(y - reach, 0), min(y + reach + 1, self.height)):
                cell = (row >> 2) * self.columns + (column >> 1)
                self._cells[cell] &= ~_BITS[row & 3][column & 1]

    def text(self, col: int, row: int, words: str, tone: str = "") -> None:
        """Write words over the drawing from a character's place; what lies outside is cut."""
        for place, letter in enumerate(words, start=col):
            if 0 <= place < self.columns and 0 <= row < self.rows:
                self._words[(place, row)] = letter
                if tone:
                    self.tones[(place, row)] = tone

    def is_free(self, col: int, row: int, many: int) -> bool:
        """Say whether that many characters from a place on are inside and blank."""
        if not 0 <= row < self.rows or col < 0 or col + many > self.columns:
            return False
        start = row * self.columns + col
        drawn = any(self._cells[start : start + many])
        return not drawn and not any((c, row) in self._words for c in range(col, col + many))

    def lines(self) -> list[str]:
        """Return the drawing, every line as long as the canvas is wide."""
        return ["".join(self._row(row)) for row in range(self.rows)]

    def _row(self, row: int) -> list[str]:
        start = row * self.columns
        if self.ascii:
            letters = [self._plain(cell) for cell in range(start, start + self.columns)]
        else:
            letters = [_GLYPHS[bits] for bits in self._cells[start : start + self.columns]]
        for (column, at), letter in self._words.items():
            if at == row:
                letters[column] = letter
        return letters

    def _plain(self, cell: int) -> str:
        """The ASCII character that looks most like what is drawn in a cell."""
        if not self._cells[cell]:
            return " "
        if cell in self._heavy:
            return "#"
        c, s, height, many = self._slopes.get(cell, (0.0, 0.0, 0.0, 0))
        if many < 2:
            return "." if self._cells[cell] & _LOW else "'"
        low = height / many >= 2.5
        slope = math.atan2(s, c) / 2
        if abs(slope) <= _FLAT:
            return "_" if low else "-"
        if abs(slope) >= _STEEP:
            return "|"
        return "/" if slope > 0 else "\\"


def _clipped(a: Dot, b: Dot, width: float, height: float) -> tuple[float, float] | None:
    """The shares of a line from a to b between which it is on the canvas, or None."""
    if not all(map(math.isfinite, (*a, *b))):
        return None
    return inside(a, b, Box(0, 0, width, height))
