"""How the wearer chose bodice and skirt to be joined, and the top the bodice is cut from."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.skirt.hung_options import Skirt
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.end_style import EndStyle
from tapewise_core.parts.figure_style import FullnessStyle
from tapewise_core.parts.hem import WAIST_SEAM
from tapewise_core.style.style import Style
from tapewise_core.units import Length, mm


class JoinedStyle(Frozen):
    """``weighed`` says that the bodice is cut shorter for the skirt's weight."""

    bust_lift: Length
    weighed: bool

    @classmethod
    def of(cls, style: Style) -> JoinedStyle:
        """Read it from a style."""
        return cls(style.length("bust-lift"), style.switch("weight-allowance"))


def bodice_style(body: Body, style: Style, shorter: float) -> TopStyle:
    """Return the style of a grown-on top whose hem is the waist seam, shorter by an amount [mm]."""
    top = TopStyle.of(_own(style), _length(body, shorter))
    return replace(
        top,
        fullness=_lifted(top.fullness, style),
        fitted=replace(top.fitted, sides_higher=0.0),  # that is the skirt's hem
    )


def set_in_style(body: Body, style: Style, shorter: float) -> SetInStyle:
    """Return the same of a top with set-in sleeves."""
    top = SetInStyle.of(_own(style), _length(body, shorter))
    return replace(
        top,
        fullness=_lifted(top.fullness, style),
        fitted=replace(top.fitted, sides_higher=0.0),
        lower=WAIST_SEAM,
    )


def _own(style: Style) -> Style:
    """A style without what is the skirt's alone, and no business of a bodice."""
    return Style({key: chosen for key, chosen in style.chosen.items() if key not in SKIRTS_OWN})


SKIRTS_OWN = ("hip-ease", "hem-finish")
"""The ease at the hip, and what the hem ends in."""


def ends_style(style: Style) -> EndStyle:
    """Return how sleeves and hem end; only a straight skirt takes a band."""
    ends = EndStyle.of(style)
    return ends if Skirt.of(style) is Skirt.STRAIGHT else replace(ends, band=mm(0))


def _length(body: Body, shorter: float) -> Length:
    return body["back_waist_length"] - mm(shorter)


def _lifted(fullness: FullnessStyle, style: Style) -> FullnessStyle:
    """The centre front's own length, and what the bust lifts."""
    lifted = fullness.front_hem_drop + JoinedStyle.of(style).bust_lift
    return replace(fullness, front_hem_drop=lifted)
