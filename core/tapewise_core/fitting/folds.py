"""Small drawings of a garment on a body with the folds that are seen, as data.

A figure is 100 wide and 100 high, x to the right and y down, drawn by us; folds are lines over it.
Whoever shows it scales it: to a Drawing here, to a terminal's canvas in the app.
"""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Layer, Stroke

Line = tuple[tuple[float, float], ...]
"""Corners of a line, in hundredths of the figure."""


class View(StrEnum):
    """How the garment is looked at."""

    FRONT = "front"
    BACK = "back"
    SIDE = "side"
    DRESS_FRONT = "dress front"
    DRESS_BACK = "dress back"
    SKIRT = "skirt"
    LIFTED = "arm lifted"


def both(*lines: Line) -> tuple[Line, ...]:
    """Return lines with their mirror images about the middle."""
    return (*lines, *(tuple((100 - x, y) for x, y in line) for line in lines))


_HALF: Line = ((60, 10), (78, 16), (95, 36), (84, 43), (75, 33), (71, 58), (78, 92))
_HEM: Line = ((22, 92), (50, 93), (78, 92))
_ROUND: Line = ((40, 10), (43, 18), (50, 21), (57, 18), (60, 10))
_SHALLOW: Line = ((40, 10), (45, 13), (55, 13), (60, 10))
_DRESS: Line = ((60, 6), (78, 12), (92, 27), (82, 33), (74, 25), (68, 48), (92, 94))
_WAIST: Line = ((32, 48), (50, 49), (68, 48))
_DRESS_HEM: Line = ((8, 94), (30, 97), (50, 98), (70, 97), (92, 94))

FIGURES: dict[View, tuple[Line, ...]] = {
    View.FRONT: (*both(_HALF), _HEM, _ROUND),
    View.BACK: (*both(_HALF), _HEM, _SHALLOW),
    View.SIDE: (
        ((44, 8), (33, 14), (28, 32), (36, 56), (30, 92)),
        ((56, 8), (68, 18), (70, 34), (60, 56), (70, 92)),
        ((44, 8), (56, 8)),
        ((30, 92), (70, 92)),
        ((50, 14), (57, 20), (59, 32), (51, 42), (43, 34), (44, 21), (50, 14)),
    ),
    View.DRESS_FRONT: (
        *both(_DRESS), _WAIST, _DRESS_HEM, ((40, 6), (43, 14), (50, 17), (57, 14), (60, 6)),
    ),
    View.DRESS_BACK: (*both(_DRESS), _WAIST, _DRESS_HEM, ((40, 6), (45, 9), (55, 9), (60, 6))),
    View.SKIRT: (((36, 8), (64, 8)), *both(((64, 8), (94, 84)))),
    View.LIFTED: (
        _ROUND, ((60, 10), (74, 14), (96, 4)), ((99, 14), (78, 30), (73, 40), (78, 92)),
        ((40, 10), (22, 16), (5, 36), (16, 43), (25, 33), (29, 58), (22, 92)), _HEM,
    ),
}  # fmt: skip
"""The garment's outline in each view."""


class Folds(Frozen):
    """What is seen on a figure: the lines that are not as they should be."""

    view: View
    lines: tuple[Line, ...]

    @property
    def figure(self) -> tuple[Line, ...]:
        """The garment's outline."""
        return FIGURES[self.view]


def folds_drawing(title: str, folds: Folds, size: float = 60.0) -> Drawing:
    """Return a small drawing so wide and high [mm]: the outline thin, the folds bold."""

    def stroke(line: Line, width: float, layer: Layer) -> Stroke:
        times = size / 100
        points = [Point(x * times, y * times) for x, y in line]
        return Stroke(ruled(*points), layer, width=width)

    outline = tuple(stroke(line, 0.3, Layer.GUIDE) for line in folds.figure)
    seen = tuple(stroke(line, 0.7, Layer.MARKS) for line in folds.lines)
    return Drawing(title, title, Box(0, 0, size, size), (*outline, *seen))
