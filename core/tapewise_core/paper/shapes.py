"""Pieces as the search for their places sees them: where they have ink, what must stay whole."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Drawing, Layer, Stroke, TextLine, extent
from tapewise_core.paper.grid import line_of
from tapewise_core.paper.lattice import Flags, Floats
from tapewise_core.paper.packing import ink_box, turned, turned_box
from tapewise_core.paper.solid import inside, solid

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

SPOTS = 2.5
"""Ink is looked at in spots no further apart than this [mm] while searching; pages are exact
later."""


SQUARE = 8.0
"""The side of the squares that a piece's area is counted in [mm]."""


class Shape(Frozen, eq=False, dict=True):
    """A piece as the search sees it, its ink's upper left corner at the origin."""

    drawing: Drawing

    @cached_property
    def box(self) -> Box:
        """The box round the ink, where it was drawn."""
        return ink_box(self.drawing)

    @cached_property
    def ways(self) -> tuple[Shape, ...]:
        """The piece as it is and turned a quarter, its words too: paper has no grain."""
        return self, _Turned(self.drawing, self)

    @cached_property
    def spots(self) -> Floats:
        """Places with ink, across and down: more along the cut line than elsewhere."""
        corner = np.array([self.box.left, self.box.top])
        lines = [
            _stepped(np.array([(p.x, p.y) for p in line_of(ink, 0.5)]), SPOTS if cut else 16.0)
            for ink in self.drawing.inks
            for cut in [ink.layer is Layer.CUT]
        ]
        return np.asarray(np.concatenate(lines or [np.zeros((0, 2))]) - corner)

    @cached_property
    def solid(self) -> BaseGeometry:
        """All that is inside a cut line or drawn beside it."""
        from shapely.affinity import translate

        return translate(solid(self.drawing.inks), -self.box.left, -self.box.top)

    def at(self, place: Point) -> Drawing:
        """Return the piece with its ink's upper left corner at a place [mm]."""
        return self.drawing.moved(Vector(place.x - self.box.left, place.y - self.box.top))

    def squares(self, wide: float, high: float, border: float, grown: float) -> Flags:
        """Return which squares have their middle in the piece grown so much [mm], row by row down;
        the first begins a border before the piece's corner, across and down."""
        size = ((self.box.width, wide), (self.box.height, high))
        across, down = (
            step * (0.5 + np.arange(max(math.ceil((length + 2 * border) / step), 1), dtype=float))
            - border
            for length, step in size
        )
        return inside(self.solid.buffer(grown) if grown else self.solid, across, down)

    @cached_property
    def solid_sums(self) -> Floats:
        """How much of the piece [mm²] lies before each line between squares, down and across."""
        inside = np.pad(self.squares(SQUARE, SQUARE, 0.0, 0.0), ((1, 0), (1, 0)))
        return np.asarray(inside.cumsum(0).cumsum(1) * SQUARE**2)

    @cached_property
    def whole(self) -> tuple[Box, ...]:
        """Places not to split, measured from the piece's corner."""
        home = Vector(-self.box.left, -self.box.top)
        return tuple(box.moved(home) for box in kept_whole(self.drawing))

    @cached_property
    def label(self) -> tuple[Box, ...]:
        """The column of words under the piece's name, measured from the piece's corner."""
        words = [ink for ink in self.drawing.inks if isinstance(ink, TextLine)]
        title = next((ink for ink in words if ink.bold), None)
        if title is None:
            return ()
        column = [ink for ink in words if _below(title, ink)]
        return (extent(column).moved(Vector(-self.box.left, -self.box.top)),)


class _Turned(Shape, eq=False, dict=True):
    """A piece turned a quarter clockwise: what was looked up of it is turned along, and it itself
    only once it has its place."""

    upright: Shape

    @cached_property
    def box(self) -> Box:
        return turned_box(self.upright.box)

    @cached_property
    def spots(self) -> Floats:
        across, down = self.upright.spots.T
        return np.stack([self.upright.box.height - down, across], axis=1)

    @cached_property
    def solid(self) -> BaseGeometry:
        from shapely.affinity import affine_transform

        quarter = [0, -1, 1, 0, self.upright.box.height, 0]
        return affine_transform(self.upright.solid, quarter)

    @cached_property
    def whole(self) -> tuple[Box, ...]:
        return self._along(self.upright.whole)

    @cached_property
    def label(self) -> tuple[Box, ...]:
        return self._along(self.upright.label)

    def at(self, place: Point) -> Drawing:
        by = Vector(place.x - self.box.left, place.y - self.box.top)
        return turned(self.drawing).moved(by)

    def _along(self, boxes: Sequence[Box]) -> tuple[Box, ...]:
        """Boxes measured from the piece's corner, turned with it."""
        home = Vector(self.upright.box.height, 0)
        return tuple(turned_box(box).moved(home) for box in boxes)


def _below(title: TextLine, words: TextLine) -> bool:
    """Say whether words stand in the column of lines that a title begins."""
    along = Vector(1, 0).turned(title.angle)
    return words.angle == title.angle and abs((words.at - title.at).dot(along)) < 0.01


def kept_whole(drawing: Drawing) -> tuple[Box, ...]:
    """Return the places better not split; a neckline that is drawn, where none are given."""
    if drawing.whole:
        return drawing.whole
    necks = (ink for ink in drawing.inks if isinstance(ink, Stroke) and "neckline" in ink.name)
    return tuple(extent([neck], 2.0) for neck in necks)


def _stepped(points: Floats, apart: float) -> Floats:
    """Points of a line, and more between them, no further apart than so much [mm]."""
    ways = np.diff(points, axis=0)
    steps = (np.hypot(*ways.T) / apart).astype(np.int64) + 1
    first = np.repeat(np.arange(len(steps)), steps)
    share = (np.arange(len(first)) - np.repeat(np.cumsum(steps) - steps, steps)) / steps[first]
    return np.concatenate([points[first] + ways[first] * share[:, None], points[-1:]])
