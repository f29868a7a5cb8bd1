"""An armhole without a sleeve, as the wearer chose its finish."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.parts.sleeve_style import SleeveKind
from tapewise_core.style.style import Style
from tapewise_core.units import Length, cm

ALLOWANCE = "neck-allowance"

TURNED_IN = cm(1.2)
"""An armhole's allowance where its edge is turned in, unless the neckline's is asked for (common
practice); its own curve may take less."""


class ArmholeFinish(StrEnum):
    """What an armhole without a sleeve is finished with."""

    BAND = "band"
    TURNED = "turned"
    FACING = "facing"


def is_bare(style: Style) -> bool:
    """Say whether a style has no sleeves."""
    return style.choice("sleeve", SleeveKind.SHORT) == SleeveKind.NONE


class BareStyle(Frozen):
    """The finish with its sizes; ``ratio`` is the band's length as a share of the armhole, None
    where it follows from the armhole drawn and from how far the cloth stretches (``stretch``, as a
    fraction); ``allowance`` is along the armhole, ``seam`` at the band's join."""

    finish: ArmholeFinish
    width: Length
    ratio: float | None
    facing: Length
    stretch: float
    allowance: Length
    seam: Length

    @classmethod
    def of(cls, style: Style) -> BareStyle | None:
        """Read it from a style; None where the garment has sleeves."""
        if not is_bare(style):
            return None
        asked = style.asked("armhole-band-ratio")
        finish, allowance = ArmholeFinish(style.choice("armhole-finish")), style.length(ALLOWANCE)
        if finish is ArmholeFinish.TURNED and not style.asked(ALLOWANCE):
            allowance = TURNED_IN
        return cls(
            finish,
            style.length("armhole-band-width"),
            style.number("armhole-band-ratio") if asked else None,
            style.length("armhole-facing-width"),
            style.number("stretch") / 100,
            allowance,
            style.length("seam-allowance"),
        )

    @property
    def turned(self) -> bool:
        """Whether the armhole's own edge is turned to the inside."""
        return self.finish is ArmholeFinish.TURNED
