"""The picture of an operation: its pieces side by side, what is sewn drawn heavily and lettered.

The wrong side of the cloth is hatched, the right side plain, so that a picture without colour
tells them apart. Edges that meet share a letter. Drawn only when it is asked for.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from tapewise_core.drafting.labels import title
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.picturing.sheet import Sheet
from tapewise_core.drafting.picturing.words import Words
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Drawing, Layer, Stroke
from tapewise_core.sewing.hatching import hatch
from tapewise_core.sewing.operation import Operation
from tapewise_core.sewing.showing import Marked, Shown, Up, shown

WIDE, HIGH = 78.0, 44.0
"""The largest picture [mm]: beside its words on a page, and on a telephone (our choice)."""

ROOM, GAP, BELOW, COLUMN = 3.5, 3.5, 7.5, 21.0
"""Room round the pieces, between them, below them for their names, and for a name [mm]."""

ABREAST = 3
"""Pieces beside each other at most; more stand in a second row (our choice)."""

HATCH, THIN, HEAVY, OUTLINE = 1.8, 0.12, 0.9, 0.25
"""How far lines of the wrong side are apart, and the pens of these, of seams and outlines [mm]."""

SIZE, LETTER = 2.5, 3.0
"""Type of names and of letters [mm]."""

APART = 0.4
"""Points nearer to each other than this on the picture are one [mm]."""


def picture(pattern: Pattern, operation: Operation) -> Drawing | None:
    """Return an operation's picture; None where nothing is sewn that could be shown."""
    pieces = shown(pattern, operation)
    if not pieces:
        return None
    rows = _rows(pieces)
    scale = _scale(rows)
    wide = max(_across(row, scale) for row in rows)
    tall = sum(_down(row, scale) for row in rows)
    sheet = Sheet(Box(0, 0, wide, tall), 1.0, wide, tall)
    top = ROOM
    for row in rows:
        _row(sheet, row, scale, top)
        top += _down(row, scale)
    box = Box(0, 0, sheet.width, sheet.height)
    return Drawing(operation.title, described(pieces), box, tuple(sheet.placing.inks))


Row = tuple[tuple[Shown, Box], ...]
"""Pieces beside each other, each with the box it takes [mm on the piece]."""


def _rows(pieces: Sequence[Shown]) -> tuple[Row, ...]:
    """Pieces in rows of three at most."""
    boxed = tuple((one, box_of(p for line in one.outlines for p in line)) for one in pieces)
    count = math.ceil(len(boxed) / ABREAST)
    each = math.ceil(len(boxed) / count)
    return tuple(boxed[at : at + each] for at in range(0, len(boxed), each))


def _scale(rows: tuple[Row, ...]) -> float:
    """One scale for all pieces, so that what meets is as long on each."""
    scale = WIDE / max(box.width for row in rows for _, box in row)
    while max(_across(r, scale) for r in rows) > WIDE or _tall(rows, scale) > HIGH * len(rows):
        scale *= 0.97
    return scale


def _tall(rows: tuple[Row, ...], scale: float) -> float:
    return sum(_down(row, scale) for row in rows)


def _across(row: Row, scale: float) -> float:
    columns = sum(_column(box, scale) for _, box in row)
    return columns + GAP * (len(row) - 1) + 2 * ROOM


def _down(row: Row, scale: float) -> float:
    return max(box.height for _, box in row) * scale + 2 * ROOM + BELOW


def _column(box: Box, scale: float) -> float:
    return max(box.width * scale, COLUMN)


def _row(sheet: Sheet, row: Row, scale: float, top: float) -> None:
    left, foot = ROOM, top - ROOM + _down(row, scale) - BELOW / 2
    for one, box in row:
        column = _column(box, scale)
        _draw(sheet, one, _Place(box, scale, left + (column - box.width * scale) / 2, top))
        _name(sheet, one, (left + column / 2, foot))
        left += column + GAP


def described(pieces: Sequence[Shown]) -> str:
    """Say in words what a picture shows, for who cannot see it.

    The wrong side is hatched; edges with one letter meet.
    """
    each = "; ".join(
        f"{title(one.piece.name)} {one.up}, sewn at {', '.join(_letters(one))}" for one in pieces
    )
    return f"{each}. The wrong side of the cloth is hatched; edges of one letter meet."


def _letters(one: Shown) -> list[str]:
    return list(dict.fromkeys(mark.letter for mark in one.marked))


class _Place:
    """Where a piece's points lie on the picture."""

    def __init__(self, box: Box, scale: float, left: float, top: float) -> None:
        self.box, self.scale, self.left, self.top = box, scale, left, top

    def line(self, points: Sequence[Point]) -> list[Point]:
        """Return points on the picture, those that fall on each other left out."""
        kept: list[Point] = []
        for point in points:
            x = self.left + (point.x - self.box.left) * self.scale
            y = self.top + (point.y - self.box.top) * self.scale
            if not kept or math.hypot(x - kept[-1].x, y - kept[-1].y) > APART:
                kept.append(Point(x, y))
        return kept


def _draw(sheet: Sheet, one: Shown, place: _Place) -> None:
    outlines = [place.line(line) for line in one.outlines]
    if one.up is Up.WRONG:
        hatch(sheet, outlines, HATCH, THIN)
    for line in outlines:
        _stroke(sheet, [*line, line[0]], OUTLINE)
    lines = [(mark, place.line(mark.line)) for mark in one.marked]
    for _, line in lines:
        if len(line) > 1:
            _stroke(sheet, line, HEAVY)
    for mark, line in lines:
        _letter(sheet, mark, line)


def _stroke(sheet: Sheet, line: Sequence[Point], width: float) -> None:
    places = [(point.x, point.y) for point in line]
    sheet.placing.ground.polyline(places, width / 2)
    layer = Layer.STITCH if width == HEAVY else Layer.CUT
    sheet.placing.inks.append(Stroke(ruled(*line), layer, width=width))


def _letter(sheet: Sheet, mark: Marked, line: Sequence[Point]) -> None:
    """The letter of what meets, beside the middle of its edge."""
    if len(line) < 2:
        return
    path = ruled(*line)
    at, along = path.at(path.length() / 2)
    if mark.turned:
        _turn(sheet, at, -along.square())
    words = Words.of(mark.letter, size=LETTER, bold=True)
    sheet.placing.beside(words, (at.x, at.y))


def _turn(sheet: Sheet, at: Point, inward: Vector) -> None:
    """A short arrow across an edge, the way it is turned; the piece lies turned over."""
    tip, tail = at + inward * 2.4, at + inward * -2.4
    for line in ((tail, tip), *((tip + (-inward).turned(a) * 1.5, tip) for a in (28, -28))):
        _stroke(sheet, line, 0.35)


def _name(sheet: Sheet, one: Shown, at: tuple[float, float]) -> None:
    words = Words.of(title(one.piece.name), one.up, size=SIZE)
    sheet.placing.put(words, at, sheet.placing.room(words, at) or [])
