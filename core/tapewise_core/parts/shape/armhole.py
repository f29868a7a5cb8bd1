"""An armhole of two convex curves, upright where they join at the across point."""

from __future__ import annotations

import math
from dataclasses import dataclass

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.segments import Cubic
from tapewise_core.parts.shape.rounded import least_radius, rounded
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

INSIDE_SHOULDER = 5.0
"""The across point lies at least this far inside the shoulder end [mm] (our choice)."""

CARRIED_MOST = 15.0
"""A shoulder is carried out by no more than this to get there [mm] (our choice)."""

FROM_SQUARE = 4.0
"""The armhole leaves the shoulder within this of square [degrees] (our choice)."""

MOST_IN = 0.9
"""How far in the across point may lie, as a share of the way the tangent allows (our choice)."""

INSIDE_SIDE = 28.0
"""The across point lies at least this far inside the side seam [mm] (our choice)."""

FRONT_AT, BACK_AT = 0.52, 0.50
"""The across point's height, as a share of the way from shoulder end to underarm (practice)."""

TIGHT = 25.0
"""A bottom rounder than this is said to be tight [mm] (our choice)."""

MOVED = 2.0
"""Moves of less are not worth a word [mm] (our choice): they lie within a tape's own error."""


@dataclass(frozen=True, slots=True)
class Armhole:
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
    def upper_radius(self) -> float:
        """The least radius of the upper curve [mm]."""
        return least_radius(_cubic(self.path, 0))

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


@dataclass(frozen=True, slots=True)
class Placed:
    """Where the across point lies after all limits."""

    x: float
    told: tuple[Told, ...]


def carried_out(across: float, shoulder_end: float) -> float:
    """Return how far a shoulder is carried out so that the across point lies inside it [mm]."""
    return min(max(across + INSIDE_SHOULDER - shoulder_end, 0.0), CARRIED_MOST)


def placed(
    shoulder: Point, slope: float, across: float, height: float, side: float, name: str
) -> Placed:
    """Return the across point's distance from the fold [mm], moved no further than it must.

    ``slope`` is the shoulder's [degrees], ``height`` how far the point lies below its end,
    ``side`` the distance of the underarm; ``name`` is what the width is called. Each limit
    that moves the point is told.
    """
    x, told = across, []
    if x > shoulder.x - INSIDE_SHOULDER:
        x = shoulder.x - INSIDE_SHOULDER
        told.append(_moved(name, across - x, "narrower", "the shoulder ends there"))
    deepest = MOST_IN * height * math.tan(math.radians(slope + FROM_SQUARE))
    if shoulder.x - x > deepest:
        before, x = x, shoulder.x - deepest
        told.append(_moved(name, x - before, "wider", "the shoulder reaches far beyond it"))
    if side - x < INSIDE_SIDE:
        before, x = x, side - INSIDE_SIDE
        told.append(_moved(name, before - x, "narrower", "the side seam leaves no room"))
    return Placed(x, tuple(words for words in told if words))


def _moved(name: str, by: float, how: str, why: str) -> Told:
    if by < MOVED:
        return ()
    return said("Half the {} is drawn {} {} than measured: {}.", name, mm(by), how, why)


def across_point(
    shoulder: Point, slope: float, across: float, underarm: Point, *, front: bool
) -> tuple[Point, tuple[Told, ...]]:
    """Return where the two curves join, and what was moved to get there."""
    height = (FRONT_AT if front else BACK_AT) * (underarm.y - shoulder.y)
    name = "across front" if front else "across back"
    point = placed(shoulder, slope, across, height, underarm.x, name)
    return Point(point.x, shoulder.y + height), point.told


def armhole(
    shoulder: Point, slope: float, across: float, underarm: Point, *, front: bool
) -> Armhole:
    """Return half an armhole for a shoulder end, a shoulder's slope [degrees], and a half width.

    Each curve lies inside the corner of its two tangents, so that it can never turn back
    (exact), and is about as round as can be.
    """
    q, told = across_point(shoulder, slope, across, underarm, front=front)
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
