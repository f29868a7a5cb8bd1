"""What a hand may do to a value, and how much each counts."""

from __future__ import annotations

from enum import StrEnum


class Kind(StrEnum):
    """What the hand did, in a person's words."""

    INCHES = "typed in inches"
    CENTIMETRES = "typed in centimetres"
    HALF = "half the girth"
    DECIMAL = "decimal place slipped"
    DIGITS = "two digits swapped"
    MISTYPED = "a digit mistyped"
    MISSING = "a digit missing"
    SWAPPED = "two measures swapped"
    TWICE = "entered twice"
    NONE = ""


PRIOR = {
    Kind.INCHES: 6e-3,
    Kind.CENTIMETRES: 6e-3,
    Kind.HALF: 4e-3,
    Kind.DECIMAL: 5e-3,
    Kind.DIGITS: 4e-3,
    Kind.MISTYPED: 2.5e-3,
    Kind.MISSING: 4e-3,
    Kind.SWAPPED: 0.25,
    Kind.TWICE: 2e-3,
    Kind.NONE: 1.5e-3,
}
"""How much each counts beside a value that is right, which counts 1 (our choice).

Tried on the fitted halves: slips in one value count as rarely as they happen, so that hardly
any is named that did not; an exchange counts for more, since it has to explain two values at
once, and pays for every partner it might have been with. ``NONE`` is all else that can go wrong.
"""
UNNAMED = frozenset({Kind.MISTYPED, Kind.NONE})
"""Of these nothing better can be said than that the value is odd."""
