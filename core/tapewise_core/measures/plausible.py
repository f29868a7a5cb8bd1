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
from tapewise_core.units import Unit

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


def out_of_range(values: Mapping[str, float], unit: Unit = Unit.CM) -> tuple[Finding, ...]:
    """Return a warning for each measure [cm] outside what is plausible for an adult.

    >>> out_of_range({"bust": 36.0, "hip": 98.0})[0].says.split(";")[0]
    "The bust of 36 cm is outside an adult's usual 62 to 190 cm"
    """
    return tuple(
        Finding((row.key,), Severity.WARNING, _unusual(row, values[row.key], unit))
        for row in CATALOGUE
        if row.key in values and not row.low <= values[row.key] <= row.high
    )


def contradictions(values: Mapping[str, float], unit: Unit = Unit.CM) -> tuple[Finding, ...]:
    """Return what does not go together among measures [cm].

    A waist above hip or bust is a hint, since full bodies have it; far above both it
    is a warning.

    >>> [finding.says for finding in contradictions({"wrist": 27.0, "upper_arm": 16.0})]
    ['The wrist of 27 cm is too large for the upper arm of 16 cm; were the two exchanged?']
    """
    found = [*_full_waist(values, unit), *_waist_in_one_place(values, unit)]
    for row in PROPORTIONS:
        if row.small in values and row.large in values:
            found += _disproportion(row, values, unit)
    return tuple(found)


def _unusual(row: Measure, cm: float, unit: Unit) -> str:
    usual = f"{unit.number(row.low * 10)} to {unit.spell(row.high * 10)}"
    return (
        f"The {row.name} of {unit.spell(cm * 10)} is outside an adult's usual {usual}; "
        f"check the reading and its unit."
    )


def _disproportion(row: Proportion, values: Mapping[str, float], unit: Unit) -> Iterator[Finding]:
    ratio = values[row.small] / values[row.large]
    if not row.least <= ratio <= row.most:
        word = "small" if ratio < row.least else "large"
        keys = (row.small, row.large)
        first, second = (_with_value(key, values, unit) for key in keys)
        says = f"The {first} is too {word} for the {second}; {row.advice}"
        yield Finding(keys, Severity.WARNING, says if says.endswith("?") else f"{says}.")


def _full_waist(values: Mapping[str, float], unit: Unit) -> Iterator[Finding]:
    """A waist above the hip, the bust or both: a hint, and far above both a warning."""
    waist = values.get("waist", 0.0)
    over = tuple(key for key in ("hip", "bust") if waist > values.get(key, waist))
    if not over:
        return
    largest = _with_value("waist", values, unit)
    smaller = " and the ".join(_with_value(key, values, unit) for key in over)
    says = f"The {largest} is larger than the {smaller}; "
    if len(over) == 2 and waist > max(values[key] for key in over) + FULLEST:
        says += "measure all three again."
        yield Finding(("waist", *over), Severity.WARNING, says)
    else:
        says += "a full figure can have that, otherwise two were exchanged."
        yield Finding(("waist", *over), Severity.HINT, says)


def _waist_in_one_place(values: Mapping[str, float], unit: Unit) -> Iterator[Finding]:
    """Three lengths that close a triangle only if the waist was the same for both."""
    keys = ("nape_to_floor", "waist_to_floor", "back_waist_length")
    if not all(key in values for key in keys):
        return
    whole, below, above = (values[key] for key in keys)
    if abs(above + below - whole - SLACK) > APART:
        first, second, third = (_with_value(key, values, unit) for key in keys)
        yield Finding(
            keys,
            Severity.HINT,
            f"The {second} and the {third} do not add up to the {first}; "
            f"was the waist in the same place for both?",
        )


def _with_value(key: str, values: Mapping[str, float], unit: Unit) -> str:
    return f"{NAMES[key]} of {unit.spell(values[key] * 10)}"
