"""Draw which edges meet: the pieces as they lie, their wrong sides hatched, those edges heavy."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tapewise_core.drafting.labels import title
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.tasks.sewing import Marked, Shown, Up
from tapewise_tui.canvas import Canvas, Dot
from tapewise_tui.meeting_places import Spot, spots

LINE, MEETS, WRONG, NAME = "stitch", "chosen", "cut", "name"
"""Tones, for widgets that colour."""

HATCH = 7
"""How far lines of the wrong side are apart [dots]."""

BESIDE = 5.0
"""How far from its edge a letter stands [dots]."""


def draw_meeting(canvas: Canvas, pieces: Sequence[Shown]) -> None:
    """Draw pieces as large as there is room; edges that meet share a letter."""
    boxes = [box_of(point for line in one.outlines for point in line) for one in pieces]
    places = spots(boxes, canvas.width, canvas.height)
    lettered = len({mark.letter for one in pieces for mark in one.marked}) > 1
    for one, place in zip(pieces, places, strict=False):
        lines = [_thinned([place.dot(point) for point in line]) for line in one.outlines]
        if one.up is Up.WRONG and not canvas.ascii:
            for ends in _hatched(lines):
                canvas.polyline(ends, "dotted", tone=WRONG)
        for line in lines:
            canvas.polyline([*line, line[0]], tone=LINE)
        for mark in one.marked:
            canvas.polyline([place.dot(point) for point in mark.line], width=2, tone=MEETS)
    for one, box, place in zip(pieces, boxes, places, strict=False):
        for mark in one.marked if lettered else ():
            _letter(canvas, mark, box, place)
        _name(canvas, one, place)


def _thinned(line: Sequence[Dot]) -> list[Dot]:
    """Points that are told apart; a cut line has many more than can be seen."""
    kept = [line[0]]
    for point in line[1:]:
        if abs(point[0] - kept[-1][0]) + abs(point[1] - kept[-1][1]) > 0.67:
            kept.append(point)
    return kept


def _hatched(lines: Sequence[Sequence[Dot]]) -> Iterator[tuple[Dot, Dot]]:
    """The ends of slanted lines inside closed ones; where one lies in another is left out."""
    sums = [x + y for line in lines for x, y in line]
    for at in range(int(min(sums)) + HATCH, int(max(sums)), HATCH):
        found = sorted(x for line in lines for x in _crossings(line, at))
        for left, right in zip(found[::2], found[1::2], strict=False):
            yield (left, at - left), (right, at - right)


def _crossings(line: Sequence[Dot], at: float) -> Iterator[float]:
    """Where a closed line crosses the slanted one on which x and y add up to something."""
    for (ax, ay), (bx, by) in zip(line, (*line[1:], line[0]), strict=True):
        a, b = ax + ay - at, bx + by - at
        if (a < 0) != (b < 0):
            yield ax + (bx - ax) * a / (a - b)


def _letter(canvas: Canvas, mark: Marked, box: Box, place: Spot) -> None:
    """The letter of an edge, towards the outside of its piece."""
    at = mark.line[len(mark.line) // 2]
    x, y = place.dot(at)
    out = BESIDE if at.x >= (box.left + box.right) / 2 else -BESIDE
    column = min(max(int(x + out) // 2, 0), canvas.columns - 1)
    canvas.text(column, int(y) // 4, mark.letter, NAME)


def _name(canvas: Canvas, one: Shown, place: Spot) -> None:
    """The name and which side is up, below the piece."""
    side = "wrong side" if one.up is Up.WRONG else "right side"
    for down, words in enumerate((title(one.piece.name), side)):
        column = int(place.middle / 2 - len(words) / 2)
        column = min(max(column, 0), max(canvas.columns - len(words), 0))
        canvas.text(column, int(place.foot) // 4 + 1 + down, words, NAME)
