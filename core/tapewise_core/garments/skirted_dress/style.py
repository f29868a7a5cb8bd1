"""How the wearer chose bodice and skirt to be joined, and the top the bodice is cut from."""

from __future__ import annotations

from dataclasses import dataclass, replace

from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.measures.body import Body
from tapewise_core.style.style import Style
from tapewise_core.units import Length, mm


@dataclass(frozen=True, slots=True)
class JoinedStyle:
    """``weighed`` says that the bodice is cut shorter for the skirt's weight."""

    bust_lift: Length
    weighed: bool

    @classmethod
    def of(cls, style: Style) -> JoinedStyle:
        """Read it from a style."""
        return cls(style.length("bust-lift"), style.switch("weight-allowance"))


def bodice_style(body: Body, style: Style, shorter: float) -> TopStyle:
    """Return the style of the top whose hem is the waist seam, shorter by an amount [mm].

    The ease at the hip is the skirt's, and no business of a bodice.
    """
    own = Style({key: chosen for key, chosen in style.chosen.items() if key != "hip-ease"})
    top = TopStyle.of(own, body["back_waist_length"] - mm(shorter))
    lifted = top.fullness.front_hem_drop + JoinedStyle.of(style).bust_lift
    return replace(
        top,
        fullness=replace(top.fullness, front_hem_drop=lifted),
        fitted=replace(top.fitted, sides_higher=0.0),  # that is the skirt's hem
    )
