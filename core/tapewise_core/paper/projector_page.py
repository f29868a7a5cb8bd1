"""The page by which a projector is set up before the pattern is thrown: one large square."""

from __future__ import annotations

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Ink, Layer, Stroke, TextLine
from tapewise_core.paper.lettering import block, frame
from tapewise_core.paper.sheet import Sheet
from tapewise_core.text.amounts import About
from tapewise_core.text.told import Reader, said
from tapewise_core.units import MM_PER_INCH, Unit

STEP = {Unit.CM: 50.0, Unit.IN: 2 * MM_PER_INCH}
"""Spacing of the grid by which the picture is focused and squared [mm]: 5 cm or 2 in."""

SIDE = {Unit.CM: 500.0, Unit.IN: 20 * MM_PER_INCH}
"""Side of the square to measure [mm]: ten steps, a little less than a cutting mat is wide."""

TYPE = 12.0
"""Type that can be read from such a picture [mm]."""


def setting_up(reader: Reader) -> Sheet:
    """Return the page to project and measure before the pattern."""
    step, side = STEP[reader.unit], SIDE[reader.unit]
    square = Box(step, step, step + side, step + side)
    told = said(
        "Move, turn and focus the projector until each side of the heavy square measures {} and "
        "both diagonals are alike, {}; each small square is {}. Then turn the page and touch "
        "nothing.",
        About(side),
        About(side * 2**0.5),
        About(step),
    )
    words, _ = block(reader.spell(told), step, square.bottom + TYPE, side, TYPE)
    size = Box(0, 0, 2 * step + side, 4 * step + side)
    inks: list[Ink] = [
        *grid(size, step),
        frame(square, 2.4, Layer.CUT, "square"),
        *_diagonals(square),
        *words,
    ]
    return Sheet("set up the projector", size.width, size.height, tuple(inks))


def _diagonals(box: Box) -> list[Ink]:
    corners = ((box.left, box.right), (box.right, box.left))
    return [
        Stroke(ruled(Point(a, box.top), Point(b, box.bottom)), Layer.GUIDE, width=1.6)
        for a, b in corners
    ]


def grid(box: Box, step: float) -> list[Ink]:
    """Return lines in steps from a box's corner; every tenth is heavier."""
    inks: list[Ink] = []
    for number in range(round(box.width / step) + 1):
        x = box.left + number * step
        inks.append(_line(Point(x, box.top), Point(x, box.bottom), number))
    for number in range(round(box.height / step) + 1):
        y = box.top + number * step
        inks.append(_line(Point(box.left, y), Point(box.right, y), number))
    return inks


def _line(start: Point, end: Point, number: int) -> Stroke:
    return Stroke(ruled(start, end), Layer.GRID, width=1.6 if number % 10 == 0 else 0.8)


def written_above(drawing: Drawing, label: str, reader: Reader) -> Drawing:
    """Return a canvas with one row of the grid more on top, that says how large its squares are."""
    step, box = STEP[reader.unit], drawing.box
    whole = Box(box.left, box.top - step, box.right, box.bottom)
    told = reader.spell(said("each square {} · ", About(step))) + label
    size = min(2 * TYPE, (whole.width - step) / (0.6 * len(told)))
    at = Point(whole.left + step / 2, whole.top + (step + size * 0.7) / 2)
    words = TextLine(told, at, size, bold=True)
    return Drawing(
        drawing.title, drawing.description, whole, (*grid(whole, step), *drawing.inks, words)
    )
