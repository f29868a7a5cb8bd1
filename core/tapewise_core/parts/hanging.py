"""What a skirt weighs on the waist it hangs from, and how a jersey waist grows under it."""

from __future__ import annotations

from collections.abc import Iterable

from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.outline import area
from tapewise_core.text.told import Told

GROWTH, AT_WEIGHT = 20.0, 340.0
"""A jersey waist grows by 20 to 50 mm under a full skirt of 340 g (common practice). The lower
end is taken, in proportion to the weight: a bodice too long can be taken up, one too short not."""

MOST_GROWTH = 50.0
"""No more than this is taken off for weight [mm] (common practice)."""


def weight(covered: float, cloth: float) -> float:
    """Return what an area [mm²] of a cloth [g/m²] weighs [g]."""
    return covered / 1e6 * cloth


def finished_area(pieces: Iterable[Piece]) -> float:
    """Return the area of pieces within their stitching lines, all copies of them [mm²]."""
    return sum(area(p.stitch_line()) * p.count * (2 if p.on_fold else 1) for p in pieces)


def growth(grams: float) -> float:
    """Return how much longer a bodice of jersey hangs under a weight [mm]."""
    return min(GROWTH * grams / AT_WEIGHT, MOST_GROWTH)


def hangs(grams: float, held_by: str) -> Told:
    """Say what the skirt weighs, and what carries it.

    >>> hangs(340.4, "the elastic")
    ('The skirt weighs about 340 g, and all of it hangs from the elastic.',)
    """
    return (f"The skirt weighs about {grams:.0f} g, and all of it hangs from {held_by}.",)
