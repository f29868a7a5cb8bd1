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
from tapewise_core.text.amounts import About
from tapewise_core.text.told import Told, joined, said
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

    >>> found = out_of_range({"bust": 36.0, "hip": 98.0})[0]
    >>> from tapewise_core.text.told import Reader
    >>> from tapewise_core.units import Unit
    >>> Reader(Unit.CM).spell(found.says).split(".")[0]
    'Bust 36 cm: grown people have 62 to 190 cm'
    """
    return tuple(
        Finding((row.key,), Severity.WARNING, _unusual(row, values[row.key]))
        for row in CATALOGUE
        if row.key in values and not row.low <= values[row.key] <= row.high
    )


def contradictions(values: Mapping[str, float]) -> tuple[Finding, ...]:
    """Return what does not go together among measures [cm].

    A waist above hip or bust is a hint, since many have it; far above both it
    is a warning.

    >>> (found,) = contradictions({"wrist": 25.0, "upper_arm": 18.0})
    >>> from tapewise_core.text.told import Reader
    >>> from tapewise_core.units import Unit
    >>> Reader(Unit.CM).spell(found.says).split(". ")[0]
    'Wrist 25 cm beside upper arm 18 cm: usually it is 4.5 to 15.5 cm beside that'
    """
    found = [*_full_waist(values), *_waist_in_one_place(values)]
    for row in PROPORTIONS:
        if row.small in values and row.large in values:
            found += _disproportion(row, values)
    return tuple(found)


IF_RIGHT = "If both are right, keep them: the pattern follows them."


def _unusual(row: Measure, cm: float) -> Told:
    return said(
        "{} {}: grown people have {}. Are the reading and its unit right? If they are, keep it: "
        "the pattern follows it.",
        row.name.capitalize(), mm(cm * 10), About(row.low * 10, row.high * 10),
    )  # fmt: skip


def _disproportion(row: Proportion, values: Mapping[str, float]) -> Iterator[Finding]:
    small, large = values[row.small], values[row.large]
    if not row.least <= small / large <= row.most:
        keys = (row.small, row.large)
        usual = About(_half_cm(row.least * large), _half_cm(row.most * large))
        says = said(
            "{} {} beside {} {}: usually it is {} beside that. {} {}",
            NAMES[row.small].capitalize(), mm(small * 10), NAMES[row.large], mm(large * 10),
            usual, row.asks, IF_RIGHT,
        )  # fmt: skip
        yield Finding(keys, Severity.WARNING, says)


def _half_cm(cm: float) -> float:
    """To the half centimetre, in mm: a range is never sharper."""
    return round(cm * 2) * 5


def _full_waist(values: Mapping[str, float]) -> Iterator[Finding]:
    """A waist above the hip, the bust or both: a hint, and far above both a warning."""
    waist = values.get("waist", 0.0)
    over = tuple(key for key in ("hip", "bust") if waist > values.get(key, waist))
    if not over:
        return
    smaller = joined([_with_value(key, values) for key in over], " and the ")
    odd = said("The {} is larger than the {}; the waist is usually the smaller.",
               _with_value("waist", values), smaller)  # fmt: skip
    if len(over) == 2 and waist > max(values[key] for key in over) + FULLEST:
        asked = said("Do all three read the same again? If they do, keep them.")
        yield Finding(("waist", *over), Severity.WARNING, joined((odd, asked)))
    else:
        asked = said("Were two exchanged? If not, keep them: many have it so.")
        yield Finding(("waist", *over), Severity.HINT, joined((odd, asked)))


def _waist_in_one_place(values: Mapping[str, float]) -> Iterator[Finding]:
    """Three lengths that close a triangle only if the waist was the same for both."""
    keys = ("nape_to_floor", "waist_to_floor", "back_waist_length")
    if not all(key in values for key in keys):
        return
    whole, below, above = (values[key] for key in keys)
    apart = abs(above + below - whole - SLACK)
    if apart > APART:
        says = said(
            "Together the {} and the {} miss the {} by {}; with one waist for both they come "
            "within {}. Was the waist in the same place for both? If it was, keep them.",
            *(_with_value(key, values) for key in keys[1:]), _with_value(keys[0], values),
            mm(apart * 10), mm(APART * 10),
        )  # fmt: skip
        yield Finding(keys, Severity.HINT, says)


def _with_value(key: str, values: Mapping[str, float]) -> Told:
    return said("{} of {}", NAMES[key], mm(values[key] * 10))
