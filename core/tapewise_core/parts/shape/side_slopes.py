"""What is asked of a side seam, and how it leans at waist and hip."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point
from tapewise_core.parts.shape.below_hip import Out

HIP_SLOPE = 0.12
"""How far a seam that knows no flare leans on at the hip, at the most; half of the mean slope
from bust to hip below that (our choice)."""

CALMER = 0.75
"""The slope at the hip is no more than this of the mean slope from waist to hip, so that a seam
that hardly widens does not first go in and then out again (our choice)."""

STEEPEST = 2.0
"""A waist between bust and hip: a cubic's end slope is no more than twice its mean slope (our
choice; up to three times it cannot turn back, exact, but then a waist that passes its
neighbour's width jumps to another curve)."""


class SideLevels(Frozen):
    """Heights below the nape [mm]. ``hip`` is None on a bodice that ends at its waist seam."""

    underarm: float
    bust: float
    waist: float
    hip: float | None


class SideQuarters(Frozen):
    """A quarter of the girth with a quarter of the ease at each level [mm]."""

    bust: float
    waist: float
    hip: float


class SideWish(Frozen):
    """What is asked of the seam.

    ``shaping`` is the share, 0 to 1, of the way from the unshaped seam to the waist's own
    quarter; ``flare`` the slope below the hip, None without one; ``out`` how far it goes out there
    in all, where it is the slope from the hip on that was asked; ``darts`` allows waist darts;
    ``grown_on`` lets the seam run straight up into a grown-on sleeve's underarm; ``upright``
    keeps it from leaning in at the bust line, as a grown-on cap's does.
    """

    shaping: float = 0.5
    flare: float | None = None
    out: Out | None = None
    darts: bool = True
    grown_on: bool = False
    upright: bool = False


def unshaped(at: SideLevels, wide: SideQuarters) -> float:
    """Return the quarter that one cubic from bust to hip has on the waist line [mm]."""
    if at.hip is None:
        return wide.bust
    h = at.hip - at.bust
    t = (at.waist - at.bust) / h
    slope = _plain_slope(Point(wide.bust, at.bust), Point(wide.hip, at.hip))
    return wide.bust + (wide.hip - wide.bust) * t * t * (3 - 2 * t) + slope * h * (t**3 - t * t)


def _plain_slope(bust: Point, hip: Point) -> float:
    return min(max(0.5 * (hip.x - bust.x) / (hip.y - bust.y), 0.0), HIP_SLOPE)


def hip_slope(bust: Point, waist: Point, hip: Point, flare: float | None) -> float:
    """The slope at the hip, never more than the seam can reach without turning back."""
    mean = max(hip.x - waist.x, 0.0) / (hip.y - waist.y)
    if flare is None:
        return min(_plain_slope(bust, hip), CALMER * mean)
    return min(max(flare, 0.0), STEEPEST * mean)


def waist_slope(bust: Point, waist: Point, hip: Point, slope: float) -> float:
    """0 at a waist narrower or wider than both neighbours; between them, what keeps the bend.

    The slope that makes both cubics bend alike at the waist (exact), held so that neither turns
    back.
    """
    h1, h2 = waist.y - bust.y, hip.y - waist.y
    first, second = (waist.x - bust.x) / h1, (hip.x - waist.x) / h2
    if first * second <= 0:
        return 0.0
    sign = math.copysign(1.0, first)
    wanted = (3 * (first / h1 + second / h2) - slope / h2) / (2 * (1 / h1 + 1 / h2))
    return sign * min(max(sign * wanted, 0.0), STEEPEST * min(abs(first), abs(second)))
