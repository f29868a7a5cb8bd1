"""Shoulder lines of back and front: raised, turned forward or lowered, and equally long."""

from __future__ import annotations

import math
from dataclasses import dataclass

from tapewise_core.geometry.point import UP, Point

HALF = 0.5
"""A neck point that is raised takes the shoulder's end up by half (our choice)."""


@dataclass(frozen=True, slots=True)
class ShoulderLine:
    """From the neck point to the shoulder end."""

    neck: Point
    end: Point

    @property
    def length(self) -> float:
        """The shoulder seam [mm]."""
        return (self.end - self.neck).length()

    @property
    def slope(self) -> float:
        """How steeply it falls [degrees]."""
        along = self.end - self.neck
        return math.degrees(math.atan2(along.y, along.x))


def shoulder_lines(
    neck: Point,
    end: Point,
    *,
    front_raised: float = 0.0,
    back_raised: float = 0.0,
    forward: float = 0.0,
    lower: float = 0.0,
) -> tuple[ShoulderLine, ShoulderLine]:
    """Return the back's and the front's shoulder line; all amounts in mm.

    ``forward`` moves the seam's outer end to the front: the back's up, the front's down, square
    to the line. In the end both seams are as long as the line given (exact).
    """
    length = (end - neck).length()
    low = Point(end.x, end.y + lower)
    return (
        _line(neck, low, back_raised, forward, length),
        _line(neck, low, front_raised, -forward, length),
    )


def _line(neck: Point, end: Point, raised: float, up: float, length: float) -> ShoulderLine:
    start = neck + UP * raised
    square = (end - start).unit().square()
    aim = end + UP * (raised * HALF) + square * -up
    return ShoulderLine(start, start + (aim - start).unit() * length)
