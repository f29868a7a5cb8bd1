"""How long hem bands and cuffs are, as shares of the edges they are sewn to."""

from __future__ import annotations

from tapewise_core.drafting.facts import Hem
from tapewise_core.parts.shape.band import USABLE, at_least
from tapewise_core.proofs.stride import least_round

SHORTER = 0.9
"""A hem band's length as a share of the hem (common practice)."""


def hem_ratio(hem: float, over: float, stretch: float, free: float) -> float:
    """Return a band's share of a hem [mm]: nine tenths, or as much more as what passes and a
    stride need, and as the seam can be stretched by; ``stretch`` is a fraction."""
    least = max(over / (1 + USABLE * stretch) / hem, 1 / (1 + USABLE * stretch), free / hem)
    return at_least(min(max(SHORTER, least), 1.0))


def free_for(hem: Hem | None, band: float) -> float:
    """Return how long a band of a width has to be for a stride [mm]; 0 above the knee."""
    if hem is None or hem.knee is None or hem.ankle is None:
        return 0.0
    end = hem.below_waist + band
    return float(least_round(end, hem.knee, hem.ankle)) if end >= hem.knee else 0.0


def cuff_ratio(end: float, arm: float, hand: float | None, stretch: float) -> float:
    """Return a cuff's share of a sleeve's end [mm]: as close as the arm, but so that the seam can
    be sewn and a hand passes."""
    stretched = 1 + USABLE * stretch
    least = max(1 / stretched, (hand or 0.0) / stretched / end)
    return at_least(min(max(arm / end, least), 1.0))
