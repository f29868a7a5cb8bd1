"""The marks that a side seam bears at the body's levels."""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.drafting.piece import Notch
from tapewise_core.geometry.crossings import distance_at_height
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point

CLEAR = 10.0
"""A notch nearer to the end of its edge is left out [mm]."""


def side_notches(side: Path, points: Mapping[str, Point]) -> tuple[Notch, ...]:
    """Waist and hip on a side seam, where they lie clear of its ends."""
    found = []
    for level, strokes in (("waist", 1), ("hip", 2)):
        at = points.get(f"{level}_side")
        distance = None if at is None else distance_at_height(side, at.y)
        if distance is not None and CLEAR < distance < side.length() - CLEAR:
            found.append(Notch("side", distance, level, strokes))
    return tuple(found)
