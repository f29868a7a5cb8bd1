"""What a person finds out about her cloth with two pins, a ruler and a wash."""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.errors import ReadingError
from tapewise_core.text.told import said
from tapewise_core.text.typed import parse_length
from tapewise_core.units import MM_PER_INCH, Unit
from tapewise_core.units import mm as millimetres

FOLD = {Unit.CM: 100.0, Unit.IN: 4 * MM_PER_INCH}
"""The stretch of cloth marked for the fold test [mm]: 10 cm, or 4 in."""

SQUARE = {Unit.CM: 200.0, Unit.IN: 8 * MM_PER_INCH}
"""The side of the square marked for the wash test [mm]: 20 cm, or 8 in (common practice)."""

MOST = 0.2
"""Cloth that shrinks by more than this was marked or read wrongly, a fraction (our choice)."""


def stretch_from_fold(text: str, unit: Unit) -> float:
    """Return a cloth's stretch [%] from how far the marked fold reaches when it resists.

    Raises ReadingError for what is no length, or shorter than the fold that was marked.

    >>> stretch_from_fold("15", Unit.CM), stretch_from_fold("6 1/2", Unit.IN)
    (50.0, 62.5)
    """
    reached, marked = parse_length(text, unit), FOLD[unit]
    if not marked <= reached <= 3 * marked:
        template = "{} of cloth reach {} or more when pulled, and hardly over {}; {} cannot be."
        lengths = (millimetres(size) for size in (marked, marked, 3 * marked, reached))
        raise ReadingError(said(template, *lengths))
    return round((reached - marked) / marked * 100, 1)


def shrinkage_from_wash(text: str, unit: Unit) -> float:
    """Return what a cloth shrinks [%] from what a side of the marked square is after its wash; 0
    where it grew, which jersey does across.

    Raises ReadingError for what is no length, or can't be left of the square.

    >>> shrinkage_from_wash("19", Unit.CM), shrinkage_from_wash("7 1/2", Unit.IN)
    (5.0, 6.2)
    """
    left, marked = parse_length(text, unit), SQUARE[unit]
    least, most = marked * (1 - MOST), marked * (1 + MOST)
    if not least <= left <= most:
        template = "{} of cloth are {} to {} after a wash; {} cannot be."
        raise ReadingError(said(template, *map(millimetres, (marked, least, most, left))))
    return max(round((marked - left) / marked * 100, 1), 0.0)


TESTS = {
    "stretch": stretch_from_fold,
    "stretch-along": stretch_from_fold,
    "shrinkage": shrinkage_from_wash,
    "shrinkage-across": shrinkage_from_wash,
}
"""By the option it finds out: what a reading gives."""


def tested(typed: Mapping[str, str], unit: Unit) -> dict[str, str]:
    """Return options of the cloth from what was read in its tests; what was left empty stays out.

    Raises ReadingError for the first reading that cannot be.
    """
    found = {key: TESTS[key](text, unit) for key, text in typed.items() if text.strip()}
    return {key: f"{value:g}" for key, value in found.items()}
