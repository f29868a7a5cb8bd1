"""Waist darts: upright, pointed at both ends, or open into a waist seam."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point

ABOVE_BUST, UNDER_POINT = 10.0, 25.0
"""A back dart ends 10 above the bust line, a front dart 25 under the bust point [mm] (common
practice)."""

BACK_DOWN, FRONT_DOWN = 0.65, 0.45
"""How far down a dart runs, as shares of the hip's depth (common practice)."""

CLEAR = 30.0
"""A front dart keeps clear of the side seam by this [mm] (our choice)."""


class WaistDart(Frozen):
    """A dart's middle [mm from the fold], its intake, its upper point, waist and lower point.

    ``bottom`` is the waist itself where the dart opens into a waist seam.
    """

    middle: float
    intake: float
    top: float
    waist: float
    bottom: float

    def path(self) -> Path:
        """The dart's outline, from its upper point round."""
        up, low = Point(self.middle, self.top), Point(self.middle, self.bottom)
        left, right = (Point(self.middle + s * self.intake / 2, self.waist) for s in (-1, 1))
        if self.bottom == self.waist:
            return ruled(left, up, right)
        return ruled(up, right, low, left, up)


class DartLevels(Frozen):
    """Bust, waist and hip depths [mm]; ``hip`` None on a bodice."""

    bust: float
    waist: float
    hip: float | None


def back_dart(intake: float, at: DartLevels, side: float) -> WaistDart:
    """Return the back's: halfway to the side on the waist line; ``side`` is the side there."""
    return WaistDart(side / 2, intake, at.bust - ABOVE_BUST, at.waist, _bottom(at, BACK_DOWN))


def front_dart(intake: float, at: DartLevels, side: float, apex: float, lower: float) -> WaistDart:
    """Return the front's, under the bust point; ``lower`` is how far the front is let down."""
    middle = min(apex, side - intake - CLEAR)
    top = at.bust + lower + UNDER_POINT
    return WaistDart(middle, intake, top, at.waist + lower, _bottom(at, FRONT_DOWN) + lower)


def _bottom(at: DartLevels, share: float) -> float:
    return at.waist if at.hip is None else at.waist + share * (at.hip - at.waist)
