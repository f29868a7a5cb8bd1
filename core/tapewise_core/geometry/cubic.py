"""Cubic Bézier curves."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import lru_cache

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.gauss import NODES, WEIGHTS
from tapewise_core.geometry.pen import Pen
from tapewise_core.geometry.point import Point, Vector


class Cubic(Frozen):
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
        """Return the direction of travel at ``t``, one millimetre long.

        Where a handle has no length the next point decides.
        """
        u = 1 - t
        a, b, c = 3 * u * u, 6 * u * t, 3 * t * t
        p, q, r, s = self.start, self.leave, self.arrive, self.end
        x = a * (q.x - p.x) + b * (r.x - q.x) + c * (s.x - r.x)
        y = a * (q.y - p.y) + b * (r.y - q.y) + c * (s.y - r.y)
        speed = math.hypot(x, y)
        if speed > 1e-9:
            return Vector(x / speed, y / speed)
        ways = (s - r, s - q, s - p) if t > 0.5 else (q - p, r - p, s - p)
        return next((way for way in ways if way.length() > 1e-9), ways[-1]).unit()

    def length(self) -> float:
        """Return the curve's length [mm], by Gauss-Legendre quadrature with 24 nodes.

        Exact to 1e-9 mm for curves without a cusp; the rule is that of [abramowitz].
        """
        x0, y0 = self.leave.x - self.start.x, self.leave.y - self.start.y
        x1, y1 = self.arrive.x - self.leave.x, self.arrive.y - self.leave.y
        x2, y2 = self.end.x - self.arrive.x, self.end.y - self.arrive.y
        return _length(x0, y0, x1, y1, x2, y2)

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

    def placed(self, where: Callable[[Point], Point]) -> Cubic:
        """Return the curve with its ends and handles where a rule puts them."""
        return Cubic(where(self.start), where(self.leave), where(self.arrive), where(self.end))

    def mirrored(self, a: Point, b: Point) -> Cubic:
        """Return the curve's image in the line through two points."""
        return Cubic(
            self.start.mirrored(a, b),
            self.leave.mirrored(a, b),
            self.arrive.mirrored(a, b),
            self.end.mirrored(a, b),
        )

    @property
    def handles(self) -> tuple[Point, Point, Point, Point]:
        """The four points that say how it runs."""
        return self.start, self.leave, self.arrive, self.end

    def steps(self, tolerance: float) -> int:
        """Return how many chords of equal steps follow the curve within a tolerance [mm].

        n = √(¾ · M / tolerance) equal steps, M the larger second difference of
        the control points: the bound for a polynomial curve of degree three.
        """
        a, b, c, d = self.start, self.leave, self.arrive, self.end
        bend = max(
            math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y),
            math.hypot(b.x - 2 * c.x + d.x, b.y - 2 * c.y + d.y),
        )
        return max(1, math.ceil(math.sqrt(0.75 * bend / tolerance)))

    def parameters(self, tolerance: float) -> list[float]:
        """Return the parameters between which chords follow the curve within a tolerance [mm]."""
        steps = self.steps(tolerance)
        return [i / steps for i in range(steps + 1)]

    def flattened(self, tolerance: float) -> list[Point]:
        """Return points from end to end whose chords follow the curve within a tolerance [mm]."""
        (x0, x1, x2, x3), (y0, y1, y2, y3) = self._powers()
        points = [
            Point(x0 + t * (x1 + t * (x2 + t * x3)), y0 + t * (y1 + t * (y2 + t * y3)))
            for t in self.parameters(tolerance)
        ]
        return [self.start, *points[1:-1], self.end]

    def beside(self, distance: float, tolerance: float) -> list[Point]:
        """Return the points of :meth:`flattened`, each a distance [mm] to the left of travel.

        Places and directions are reckoned together, as polynomials: in a third of the time.
        """
        (x0, x1, x2, x3), (y0, y1, y2, y3) = self._powers()
        u2, u3, v2, v3 = 2 * x2, 3 * x3, 2 * y2, 3 * y3
        points, hypot = [], math.hypot
        for t in self.parameters(tolerance):
            u, v = x1 + t * (u2 + t * u3), y1 + t * (v2 + t * v3)
            speed = hypot(u, v)
            if speed < 1e-6:  # a handle without a length
                way = self.direction(t)
                u, v, speed = way.x, way.y, 1.0
            off = distance / speed
            x, y = x0 + t * (x1 + t * (x2 + t * x3)), y0 + t * (y1 + t * (y2 + t * y3))
            points.append(Point(x + v * off, y - u * off))
        return points

    def _powers(self) -> tuple[tuple[float, float, float, float], ...]:
        """The factors of 1, t, t² and t³, across and down."""
        a, b, c, d = self.start, self.leave, self.arrive, self.end
        return (
            (a.x, 3 * (b.x - a.x), 3 * (a.x - 2 * b.x + c.x), d.x - a.x + 3 * (b.x - c.x)),
            (a.y, 3 * (b.y - a.y), 3 * (a.y - 2 * b.y + c.y), d.y - a.y + 3 * (b.y - c.y)),
        )

    def length_to(self, t: float) -> float:
        """Return the walked length [mm] from the start to ``t``, as :meth:`length` does."""
        x0, y0 = self.leave.x - self.start.x, self.leave.y - self.start.y
        x1, y1 = self.arrive.x - self.leave.x, self.arrive.y - self.leave.y
        x2, y2 = self.end.x - self.arrive.x, self.end.y - self.arrive.y
        # 3 (u² d0 + 2 u t d1 + t² d2) by powers of t, as a polynomial it is cheap to walk
        bx, by, cx, cy = 2 * (x1 - x0), 2 * (y1 - y0), x0 - 2 * x1 + x2, y0 - 2 * y1 + y2
        hypot = math.hypot
        mean = 0.0
        for node, w in NODES:
            s = node * t
            mean += w * hypot(x0 + s * (bx + s * cx), y0 + s * (by + s * cy))
        return 3 * t * mean

    def parameter_at(self, distance: float) -> float:
        """Return the parameter at a walked distance [mm] from the start, by Newton's method."""
        whole = self.length()
        if distance <= 0 or whole == 0:
            return 0.0
        if distance >= whole:
            return 1.0
        t = distance / whole
        for _ in range(20):
            short = self.length_to(t) - distance
            if abs(short) < 1e-7:
                break
            t = min(max(t - short / max(self.velocity(t).length(), 1e-9), 0.0), 1.0)
        return t


@lru_cache(maxsize=4096)
def _length(x0: float, y0: float, x1: float, y1: float, x2: float, y2: float) -> float:
    """The length for the three differences of the control points; one curve is asked for often."""
    hypot, length = math.hypot, 0.0
    for a, b, c, w in WEIGHTS:
        length += w * hypot(a * x0 + b * x1 + c * x2, a * y0 + b * y1 + c * y2)
    return length
