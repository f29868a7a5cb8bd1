"""Front and back: one seam traced twice, the front wider by the cup, the girth the same."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.parts.shape.curves import warped

ORDINARY_CUP = 40.0
"""Bust less high bust up to which a front is an ordinary one [mm] (our choice)."""

MOST_CUP = 40.0
"""How much of the cup in a half front the shares answer to, at the most [mm] (our choice)."""

HIP_MOST = 5.0
"""At the hip a half front is no more than this wider than the quarter [mm] (our choice)."""

BACK_WIDER, CUP_SHARE, CUP_MOST = 7.5, 1 / 16, 5.0
"""Half across front = half across back − 7.5 + 1/16 of bust less high bust, 5 at the most [mm];
the back stays 1 to 3 cm wider in all (common practice)."""

ACROSS_ROOM = 3.0
"""A half across back gets so much room [mm] (our choice)."""

ROUND_FROM, ROUND_MOST = 23.0, 5.0
"""A round back of more than 23 widens a half across back by half of the rest, 5 at most [mm]
(our choice)."""


class Share(Frozen):
    """How much wider a half front, and narrower a half back, is than the seam's quarter [mm].

    ``cup`` is the cup's width in a half front beyond an ordinary one.
    """

    cup: float
    bust: float
    hip: float
    bust_level: float
    hip_level: float

    def at(self, y: float) -> float:
        """Return the share at a height: the bust's down to its line, then an S to the hip's."""
        t = min(max((y - self.bust_level) / (self.hip_level - self.bust_level), 0.0), 1.0)
        return self.bust - (self.bust - self.hip) * t * t * (3 - 2 * t)

    def front(self, seam: Path) -> Path:
        """Return the front's own tracing of the seam."""
        return self._traced(seam, 1.0)

    def back(self, seam: Path) -> Path:
        """Return the back's own tracing; at every height the two add up to twice the seam."""
        return self._traced(seam, -1.0)

    def _traced(self, seam: Path, sign: float) -> Path:
        if self.bust == self.hip == 0.0:
            return seam
        return warped(seam, lambda point: Point(point.x + sign * self.at(point.y), point.y), 2)


def share(
    bust: float, high_bust: float, bust_level: float, hip_level: float, *, cupped: bool = True
) -> Share:
    """Return the shares from two girths [mm]; not ``cupped`` (men, grown-on sleeves): alike."""
    more = max(bust - high_bust, 0.0) if cupped else 0.0
    cup = max((more - ORDINARY_CUP) / 2, 0.0)
    wider = min(more, ORDINARY_CUP) / 8 + min(cup, MOST_CUP) / 2
    return Share(cup, wider, min(wider, HIP_MOST), bust_level, hip_level)


class Across(Frozen):
    """Half across back and half across front as drafted [mm]."""

    back: float
    front: float


def across(
    across_back: float,
    cup: float = 0.0,
    across_front: float | None = None,
    surplus: float = 0.0,
) -> Across:
    """Return the half widths from the whole across back [mm].

    ``cup`` is bust less high bust, 0 for men; ``across_front`` the whole one where it is
    measured; ``surplus`` the front's length beyond the back's, which a round back has negative.
    """
    rounder = min(max(-surplus - ROUND_FROM, 0.0) / 2, ROUND_MOST)
    half = across_back / 2 + ACROSS_ROOM
    front = half - BACK_WIDER + min(max(cup, 0.0) * CUP_SHARE, CUP_MOST)
    if across_front is not None:
        front = across_front / 2 + ACROSS_ROOM
    return Across(half + rounder, front)
