"""The two kinds of segment a path is made of: straight lines and cubic curves."""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.cubic import Cubic
from tapewise_core.geometry.pen import Pen
from tapewise_core.geometry.point import Point, Vector

__all__ = ["Cubic", "Line", "Pen", "Segment"]


class Line(Frozen):
    """A straight line between two points."""

    start: Point
    end: Point

    def continue_with(self, pen: Pen) -> None:
        """Draw from where the pen stands, which is ``start``."""
        pen.line_to(self.end)

    def length(self) -> float:
        """Return the line's length [mm]."""
        return (self.end - self.start).length()

    def at(self, t: float) -> Point:
        """Return the point at parameter ``t``, 0 ≤ t ≤ 1."""
        return self.start.toward(self.end, t)

    def direction(self, t: float) -> Vector:
        """Return the direction of travel at ``t``, one millimetre long."""
        return (self.end - self.start).unit()

    def reversed(self) -> Line:
        """Return the same line travelled the other way."""
        return Line(self.end, self.start)

    def split(self, t: float) -> tuple[Line, Line]:
        """Return the two parts before and after ``t``."""
        middle = self.at(t)
        return Line(self.start, middle), Line(middle, self.end)

    def moved(self, by: Vector) -> Line:
        """Return the line shifted."""
        return Line(self.start + by, self.end + by)

    def placed(self, where: Callable[[Point], Point]) -> Line:
        """Return the line with its ends where a rule puts them."""
        return Line(where(self.start), where(self.end))

    def mirrored(self, a: Point, b: Point) -> Line:
        """Return the line's image in the line through two points."""
        return Line(self.start.mirrored(a, b), self.end.mirrored(a, b))

    @property
    def handles(self) -> tuple[Point, Point, Point, Point]:
        """The points of the curve that runs along it."""
        return self.start, self.start, self.end, self.end

    def steps(self, tolerance: float) -> int:
        """Return how many chords follow the line: it is its own."""
        return 1

    def parameters(self, tolerance: float) -> list[float]:
        """Return the parameters between which chords follow the line within a tolerance [mm]."""
        return [0.0, 1.0]

    def flattened(self, tolerance: float) -> list[Point]:
        """Return both ends: a straight line is its own chord."""
        return [self.start, self.end]

    def beside(self, distance: float, tolerance: float) -> list[Point]:
        """Return both ends, each a distance [mm] to the left of travel."""
        out = -self.direction(0.0).square() * distance
        return [self.start + out, self.end + out]

    def length_to(self, t: float) -> float:
        """Return the length [mm] from the start to parameter ``t``."""
        return self.length() * t

    def parameter_at(self, distance: float) -> float:
        """Return the parameter at a walked distance [mm] from the start."""
        length = self.length()
        return 0.0 if length == 0 else min(max(distance / length, 0.0), 1.0)


Segment = Line | Cubic
