"""Draw the lay in characters: the cloth with each piece and its number, and where it is folded."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.geometry.outline import box_of
from tapewise_core.geometry.point import Point
from tapewise_core.tasks.laid import Laid, LaidPiece
from tapewise_tui.canvas import Canvas, Dot

CLOTH, PIECE, FOLD, NAME = "cut", "stitch", "fold", "name"
"""Tones, for widgets that colour."""

SHARES = (0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8)
"""Where across and down a piece its name may stand, best first."""


def lies(cloth: Laid) -> bool:
    """Say whether the cloth is drawn lying, its ribs from left to right: where it is longer than
    wide."""
    return cloth.length > cloth.width


def draw_lay(canvas: Canvas, cloth: Laid) -> None:
    """Draw the cloth as large as there is room, its ribs up and down, or lying where it is longer
    than wide."""
    view = _View(canvas, cloth)
    corners = ((0, 0), (cloth.width, 0), (cloth.width, cloth.length), (0, cloth.length), (0, 0))
    canvas.polyline([view.dot(Point(*corner)) for corner in corners], "dotted", tone=CLOTH)
    for across in cloth.folds:
        ends = (Point(across, 0), Point(across, cloth.length))
        canvas.polyline([view.dot(end) for end in ends], "chain", tone=FOLD)
    for piece in cloth.pieces:
        for line in piece.lines:
            canvas.polyline([view.dot(point) for point in (*line, line[0])], tone=PIECE)
    for piece in cloth.pieces:
        view.name(piece)


class _View:
    """The cloth on a canvas."""

    def __init__(self, canvas: Canvas, cloth: Laid) -> None:
        self.canvas = canvas
        self.lies = lies(cloth)
        size = (cloth.length, cloth.width) if self.lies else (cloth.width, cloth.length)
        room = (canvas.width - 1, canvas.height - 1)
        self.times = min(have / max(wanted, 1.0) for have, wanted in zip(room, size, strict=True))

    def dot(self, point: Point) -> Dot:
        x, y = (point.y, point.x) if self.lies else (point.x, point.y)
        return x * self.times, y * self.times

    def name(self, piece: LaidPiece) -> None:
        """Write a piece's number and name inside it, or its number alone."""
        dots = [self.dot(point) for line in piece.lines for point in line]
        box = box_of(Point(x, y) for x, y in dots)
        for words in (f"{piece.number} {piece.name}", str(piece.number)):
            for down in SHARES:
                row = int(box.top + box.height * down) // 4
                for right in SHARES:
                    column = int(box.left + box.width * right) // 2 - len(words) // 2
                    if _inside(dots, column * 2, row * 4 + 2, len(words) * 2) and (
                        self.canvas.is_free(column - 1, row, len(words) + 2)
                    ):
                        self.canvas.text(column, row, words, NAME)
                        return
        column, row = int(box.left + box.width / 2) // 2, int(box.top + box.height / 2) // 4
        self.canvas.text(column, row, str(piece.number), NAME)


def _inside(line: Sequence[Dot], left: float, y: float, wide: float) -> bool:
    """Say whether both ends of some words lie inside a closed line, by counting crossings."""
    return all(_is_in(line, x, y) for x in (left, left + wide))


def _is_in(line: Sequence[Dot], x: float, y: float) -> bool:
    crossed = False
    for (ax, ay), (bx, by) in zip(line, (*line[1:], line[0]), strict=True):
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            crossed = not crossed
    return crossed
