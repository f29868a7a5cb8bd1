"""How deep the underarm lies and how wide the armhole is: by fit, and by the arm."""

from __future__ import annotations

import math
from collections.abc import Callable

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.roots import root
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

EASES = (0.0, 40.0, 80.0)
"""Ease round the body of a fitted, a straight and an eased garment [mm]; between them amounts
are interpolated, beyond them constant."""

DROPS = (10.0, 15.0, 20.0)
"""Underarm below the armscye line by fit [mm] (our choice; common practice 15 to 25)."""

RATIOS = (1.33, 1.36, 1.40)
"""Armhole over upper arm, at least, by fit (our choice; the body's own armscye is 1.28 of the
arm, sd 0.06 [ansur1])."""

SLEEVE_EASES = (20.0, 40.0, 60.0)
SLEEVE_EASE_RANGE = 40.0
"""Sleeve ease where none is asked, by fit, and how much more it may get [mm] (our choice)."""

BARE_DROP, BARE_RATIO, BARE_IN = 7.5, 1.27, 10.0
"""Without a sleeve: underarm, ratio, and the shoulder end so far in [mm] (common practice)."""

DEEPEST, DEEPEST_BARE, SHALLOWEST = 40.0, 25.0, 5.0
"""The underarm's limits below the armscye line [mm] (our choice)."""

THICKER = 5.0
"""An armhole is wider than the arm is thick by this [mm] (our choice)."""

FRONT_PART, FRONT_MOST, BACK_PART, BACK_MOST = 0.7, 10.0, 0.3, 5.0
"""What is short comes off across front and across back in these parts, so far [mm] (our choice)."""


NEAR = 0.02
"""An armhole's length is met this closely [mm]."""


class ByFit(Frozen):
    """What the fit decides: depth, least ratio, and the sleeve's ease where none is asked [mm]."""

    drop: float
    ratio: float
    sleeve_ease: float
    deepest: float


def by_fit(ease: float, *, sleeveless: bool = False) -> ByFit:
    """Return the armhole's amounts for an ease round the body [mm]."""
    if sleeveless:
        return ByFit(BARE_DROP, BARE_RATIO, 0.0, DEEPEST_BARE)
    return ByFit(
        _between(ease, DROPS), _between(ease, RATIOS), _between(ease, SLEEVE_EASES), DEEPEST
    )


def _between(ease: float, amounts: tuple[float, float, float]) -> float:
    for low, high, a, b in zip(EASES, EASES[1:], amounts, amounts[1:], strict=False):
        if ease <= high:
            return a + (b - a) * max(ease - low, 0.0) / (high - low)
    return amounts[-1]


class Narrowed(Frozen):
    """What comes off the half across front and back for the arm's thickness [mm]."""

    front: float
    back: float
    told: Told


def narrowed(arm: float, front_width: float, back_width: float) -> Narrowed:
    """Return what both halves of an armhole give to be as wide as the arm is thick, and 5 mm.

    A round arm is girth / π thick (exact).
    """
    short = max(arm / math.pi + THICKER - front_width - back_width, 0.0)
    front, back = min(FRONT_PART * short, FRONT_MOST), min(BACK_PART * short, BACK_MOST)
    if short < 1:
        return Narrowed(front, back, ())
    words = "Across front is {} and across back {} narrower, so that the arm has room."
    return Narrowed(front, back, said(words, mm(2 * front), mm(2 * back)))


def deepened(length: Callable[[float], float], start: float, least: float, deepest: float) -> float:
    """Return how deep the underarm has to lie for an armhole of a length [mm].

    ``length`` gives the armhole's for a depth below the armscye line and grows with it. Found
    to a fiftieth of a millimetre; ``start`` where that is enough, ``deepest`` where nothing is.
    """
    if length(start) >= least:
        return start
    if length(deepest) <= least:
        return deepest
    return root(lambda drop: length(drop) - least - NEAR, start, deepest, NEAR)
