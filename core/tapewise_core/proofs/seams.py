"""Seams walked: what is sewn together must be as long on both sides.

Limits are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.making import UNNOTICED
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import Seam, SeamKind
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import in_cm, keeps_to, off_by
from tapewise_core.proofs.proof import Proof, ProofId, Silent
from tapewise_core.text.told import LineName, said
from tapewise_core.units import mm

MATCH = {
    SeamKind.SHOULDER: 5.0,
    SeamKind.SIDE: 2.0,
    SeamKind.WAIST: 3.0,
    SeamKind.PANEL: 2.0,
    SeamKind.TIER: 3.0,
    SeamKind.BAND_JOIN: 0.5,
    SeamKind.SLEEVE: 5.0,
    SeamKind.OVERARM: 1.0,
    SeamKind.RAGLAN: 1.0,
    SeamKind.WAISTBAND: 3.0,
    SeamKind.DART: 0.5,
}
"""How far the two sides of a seam may differ [mm]."""

WORDS = {
    SeamKind.SHOULDER: "shoulder (overarm) seams",
    SeamKind.SIDE: "side and underarm seams",
    SeamKind.BAND_JOIN: "ends of the band",
    SeamKind.WAIST: "waist seam",
    SeamKind.PANEL: "panel seams",
    SeamKind.TIER: "tier seam",
    SeamKind.SLEEVE: "sleeve seams",
    SeamKind.OVERARM: "overarm seams",
    SeamKind.RAGLAN: "raglan seams",
    SeamKind.WAISTBAND: "waistband and waist",
    SeamKind.DART: "dart's legs",
}


def seams_meet(case: Case) -> Answer:
    """Compare both sides of every seam that is sewn without stretching one of them."""
    walked = [seam for seam in case.pattern.seams if seam.kind in WORDS]
    if not walked:
        return Silent(ProofId.SEAM, said("No two edges are sewn to each other unstretched."))
    return tuple(_walked(case.pattern, seam) for seam in walked)


def _walked(pattern: Pattern, seam: Seam) -> Proof:
    first = pattern.run_length(seam.first)
    more = seam.fullness.more if seam.fullness else 0.0
    second = pattern.run_length(seam.second) * seam.ratio + more
    apart, limit = first - second, MATCH[seam.kind]
    holds = keeps_to(abs(apart), limit)
    sides = (first, seam.first[0].piece), (second, seam.second[0].piece)
    short, long = (LineName(piece) for _, piece in sorted(sides))
    name = WORDS[seam.kind].capitalize() + (f" ({seam.where})" if seam.where else "")
    says = said(f"{name} meet: {{}} and {{}}.", mm(first), mm(second))
    if not holds:
        says = said(
            f"{name}: the {{}} is {{}} longer than the {{}}; {{}} is the most that can be eased "
            "in.",
            long, off_by(abs(apart)), short, mm(limit),
        )  # fmt: skip
    elif seam.kind in (SeamKind.WAIST, SeamKind.TIER) and seam.ratio > 1:
        words = f"{name}: {{}} of the {{}} are gathered to {{}}."
        says = said(words, mm(first), LineName(sides[0][1]), mm(second / seam.ratio))
    elif seam.fullness:
        how = "gathered" if seam.fullness.gathered else "eased"
        words = f"{name} meet: {{}} and {{}}, the {{}}'s extra {{}} {how} in between its notches."
        says = said(words, mm(first), mm(second - more), LineName(sides[0][1]), mm(more))
    elif abs(apart) > UNNOTICED:
        says = said(f"{name}: the {{}} is eased in by {{}}.", long, mm(abs(apart)))
    of = ", ".join(filter(None, (WORDS[seam.kind], seam.where)))
    return in_cm(ProofId.SEAM, of, abs(apart), limit, holds, says)
