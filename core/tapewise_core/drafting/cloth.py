"""The cloth a garment is cut from, and how far the seams that join it stretch."""

from __future__ import annotations

from enum import StrEnum

from msgspec.structs import replace

from tapewise_core.frozen import Frozen

SELVEDGES = 30.0
"""What both selvedges together take off a cloth's width [mm] (common practice, 20 to 40)."""


class Spread(StrEnum):
    """How the cloth lies when it is cut: in one layer, folded lengthwise, or as a knitted tube."""

    OPEN = "open"
    FOLDED = "folded"
    TUBE = "tube"


class Cloth(Frozen):
    """Stretches are fractions (0.5 is 50 %), ``width`` in mm (a tube's all round), ``shrinkage``
    along and ``shrinkage_across`` fractions, ``weight`` in grams for a square metre.

    ``seam`` is how far the least stretchy seam of the machines at hand gives; ``length`` what there
    is of the cloth as bought [mm], 0 where it is still to buy; ``repeat`` the length after which
    its pattern repeats [mm], 0 for none. With a ``nap`` all pieces point one way. ``washed`` is
    whether it is washed before it is cut.
    """

    stretch: float
    seam: float
    band: float
    width: float = 1500.0
    shrinkage: float = 0.05
    weight: float = 200.0
    stretch_along: float = 0.0
    shrinkage_across: float = 0.0
    length: float = 0.0
    spread: Spread = Spread.OPEN
    nap: bool = False
    repeat: float = 0.0
    washed: bool = True

    @property
    def selvedges(self) -> float:
        """What both selvedges take off [mm]; a tube has none."""
        return 0.0 if self.spread is Spread.TUBE else SELVEDGES

    @property
    def laid_width(self) -> float:
        """The width of what is laid out to be cut, all layers opened out [mm]."""
        return self.width * self._left_across if self.washed else self.width

    @property
    def usable_width(self) -> float:
        """What a garment's pieces, as they are worn, may take of the width [mm]."""
        usable = self.laid_width - self.selvedges
        return usable if self.washed else usable * self._left_across

    @property
    def usable_length(self) -> float:
        """What they may take of the length there is [mm]."""
        return self.length * (1 - self.shrinkage)

    @property
    def layers(self) -> int:
        """How many layers lie on each other."""
        return 1 if self.spread is Spread.OPEN else 2

    @property
    def usable(self) -> float:
        """The stretch that a seamed opening can give: the least of cloth, band and seam."""
        return min(self.stretch, self.band, self.seam)

    @property
    def as_cut(self) -> Cloth:
        """The same for pieces that are drawn larger already by what it shrinks later."""
        if self.washed:
            return self
        return replace(self, washed=True, shrinkage=0.0, shrinkage_across=0.0)

    def width_for(self, across: float) -> float:
        """Return how wide it would have to be as bought for pieces that take so much [mm]."""
        if self.washed:
            return (across + self.selvedges) / self._left_across
        return across / self._left_across + self.selvedges

    @property
    def _left_across(self) -> float:
        return 1 - self.shrinkage_across
