"""What a draft takes from the measures by itself for a body that is not an average, in words."""

from __future__ import annotations

from tapewise_core.parts.bust_told import WORTH_SAYING
from tapewise_core.parts.figure_style import FullnessStyle
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import mm

FIGURE_SAYS = {
    "full-belly": "{} on the centre front for a full belly",
    "full-seat": "{} on the centre back for a full seat",
}
"""Amounts that a draft takes from the measures by itself."""


def taken_told(fullness: FullnessStyle) -> tuple[Told, ...]:
    """Return a sentence for each length that was taken, and not asked for."""
    found = []
    for key, says in FIGURE_SAYS.items():
        amount = fullness.amount(key)
        if abs(amount.mm) >= WORTH_SAYING and key not in fullness.asked:
            why = said(says, mm(abs(amount.mm)))
            template = "More length: {}, taken from the measures; set {} to change it."
            found.append(said(template, why, OptionKey(key)))
    return tuple(found)
