"""The options of a sleeve's end and of a hem: turned, or with a band.

Amounts are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.parts.end_style import HemFinish, SleeveFinish
from tapewise_core.parts.sleeve_style import WITH_SLEEVE
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.text.told import said

ENDS = Options.of(
    Option(
        key="sleeve-finish",
        group=Group.STYLE,
        says=said("what a sleeve ends in: its edge turned up, or a cuff"),
        kind=ValueKind.CHOICE,
        default=SleeveFinish.TURNED,
        choices=tuple(SleeveFinish),
        where=("sleeve", *WITH_SLEEVE),
    ),
    Option(
        key="cuff-width",
        group=Group.BANDS,
        says=said("finished width of a cuff; the sleeve is drafted so much shorter"),
        default=5.0,
        where=("sleeve-finish", SleeveFinish.CUFF),
        low=2,
        high=12,
    ),
    Option(
        key="cuff-ratio",
        group=Group.BANDS,
        says=said("a cuff's length as a share of the sleeve's end"),
        kind=ValueKind.RATIO,
        default=0.9,
        default_says=said("as close as the arm is there, as long as a hand and the seam need it"),
        where=("sleeve-finish", SleeveFinish.CUFF),
        low=0.5,
        high=1,
    ),
    Option(
        key="hem-finish",
        group=Group.BANDS,
        says=said("what a hem ends in: its edge turned up, or a band"),
        kind=ValueKind.CHOICE,
        default=HemFinish.TURNED,
        choices=tuple(HemFinish),
    ),
    Option(
        key="hem-band-width",
        group=Group.BANDS,
        says=said("finished width of a hem band; body or skirt is drafted so much shorter"),
        default=6.0,
        where=("hem-finish", HemFinish.BAND),
        low=2,
        high=15,
    ),
    Option(
        key="hem-band-ratio",
        group=Group.BANDS,
        says=said("a hem band's length as a share of the hem"),
        kind=ValueKind.RATIO,
        default=0.9,
        default_says=said("0.9, or as much more as bust, hip, a stride and the seam need"),
        where=("hem-finish", HemFinish.BAND),
        low=0.5,
        high=1,
    ),
)
"""After sleeve and hem, which they finish."""
