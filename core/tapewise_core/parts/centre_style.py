"""Seams at the centre of back and front, as the wearer chose them."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import dataclass
from tapewise_core.style.style import Style
from tapewise_core.units import Length


class CentreSeams(StrEnum):
    """Which of the body's halves are joined by a seam instead of being cut on the fold."""

    NONE = "none"
    BACK = "back"
    BOTH = "both"


PIECES = {
    CentreSeams.NONE: (),
    CentreSeams.BACK: ("back",),
    CentreSeams.BOTH: ("back", "front"),
}


@dataclass(frozen=True, slots=True)
class CentreStyle:
    """The pieces with a seam at their centre, and its allowance."""

    pieces: tuple[str, ...]
    seam: Length

    @classmethod
    def of(cls, style: Style) -> CentreStyle:
        """Read it from a style."""
        chosen = CentreSeams(style.choice("centre-seams", CentreSeams.NONE))
        return cls(PIECES[chosen], style.length("seam-allowance"))
