"""A sleeve as the wearer chose it."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.parts.end_style import cuff
from tapewise_core.style.style import Style
from tapewise_core.units import Length, mm


class SleeveKind(StrEnum):
    """A sleeve's kind, which sets its usual length."""

    NONE = "none"
    CAP = "cap"
    SHORT = "short"
    ELBOW = "elbow"
    THREE_QUARTER = "three-quarter"
    LONG = "long"


WITH_SLEEVE = tuple(kind for kind in SleeveKind if kind is not SleeveKind.NONE)
"""The kinds of which something is drafted, the shortest first."""


class SleeveStyle(Frozen):
    """``length`` from the shoulder point to the hem, ``ease`` round the arm and at the hem."""

    length: Length
    ease: Length
    hem_ease: Length

    @classmethod
    def of(cls, style: Style) -> SleeveStyle:
        """Read it from a style; a sleeve that is not there is nowhere long or wide."""
        if style.choice("sleeve", SleeveKind.SHORT) == SleeveKind.NONE:
            return cls(mm(0), mm(0), mm(0))
        return cls(
            style.length("sleeve-length") - cuff(style),
            style.length("sleeve-ease"),
            style.length("sleeve-hem-ease"),
        )
