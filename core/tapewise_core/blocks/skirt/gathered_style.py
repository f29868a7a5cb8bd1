"""All that a gathered skirt reads of what its wearer chose."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.style.cloth import ClothStyle
from tapewise_core.style.style import Style
from tapewise_core.units import Length


class GatheredStyle(Frozen):
    """``fullness`` is what the skirt's upper edge has for each length of the waist's, and
    ``tier_fullness`` each lower tier for each length of the one above; ``usable_width`` is what
    they may take of the cloth's [mm], ``cloth_weight`` in grams for a square metre."""

    length: Length
    fullness: float
    tiers: int
    tier_fullness: float
    seam: Length
    hem_allowance: Length
    usable_width: float
    cloth_weight: float

    @classmethod
    def of(cls, style: Style) -> GatheredStyle:
        """Read it from a style."""
        return cls(
            style.length("skirt-length"),
            style.number("fullness"),
            int(style.choice("tiers")),
            style.number("tier-fullness"),
            style.length("seam-allowance"),
            style.length("skirt-hem-allowance"),
            ClothStyle.of(style).usable_width,
            style.number("cloth-weight"),
        )

    @property
    def ratios(self) -> tuple[float, ...]:
        """What each tier is gathered by, from the top down."""
        return (self.fullness, *[self.tier_fullness] * (self.tiers - 1))

    @property
    def growth(self) -> float:
        """How many times the waist's edge the hem is."""
        return self.fullness * self.tier_fullness ** (self.tiers - 1)
