"""Seams walked: what is sewn together must be as long on both sides.

Limits are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.making import UNNOTICED
from tapewise_core.drafting.piece import Pattern, Seam, SeamKind
from tapewise_core.proofs.proof import HAIR, Proof, in_cm
from tapewise_core.units import Unit

MATCH = {
    SeamKind.SHOULDER: 5.0,
    SeamKind.SIDE: 2.0,
    SeamKind.SLEEVE_HEM: 5.0,
    SeamKind.WAIST: 3.0,
    SeamKind.PANEL: 2.0,
    SeamKind.BAND_JOIN: 0.5,
    SeamKind.SLEEVE: 5.0,
    SeamKind.WAISTBAND: 3.0,
}
"""How far the two sides of a seam may differ [mm]."""

WORDS = {
    SeamKind.SHOULDER: "shoulder (overarm) seams",
    SeamKind.SIDE: "side and underarm seams",
    SeamKind.BAND_JOIN: "ends of the band",
    SeamKind.WAIST: "waist seam",
    SeamKind.PANEL: "panel seams",
    SeamKind.SLEEVE: "sleeve seams",
    SeamKind.WAISTBAND: "waistband and waist",
}


def seams_meet(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """Compare both sides of every seam that is sewn without stretching one of them."""
    return tuple(_walked(pattern, seam, unit) for seam in pattern.seams if seam.kind in WORDS)


def _walked(pattern: Pattern, seam: Seam, unit: Unit) -> Proof:
    first = pattern.run_length(seam.first)
    second = pattern.run_length(seam.second) * seam.ratio
    apart, limit = first - second, MATCH[seam.kind]
    holds = abs(apart) <= limit + HAIR
    name, long, short = WORDS[seam.kind], seam.first[0].piece, seam.second[0].piece
    if apart < 0:
        long, short = short, long
    long, short = long.replace("_", " "), short.replace("_", " ")
    says = f"{name.capitalize()} meet: {unit.spell(first)} and {unit.spell(second)}."
    if not holds:
        says = (
            f"{name.capitalize()}: the {long} is {unit.spell(abs(apart))} longer than the {short}; "
            f"{unit.spell(limit)} is the most that can be eased in."
        )
    elif abs(apart) > UNNOTICED:
        says = f"{name.capitalize()}: the {long} is eased in by {unit.spell(abs(apart))}."
    return in_cm(abs(apart), holds, limit, name, says)
