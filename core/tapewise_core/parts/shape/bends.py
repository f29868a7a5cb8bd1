"""Two circles and a ruler: the seam on one side of the waist, from the waist to a neighbour.

A circle stands at the waist line, outside the seam, and one at the neighbour's line, inside it;
the ruler touches both. By arithmetic alone (exact) the seam is upright at the waist, has the
slope asked at the other end, and bends once each way.
"""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.roots import most
from tapewise_core.geometry.segments import Cubic, Line, Segment

INWARD, OUTWARD = 60.0, 80.0
"""The tightest inward bend a jersey seam takes (common practice) and outward (our choice) [mm]."""

HAIR = 0.05
"""Half widths nearer than this are one straight line [mm]: nobody can draw the difference."""

OF_MEAN, INNER, OUTER, ALONE = 5.0, 0.8, 1.2, 3.2
"""Radii wanted: r = height² / 5 difference, 0.8 of it at the waist, 1.2 at the neighbour; where
no second circle stands, height² / 3.2 difference (our choice)."""


class Bend(Frozen):
    """What the pencil needs between the waist and a neighbour.

    ``angle`` is the ruler's lean [degrees], ``inner`` and ``outer`` the circles' radii at the
    waist and at the neighbour [mm] (0: none), with their centres; ``from_waist`` and ``to_end``
    are where the ruler touches them.
    """

    waist: Point
    end: Point
    angle: float
    inner: float
    outer: float
    from_waist: Point
    to_end: Point
    inner_centre: Point
    outer_centre: Point
    end_angle: float
    waist_angle: float = 0.0

    @property
    def lean(self) -> float:
        """How far the ruler's line goes outwards per downwards, the sign left out."""
        return math.tan(math.radians(self.angle))

    def path(self) -> Path:
        """Return arc, straight line, arc, from the waist to the neighbour."""
        out = math.copysign(1.0, self.end.x - self.waist.x)
        away = math.copysign(1.0, self.end.y - self.waist.y)
        found: list[Segment] = [
            _arc(self.waist, self.from_waist, self.waist_angle, self.angle, out, away)
        ]
        if (self.to_end - self.from_waist).length() > 1e-9:
            found.append(Line(self.from_waist, self.to_end))
        if self.outer and self.angle - self.end_angle > 1e-9:
            found.append(_arc(self.to_end, self.end, self.angle, self.end_angle, out, away))
        return Path(tuple(found))


def _arc(start: Point, end: Point, first: float, last: float, out: float, away: float) -> Cubic:
    """An arc that turns from one lean to another [degrees], met at both ends and in its middle.

    Its handles are 4/3 tan(angle / 4) radii long; over 39° it is off by less than 2e-6 radii.
    """
    turn = math.radians(abs(last - first))
    radius = (end - start).length() / (2 * math.sin(turn / 2)) if turn > 1e-12 else 0.0
    grip = 4 / 3 * math.tan(turn / 4) * radius or (end - start).length() / 3
    a, b = (_along(angle, out, away) for angle in (first, last))
    return Cubic(start, start + a * grip, end + -b * grip, end)


def _along(angle: float, out: float, away: float) -> Vector:
    """The direction of travel away from the waist at a lean [degrees]."""
    return Vector(math.sin(math.radians(angle)) * out, math.cos(math.radians(angle)) * away)


def bend(
    waist: Point, end: Point, slope: float = 0.0, alone: float | None = None, leaving: float = 0.0
) -> Bend | None:
    """Return the seam between the waist and a neighbour, or None where no such one exists.

    ``slope`` is the lean at the neighbour, ``leaving`` that at the waist, outwards per step away
    from the waist in the sense of the difference (0: upright). ``alone``, 0 to 1, goes towards
    no second circle: at 1 the ruler's line runs to the neighbour itself. Radii are shrunk
    together towards the limits only where the line would get a negative length.
    """
    h, d = abs(end.y - waist.y), abs(end.x - waist.x)
    tight, wide = (INWARD, OUTWARD) if end.x > waist.x else (OUTWARD, INWARD)
    mean = h * h / d
    single = alone or 0.0
    inner = mean * ((1 - single) * INNER / OF_MEAN + single / ALONE)
    outer = 0.0 if single == 1 else max(wide, mean * OUTER / OF_MEAN)
    inner, beta = max(tight, inner), math.atan(slope) if outer else 0.0
    first = math.atan(leaving)
    spare = (inner - tight, outer - wide if outer else 0.0)

    def radii(share: float) -> tuple[float, float]:
        return tight + share * spare[0], (wide + share * spare[1]) if outer else 0.0

    def angle(share: float) -> float | None:
        return _angle(h, d, *radii(share), first, beta)

    if angle(0.0) is None:
        return None
    share = most(lambda k: angle(k) is not None, 0.0, 1.0)
    theta = angle(share)
    return None if theta is None else _built(waist, end, theta, radii(share), first, beta)


def _angle(
    h: float, d: float, inner: float, outer: float, first: float, beta: float
) -> float | None:
    """The ruler's angle [radians], or None where it cannot touch both circles in between."""
    height = h + outer * math.sin(beta) + inner * math.sin(first)
    width = d + outer * (1 - math.cos(beta)) + inner * (1 - math.cos(first))
    both = inner + outer
    reach = math.hypot(both - width, height)
    if reach < both:
        return None
    theta = math.atan2(height, both - width) - math.acos(both / reach)
    fits = height - both * math.sin(theta) >= -1e-9 and theta >= max(beta, first) - 1e-12
    return theta if fits else None


def _built(
    waist: Point, end: Point, theta: float, radii: tuple[float, float], first: float, beta: float
) -> Bend:
    """Set out the circles and where the ruler touches them."""
    out, away = math.copysign(1.0, end.x - waist.x), math.copysign(1.0, end.y - waist.y)
    inner, outer = radii

    def off(x: float, y: float) -> Vector:
        return Vector(x * out, y * away)

    inner_centre = waist + off(inner * math.cos(first), -inner * math.sin(first))
    outer_centre = end + off(-outer * math.cos(beta), outer * math.sin(beta))
    return Bend(
        waist,
        end,
        math.degrees(theta),
        inner,
        outer,
        inner_centre + off(-inner * math.cos(theta), inner * math.sin(theta)),
        outer_centre + off(outer * math.cos(theta), -outer * math.sin(theta)),
        inner_centre,
        outer_centre,
        math.degrees(beta),
        math.degrees(first),
    )
