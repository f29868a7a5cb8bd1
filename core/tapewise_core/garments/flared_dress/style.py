"""The flare as the wearer chose it."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.style.style import Style
from tapewise_core.units import Length


class FlareFrom(StrEnum):
    """Where a side begins to flare."""

    HIP = "hip"
    WAIST = "waist"


class FlareStyle(Frozen):
    """``amount`` is how far each side flares out to the hem."""

    start: FlareFrom
    amount: Length

    @classmethod
    def of(cls, style: Style) -> FlareStyle:
        """Read it from a style."""
        return cls(FlareFrom(style.choice("flare-from")), style.length("flare"))
