"""All pieces on one sheet, and the squares that prove its scale."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Drawing, Ink, Layer, Stroke, TextLine
from tapewise_core.units import MM_PER_INCH

GAP = 15.0
"""Space between pieces on one sheet [mm]."""

WIDEST = 1500.0
"""Pieces are laid beside each other up to this width, about a cloth's [mm]."""

LOW = 0.4
"""A piece lower than this share of its row starts a new one, rather than leave a hole."""

SQUARES = ((100.0, "100 mm"), (4 * MM_PER_INCH, "4 in"))
"""The squares to measure before cutting: side [mm] and name."""


def beside(title: str, description: str, drawings: Sequence[Drawing]) -> Drawing:
    """Return drawings laid beside each other in rows, with the scale squares below them."""
    inks: list[Ink] = []
    x = y = row = right = 0.0
    for drawing in drawings:
        too_wide = x + drawing.box.width > WIDEST
        if x > 0 and (too_wide or drawing.box.height < LOW * row):
            x, y, row = 0.0, y + row + GAP, 0.0
        shifted = drawing.moved(Vector(x - drawing.box.left, y - drawing.box.top))
        inks += shifted.inks
        right, row = max(right, x + drawing.box.width), max(row, drawing.box.height)
        x += drawing.box.width + GAP
    return with_squares(Drawing(title, description, Box(0, 0, right, y + row), tuple(inks)))


def with_squares(drawing: Drawing) -> Drawing:
    """Return a drawing with the scale squares added below it."""
    top, left = drawing.box.bottom + 5, drawing.box.left + 10
    inks: list[Ink] = list(drawing.inks)
    for side, name in SQUARES:
        inks += scale_square(Point(left, top), side, name)
        left += side + GAP
    box = drawing.box
    lowest = top + SQUARES[1][0] + 10
    wide = Box(box.left, box.top, max(box.right, left), lowest)
    return Drawing(drawing.title, drawing.description, wide, tuple(inks))


def scale_square(corner: Point, side: float, name: str) -> tuple[Ink, ...]:
    """Return a square to measure, its name inside."""
    middle = corner + Vector(side / 2, side / 2)
    words = (
        TextLine(f"{name} each way", middle, 5, "middle", layer=Layer.SCALE),
        TextLine(
            "measure before cutting", middle + Vector(0, 8), 4, "middle",
            layer=Layer.SCALE,
        ),
    )  # fmt: skip
    outline = Stroke(
        _square(corner, side), Layer.SCALE, width=0.4, closed=True, name=f"{name} square"
    )
    return (outline, *words)


def _square(corner: Point, side: float) -> Path:
    across, down = Vector(side, 0), Vector(0, side)
    return ruled(corner, corner + across, corner + across + down, corner + down, corner)
