"""The cloth a garment is cut from, and how far the seams that join it stretch."""

from __future__ import annotations

from dataclasses import dataclass

SELVEDGES = 30.0
"""What both selvedges together take off a cloth's width [mm] (common practice, 20 to 40)."""


@dataclass(frozen=True, slots=True)
class Cloth:
    """Stretches are fractions (0.5 is 50 %), ``width`` in mm, ``shrinkage`` a fraction,
    ``weight`` in grams for a square metre.

    ``seam`` is how far the least stretchy seam of the machines at hand gives.
    """

    stretch: float
    seam: float
    band: float
    width: float = 1500.0
    shrinkage: float = 0.05
    weight: float = 200.0

    @property
    def usable_width(self) -> float:
        """The width between the selvedges [mm]."""
        return self.width - SELVEDGES

    @property
    def usable(self) -> float:
        """The stretch that a seamed opening can give: the least of cloth, band and seam."""
        return min(self.stretch, self.band, self.seam)
