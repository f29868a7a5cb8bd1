"""What an option's value is, and how a value of a kind is told."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.text.told import Told
from tapewise_core.units import Length, mm

Value = float | str | Length
"""What an option may be set to: a number, a word or a length."""


class ValueKind(StrEnum):
    """What an option's value is."""

    LENGTH = "length"
    PERCENT = "percent"
    RATIO = "ratio"
    WEIGHT = "weight"
    CHOICE = "choice"
    SWITCH = "switch"


WORDS = frozenset({ValueKind.CHOICE, ValueKind.SWITCH})
"""The kinds whose values are words; all others have limits."""

MARKS = {ValueKind.PERCENT: " %", ValueKind.WEIGHT: " g/m²"}
"""What follows a number of a kind when it is told."""


def value_told(kind: ValueKind, value: Value) -> Told:
    """Return a value as a sentence's part; of a length the result alone, without its working.

    >>> value_told(ValueKind.PERCENT, 50.0)
    ('50 %',)
    """
    if isinstance(value, Length):
        return (mm(value.mm),)
    if isinstance(value, str):
        return (str(value),)
    return (f"{value:g}{MARKS.get(kind, '')}",)
