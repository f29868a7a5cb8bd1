"""Points and vectors of the drafting plane, in millimetres.

x runs to the right and y runs down the paper, as the drafter looks at it.
"""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen


class Vector(Frozen):
    """A displacement [mm]."""

    x: float
    y: float

    def __add__(self, other: Vector) -> Vector:
        return Vector(self.x + other.x, self.y + other.y)

    def __sub__(self, other: Vector) -> Vector:
        return Vector(self.x - other.x, self.y - other.y)

    def __mul__(self, times: float) -> Vector:
        return Vector(self.x * times, self.y * times)

    def __neg__(self) -> Vector:
        return Vector(-self.x, -self.y)

    def length(self) -> float:
        """Return the vector's length [mm]."""
        return math.hypot(self.x, self.y)

    def unit(self) -> Vector:
        """Return the direction alone, one millimetre long; a null vector stays null."""
        length = self.length()
        return self if length == 0 else Vector(self.x / length, self.y / length)

    def dot(self, other: Vector) -> float:
        """Return the scalar product [mm²]."""
        return self.x * other.x + self.y * other.y

    def cross(self, other: Vector) -> float:
        """Return the signed area spanned [mm²]; positive when ``other`` turns clockwise as seen."""
        return self.x * other.y - self.y * other.x

    def square(self) -> Vector:
        """Return this vector turned a quarter clockwise, as seen on the paper."""
        return Vector(-self.y, self.x)

    def turned(self, degrees: float) -> Vector:
        """Return this vector turned clockwise by an angle, as seen on the paper."""
        c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
        return Vector(c * self.x - s * self.y, s * self.x + c * self.y)

    def angle_to(self, other: Vector) -> float:
        """Return the angle between two directions [degrees], 0 to 180."""
        return abs(math.degrees(math.atan2(self.cross(other), self.dot(other))))


class Point(Frozen):
    """A place on the paper [mm]."""

    x: float
    y: float

    def __add__(self, by: Vector) -> Point:
        return Point(self.x + by.x, self.y + by.y)

    def __sub__(self, other: Point) -> Vector:
        return Vector(self.x - other.x, self.y - other.y)

    def toward(self, other: Point, share: float) -> Point:
        """Return the point that share of the way to another; 0 here, 1 there."""
        return Point(self.x + (other.x - self.x) * share, self.y + (other.y - self.y) * share)

    def mirrored(self, a: Point, b: Point) -> Point:
        """Return this point's image in the line through two others."""
        x, y = b.x - a.x, b.y - a.y
        length = math.hypot(x, y) or 1.0
        x, y = x / length, y / length
        along = (self.x - a.x) * x + (self.y - a.y) * y
        foot_x, foot_y = a.x + x * along, a.y + y * along
        return Point(foot_x + (foot_x - self.x), foot_y + (foot_y - self.y))


DOWN = Vector(0, 1)
UP = Vector(0, -1)
RIGHT = Vector(1, 0)
LEFT = Vector(-1, 0)


def crossing(a: Point, along: Vector, b: Point, other: Vector) -> Point | None:
    """Return where two unlimited straight lines meet, or None if they are parallel."""
    spanned = along.cross(other)
    if abs(spanned) < 1e-9 * max(1.0, along.length() * other.length()):
        return None
    return a + along * ((b - a).cross(other) / spanned)
