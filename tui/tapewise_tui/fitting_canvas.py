"""Draw a fitting in characters: the folds that are seen, and two drafts laid over each other."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from tapewise_core.drafting.overlay import Overlaid
from tapewise_core.geometry.clipping import inside
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path
from tapewise_core.tasks.fitting import Folds
from tapewise_tui.canvas import Canvas, Dot

OUTLINE, SEEN, BEFORE, AFTER, NAME = "cut", "chosen", "cut", "chosen", "name"
"""Tones, for widgets that colour."""

GAP = 4
"""Dots left free beside a piece."""

ROUND = 25.0
"""So much is shown round what moved [mm]."""

STRIPS = frozenset({"neckband", "collar", "waistband"})
"""Pieces whose change is told better by their length than seen."""


def draw_folds(canvas: Canvas, folds: Folds) -> None:
    """Draw a figure as large as there is room, its outline dotted, the folds heavy."""
    times = min(canvas.width, canvas.height) / 101
    left = (canvas.width - 100 * times) / 2

    def dots(line: Sequence[tuple[float, float]]) -> list[Dot]:
        return [(left + x * times, y * times) for x, y in line]

    for line in folds.figure:
        canvas.polyline(dots(line), "dotted", tone=OUTLINE)
    for line in folds.lines:
        canvas.polyline(dots(line), width=2, tone=SEEN)


def draw_overlay(canvas: Canvas, pairs: Sequence[Overlaid]) -> None:
    """Draw where a change moved lines, a window for each piece: before dotted, after solid."""
    moved = [pair for pair in pairs if pair.where is not None]
    shown = [pair for pair in moved if pair.name not in STRIPS] or moved
    each = canvas.width // max(len(shown), 1)
    for number, pair in enumerate(shown):
        room = Box(number * each, 0, (number + 1) * each - GAP, canvas.height - 4)
        if min(room.width, room.height) > 0:
            _window(canvas, pair, room)


def _window(canvas: Canvas, pair: Overlaid, room: Box) -> None:
    """One piece in its room [dots], its name below."""
    where = (pair.where or pair.box).grown(ROUND)
    times = min(room.width / where.width, room.height / where.height)
    left = (room.left + room.right - (where.left + where.right) * times) / 2
    top = (room.top + room.bottom - (where.top + where.bottom) * times) / 2

    heavy = 2 if canvas.ascii else 1  # else a line hides the dots beside it

    def line(path: Path, pattern: str, tone: str) -> None:
        points = path.flattened(0.5 / times)
        dots = [(left + point.x * times, top + point.y * times) for point in points]
        for a, b in pairwise(dots):
            shares = inside(a, b, room)
            if shares is not None:
                ends = [(a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t) for t in shares]
                canvas.polyline(ends, pattern, width=heavy if tone == AFTER else 1, tone=tone)

    for piece, pattern, tone in ((pair.after, "solid", AFTER), (pair.before, "dotted", BEFORE)):
        for edge in piece.edges if piece else ():
            line(edge.path, pattern, tone)
    name = pair.name.replace("_", " ")[: int(room.width) // 2]
    canvas.text(int(room.left) // 2, canvas.rows - 1, name, NAME)
