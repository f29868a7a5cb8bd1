"""A pattern for a projector over the cutting table: one canvas, heavy lines, a grid, no more."""

from __future__ import annotations

import math
from dataclasses import replace

from tapewise_core.errors import PaperError
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Dash, Drawing, Ink, Layer, Stroke, TextLine
from tapewise_core.paper.packing import filled_strip, ink_box, joined
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.paper.sheet import Prints, Sheet, Window
from tapewise_core.paper.sizes import LONGEST
from tapewise_core.text.told import About, said

SQUARE = 50.0
"""Spacing of the grid by which the picture is focused and squared [mm]."""

LEAST_LINE = {Layer.CUT: 2.4, Layer.STITCH: 1.6, Layer.MARKS: 2.0, Layer.GUIDE: 1.0}
"""Widths that stay a whole number of pixels where one pixel covers about a millimetre [mm]."""

TYPE = 12.0
"""Type that can be read from such a picture, where the piece has room for it [mm]."""


def canvas(pattern: PatternSet) -> Drawing:
    """Return all pieces on one canvas with a grid behind them, its edges on grid lines.

    Raises PaperError if the canvas would be longer than a page may be.
    """
    pieces = [replace(piece, inks=_heavy(piece)) for piece in pattern.opened]
    total = sum(ink_box(piece).width * ink_box(piece).height for piece in pieces)
    widest = max((ink_box(piece).width for piece in pieces), default=0.0)
    laid = filled_strip(pieces, max(widest + 10, math.sqrt(total * 1.6)))
    whole = joined(pattern.title, pattern.description, laid, 10.0)
    box = _on_grid(whole.box)
    if max(box.width, box.height) > LONGEST:
        raise PaperError(
            said(
                "The pieces side by side take {} by {}, and one canvas may be {} long; take "
                "pdf-roll or pdf-a4 for this one.",
                About(round(box.width, -1)),
                About(round(box.height, -1)),
                About(LONGEST),
            )
        )
    return replace(whole, box=box, inks=(*_grid(box), *whole.inks))


def projected(drawing: Drawing, person: str) -> Prints:
    """Return the canvas as one page of its own size."""
    box = drawing.box
    window = Window(box, Point(0, 0))
    sheet = Sheet(drawing.title, box.width, box.height, (), window)
    return Prints(drawing.title, person, drawing.description, drawing, (sheet,))


def _heavy(piece: Drawing) -> tuple[Ink, ...]:
    """The piece in lines wide enough to be projected, its words large or left out."""
    strokes = [_widened(ink) for ink in piece.inks if isinstance(ink, Stroke)]
    return (*strokes, *_large_words(piece))


def _widened(stroke: Stroke) -> Stroke:
    return replace(stroke, width=max(stroke.width, LEAST_LINE.get(stroke.layer, 1.6)))


def _large_words(piece: Drawing) -> list[TextLine]:
    """The piece's name, how to cut it, its set; the small print is left to the paper files."""
    words = [ink for ink in piece.inks if isinstance(ink, TextLine) and ink.layer is Layer.TEXT]
    level = [ink for ink in words if not ink.angle]
    label = [ink for ink in level if ink.bold][:1]
    label += [ink for ink in level if "cut " in ink.text and ink not in label][:1]
    label += [ink for ink in level if ink.text.startswith("set ")][:1]
    if not label:
        return []
    start = label[0].at
    room = _room(piece, start)
    fits = [room / (0.6 * len(ink.text)) for ink in label]
    size = min(TYPE, ink_box(piece).height / 10, *fits)
    down = size - label[0].size
    return [
        replace(ink, at=start + Vector(0, down + i * size * 1.4), size=size, bold=True)
        for i, ink in enumerate(label)
    ]


def _room(piece: Drawing, start: Point) -> float:
    """How far words may run from where they start to the right edge of the piece [mm]."""
    return max(40.0, ink_box(piece).right - start.x - 15)


def _on_grid(box: Box) -> Box:
    """The box grown to whole squares of the grid."""
    low = [math.floor(edge / SQUARE) * SQUARE for edge in (box.left, box.top)]
    high = [math.ceil(edge / SQUARE) * SQUARE for edge in (box.right, box.bottom)]
    return Box(low[0], low[1], high[0], high[1])


def _grid(box: Box) -> list[Ink]:
    """Lines every 5 cm; every tenth is heavier, and the outermost frame the picture."""
    inks: list[Ink] = []
    for number in range(round(box.width / SQUARE) + 1):
        x = box.left + number * SQUARE
        inks.append(_line(Point(x, box.top), Point(x, box.bottom), number))
    for number in range(round(box.height / SQUARE) + 1):
        y = box.top + number * SQUARE
        inks.append(_line(Point(box.left, y), Point(box.right, y), number))
    return inks


def _line(start: Point, end: Point, number: int) -> Stroke:
    width = 1.6 if number % 10 == 0 else 0.8
    return Stroke(ruled(start, end), Layer.GRID, Dash.SOLID, width)
