"""The sleeve's cap, solved: as wide as asked and as long as the armhole, both halves at once.

The width of each half falls as the height rises, so one height makes them add up to the width
asked (exact).
"""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.roots import root
from tapewise_core.geometry.segments import Cubic
from tapewise_core.parts.shape.half_cap import NEAR, back_half, front_half, widths
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

SHORTER = 0.005
"""A jersey cap is so much shorter than its armhole, which is stretched to it (our choice; 0 to
1 % is common practice)."""

LOWEST, HIGHEST, OF_HALF = 0.16, 0.36, 0.92
"""The cap's height over the armhole's length; a quarter is common practice. Never more than 0.92
of the shorter half (our choice)."""

CALM, STIFF = 0.75, 0.80
"""Cap over the armhole's height: where no ease is asked no more than 0.75 (our choice; common
practice in jersey 0.67); over 0.80 the arm does not lift freely (our choice)."""

HALF_CM = 5.0
"""Ease that nobody asked for comes in half centimetres [mm] (our choice)."""


class Cap(Frozen):
    """A cap from its back corner over the crown to its front corner, the corners on one level.

    The crown lies on y = 0, the corners on ``height``; the back corner on x = 0. ``least`` and
    ``widest`` are what the armhole lets a sleeve be round [mm].
    """

    height: float
    back_width: float
    front_width: float
    asked: float
    least: float
    widest: float
    back: Cubic
    front: Cubic
    shorter: float = SHORTER

    @property
    def width(self) -> float:
        """The sleeve's width at the corners [mm]."""
        return self.back_width + self.front_width

    @property
    def path(self) -> Path:
        """The whole cap, back corner to front corner."""
        return Path((self.back, self.front))

    @property
    def crown(self) -> Point:
        """The shoulder's notch."""
        return self.back.end

    @property
    def pitch(self) -> float:
        """How far the shoulder's notch lies before the sleeve's middle, to the front [mm]."""
        return self.back_width - self.width / 2

    def notch(self, lower_armhole: float, *, front: bool) -> float:
        """Return the walked distance from the corner of that side to its notch [mm].

        ``lower_armhole`` is the armhole from underarm to across point.
        """
        return lower_armhole * (1 - self.shorter)

    def held_back(self, arm: float) -> Told:
        """Say what ease the armhole allows, where another was asked; ``arm`` is the girth [mm]."""
        if abs(self.width - self.asked) < 1:
            return ()
        words = "This armhole takes a sleeve with {} to {} of ease, not {}."
        return said(words, mm(self.least - arm), mm(self.widest - arm), mm(self.asked - arm))

    def stiff(self, armhole_height: float) -> Told:
        """Say that the arm will not lift freely, where the cap is that high."""
        if self.height <= STIFF * armhole_height:
            return ()
        return said(
            "The cap is high: the arm will not lift freely. More sleeve ease, or a higher "
            "underarm, helps."
        )


def cap(
    front: float, back: float, width: float, shorter: float = SHORTER, lean: float = 0.0
) -> Cap:
    """Return the cap for the two halves of an armhole and a width [mm], ``shorter`` by a fraction.

    ``lean`` is how much the underarm seams slant inwards for each length downwards; the cap leaves
    its corners square to them.

    Out of reach of the cap's heights it is as near as they allow; ``Cap.held_back`` says so.
    """
    halves = front * (1 - shorter), back * (1 - shorter)
    least, widest = reach(front, back, shorter, lean)
    low, high = _heights(front, back, shorter)
    wanted = min(max(width, least), widest)
    height = root(lambda h: sum(widths(h, *halves, lean)) - wanted, low, high, NEAR)
    wf, wb = widths(height, *halves, lean)
    return Cap(
        height,
        wb,
        wf,
        width,
        least,
        widest,
        back_half(wb, height, lean),
        front_half(wf, height, lean, wb + wf),
        shorter,
    )


def reach(
    front: float, back: float, shorter: float = SHORTER, lean: float = 0.0
) -> tuple[float, float]:
    """Return the least and the greatest width that an armhole's halves allow [mm]."""
    halves = front * (1 - shorter), back * (1 - shorter)
    low, high = _heights(front, back, shorter)
    return sum(widths(high, *halves, lean)), sum(widths(low, *halves, lean))


def width_at(front: float, back: float, height: float) -> float:
    """Return the width of a cap of a height [mm]."""
    return sum(widths(height, front * (1 - SHORTER), back * (1 - SHORTER)))


def _heights(front: float, back: float, shorter: float) -> tuple[float, float]:
    """The least and the greatest height for an armhole's halves [mm]."""
    whole, kept = front + back, 1 - shorter
    return LOWEST * whole + NEAR, min(HIGHEST * whole, OF_HALF * kept * min(front, back)) - NEAR


def unasked_ease(
    front: float, back: float, arm: float, armhole_height: float, low: float, high: float
) -> float:
    """Return the sleeve's ease where none is asked [mm]: the least, in half centimetres from
    ``low``, that keeps the cap at 0.75 of the armhole's height; ``high`` at the most."""
    lowest, highest = _heights(front, back, SHORTER)
    height = min(max(CALM * armhole_height, lowest), highest)
    needed = width_at(front, back, height) - arm - 1e-6
    if needed <= low:
        return low
    steps = math.floor((high - low) / HALF_CM + 1e-9)
    return low + HALF_CM * min(math.ceil((needed - low) / HALF_CM), steps)
