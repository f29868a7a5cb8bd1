"""Where the pieces of one step go on a canvas: in rows, at one scale, with room for two lines of
words below each."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point
from tapewise_tui.canvas import Dot
from tapewise_tui.pattern_places import arrangements

GAP, WORDS, COLUMN = 4.0, 12.0, 20.0
"""Room beside a piece, below it for its words, and across for them [dots]."""

FINER = 0.97
"""By how much a scale is made smaller until all have room."""


class Spot(Frozen):
    """Where a piece goes: its scale, where its zero lies, its middle and its foot [dots]."""

    times: float
    left: float
    top: float
    middle: float
    foot: float

    def dot(self, point: Point) -> Dot:
        """Return a point of the piece [mm] on the canvas [dots]."""
        return point.x * self.times + self.left, point.y * self.times + self.top


def spots(boxes: Sequence[Box], width: float, height: float) -> tuple[Spot, ...]:
    """Return a spot for each box, in rows, all as large as fits [dots]."""
    if not boxes:
        return ()
    ways = [(rows, _scale(boxes, rows, width, height)) for rows in arrangements(boxes)]
    rows, times = max(ways, key=lambda way: way[1])
    return tuple(_set_out(boxes, rows, times))


def _scale(boxes: Sequence[Box], rows: list[list[int]], width: float, height: float) -> float:
    """Dots a millimetre at which rows and their words have room."""
    times = width / max(box.width for box in boxes)
    while times > 1e-4 and not _fits(boxes, rows, times, width, height):
        times *= FINER
    return times


def _fits(
    boxes: Sequence[Box], rows: list[list[int]], times: float, width: float, height: float
) -> bool:
    across = max(sum(_column(boxes[i], times) for i in row) for row in rows)
    down = sum(max(boxes[i].height for i in row) * times + WORDS for row in rows)
    return across <= width and down <= height


def _column(box: Box, times: float) -> float:
    return max(box.width * times, COLUMN) + GAP


def _set_out(boxes: Sequence[Box], rows: list[list[int]], times: float) -> Iterator[Spot]:
    top = 0.0
    for row in rows:
        left, high = 0.0, max(boxes[i].height for i in row) * times
        for i in row:
            box, middle = boxes[i], left + _column(boxes[i], times) / 2
            corner = middle - box.width * times / 2
            foot = top + box.height * times
            yield Spot(times, corner - box.left * times, top - box.top * times, middle, foot)
            left += _column(box, times)
        top += high + WORDS
