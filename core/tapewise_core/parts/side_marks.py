"""The body's levels on a draft, and the marks that a side seam bears at them."""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Notch
from tapewise_core.geometry.crossings import distance_at_height
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point

BUST_BELOW_ARMSCYE = 0.25
"""How far from the armscye line to the waist the bust is fullest (common practice)."""


CLEAR = 10.0
"""A notch nearer to the end of its edge is left out [mm]."""


def levels_of(draft: Draft) -> dict[str, float]:
    """Return the body's levels on a draft [mm]."""
    levels = {"armscye": draft["A"].y, "waist": draft["W"].y, "hip": draft["J"].y}
    levels["bust"] = levels["armscye"] + BUST_BELOW_ARMSCYE * (levels["waist"] - levels["armscye"])
    return levels


def side_notches(side: Path, points: Mapping[str, Point]) -> tuple[Notch, ...]:
    """Waist and hip on a side seam, where they lie clear of its ends."""
    found = []
    for level, strokes in (("waist", 1), ("hip", 2)):
        at = points.get(f"{level}_side")
        distance = None if at is None else distance_at_height(side, at.y)
        if distance is not None and CLEAR < distance < side.length() - CLEAR:
            found.append(Notch("side", distance, level, strokes))
    return tuple(found)
