"""How the app says dates, counts and amounts."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from tapewise_core.measures.body import Value
from tapewise_core.units import Unit

MONTHS = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
]

UNITS = {Unit.CM: "centimetres", Unit.IN: "inches"}


def day(when: date) -> str:
    """Spell a date.

    >>> day(date(2026, 11, 2))
    '2 November 2026'
    """
    return f"{when.day} {MONTHS[when.month - 1]} {when.year}"


def count(number: int, one: str, many: str | None = None) -> str:
    """Spell a number of things.

    >>> count(1, "measure"), count(0, "measure"), count(2, "person", "people")
    ('1 measure', 'no measures', '2 people')
    """
    word = one if number == 1 else many or f"{one}s"
    return f"{number or 'no'} {word}"


def listed(words: Sequence[str]) -> str:
    """Join words as a sentence does.

    >>> listed(["a"]), listed(["a", "b", "c"])
    ('a', 'a, b and c')
    """
    return " and ".join([", ".join(words[:-1]), words[-1]] if len(words) > 1 else list(words))


def sentence(text: str) -> str:
    """Begin with a capital."""
    return text[:1].upper() + text[1:]


def shortened(text: str, most: int) -> str:
    """Cut a text that has more characters than there is room for.

    >>> shortened("longer", 6), shortened("longer sleeves", 8)
    ('longer', 'longer…')
    """
    return text if len(text) <= most else text[: most - 1].rstrip() + "…"


def off_by(value: Value | None, unit: Unit) -> str:
    """Spell how far an estimate may be off, or nothing for what was measured."""
    if value is None or value.plus_minus is None:
        return ""
    return f"± {unit.number(value.plus_minus * 10)}"


def span(value: Value, unit: Unit) -> str:
    """Spell an estimate's interval."""
    low, high = value.interval or (value.cm, value.cm)
    return f"{unit.number(low * 10)} to {unit.spell(high * 10)}"


def size(many: int) -> str:
    """Spell a file's size.

    >>> size(900), size(14_200), size(2_400_000)
    ('900 bytes', '14 kB', '2.4 MB')
    """
    if many < 1000:
        return f"{many} bytes"
    return f"{many / 1000:.0f} kB" if many < 1_000_000 else f"{many / 1_000_000:.1f} MB"
