"""A shoulder placket as the wearer chose it."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.style.style import Style
from tapewise_core.units import Length, mm


class Placket(StrEnum):
    """Which of the wearer's shoulders opens."""

    NONE = "none"
    LEFT = "left"
    RIGHT = "right"


class PlacketStyle(Frozen):
    """``length`` from the neckline along the shoulder, nothing without a placket; ``buttons`` in
    all, the one on the neckband among them; ``chosen``: the wearer herself chose the length."""

    side: Placket
    length: Length
    buttons: int
    chosen: bool = False

    @classmethod
    def of(cls, style: Style) -> PlacketStyle:
        """Read it from a style; a garment that has none to choose has none."""
        side = Placket(style.choice("shoulder-placket", Placket.NONE))
        if side is Placket.NONE:
            return cls(side, mm(0), 0)
        buttons, key = int(style.choice("placket-buttons")), "placket-length"
        return cls(side, style.length(key), buttons, style.asked(key))

    @property
    def opens(self) -> float:
        """How much the open placket adds to the neck's opening [mm]: both its edges."""
        return 2 * self.length.mm
