"""An armhole of two convex curves, upright where they join at the across point."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.segments import Cubic
from tapewise_core.parts.shape.across_point import FROM_SQUARE, MOST_IN, across_point
from tapewise_core.parts.shape.rounded import least_radius, rounded
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

TIGHT = 25.0
"""A bottom rounder than this is said to be tight [mm] (our choice)."""


class Armhole(Frozen):
    """Half an armhole, from the shoulder end to the underarm.

    ``corner`` is where the lower curve's tangents cross, ``diagonal`` how far the curve passes
    from it, on the line to the middle between its ends' squares: what a pencil needs. ``told``
    has every move of the across point with its reason.
    """

    path: Path
    shoulder: Point
    across: Point
    underarm: Point
    upper_corner: Point
    corner: Point
    told: tuple[Told, ...]

    @property
    def radius(self) -> float:
        """The least radius of the lower curve [mm]."""
        return least_radius(_cubic(self.path, 1))

    @property
    def length(self) -> float:
        """The stitched length [mm]."""
        return self.path.length()

    @property
    def lower_length(self) -> float:
        """From the underarm to the across point [mm], where the notch is."""
        return self.path.segments[1].length()

    @property
    def width(self) -> float:
        """From the across point out to the underarm [mm]."""
        return self.underarm.x - self.across.x

    @property
    def diagonal(self) -> float:
        """From the corner to the curve along the line that halves the corner [mm]."""
        a, b = (self.across - self.corner).unit(), (self.underarm - self.corner).unit()
        along = (a + b).unit()
        low, high = 0.0, 1.0
        curve = self.path.segments[1]
        for _ in range(40):
            t = (low + high) / 2
            side = along.cross(curve.at(t) - self.corner)
            low, high = (t, high) if side * along.cross(a) > 0 else (low, t)
        return (curve.at(low) - self.corner).length()


def _cubic(path: Path, index: int) -> Cubic:
    part = path.segments[index]
    if not isinstance(part, Cubic):
        raise TypeError("an armhole is two curves")
    return part


def armhole(
    shoulder: Point, slope: float, across: float, underarm: Point, *, front: bool
) -> Armhole:
    """Return half an armhole for a shoulder end, a shoulder's slope [degrees], and a half width.

    Each curve lies inside the corner of its two tangents, so that it can never turn back
    (exact), and is about as round as can be.
    """
    q, told = across_point(shoulder, slope, across, underarm, front=front)
    return armhole_through(shoulder, slope, q, underarm, told)


def armhole_through(
    shoulder: Point, slope: float, q: Point, underarm: Point, told: tuple[Told, ...] = ()
) -> Armhole:
    """Return half an armhole whose across point is settled."""
    corner = _upper_corner(shoulder, slope, q)
    upper = rounded(shoulder, corner, q)
    return _whole(upper, Point(q.x, underarm.y), underarm, corner, told)


def _whole(
    upper: Cubic, corner: Point, underarm: Point, upper_corner: Point, told: tuple[Told, ...]
) -> Armhole:
    lower = rounded(upper.end, corner, underarm)
    return Armhole(
        Path((upper, lower)), upper.start, upper.end, underarm, upper_corner, corner, told
    )


def with_bottom(drawn: Armhole, underarm: Point, turn: float) -> Armhole:
    """Return the armhole with another underarm, square to a side seam turned by an angle.

    ``turn`` is how far the seam was turned outwards about the across point [degrees].
    """
    q, upper = drawn.across, _cubic(drawn.path, 0)
    corner = Point(q.x, underarm.y + (underarm.x - q.x) * math.tan(math.radians(turn)))
    return _whole(upper, corner, underarm, drawn.upper_corner, drawn.told)


def _upper_corner(shoulder: Point, slope: float, q: Point) -> Point:
    """Where the tangent at the shoulder end crosses the upright through the across point.

    Square to the shoulder where that reaches down far enough, else turned as little as it takes.
    """
    dx, dy = shoulder.x - q.x, q.y - shoulder.y
    wanted = math.atan2(dx, 0.5 * dy)
    near = math.radians(FROM_SQUARE)
    square = math.radians(slope)
    angle = min(max(wanted, square - near), square + near)
    angle = max(angle, math.atan2(dx, MOST_IN * dy), 1e-3)
    return Point(q.x, shoulder.y + dx / math.tan(angle))


def tight(drawn: Armhole) -> Told:
    """Say that the bottom is tight, where it is."""
    if drawn.radius >= TIGHT:
        return ()
    words = "The armhole's bottom is tight (radius {}): more ease, or narrower across, opens it."
    return said(words, mm(drawn.radius))
