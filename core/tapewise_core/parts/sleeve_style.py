"""A sleeve as the wearer chose it."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import dataclass
from tapewise_core.style.style import Style
from tapewise_core.units import Length


class SleeveKind(StrEnum):
    """A sleeve's kind, which sets its usual length."""

    CAP = "cap"
    SHORT = "short"
    ELBOW = "elbow"
    THREE_QUARTER = "three-quarter"
    LONG = "long"


@dataclass(frozen=True, slots=True)
class SleeveStyle:
    """``length`` from the shoulder point to the hem, ``ease`` round the arm and at the hem."""

    length: Length
    ease: Length
    hem_ease: Length

    @classmethod
    def of(cls, style: Style) -> SleeveStyle:
        """Read it from a style."""
        return cls(
            style.length("sleeve-length"),
            style.length("sleeve-ease"),
            style.length("sleeve-hem-ease"),
        )
