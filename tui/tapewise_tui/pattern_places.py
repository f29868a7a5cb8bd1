"""Where the pieces of a pattern go on a canvas: in rows, at one scale."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import accumulate

from tapewise_core.drafting.piece import Piece
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_tui.canvas import Dot

GAP = 6
"""Dots left free beside each piece and, for its name, below it."""


class Placed(Frozen):
    """A piece with its place: ``left`` and ``top`` are where its own zero lies [dots]."""

    piece: Piece
    box: Box
    times: float
    left: float
    top: float

    def dot(self, point: Point) -> Dot:
        """Return a point of the piece [mm] on the canvas [dots]."""
        return point.x * self.times + self.left, point.y * self.times + self.top

    def dots(self, path: Path) -> list[Dot]:
        """Return a path on the canvas, true within half a dot."""
        return [self.dot(point) for point in path.flattened(0.5 / self.times)]

    def holds(self, x: float, y: float) -> bool:
        """Say whether a place on the canvas [dots] is in the piece's box or at its name."""
        left, top = self.dot(Point(self.box.left, self.box.top))
        right, low = self.dot(Point(self.box.right, self.box.bottom))
        half = GAP / 2
        return left - half <= x <= right + half and top - half <= y <= low + GAP


def placed(pieces: Sequence[Piece], width: float, height: float) -> tuple[Placed, ...]:
    """Return pieces in rows, in their own order, all as large as fits [dots]."""
    if not pieces or width <= GAP or height <= GAP:
        return ()
    boxes = [box_of(piece.cut) for piece in pieces]
    rows, times = max(
        ((rows, _scale(boxes, rows, width, height)) for rows in arrangements(boxes)),
        key=lambda found: found[1],
    )
    return tuple(_set_out(pieces, boxes, rows, times)) if times > 0 else ()


def arrangements(boxes: Sequence[Box]) -> Iterator[list[list[int]]]:
    """Ways to break the pieces into rows: filled up to each width some run of pieces has."""
    widths = {
        sum(box.width for box in boxes[i : j + 1])
        for i in range(len(boxes))
        for j in range(i, len(boxes))
    }
    for limit in widths:
        rows: list[list[int]] = [[]]
        for number, box in enumerate(boxes):
            used = sum(boxes[i].width for i in rows[-1])
            if rows[-1] and used + box.width > limit + 1e-6:
                rows.append([])
            rows[-1].append(number)
        yield rows


def _scale(boxes: Sequence[Box], rows: list[list[int]], width: float, height: float) -> float:
    """Dots a millimetre at which rows fit, gaps and names kept."""
    across = min((width - GAP * (len(row) + 1)) / sum(boxes[i].width for i in row) for row in rows)
    down = (height - (GAP + 2) * len(rows)) / sum(_tallest(boxes, row) for row in rows)
    return min(across, down)


def _tallest(boxes: Sequence[Box], row: list[int]) -> float:
    return max(boxes[i].height for i in row)


def _set_out(
    pieces: Sequence[Piece], boxes: Sequence[Box], rows: list[list[int]], times: float
) -> Iterator[Placed]:
    tops = accumulate((_tallest(boxes, row) * times + GAP + 2 for row in rows), initial=2.0)
    for row, top in zip(rows, tops, strict=False):
        left = float(GAP)
        for i in row:
            box = boxes[i]
            yield Placed(pieces[i], box, times, left - box.left * times, top - box.top * times)
            left += box.width * times + GAP
