"""What is drafted for two shoulders alike, and refused in one sentence where they are not."""

from __future__ import annotations

from tapewise_core.parts.centre_style import CentreStyle
from tapewise_core.parts.end_style import EndStyle
from tapewise_core.parts.figure_style import FigureStyle
from tapewise_core.parts.placket_style import Placket, PlacketStyle
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, capital, joined, said

PLACKET = said("a shoulder placket"), said("{} to none", OptionKey("shoulder-placket"))
HEM_BAND = said("a hem band"), said("{} to turned", OptionKey("hem-finish"))
CUFFS = said("cuffs"), said("{} to turned", OptionKey("sleeve-finish"))
CENTRES = said("seams at the centre"), said("{} to none", OptionKey("centre-seams"))
"""What it is called, and how it is done without."""


def shoulders_agree(style: Style) -> tuple[Told, ...]:
    """Return a sentence that names all that does not go with a lower shoulder; none if all does."""
    if FigureStyle.of(style).even:
        return ()
    ends = EndStyle.of(style)
    asked = (
        (PLACKET, PlacketStyle.of(style).side is not Placket.NONE),
        (HEM_BAND, ends.band.mm > 0),
        (CUFFS, ends.cuff.mm > 0),
        (CENTRES, bool(CentreStyle.of(style).pieces)),
    )
    found = [row for row, is_asked in asked if is_asked]
    if not found:
        return ()
    what, without = (_listed(each) for each in zip(*found, strict=True))
    return (
        said(
            "{} can be had only where both shoulders are alike; set {} to none, or {}.",
            capital(what), OptionKey("lower-shoulder"), without,
        ),
    )  # fmt: skip


def _listed(items: tuple[Told, ...]) -> Told:
    """Items with commas between, and a word before the last."""
    return joined((joined(items[:-1], ", "), items[-1]), " and ")
