"""How a skirt is held at the waist, as the wearer chose it."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.style.style import Style
from tapewise_core.units import Length


class WaistFinish(StrEnum):
    """What holds a skirt."""

    ELASTIC = "elastic"
    BAND = "band"


class WaistStyle(Frozen):
    """``ease`` is what the waist's edge has over the waist; ``seam`` a seam's allowance."""

    finish: WaistFinish
    ease: Length
    elastic_width: Length
    band_width: Length
    band_length: Length
    seam: Length

    @classmethod
    def of(cls, style: Style) -> WaistStyle:
        """Read it from a style."""
        return cls(
            WaistFinish(style.choice("waist-finish")),
            style.length("waist-ease"),
            style.length("elastic-width"),
            style.length("band-width"),
            style.length("band-length"),
            style.length("seam-allowance"),
        )

    @property
    def casing(self) -> bool:
        """Whether an elastic runs in a casing."""
        return self.finish is WaistFinish.ELASTIC
