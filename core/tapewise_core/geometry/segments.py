"""Straight lines and cubic Bézier curves, and the pen they are drawn with."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Protocol

from tapewise_core.geometry.gauss import WEIGHTS
from tapewise_core.geometry.point import Point, Vector


class Pen(Protocol):
    """Anything a path can be drawn with: an SVG writer, a PDF page, a cutter."""

    def move_to(self, point: Point) -> None:
        """Lift the pen and set it down here."""
        ...

    def line_to(self, point: Point) -> None:
        """Rule a straight line to here."""
        ...

    def curve_to(self, leave: Point, arrive: Point, end: Point) -> None:
        """Draw a cubic Bézier curve to ``end`` by its two handles."""
        ...


@dataclass(frozen=True, slots=True)
class Line:
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

    def mirrored(self, a: Point, b: Point) -> Line:
        """Return the line's image in the line through two points."""
        return Line(self.start.mirrored(a, b), self.end.mirrored(a, b))

    def parameters(self, tolerance: float) -> list[float]:
        """Return the parameters between which chords follow the line within a tolerance [mm]."""
        return [0.0, 1.0]

    def parameter_at(self, distance: float) -> float:
        """Return the parameter at a walked distance [mm] from the start."""
        length = self.length()
        return 0.0 if length == 0 else min(max(distance / length, 0.0), 1.0)


@dataclass(frozen=True, slots=True)
class Cubic:
    """A cubic Bézier curve; ``leave`` and ``arrive`` are its handles."""

    start: Point
    leave: Point
    arrive: Point
    end: Point

    def continue_with(self, pen: Pen) -> None:
        """Draw from where the pen stands, which is ``start``."""
        pen.curve_to(self.leave, self.arrive, self.end)

    def at(self, t: float) -> Point:
        """Return the point at parameter ``t``, 0 ≤ t ≤ 1."""
        u = 1 - t
        a, b, c, d = u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t
        return Point(
            a * self.start.x + b * self.leave.x + c * self.arrive.x + d * self.end.x,
            a * self.start.y + b * self.leave.y + c * self.arrive.y + d * self.end.y,
        )

    def velocity(self, t: float) -> Vector:
        """Return the first derivative at ``t`` [mm]."""
        u = 1 - t
        first, middle, last = (
            self.leave - self.start,
            self.arrive - self.leave,
            self.end - self.arrive,
        )
        return (first * (u * u) + middle * (2 * u * t) + last * (t * t)) * 3

    def direction(self, t: float) -> Vector:
        """Return the direction of travel at ``t``, one millimetre long; handles of no length pass."""
        speed = self.velocity(t)
        if speed.length() > 1e-9:
            return speed.unit()
        near = self.arrive if t > 0.5 else self.leave
        far = (self.end - near) if t > 0.5 else (near - self.start)
        return far.unit() if far.length() > 1e-9 else (self.end - self.start).unit()

    def length(self) -> float:
        """Return the curve's length [mm], by Gauss-Legendre quadrature with 24 nodes.

        Exact to 1e-9 mm for curves without a cusp; see Abramowitz and Stegun,
        Handbook of Mathematical Functions (1964), table 25.4, for the rule.
        """
        x0, y0 = self.leave.x - self.start.x, self.leave.y - self.start.y
        x1, y1 = self.arrive.x - self.leave.x, self.arrive.y - self.leave.y
        x2, y2 = self.end.x - self.arrive.x, self.end.y - self.arrive.y
        hypot = math.hypot
        return sum(
            w * hypot(a * x0 + b * x1 + c * x2, a * y0 + b * y1 + c * y2) for a, b, c, w in WEIGHTS
        )

    def reversed(self) -> Cubic:
        """Return the same curve travelled the other way."""
        return Cubic(self.end, self.arrive, self.leave, self.start)

    def split(self, t: float) -> tuple[Cubic, Cubic]:
        """Return the two parts before and after ``t``, by de Casteljau's construction."""
        ab = self.start.toward(self.leave, t)
        bc = self.leave.toward(self.arrive, t)
        cd = self.arrive.toward(self.end, t)
        abc, bcd = ab.toward(bc, t), bc.toward(cd, t)
        middle = abc.toward(bcd, t)
        return Cubic(self.start, ab, abc, middle), Cubic(middle, bcd, cd, self.end)

    def moved(self, by: Vector) -> Cubic:
        """Return the curve shifted."""
        return Cubic(self.start + by, self.leave + by, self.arrive + by, self.end + by)

    def mirrored(self, a: Point, b: Point) -> Cubic:
        """Return the curve's image in the line through two points."""
        return Cubic(
            self.start.mirrored(a, b),
            self.leave.mirrored(a, b),
            self.arrive.mirrored(a, b),
            self.end.mirrored(a, b),
        )

    def parameters(self, tolerance: float) -> list[float]:
        """Return the parameters between which chords follow the curve within a tolerance [mm].

        n = √(¾ · M / tolerance) equal steps, M the larger second difference of
        the control points: the bound for a polynomial curve of degree three.
        """
        bend = max(
            ((self.start - self.leave) + (self.arrive - self.leave)).length(),
            ((self.leave - self.arrive) + (self.end - self.arrive)).length(),
        )
        steps = max(1, math.ceil(math.sqrt(0.75 * bend / tolerance)))
        return [i / steps for i in range(steps + 1)]

    def parameter_at(self, distance: float) -> float:
        """Return the parameter at a walked distance [mm] from the start, by Newton's method."""
        whole = self.length()
        if distance <= 0 or whole == 0:
            return 0.0
        if distance >= whole:
            return 1.0
        t = distance / whole
        for _ in range(20):
            short = self.split(t)[0].length() - distance
            if abs(short) < 1e-7:
                break
            t = min(max(t - short / max(self.velocity(t).length(), 1e-9), 0.0), 1.0)
        return t


Segment = Line | Cubic
