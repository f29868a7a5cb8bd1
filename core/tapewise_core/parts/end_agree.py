"""What a hem band, cuffs and centre seams do not go with; each message names the options and what
would be right."""

from __future__ import annotations

from tapewise_core.parts.alike import shoulders_agree
from tapewise_core.parts.end_style import EndStyle
from tapewise_core.parts.hem_style import HemShape, HemStyle
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import Length, cm


def ends_agree(style: Style) -> tuple[Told, ...]:
    """Return a sentence for each that disagrees; none if all agree."""
    ends, found = EndStyle.of(style), [*shoulders_agree(style)]
    if ends.band.mm and HemStyle.of(style).shape is not HemShape.STRAIGHT:
        found.append(STRAIGHT)
    if ends.cuff.mm and ends.capped:
        found.append(CAP)
    return tuple(found)


def flare_agrees(style: Style, flare: Length, most: Length | None = None) -> tuple[Told, ...]:
    """Return a sentence for a hem that flares too far for the band asked for."""
    most = most or MOST_FLARE
    if not EndStyle.of(style).band.mm or flare.mm <= most.mm:
        return ()
    return (
        said(
            "A hem that flares by {} at each side hangs clear of the legs, and a band, which is "
            "straight and shorter, would gather it up like a balloon; set {} to {} or less, or {} "
            "to turned.",
            flare, OptionKey("flare"), most, OptionKey("hem-finish"),
        ),
    )  # fmt: skip


MOST_FLARE = cm(7)
"""Above a hem band no side flares further from the hip (our choice): the hem is then about a
quarter wider than the hip."""


STRAIGHT = said(
    "A hem band is sewn to a straight hem; set {} to straight, or {} to turned.",
    OptionKey("hem"), OptionKey("hem-finish"),
)  # fmt: skip

CAP = said(
    "A cap opens under the arm and takes no cuff; set {} to short or longer, or {} to turned.",
    OptionKey("sleeve"), OptionKey("sleeve-finish"),
)  # fmt: skip
