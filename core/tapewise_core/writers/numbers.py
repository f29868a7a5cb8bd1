"""Numbers as files spell them: to a thousandth, no exponent, never minus zero."""

from __future__ import annotations


def rounded(value: float) -> float:
    """Return a length to a thousandth of a millimetre, never minus zero."""
    return round(value, 3) + 0.0


def number(value: float) -> str:
    """Spell a number to a thousandth, without trailing zeros.

    >>> number(12345.6784), number(-0.0001), number(40.0)
    ('12345.678', '0', '40')
    """
    spelt = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if spelt == "-0" else spelt
