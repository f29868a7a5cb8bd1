"""How long and how close the trunk of a top or a dress is."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.parts.end_style import hem_band
from tapewise_core.parts.shape.band import close_fit
from tapewise_core.parts.shape.bust_room import Wish as BustRoom
from tapewise_core.style.style import Style
from tapewise_core.units import Length


class Fit(StrEnum):
    """How close a body is cut."""

    CLOSE = "close"
    FITTED = "fitted"
    STRAIGHT = "straight"
    EASED = "eased"


class TrunkStyle(Frozen):
    """``length`` from nape to hem, ``ease`` all round and at each level, ``shaping`` the fraction
    by which the side seam goes in to the waist.

    ``lengthened`` is what cloth that is stretched across loses in length, as a fraction;
    ``stretch`` is the cloth's in %.
    """

    length: Length
    ease: Length
    bust_ease: Length
    waist_ease: Length
    hip_ease: Length
    shaping: float
    darts: bool
    bust_room: BustRoom
    stretch: float
    lengthened: float

    @classmethod
    def of(cls, style: Style, length: Length | None = None) -> TrunkStyle:
        """Read it from a style; ``length`` is for a garment that does not let one choose it.

        One that ends at the waist goes in to it all the way and has no hip.
        """
        return cls(
            style.length("body-length", length) - hem_band(style),
            style.length("ease"),
            style.length("bust-ease"),
            style.length("waist-ease"),
            style.length("hip-ease", style.length("ease")),
            style.number("waist-shaping", 100.0) / 100,
            style.choice("waist-darts") == "auto",
            BustRoom(style.choice("bust-room")),
            style.number("stretch"),
            lengthened_by(Fit(style.choice("fit")), style.number("stretch")),
        )


def lengthened_by(fit: Fit, stretch: float) -> float:
    """Return the fraction by which a close fit is cut longer, for a stretch [%]."""
    return close_fit(stretch / 100).along if fit is Fit.CLOSE else 0.0
