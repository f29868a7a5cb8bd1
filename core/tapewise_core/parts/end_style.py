"""How a sleeve's end and a hem are finished, as the wearer chose it."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.style.cloth import ClothStyle
from tapewise_core.style.style import Style
from tapewise_core.units import Length, mm


class SleeveFinish(StrEnum):
    """What a sleeve ends in."""

    TURNED = "turned"
    CUFF = "cuff"


class HemFinish(StrEnum):
    """What a hem ends in."""

    TURNED = "turned"
    BAND = "band"


def cuff(style: Style) -> Length:
    """Return a cuff's finished width; nothing where the sleeve is turned, or is not there."""
    wanted = style.choice("sleeve-finish", SleeveFinish.TURNED) == SleeveFinish.CUFF
    there = wanted and style.choice("sleeve", "short") != "none"
    return style.length("cuff-width") if there else mm(0)


def hem_band(style: Style) -> Length:
    """Return a hem band's finished width; nothing where the hem is turned."""
    wanted = style.choice("hem-finish", HemFinish.TURNED) == HemFinish.BAND
    return style.length("hem-band-width") if wanted else mm(0)


def banded(style: Style) -> tuple[str, ...]:
    """Return the hems that a band is sewn to."""
    found = (("hem", hem_band(style)), ("sleeve_hem", cuff(style)))
    return tuple(name for name, width in found if width.mm)


class EndStyle(Frozen):
    """The widths of hem band and cuff, 0 without, and their lengths as a share of their edges, None
    where these follow from body and cloth; ``capped`` sleeves are caps; ``stretch`` is a fraction,
    ``seam`` the allowance; ``across`` is what lies across the cloth [mm]."""

    band: Length
    band_ratio: float | None
    cuff: Length
    cuff_ratio: float | None
    capped: bool
    stretch: float
    seam: Length
    across: float

    @classmethod
    def of(cls, style: Style) -> EndStyle:
        """Read it from a style."""

        def ratio(key: str) -> float | None:
            return style.number(key) if style.asked(key) else None

        return cls(
            hem_band(style),
            ratio("hem-band-ratio"),
            cuff(style),
            ratio("cuff-ratio"),
            style.choice("sleeve", "short") == "cap",
            style.number("stretch") / 100,
            style.length("seam-allowance"),
            ClothStyle.of(style).usable_width,
        )
