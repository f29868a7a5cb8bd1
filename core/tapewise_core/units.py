"""Lengths that remember how they were worked out, and the units they are told in."""

from __future__ import annotations

import math
from enum import StrEnum
from fractions import Fraction
from functools import total_ordering

from tapewise_core.frozen import Frozen

MM_PER_INCH = 25.4
"""Exact: the international inch, 1959."""

MM_PER_YARD = 36 * MM_PER_INCH
"""Exact: three feet."""


class Unit(StrEnum):
    """The unit a person reads and types lengths in.

    >>> Unit.CM.spell(254.04), Unit.IN.spell(254.0), Unit.IN.spell(40.0)
    ('25.4 cm', '10 in', '1 5/8 in')
    >>> Unit.IN.spell(8.0)
    '5/16 in'
    """

    CM = "cm"
    IN = "in"

    def spell(self, mm: float) -> str:
        """Spell a length [mm] with its unit."""
        return f"{self.number(mm)} {self}"

    def number(self, mm: float) -> str:
        """Spell a length [mm] without its unit, as :meth:`spell` rounds it."""
        return _centimetres(mm) if self is Unit.CM else _inches(mm)

    @property
    def grain(self) -> float:
        """How far a spelt length may be from the true one [mm]."""
        return 0.5 if self is Unit.CM else MM_PER_INCH / 16


def _centimetres(mm: float) -> str:
    """To the millimetre, as a tape shows it."""
    return f"{round(mm / 10, 1) + 0:g}".replace("-", "−")


def _inches(mm: float) -> str:
    """To the eighth; below one inch to the sixteenth, where an eighth would spoil an allowance."""
    parts = 16 if abs(mm) < MM_PER_INCH else 8
    pieces = Fraction(round(abs(mm) / MM_PER_INCH * parts), parts)
    return _signed(mm, pieces)


def sixteenths(mm: float, rounded: str = "") -> str:
    """Spell a length [mm] in inches to the sixteenth, without its unit.

    To the nearest, or ``up`` or ``down``; what is within a hair of a sixteenth is on it.

    >>> sixteenths(12.0), sixteenths(914.4), sixteenths(12.0, "down"), sixteenths(12.0, "up")
    ('1/2', '36', '7/16', '1/2')
    """
    exact = round(abs(mm) / MM_PER_INCH * 16, 6)
    whole = {"up": math.ceil(exact), "down": math.floor(exact)}.get(rounded, round(exact))
    return _signed(mm, Fraction(whole, 16))


def inside(mm: float, rounded: str, unit: Unit) -> str:
    """Spell a limit [mm] to the millimetre or the sixteenth of an inch, without its unit.

    Rounded ``up`` or ``down`` as numbers go, so also below zero.

    >>> inside(30.0, "up", Unit.IN), inside(-30.0, "up", Unit.IN), inside(62.1, "down", Unit.CM)
    ('1 3/16', '−1 1/8', '6.2')
    """
    if unit is Unit.CM:
        tenths = round(mm, 6)
        return _centimetres(math.ceil(tenths) if rounded == "up" else math.floor(tenths))
    return sixteenths(mm, rounded if mm >= 0 else {"up": "down", "down": "up"}[rounded])


def _signed(mm: float, pieces: Fraction) -> str:
    whole, rest = divmod(pieces, 1)
    spelt = " ".join(str(word) for word in (whole, rest) if word) or "0"
    return f"−{spelt}" if mm < 0 and pieces else spelt


@total_ordering
class Length(Frozen):
    """A length [mm] with the working that gave it.

    The number draws the line, and alone is compared; the working is what a person reads.
    Floats in the working are millimetres, spelt in the reader's unit when it is told.

    >>> hip = named("hip", 1000)
    >>> (hip / 4 + cm(1)).tell(Unit.CM)
    'hip 100 cm ÷ 4 + 1 cm = 26 cm'
    >>> ((hip + cm(4)) / 4).tell(Unit.IN)
    '(hip 39 3/8 in + 1 5/8 in) ÷ 4 = 10 1/4 in'
    >>> hip.tell(Unit.CM)
    'hip = 100 cm'
    """

    mm: float
    working: tuple[str | float, ...]
    is_sum: bool = False

    def __eq__(self, other: object) -> bool:
        return self.mm == other.mm if isinstance(other, Length) else NotImplemented

    def __lt__(self, other: Length) -> bool:
        return self.mm < other.mm if isinstance(other, Length) else NotImplemented

    def __hash__(self) -> int:
        return hash(self.mm)

    def __add__(self, other: Length) -> Length:
        if other._is_nothing():
            return self
        if other._is_plain_negative():
            return self - Length(-other.mm, (-other.mm,))
        return Length(self.mm + other.mm, (*self.working, " + ", *other.working), True)

    def __sub__(self, other: Length) -> Length:
        if other._is_nothing():
            return self
        if other._is_plain_negative():
            return self + Length(-other.mm, (-other.mm,))
        return Length(self.mm - other.mm, (*self.working, " − ", *other._factor()), True)

    def __mul__(self, times: float) -> Length:
        return Length(self.mm * times, (*self._factor(), f" × {times:.4g}"))

    def __truediv__(self, parts: float) -> Length:
        return Length(self.mm / parts, (*self._factor(), f" ÷ {parts:.4g}"))

    def tell(self, unit: Unit) -> str:
        """Return the working and its result, or the result alone if that is all."""
        result = unit.spell(self.mm)
        shown = self.working[:1] if self._is_named() else self.working
        working = "".join(part if isinstance(part, str) else unit.spell(part) for part in shown)
        working = working.rstrip()
        return result if working == result else f"{working} = {result}"

    def __str__(self) -> str:
        return self.tell(Unit.CM)

    def called(self, name: str) -> Length:
        """Return the same length under a name, its working forgotten."""
        return named(name, self.mm)

    def _is_nothing(self) -> bool:
        """Nobody adds a zero, whether it has a name or not."""
        return not self.mm and not self.is_sum and len(self.working) <= 2

    def _is_named(self) -> bool:
        """Say whether the working is nothing but a name and its length."""
        return not self.is_sum and len(self.working) == 2 and self.working[1] == self.mm

    def _is_plain_negative(self) -> bool:
        """A person reads one sign, not two: “− 4 cm”, never “+ −4 cm”."""
        return self.mm < 0 and len(self.working) == 1 and isinstance(self.working[0], float)

    def _factor(self) -> tuple[str | float, ...]:
        return ("(", *self.working, ")") if self.is_sum else self.working


def cm(amount: float) -> Length:
    """Return a plain length given in centimetres, its own working."""
    return Length(amount * 10, (amount * 10.0,))


def mm(amount: float) -> Length:
    """Return a plain length given in millimetres, its own working."""
    return Length(amount, (float(amount),))


def named(name: str, mm: float) -> Length:
    """Return a length [mm] known by a name, such as a measure."""
    return Length(mm, (f"{name} ", mm))
