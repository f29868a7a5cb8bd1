"""How long and how close the trunk of a top or a dress is."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from tapewise_core.style.style import Style
from tapewise_core.units import Length


class Fit(StrEnum):
    """How close a body is cut."""

    FITTED = "fitted"
    STRAIGHT = "straight"
    EASED = "eased"


@dataclass(frozen=True, slots=True)
class TrunkStyle:
    """``length`` from nape to hem, ``ease`` all round, ``shaping`` the fraction by which the side
    seam goes in to the waist."""

    length: Length
    ease: Length
    shaping: float

    @classmethod
    def of(cls, style: Style, length: Length | None = None) -> TrunkStyle:
        """Read it from a style; ``length`` is for a garment that does not let one choose it."""
        return cls(
            style.length("body-length", length),
            style.length("ease"),
            style.number("waist-shaping") / 100,
        )
