"""Seams at the centre of back and front, as the wearer chose them or as the cloth needs them."""

from __future__ import annotations

import math
from enum import StrEnum

from tapewise_core.drafting.cloth import Spread
from tapewise_core.frozen import Frozen
from tapewise_core.style.cloth import ClothStyle
from tapewise_core.style.style import Style
from tapewise_core.units import Length


class CentreSeams(StrEnum):
    """Which of the body's halves are joined by a seam instead of being cut on the fold."""

    AS_NEEDED = "as-needed"
    NONE = "none"
    BACK = "back"
    BOTH = "both"


PIECES = {
    CentreSeams.AS_NEEDED: (),
    CentreSeams.NONE: (),
    CentreSeams.BACK: ("back",),
    CentreSeams.BOTH: ("back", "front"),
}


class CentreStyle(Frozen):
    """The pieces with a seam at their centre, its allowance, and how wide on the cloth another may
    be without one [mm]."""

    pieces: tuple[str, ...]
    seam: Length
    room: float

    @classmethod
    def of(cls, style: Style) -> CentreStyle:
        """Read it from a style."""
        chosen = CentreSeams(style.choice("centre-seams", CentreSeams.NONE))
        needed = chosen is CentreSeams.AS_NEEDED
        room = _room(ClothStyle.of(style)) if needed else math.inf
        return cls(PIECES[chosen], style.length("seam-allowance"), room)


def _room(cloth: ClothStyle) -> float:
    """In two layers a half on the fold lies where a half with an allowance would not."""
    return cloth.usable_width if cloth.spread is Spread.OPEN else math.inf
