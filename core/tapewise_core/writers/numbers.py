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


def place(x: float, y: float) -> str:
    """Spell a place by its two numbers, as :func:`number` spells each: files have thousands.

    >>> place(-0.0001, 12.5)
    '0,12.5'
    """
    across, down = f"{x:.3f}".rstrip("0").rstrip("."), f"{y:.3f}".rstrip("0").rstrip(".")
    return f"{'0' if across == '-0' else across},{'0' if down == '-0' else down}"
