"""Amounts in a sentence that are told in a manner of their own: rough ones, spans, limits, lengths
on paper, thread and cloth as they are sold. Each is told in either unit."""

from __future__ import annotations

from fractions import Fraction

from tapewise_core.frozen import Frozen
from tapewise_core.units import MM_PER_INCH, MM_PER_YARD, Unit, inside, sixteenths


class Amount(Frozen):
    """Whatever is told in a reader's unit, in centimetres where none is said."""

    def tell(self, unit: Unit) -> str:
        """Spell it in a unit."""
        raise NotImplementedError

    def __str__(self) -> str:
        return self.tell(Unit.CM)


class About(Amount):
    """A rough amount [mm], or a span of them: told to the quarter inch where inches are read."""

    low: float
    high: float | None = None

    def tell(self, unit: Unit) -> str:
        """Spell it in a unit."""
        ends = [end for end in (self.low, self.high) if end is not None]
        if unit is Unit.IN:
            quarter = MM_PER_INCH / 4
            ends = [max(round(end / quarter), 1) * quarter for end in ends]
        return f"{' to '.join(map(unit.number, ends))} {unit.value}"


class Span(Amount):
    """From one length to another [mm], the unit told once."""

    low: float
    high: float

    def tell(self, unit: Unit) -> str:
        """Spell it in a unit."""
        return f"{unit.number(self.low)} to {unit.spell(self.high)}"


class Bound(Amount):
    """The least (``up``) or the most (``down``) that may be typed [mm], told no nearer than a
    millimetre or a sixteenth of an inch and never beyond, so that it passes as it was told."""

    mm: float
    rounded: str

    def tell(self, unit: Unit) -> str:
        """Spell it in a unit."""
        return f"{inside(self.mm, self.rounded, unit)} {unit.value}"


class OnPaper(Amount):
    """A length on printed paper [mm]: told in mm as printers have it, or to the sixteenth of an
    inch; ``tenths`` of a millimetre are shown even where there are none.

    What is at least or at most so much is rounded that way (``up``, ``down``), so that it
    passes when it is typed as it was told.
    """

    mm: float
    rounded: str = ""
    tenths: bool = False

    def tell(self, unit: Unit) -> str:
        """Spell it in mm or in inches."""
        if unit is Unit.IN:
            return f"{sixteenths(self.mm, self.rounded)} in"
        return f"{self.mm:.1f} mm" if self.tenths else f"{round(self.mm, 1):g} mm"


class Spool(Amount):
    """So much thread [m]: told in whole metres, or in yards, as it is sold."""

    metres: float

    def tell(self, unit: Unit) -> str:
        """Spell it in metres or yards."""
        yards = self.metres * 1000 / (36 * MM_PER_INCH)
        return f"{yards:.0f} yd" if unit is Unit.IN else f"{self.metres:.0f} m"


class PaperSpan(Amount):
    """What may be chosen on printed paper, from one length to another [mm], both inside it."""

    low: float
    high: float

    def tell(self, unit: Unit) -> str:
        """Spell it in mm or in inches, the unit told once."""
        if unit is Unit.IN:
            return f"{sixteenths(self.low, 'up')} to {sixteenths(self.high, 'down')} in"
        return f"{self.low:g} to {self.high:g} mm"


class Yardage(Amount):
    """A length of cloth as it is bought [mm]: told to the centimetre in cm, and in yards to the
    eighth where inches are read.

    >>> Yardage(1450.0).tell(Unit.CM), Yardage(1485.9).tell(Unit.IN), Yardage(685.8).tell(Unit.IN)
    ('145 cm', '1 5/8 yd', '3/4 yd')
    """

    mm: float

    def tell(self, unit: Unit) -> str:
        """Spell it in centimetres or in yards."""
        if unit is Unit.CM:
            return f"{round(self.mm / 10):g} cm"
        whole, rest = divmod(Fraction(round(self.mm / MM_PER_YARD * 8), 8), 1)
        return f"{' '.join(str(word) for word in (whole, rest) if word) or '0'} yd"
