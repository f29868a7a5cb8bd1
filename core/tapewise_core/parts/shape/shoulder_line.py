"""Shoulder lines of back and front: raised, turned forward or lowered, and equally long."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import DOWN, UP, Point

HALF = 0.5
"""A neck point that is raised takes the shoulder's end up by half (our choice)."""


class ShoulderLine(Frozen):
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
    to the line; both seams are as long as the line given (exact). ``lower`` moves both ends
    straight down, as the armhole below them goes down; the seams are then as long as their mean.
    """
    length = (end - neck).length()
    back = _line(neck, end, back_raised, forward, length)
    front = _line(neck, end, front_raised, -forward, length)
    return _lowered(back, front, lower) if lower else (back, front)


def _lowered(
    back: ShoulderLine, front: ShoulderLine, by: float
) -> tuple[ShoulderLine, ShoulderLine]:
    """Both ends straight down, and set along their lines to one length."""
    low = [ShoulderLine(line.neck, line.end + DOWN * by) for line in (back, front)]
    length = sum(line.length for line in low) / 2
    first, second = (
        ShoulderLine(line.neck, line.neck + (line.end - line.neck).unit() * length) for line in low
    )
    return first, second


def _line(neck: Point, end: Point, raised: float, up: float, length: float) -> ShoulderLine:
    start = neck + UP * raised
    square = (end - start).unit().square()
    aim = end + UP * (raised * HALF) + square * -up
    return ShoulderLine(start, start + (aim - start).unit() * length)
