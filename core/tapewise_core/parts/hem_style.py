"""A top's or a dress's hem as the wearer chose it."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.style.style import Style
from tapewise_core.units import Length, mm


class HemShape(StrEnum):
    """A hem's shape."""

    STRAIGHT = "straight"
    CURVED = "curved"
    SPLIT = "split"


class HemStyle(Frozen):
    """``rise`` of a curved hem to the side, ``slit`` the length of a split one's. A garment that
    does not let one choose has a straight hem; one without a rise or a slit has none of any size.
    """

    shape: HemShape
    rise: Length
    slit: Length

    @classmethod
    def of(cls, style: Style) -> HemStyle:
        """Read it from a style."""
        return cls(
            HemShape(style.choice("hem", HemShape.STRAIGHT)),
            style.length("hem-rise", mm(0)),
            style.length("split-length", mm(0)),
        )

    @property
    def curved(self) -> bool:
        """Whether the hem rises to the sides."""
        return self.shape is HemShape.CURVED

    @property
    def split(self) -> bool:
        """Whether there is a slit at each side."""
        return self.shape is HemShape.SPLIT
