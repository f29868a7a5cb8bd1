"""A raglan sleeve in two halves: as wide as asked, each seam as long as its body's.

The widths of both halves fall as the underarm's level sinks, and one level makes them add up to the
width asked (exact).
"""

from __future__ import annotations

from functools import cache

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.roots import root
from tapewise_core.parts.shape.half_raglan import (
    FLATTEST,
    NEAR,
    HalfSleeve,
    bend_at,
    half_sleeve,
    steepest,
)
from tapewise_core.parts.shape.raglan_line import RaglanLine

STIFF = 65.0
"""Over this fall the arm does not lift freely [degrees] (our choice)."""


HIGHEST = 60.0
"""The underarm's level is at least so far down the overarm from the shoulder point [mm] (our
choice): beyond where shoulder and overarm would meet, which square shoulders and wide sleeves
come near to."""


class RaglanSleeve(Frozen):
    """Both halves, and what of their width [mm] was asked and could be had."""

    back: HalfSleeve
    front: HalfSleeve
    asked: float
    least: float
    widest: float

    @property
    def width(self) -> float:
        """The sleeve's width at the underarm [mm]."""
        return self.back.width + self.front.width

    @property
    def level(self) -> float:
        """From the shoulder point along the overarm to the underarm's level [mm]."""
        return (self.back.level + self.front.level) / 2

    @property
    def stiff(self) -> bool:
        """Whether it hangs so steeply that the arm does not lift freely."""
        return (self.back.falls + self.front.falls) / 2 > STIFF


def raglan_sleeve(
    back: RaglanLine, front: RaglanLine, width: float, lean: float = 0.0
) -> RaglanSleeve:
    """Return the sleeve for both halves' lines and a width [mm].

    ``lean`` is how much the underarm seams slant inwards for each length downwards; the raglan
    seams meet them square. Out of reach it is as near as the lines allow.
    """
    high, low = _levels((back, front), lean)

    @cache
    def drawn(bend: float) -> tuple[HalfSleeve, HalfSleeve]:
        one = half_sleeve(back, bend, lean)
        return one, half_sleeve(front, bend_at(front, one.level, lean), lean)

    def wide(bend: float) -> float:
        one, other = drawn(bend)
        return one.width + other.width

    flat, steep = (bend_at(back, level, lean) for level in (high, low))
    wanted = min(max(width, wide(steep)), wide(flat))
    found = drawn(root(lambda bend: wide(bend) - wanted, flat, steep, NEAR))
    return RaglanSleeve(*found, width, wide(steep), wide(flat))


def reach(back: RaglanLine, front: RaglanLine, lean: float = 0.0) -> tuple[float, float]:
    """Return the least and the greatest width that both halves' lines allow [mm]."""
    lines = back, front
    high, low = _levels(lines, lean)
    return _width(lines, low, lean), _width(lines, high, lean)


Lines = tuple[RaglanLine, RaglanLine]


def _levels(lines: Lines, lean: float) -> tuple[float, float]:
    """The highest and the lowest level of the underarm that both halves can have [mm]."""
    high = max(HIGHEST, *(half_sleeve(line, FLATTEST, lean).level for line in lines))
    low = min(half_sleeve(line, steepest(line), lean).level for line in lines)
    return high, max(low, high)


def _width(lines: Lines, level: float, lean: float) -> float:
    return sum(half_sleeve(line, bend_at(line, level, lean), lean).width for line in lines)
