"""What is done before cutting: the cloth washed and tried, the printed pattern checked.

Amounts without another source are common practice.
"""

from __future__ import annotations

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.labels import allowance_words, title
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.text.told import Told, said
from tapewise_core.units import MM_PER_INCH, Unit, mm

MARKED = {Unit.CM: 100.0, Unit.IN: 4 * MM_PER_INCH}
"""The stretch of cloth marked for the fold test [mm]: 10 cm, or 4 in."""

SQUARE = {Unit.CM: "100 mm", Unit.IN: "4 in"}
"""The printed square a reader measures, by the name that stands in it."""

LATER = (
    "Do not wash the cloth before you cut it: the pieces are drawn larger by what it shrinks, and "
    "the garment is too large until it was washed."
)

WASH = "Wash and dry the cloth as the garment will be: cotton jersey shrinks 5 to 8 % in length."


def of_the_cloth(cloth: Cloth, unit: Unit) -> tuple[Told, ...]:
    """Return what is done to a cloth before cutting, whatever is cut from it."""
    marked = MARKED[unit]
    return (
        (WASH if cloth.washed else LATER,),
        said(
            "Measure the stretch: fold the cloth across, mark {} on the fold, stretch until it "
            "resists; at least {} must be reached. Let go: cloth that stays long bags when it is "
            "worn.",
            mm(marked),
            mm(marked * (1 + cloth.stretch)),
        ),
    )


def before_cutting(
    pattern: Pattern, cloth: Cloth, unit: Unit, *, allowances: bool
) -> tuple[Told, ...]:
    """Return what to do and to look at before cutting; ``allowances`` says whether the pattern has
    them."""
    return (
        *of_the_cloth(cloth, unit),
        said(
            "Check the {} square on the printed pattern with a ruler before you cut anything.",
            SQUARE[unit],
        ),
        (
            "Lay the cloth flat without stretching, its lengthwise ribs straight; a piece cut off "
            "grain twists when worn, and loses width.",
        ),
        _included(pattern, unit) if allowances else _added(pattern, unit),
    )


def _included(pattern: Pattern, unit: Unit) -> Told:
    return said(
        "Allowances are in the pattern, edge by edge; sew with those, not with a habit. {}.",
        _edges(pattern, unit),
    )


def _added(pattern: Pattern, unit: Unit) -> Told:
    return said(
        "The pattern is without allowances: chalk them on the cloth round every piece, and cut "
        "along the chalk. {}.",
        _edges(pattern, unit),
    )


def _edges(pattern: Pattern, unit: Unit) -> str:
    """What every piece gets, pieces alike told together."""
    alike: dict[str, list[str]] = {}
    for piece in pattern.pieces:
        alike.setdefault(allowance_words(piece, unit), []).append(title(piece.name))
    return ". ".join(f"{', '.join(names)}: {words}" for words, names in alike.items())
