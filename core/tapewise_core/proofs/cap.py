"""A set-in sleeve: its cap against the armhole.

Limits are common practice in the trade, for jersey.
"""

from __future__ import annotations

from tapewise_core.drafting.seam import Seam, SeamKind
from tapewise_core.proofs.case import Answer, Case, without
from tapewise_core.proofs.limits import beyond, keeps_to, off_by, reaches, rounded
from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.text.told import said
from tapewise_core.units import mm

MOST_SHORTER = 1.0
"""How much shorter than the armhole a cap may be [%]; in jersey it is never longer."""


def cap_fits(case: Case) -> Answer:
    """The cap is as long as the armhole or up to one percent shorter, never longer."""
    sleeves = [seam for seam in case.pattern.seams if seam.kind is SeamKind.SLEEVE]
    if not sleeves:
        return without(case, ProofId.CAP, "cap-shortening", "set-in sleeve")
    return tuple(_cap(case, seam) for seam in sleeves)


def _cap(case: Case, seam: Seam) -> Proof:
    cap, armhole = case.pattern.run_length(seam.first), case.pattern.run_length(seam.second)
    shorter = (1 - cap / armhole) * 100
    holds = reaches(shorter, 0.0) and keeps_to(shorter, MOST_SHORTER)
    says = said("The sleeve's cap of {} goes into an armhole of {}.", mm(cap), mm(armhole))
    if not holds:
        off = (
            said("{} too long", off_by(cap - armhole))
            if cap > armhole
            else f"{beyond(shorter, MOST_SHORTER, 1)} % shorter"
        )
        says += said(
            " It is {}; a cap is 0 to {} % shorter.", off, f"{MOST_SHORTER:g}",
        )  # fmt: skip
    offered = not holds and case.offers("cap-shortening")
    offer = {"cap-shortening": "0.5"} if offered else None
    value = rounded(shorter, 3)
    return Proof(ProofId.CAP, seam.where, value, MOST_SHORTER, "%", holds, says, offer)
