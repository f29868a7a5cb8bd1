"""The machines that people have."""

from __future__ import annotations

SETS = (
    "overlocker, coverstitch",
    "overlocker",
    "zigzag",
    "overlocker, zigzag",
    "coverstitch, zigzag",
    "overlocker, coverstitch, zigzag",
    "straight",
    "overlocker, straight",
    "hand",
)
"""Sets of machines between which the sewing differs."""
