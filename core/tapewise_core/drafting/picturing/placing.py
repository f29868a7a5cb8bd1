"""Words beside points and lines, none over another, over a line or over a point."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence

from tapewise_core.drafting.picturing.ground import CELL, Ground, Place, Rows
from tapewise_core.drafting.picturing.stands import GAPS, beside_line, reach, readable, ring
from tapewise_core.drafting.picturing.words import Words
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Ink, Layer, Stroke

LED = 2.4
"""From this gap on a thin line leads from the point to its letter [mm]."""

GLANCES = (
    (0.0, 0.95), (0.45, -0.95), (-0.45, -0.95), (0.95, 0.95), (-0.95, 0.95), (0.95, -0.95),
    (-0.95, -0.95), (0.22, -0.95), (0.7, -0.95), (-0.22, 0.95), (-0.7, 0.95),
)  # fmt: skip
"""Where slanting words are looked at first, in shares of half their width and height from their
middle: along their long edges, over which most of what is in their way enters."""

SCAN = 1.6
"""How finely a picture is searched for room where none is near [mm]."""


class Placing:
    """A picture while its words find room; what is drawn is taken first. ``missed`` counts words
    that found none at all."""

    def __init__(self, width: float, height: float) -> None:
        self.ground = Ground(width, height)
        self.words = Ground(width, height)
        self.inks: list[Ink] = []
        self.missed = 0

    def room(self, words: Words, middle: Place) -> Rows | None:
        """Return the cells level words would take about a middle, None if one is taken."""
        return self.ground.box(*middle, words.across, words.up)

    def rooms(
        self, words: Words, middles: Iterable[Place], along: Place
    ) -> Iterator[tuple[Place, Rows]]:
        """Yield those middles about which words have room, read along a direction, with the cells
        they would take."""
        c, s = along
        if abs(s) < 1e-6:
            yield from self.ground.boxes(middles, words.across, words.up)
        elif abs(c) < 1e-6:
            yield from self.ground.boxes(middles, words.up, words.across)
        else:
            yield from self._slanting(words, middles, along)

    def _slanting(
        self, words: Words, middles: Iterable[Place], along: Place
    ) -> Iterator[tuple[Place, Rows]]:
        """The same for words that are neither level nor upright; a glance at a few places spares
        most looks at all cells."""
        ground, (c, s), across, up = self.ground, along, words.across, words.up
        glance = [
            (c * across * aside - s * up * down, s * across * aside + c * up * down)
            for aside, down in GLANCES
        ]
        for middle in middles:
            if ground.meets(*middle, glance):
                continue
            rows = ground.covered(words.corners(middle, along))
            if rows is not None and ground.is_free(rows):
                yield middle, rows

    def put(self, words: Words, middle: Place, rows: Rows, along: Place = (1.0, 0.0)) -> None:
        """Set words where there is room."""
        self.take(rows)
        self.inks += words.set(middle, along)

    def take(self, rows: Rows) -> None:
        """Take cells, over which no thin line leads to words either."""
        self.ground.take(rows)
        self.words.take(rows)

    def beside(self, words: Words, at: Place, *, far: bool = True) -> bool:
        """Set words beside a point, with a line leading to them where they stand ``far`` off.

        Return whether there was room.
        """
        for gap, middles, start in self._about(words, at, far):
            for middle, rows in self.ground.boxes(middles, words.across, words.up, start):
                if gap >= LED and not self._led(words, at, middle):
                    continue
                self.put(words, middle, rows)
                return True
        self.missed += far
        return False

    def _about(
        self, words: Words, at: Place, far: bool
    ) -> Iterator[tuple[float, Sequence[Place], Place]]:
        """Middles for words about a point, the best first: how far off it they are at least, and
        from where they are told."""
        for gap in GAPS:
            if gap >= LED and not far:
                return
            yield gap, ring(gap, words.across, words.up), at
        yield from self._anywhere(at)

    def _anywhere(self, at: Place) -> Iterator[tuple[float, Sequence[Place], Place]]:
        """Places all over the picture, those near the point first."""
        across = [SCAN * i for i in range(int(self.ground.width / SCAN) + 1)]
        down = [SCAN * i for i in range(int(self.ground.height / SCAN) + 1)]
        off = sorted((math.hypot(x - at[0], y - at[1]), (x, y)) for x in across for y in down)
        corner = (0.0, 0.0)
        yield 0.0, [place for far, place in off if far < LED], corner
        yield LED, [place for far, place in off if far >= LED], corner

    def _led(self, words: Words, at: Place, middle: Place) -> bool:
        """Draw a line from a point to its words, unless it would run over others."""
        x, y = middle[0] - at[0], middle[1] - at[1]
        length = math.hypot(x, y)
        if length < 1e-6:
            return False
        x, y = x / length, y / length
        far = length - reach(words.across, words.up, x, y) - 2 * CELL
        start, end = (at[0] + x * 0.7, at[1] + y * 0.7), (at[0] + x * far, at[1] + y * far)
        if self.words.crosses(start, end):
            return False
        self.ground.line(start, end, 0.1)
        self.inks.append(Stroke(ruled(Point(*start), Point(*end)), Layer.GUIDE, width=0.15))
        return True

    def along(self, words: Words, a: Place, b: Place, out: Place | None = None) -> bool:
        """Set words along a straight line, beside it, on the side that ``out`` points to if there
        is room; return whether there was room at all."""
        way = readable(a, b)
        found = next(self.rooms(words, beside_line(words, a, b, way, out), way), None)
        if found is not None:
            self.put(words, *found, way)
            return True
        return self.beside(words, ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2))
