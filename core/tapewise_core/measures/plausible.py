"""What an adult's measures can be, one by one and beside each other.

Nothing here blocks: a finding asks for a second reading. How unlikely a value
is, given all the others, is for statistics to say; this finds what contradicts.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from tapewise_core.measures.catalogue import CATALOGUE, NAMES
from tapewise_core.measures.finding import Finding, Severity
from tapewise_core.measures.measure import Measure
from tapewise_core.measures.proportions import PROPORTIONS, Proportion
from tapewise_core.text.told import Span, Told, joined, said
from tapewise_core.units import mm

APART = 6.0
"""How far [cm] nape to floor may be from back waist length plus waist to floor, corrected by SLACK.

In ANSUR I the two differ by 0.9 to 1.0 (standard deviation) where the waist is
one and the same; the narrowest waist and the navel lie 7 apart.
"""

SLACK = 1.7
"""By how much [cm] the way along the back is longer than the straight one (ANSUR I)."""

FULLEST = 5.0
"""How far [cm] a waist may lie above bust and hip both before that is a warning.

In ANSUR II, at the navel, 46 of 4,082 men and 10 of 1,986 women are above
both at all, 2 and 1 by more than this.
"""


def out_of_range(values: Mapping[str, float]) -> tuple[Finding, ...]:
    """Return a warning for each measure [cm] outside what is plausible for an adult.

    >>> from tapewise_core.text.told import Reader
    >>> from tapewise_core.units import Unit
    >>> Reader(Unit.CM).spell(out_of_range({"bust": 36.0, "hip": 98.0})[0].says).split(";")[0]
    "The bust of 36 cm is outside an adult's usual 62 to 190 cm"
    """
    return tuple(
        Finding((row.key,), Severity.WARNING, _unusual(row, values[row.key]))
        for row in CATALOGUE
        if row.key in values and not row.low <= values[row.key] <= row.high
    )


def contradictions(values: Mapping[str, float]) -> tuple[Finding, ...]:
    """Return what does not go together among measures [cm].

    A waist above hip or bust is a hint, since full bodies have it; far above both it
    is a warning.

    >>> from tapewise_core.text.told import Reader
    >>> from tapewise_core.units import Unit
    >>> found = contradictions({"wrist": 27.0, "upper_arm": 16.0})
    >>> [Reader(Unit.CM).spell(finding.says) for finding in found]
    ['The wrist of 27 cm is too large for the upper arm of 16 cm; were the two exchanged?']
    """
    found = [*_full_waist(values), *_waist_in_one_place(values)]
    for row in PROPORTIONS:
        if row.small in values and row.large in values:
            found += _disproportion(row, values)
    return tuple(found)


def _unusual(row: Measure, cm: float) -> Told:
    usual = Span(row.low * 10, row.high * 10)
    template = "The {} of {} is outside an adult's usual {}; check the reading and its unit."
    return said(template, row.name, mm(cm * 10), usual)


def _disproportion(row: Proportion, values: Mapping[str, float]) -> Iterator[Finding]:
    ratio = values[row.small] / values[row.large]
    if not row.least <= ratio <= row.most:
        word = "small" if ratio < row.least else "large"
        keys = (row.small, row.large)
        first, second = (_with_value(key, values) for key in keys)
        says = said("The {} is too {} for the {}; {}", first, word, second, row.advice)
        yield Finding(keys, Severity.WARNING, says)


def _full_waist(values: Mapping[str, float]) -> Iterator[Finding]:
    """A waist above the hip, the bust or both: a hint, and far above both a warning."""
    waist = values.get("waist", 0.0)
    over = tuple(key for key in ("hip", "bust") if waist > values.get(key, waist))
    if not over:
        return
    smaller = joined((_with_value(key, values) for key in over), " and the ")
    larger = said("The {} is larger than the {}; ", _with_value("waist", values), smaller)
    if len(over) == 2 and waist > max(values[key] for key in over) + FULLEST:
        says = (*larger, "measure all three again.")
        yield Finding(("waist", *over), Severity.WARNING, says)
    else:
        says = (*larger, "a full figure can have that, otherwise two were exchanged.")
        yield Finding(("waist", *over), Severity.HINT, says)


def _waist_in_one_place(values: Mapping[str, float]) -> Iterator[Finding]:
    """Three lengths that close a triangle only if the waist was the same for both."""
    keys = ("nape_to_floor", "waist_to_floor", "back_waist_length")
    if not all(key in values for key in keys):
        return
    whole, below, above = (values[key] for key in keys)
    if abs(above + below - whole - SLACK) > APART:
        first, second, third = (_with_value(key, values) for key in keys)
        template = (
            "The {} and the {} do not add up to the {}; was the waist in the same place for both?"
        )
        yield Finding(keys, Severity.HINT, said(template, second, third, first))


def _with_value(key: str, values: Mapping[str, float]) -> Told:
    return said("{} of {}", NAMES[key], mm(values[key] * 10))
