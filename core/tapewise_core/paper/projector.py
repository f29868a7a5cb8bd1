"""A pattern for a projector over the cutting table: one canvas, heavy lines, a grid, no more."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import product
from typing import TYPE_CHECKING

from msgspec.structs import replace

from tapewise_core.errors import PaperError
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Drawing, Ink, Layer, Stroke, TextLine
from tapewise_core.paper.packing import filled_strip, ink_box, joined
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.paper.projector_page import STEP, TYPE, setting_up, written_above
from tapewise_core.paper.sheet import Prints, Sheet, Window
from tapewise_core.paper.sizes import LONGEST
from tapewise_core.text.amounts import About
from tapewise_core.text.told import said

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

LEAST_LINE = {Layer.CUT: 2.4, Layer.STITCH: 1.6, Layer.MARKS: 2.0, Layer.GUIDE: 1.0}
"""Widths that stay a whole number of pixels where one pixel covers about a millimetre [mm]."""


INSIDE = 11.0
"""Kept between large words and the cut line, so that they stay off the stitch line [mm]."""

LINES = 1.4
"""From line to line, as a share of the type's height."""


def canvas(pattern: PatternSet) -> Drawing:
    """Return all pieces on one canvas with a grid behind them, its edges on grid lines; the grid
    is in the reader's unit, and a row of it on top says so.

    Raises PaperError if the canvas would be longer than a page may be.
    """
    pieces = [replace(piece, inks=heavy(piece)) for piece in pattern.opened]
    total = sum(ink_box(piece).width * ink_box(piece).height for piece in pieces)
    widest = max((ink_box(piece).width for piece in pieces), default=0.0)
    laid = filled_strip(pieces, max(widest + 10, math.sqrt(total * 1.6)))
    whole = joined(pattern.title, pattern.description, laid, 10.0)
    box = _on_grid(whole.box, STEP[pattern.reader.unit])
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
    return written_above(replace(whole, box=box), pattern.label(), pattern.reader)


def projected(pattern: PatternSet) -> Prints:
    """Return the page to set the projector up by, and the canvas as one page of its own size."""
    drawing = canvas(pattern)
    window = Window(drawing.box, Point(0, 0))
    sheet = Sheet(drawing.title, drawing.box.width, drawing.box.height, (), window)
    sheets = (setting_up(pattern.reader), sheet)
    return Prints(drawing.title, pattern.person, drawing.description, drawing, sheets)


def heavy(piece: Drawing) -> tuple[Ink, ...]:
    """The piece in lines wide enough to be projected, its words large or left out."""
    strokes = [_widened(ink) for ink in piece.inks if isinstance(ink, Stroke)]
    return (*strokes, *_large_words(piece))


def _widened(stroke: Stroke) -> Stroke:
    return replace(stroke, width=max(stroke.width, LEAST_LINE.get(stroke.layer, 1.6)))


def _large_words(piece: Drawing) -> list[TextLine]:
    """The piece's name, how to cut it, its set, and that it has no allowances if it has none;
    the small print is left to the paper files."""
    words = [ink for ink in piece.inks if isinstance(ink, TextLine) and ink.layer is Layer.TEXT]
    level = [ink for ink in words if not ink.angle]
    label = [ink for ink in level if ink.bold][:1]
    label += [ink for ink in level if "cut " in ink.text and ink not in label][:1]
    more = [ink for ink in level if ink.text.startswith(("without allowances:", "set "))]
    label += [replace(ink, text=ink.text.partition(":")[0]) for ink in more]
    if not label:
        return []
    start, size = _free_place(piece, label)
    return [
        replace(ink, at=start + Vector(0, (0.8 + i * LINES) * size), size=size, bold=True)
        for i, ink in enumerate(label)
    ]


def _free_place(piece: Drawing, label: Sequence[TextLine]) -> tuple[Point, float]:
    """The upper left corner of the place next to where the label is that holds it inside the
    piece and off its grain's arrow, and the size it is set in [mm]: as large as may be."""
    from shapely import LineString, Polygon, box, prepare, union_all

    strokes = [ink for ink in piece.inks if isinstance(ink, Stroke)]
    cuts = [_corners(ink) for ink in strokes if ink.layer is Layer.CUT]
    marks = [_corners(ink) for ink in strokes if ink.name.startswith("grain")]
    whole: BaseGeometry = union_all([Polygon(line) for line in cuts if len(line) > 3])
    grain = union_all([LineString(line) for line in marks])
    room = whole.buffer(-INSIDE).difference(grain.buffer(INSIDE / 2))
    prepare(room)
    where, at = ink_box(piece), label[0].at
    places = sorted(
        (Point(float(x), float(y)) for x, y in product(
            range(round(where.left), round(where.right), 5),
            range(round(where.top), round(where.bottom), 5),
        )),
        key=lambda place: (place - at).length(),
    )  # fmt: skip
    for size in (TYPE * 0.85**step for step in range(9)):
        wide = max(0.6 * size * len(ink.text) for ink in label)
        high = size * LINES * len(label)
        for place in places:
            if room.contains(box(place.x, place.y, place.x + wide, place.y + high)):
                return place, size
    return at, label[0].size


def _corners(stroke: Stroke) -> list[tuple[float, float]]:
    return [(point.x, point.y) for point in stroke.corners()]


def _on_grid(box: Box, step: float) -> Box:
    """The box grown to whole squares of the grid."""
    low = [math.floor(edge / step) * step for edge in (box.left, box.top)]
    high = [math.ceil(edge / step) * step for edge in (box.right, box.bottom)]
    return Box(low[0], low[1], high[0], high[1])
