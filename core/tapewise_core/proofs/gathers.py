"""Gathers: no more cloth drawn up than its thickness lets lie in a seam.

Limits are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import beyond, keeps_to
from tapewise_core.proofs.proof import Proof, ProofId, Silent, lacking
from tapewise_core.text.told import said

DRAWN_UP = 440.0
"""A jersey of so many grams for a square metre is gathered by no more than its own length; half as
heavy a one to a half, in proportion: 2 for 220 g, 2.4 for 180 g, 1.6 for 280 g, since thickness
follows weight (our choice, within what practice says of light, middle and heavy jersey)."""

LEAST_MOST, MOST = 1.25, 3.0
"""Any jersey takes the one, none more than the other."""


def most_gathers(weight: float) -> float:
    """Return by how much a cloth [g/m²] can be gathered.

    >>> most_gathers(220.0), most_gathers(600.0), most_gathers(100.0)
    (2.0, 1.25, 3.0)
    """
    return min(max(DRAWN_UP / weight, LEAST_MOST), MOST)


def gathers_fit(case: Case) -> Answer:
    """Each gathered edge against what the cloth's weight allows."""
    gathered = case.facts.gathers
    if gathered is None:
        return lacking(ProofId.GATHERS, "edge that is gathered")
    if not gathered:
        return Silent(ProofId.GATHERS, said("Nothing is gathered in this style."))
    return tuple(_drawn_up(of, ratio, case.cloth.weight) for of, ratio in gathered.items())


def _drawn_up(of: str, ratio: float, weight: float) -> Proof:
    most = most_gathers(weight)
    holds = keeps_to(ratio, most)
    shown = f"{ratio:.2f}" if holds else beyond(ratio, most, 2)
    says = said(
        f"The {of} is gathered by {shown}, and a cloth of {weight:g} g/m² takes {most:.2f}."
    )
    if not holds:
        says += said(" Gather it less, or take a lighter cloth.")
    return Proof(ProofId.GATHERS, of, round(ratio, 3), round(most, 3), "1", holds, says)
