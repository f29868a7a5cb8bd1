"""A drawing: ink and words on a sheet, in millimetres, before any file format.

Writers turn a drawing into bytes; whoever makes one never learns which.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from enum import StrEnum
from typing import Literal

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point, Vector


class Layer(StrEnum):
    """What ink belongs to; formats that have layers show these, in this order."""

    __hash__ = str.__hash__  # in C: writers look up each line's

    GRID = "grid"
    GUIDE = "guide"
    STITCH = "stitch"
    CUT = "cut"
    MARKS = "marks"
    TEXT = "text"
    SCALE = "scale"


class Dash(StrEnum):
    """How a line is broken, so that it is told apart without colour."""

    __hash__ = str.__hash__  # as above

    SOLID = "solid"
    DASHED = "dashed"
    DOTTED = "dotted"
    CHAIN = "chain"


class Stroke(Frozen):
    """A line drawn with one pen; ``width`` in mm, ``part`` is the piece it belongs to.

    Marks whose ``name`` begins with notch, grain or fold are told apart by cutters.
    """

    path: Path
    layer: Layer
    dash: Dash = Dash.SOLID
    width: float = 0.4
    closed: bool = False
    filled: bool = False
    name: str = ""
    part: str = ""

    def moved(self, by: Vector) -> Stroke:
        """Return the stroke shifted."""
        return replace(self, path=self.path.moved(by))

    def corners(self) -> list[Point]:
        """Return points that span the stroke's extent."""
        return self.path.flattened(1.0)


class TextLine(Frozen):
    """One line of text, its baseline starting, centred or ending at a point.

    ``size`` is the height of the type [mm]; ``angle`` turns it clockwise [degrees].
    """

    text: str
    at: Point
    size: float = 4.0
    anchor: Literal["start", "middle", "end"] = "start"
    angle: float = 0.0
    bold: bool = False
    layer: Layer = Layer.TEXT
    part: str = ""

    def moved(self, by: Vector) -> TextLine:
        """Return the words shifted."""
        return replace(self, at=self.at + by)

    def width(self) -> float:
        """Return about how wide the words are set [mm].

        0.6 of the height a character: a little more than the mean of common
        sans-serif faces, so that room is kept rather than missed.
        """
        return 0.6 * self.size * len(self.text)

    def corners(self) -> list[Point]:
        """Return the corners: left below, left above, right below, right above."""
        width = self.width()
        left = {"start": 0.0, "middle": -width / 2, "end": -width}[self.anchor]
        turn = math.radians(self.angle)
        cos, sin = math.cos(turn), math.sin(turn)
        places = [(x, y) for x in (left, left + width) for y in (0.25 * self.size, -self.size)]
        return [
            Point(self.at.x + cos * x - sin * y, self.at.y + sin * x + cos * y) for x, y in places
        ]


Ink = Stroke | TextLine


class Drawing(Frozen):
    """Ink on a sheet whose upper left corner is ``box``'s, at full size.

    ``whole`` are places better not split between two pages, such as a neckline.
    """

    title: str
    description: str
    box: Box
    inks: tuple[Ink, ...]
    whole: tuple[Box, ...] = ()

    def moved(self, by: Vector) -> Drawing:
        """Return the drawing shifted, sheet and all."""
        return replace(
            self,
            box=self.box.moved(by),
            inks=tuple(ink.moved(by) for ink in self.inks),
            whole=tuple(box.moved(by) for box in self.whole),
        )


def extent(inks: Iterable[Ink], border: float = 0.0) -> Box:
    """Return the box round true curves and words, with a border [mm]."""
    return box_of(point for ink in inks for point in ink.corners()).grown(border)
