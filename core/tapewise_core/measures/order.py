"""The order in which measures are taken, on screen and on paper alike.

Height first, for it says most about everything else; then the girths from the top down, then the
lengths, so that nobody turns round twice; what a second pair of hands makes better comes last and
together. Common practice.
"""

from __future__ import annotations

from collections.abc import Collection

from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.measures.measure import Measure

GROUPS = ("first of all", "girths, from the top", "lengths", "with a helper")
"""The headings, in their order."""


def group(row: Measure) -> str:
    """Return the heading a measure stands under."""
    if row.key == "height":
        return GROUPS[0]
    if row.helper:
        return GROUPS[3]
    return GROUPS[1] if row.is_girth else GROUPS[2]


ORDER: tuple[Measure, ...] = tuple(sorted(CATALOGUE, key=lambda row: GROUPS.index(group(row))))
"""Every measure; within a heading as the catalogue has them, from the head to the floor."""

KEYS = tuple(row.key for row in ORDER)


def ordered(keys: Collection[str]) -> tuple[str, ...]:
    """Return some measures in the order in which they are taken.

    >>> ordered({"waist", "back_waist_length", "height", "bust"})
    ('height', 'bust', 'waist', 'back_waist_length')
    """
    return tuple(key for key in KEYS if key in keys)
