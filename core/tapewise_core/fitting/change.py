"""What a fitting may change: each change by its key, in words, and how it moves a draft.

A change moves options, those that everybody may choose or those that only fittings set. Of its
ways the first whose options a garment has is taken; a garment with none of them is told why it
has no use for the change.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

Way = Mapping[str, float]
"""Options, and how much each is moved for each length, percent or degree of a change."""


class Measured(StrEnum):
    """What a change is measured in."""

    LENGTH = "cm"
    PERCENT = "%"
    DEGREES = "°"


class Change(Frozen, kw_only=True):
    """One change: ``says`` is what is done, braces for its amount; ``lacks`` says what a garment
    with none of its ``ways`` has not. A garment has a use for it only with the options ``beside``,
    which it does not move."""

    key: str
    says: str
    ways: tuple[Way, ...]
    lacks: str
    measured: Measured = Measured.LENGTH
    beside: frozenset[str] = frozenset()

    def moves(self, amount: float, has: frozenset[str]) -> dict[str, float] | None:
        """Return how far each option moves [mm, percent, degrees] for an amount [cm, percent,
        degrees] in a garment that has some options, or None where it has no way."""
        times = 10.0 if self.measured is Measured.LENGTH else 1.0
        for way in self.ways:
            if has.issuperset({*way, *self.beside}):
                return {key: round(share * amount * times, 6) for key, share in way.items()}
        return None

    def amount_told(self, amount: float) -> Told:
        """Return an amount as a sentence's part."""
        if self.measured is Measured.LENGTH:
            return (mm(amount * 10),)
        blank = " " if self.measured is Measured.PERCENT else ""
        return (f"{amount:g}{blank}{self.measured.value}",)

    def told(self, amount: float) -> Told:
        """Return the change with its amount, such as “back neck raised 0.5 cm”."""
        return said(self.says, self.amount_told(amount))

    @property
    def plain(self) -> str:
        """The change in words without an amount."""
        return " ".join(self.says.replace("{}", "").split())
