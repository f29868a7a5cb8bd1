"""The parts of a circle that a skirt is cut from."""

from __future__ import annotations

PARTS = {"1": 1.0, "3/4": 0.75, "1/2": 0.5, "1/4": 0.25}
"""The parts of a circle that are cut, by what a person types."""
