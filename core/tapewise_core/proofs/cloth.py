"""The cloth: wide enough for every piece, and long enough for all where its length is known.

The limits are plain geometry; what the selvedges take off is common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.larger import as_cut
from tapewise_core.lay.buying import before_washing
from tapewise_core.lay.lay import lay_of
from tapewise_core.lay.sorts import least_wide
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import HAIR, at_least, in_cm, keeps_to, off_by
from tapewise_core.proofs.proof import Proof, ProofId, Silent
from tapewise_core.text.told import LineName, said
from tapewise_core.units import mm


def pieces_fit(case: Case) -> Answer:
    """The widest piece, opened out along the grain, lies between the selvedges; on a cloth in two
    layers one that is not on the fold lies in one of them."""
    cloth = case.cloth
    wide = [least_wide(piece, cloth) for piece in case.pattern.pieces]
    across, usable = max(wide), cloth.usable_width
    widest = next(
        p for p, own in zip(case.pattern.pieces, wide, strict=True) if own > across - HAIR
    )
    holds, part = keeps_to(across, usable), LineName(widest.name)
    between = "between the selvedges" if cloth.selvedges else "round the tube"
    says = said(
        "The widest piece, the {}, takes {} of the {} {}.",
        part, mm(across), mm(usable), between,
    )  # fmt: skip
    if not holds:
        says = said(
            "The {} takes {} of the cloth's width and there are {} {}, {} too "
            "little: take a cloth at least {} wide.",
            part, mm(across), mm(usable), between, off_by(across - usable),
            at_least(cloth.width_for(across)),
        )  # fmt: skip
    return (in_cm(ProofId.CLOTH, "", across, usable, holds, says),)


def length_fits(case: Case) -> Answer:
    """All pieces lie on the length of cloth that there is, as it is after washing."""
    if not case.cloth.length:
        return Silent(ProofId.CLOTH_LENGTH, said("How much cloth there is was not said."))
    lay = lay_of(as_cut(case.pattern, case.cloth), case.cloth.as_cut)
    if lay.too_wide:
        return Silent(ProofId.CLOTH_LENGTH, said("A piece is wider than the cloth."))
    return (on_length(lay.length, case.cloth),)


def on_length(laid: float, cloth: Cloth) -> Proof:
    """Return the proof that a length on which the pieces lie as they are cut [mm] is there; told as
    it is after washing, whenever that is."""
    left = 1.0 if cloth.washed else 1 - cloth.shrinkage
    takes, there = (laid + cloth.repeat) * left, cloth.usable_length
    holds = keeps_to(takes, there)
    says = said(
        "The pieces take {} of the {} that are left of {} after washing.",
        mm(takes), mm(there), mm(cloth.length),
    )  # fmt: skip
    if not holds:
        says = said(
            "The pieces take {} of cloth, and {} are left of {} after washing, {} too little: "
            "{} would do.",
            mm(takes), mm(there), mm(cloth.length), off_by(takes - there),
            at_least(before_washing(takes, cloth.shrinkage)),
        )  # fmt: skip
    return in_cm(ProofId.CLOTH_LENGTH, "", takes, there, holds, says)
