"""All that a circle skirt reads of what its wearer chose."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.parts.circle import PARTS
from tapewise_core.parts.fitted_style import FittedStyle
from tapewise_core.style.cloth import ClothStyle
from tapewise_core.style.style import Style
from tapewise_core.units import Length

FEWEST = "fewest"
"""The choice of pieces that leaves it to the cloth's width."""


class SkirtStyle(Frozen):
    """``circle`` is the part of a whole circle and ``named`` its name, ``panels`` the pieces asked
    for, None for as few as the cloth allows; ``cloth_weight`` in grams for a square metre."""

    circle: float
    named: str
    length: Length
    panels: int | None
    hem_allowance: Length
    seam: Length
    cloth_width: Length
    cloth_weight: float
    usable_width: float
    sides_higher: float

    @classmethod
    def of(cls, style: Style) -> SkirtStyle:
        """Read it from a style."""
        named, panels = style.choice("circle"), style.choice("panels")
        return cls(
            PARTS[named],
            named,
            style.length("skirt-length"),
            None if panels == FEWEST else int(panels),
            style.length("skirt-hem-allowance"),
            style.length("seam-allowance"),
            style.length("cloth-width"),
            style.number("cloth-weight"),
            ClothStyle.of(style).usable_width,
            FittedStyle.of(style).sides_higher,
        )
