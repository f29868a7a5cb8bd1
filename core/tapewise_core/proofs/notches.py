"""Notches: every one meets its partner.

Limits are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import Seam, SeamKind
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import in_cm, keeps_to, off_by
from tapewise_core.proofs.proof import ProofId
from tapewise_core.text.told import said

NOTCH_APART = 1.0
"""How far two partners may be apart when their seam is walked [mm]."""


def notches_pair(case: Case) -> Answer:
    """Every notch has its partner at the same walked distance along the seam."""
    worst, lonely = 0.0, []
    for seam in case.pattern.seams:
        first, second = (_walked(case.pattern, seam, side) for side in (0, 1))
        second = _reached(case.pattern, seam, second)
        for pair in sorted(set(first) | set(second)):
            if pair in first and pair in second:
                worst = max(worst, abs(first[pair] - _beside(seam, second[pair])))
            else:
                lonely.append(pair)
    holds = keeps_to(worst, NOTCH_APART) and not lonely
    says = said("Every notch meets its partner.")
    if lonely:
        says = said("A notch has no partner: {}.", ", ".join(lonely))
    elif not holds:
        says = said("Two notches that should meet are {} apart.", off_by(worst))
    return (in_cm(ProofId.NOTCHES, "", worst, NOTCH_APART, holds, says),)


def _reached(pattern: Pattern, seam: Seam, marks: dict[str, float]) -> dict[str, float]:
    """The second side's marks; of an edge that a placket's strip is sewn to a part of, those on
    that part."""
    if seam.kind is not SeamKind.PLACKET:
        return marks
    end = pattern.run_length(seam.first) + NOTCH_APART
    return {pair: at for pair, at in marks.items() if at <= end}


def _beside(seam: Seam, walked: float) -> float:
    """Where on the first side a place of the second lies, what is eased in counted."""
    return seam.fullness.beside(walked) if seam.fullness else walked


def _walked(pattern: Pattern, seam: Seam, side: int) -> dict[str, float]:
    """Pair name to walked distance from the seam's start, along one side of a seam.

    The first side is measured as if stretched to the second.
    """
    found: dict[str, float] = {}
    before, stretch = 0.0, (1 / seam.ratio if side == 0 else 1.0)
    begins = seam.begins if side == 0 else 0.0
    for run in (seam.first, seam.second)[side]:
        piece = pattern.piece(run.piece)
        for name in filter(piece.has_edge, run.edges):
            length = piece.sewn(name)
            for notch in (notch for notch in piece.notches if notch.edge == name):
                at = piece.sewn_to(name, notch.distance)
                walked = length - at if run.backwards else at
                found.setdefault(notch.pair, (before + walked) * stretch + begins)
            before += length
    return found
