"""Belt and pockets as the wearer chose them."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.style.style import Style
from tapewise_core.units import Length


class BeltPocketStyle(Frozen):
    """Whether there is a belt and whether there are pockets, with their sizes: ``belt_ends`` is
    what the belt has beyond the waist, ``below_waist`` from there down to a pocket's opening."""

    belt: bool
    belt_width: Length
    belt_ends: Length
    pockets: bool
    below_waist: Length
    opening: Length
    seam: Length

    @classmethod
    def of(cls, style: Style) -> BeltPocketStyle:
        """Read it from a style."""
        return cls(
            style.switch("belt"),
            style.length("belt-width"),
            style.length("belt-ends"),
            style.switch("pockets"),
            style.length("pocket-below-waist"),
            style.length("pocket-opening"),
            style.length("seam-allowance"),
        )
