"""The order of the measures: by region, so that nobody turns round twice, helper's work last."""

from __future__ import annotations

from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.measures.measure import Measure

ALONE = tuple(row for row in CATALOGUE if not row.helper)
HELPED = tuple(row for row in CATALOGUE if row.helper)
"""What a second pair of hands makes better; it comes last and together."""

ORDER: tuple[Measure, ...] = (*ALONE, *HELPED)
KEYS = tuple(row.key for row in ORDER)


def group(row: Measure) -> str:
    """Return the heading a measure stands under."""
    return "with a helper" if row.helper else row.region.value


def after(key: str) -> str | None:
    """Return the measure that follows, or None after the last."""
    place = KEYS.index(key) + 1
    return KEYS[place] if place < len(KEYS) else None


def before(key: str) -> str | None:
    """Return the measure before, or None before the first."""
    place = KEYS.index(key)
    return KEYS[place - 1] if place else None


def first_open(missing: tuple[str, ...]) -> str:
    """Return the first measure still to take, or the first of all."""
    return next((key for key in KEYS if key in missing), KEYS[0])
