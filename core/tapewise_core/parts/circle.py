"""The parts of a circle that a skirt is cut from."""

from __future__ import annotations

import math

PARTS = {"1": 1.0, "3/4": 0.75, "1/2": 0.5, "1/4": 0.25}
"""The parts of a circle that are cut, by what a person types."""


def radius_of(edge: float, part: float) -> float:
    """Return the radius [mm] on which a part of a circle is as long as an edge [mm]; exact."""
    return edge / (2 * math.pi * part)
