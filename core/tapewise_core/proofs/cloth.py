"""The cloth: wide enough for every piece.

The limit is plain geometry; what the selvedges take off is common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.cloth import SELVEDGES
from tapewise_core.drafting.extent import least_across
from tapewise_core.proofs.proof import (
    Answer,
    Case,
    ProofId,
    at_least,
    in_cm,
    keeps_to,
    off_by,
)
from tapewise_core.text.told import LineName, said
from tapewise_core.units import mm


def pieces_fit(case: Case) -> Answer:
    """The widest piece, opened out along the grain, lies between the selvedges."""
    widest = max(case.pattern.pieces, key=least_across)
    across, usable = least_across(widest), case.cloth.usable_width
    holds, part = keeps_to(across, usable), LineName(widest.name)
    says = said(
        "The widest piece, the {}, takes {} of the {} between the selvedges.",
        part, mm(across), mm(usable),
    )  # fmt: skip
    if not holds:
        says = said(
            "The {} takes {} of the cloth's width and there are {} between the selvedges, {} too "
            "little: take a cloth at least {} wide.",
            part, mm(across), mm(usable), off_by(across - usable), at_least(across + SELVEDGES),
        )  # fmt: skip
    return (in_cm(ProofId.CLOTH, "", across, usable, holds, says),)
