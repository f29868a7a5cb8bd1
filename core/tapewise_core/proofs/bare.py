"""An armhole without a sleeve lies on the body in front, or stands off."""

from __future__ import annotations

from tapewise_core.drafting.facts import Facts
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import in_cm, keeps_to, off_by
from tapewise_core.proofs.proof import ProofId, Silent, lacking
from tapewise_core.text.told import said
from tapewise_core.units import mm

LIES = 20.0
"""So much more than the body has, an armhole's edge in jersey still lies on it [mm]: half of the
4 cm between bust and high bust up to which a front is an ordinary one (our choice)."""


def above_bust(facts: Facts) -> tuple[float, float] | None:
    """Return the garment's girth above the bust without its ease, and the body's [mm]; None where
    one of them is not known."""
    levels = {level.name: level for level in facts.levels}
    here, bust = levels.get("armscye"), levels.get("bust")
    if here is None or bust is None:
        return None
    turned = facts.bare.turned if facts.bare else 0.0
    return here.given - 2 * turned - max(bust.ease or 0.0, 0.0), here.body


def armhole_lies(case: Case) -> Answer:
    """What a front has beyond the body above the bust stands off at its armhole, unless the finish
    holds it in."""
    bare, girths = case.facts.bare, above_bust(case.facts)
    if bare is None and case.offers("armhole-finish"):
        return Silent(ProofId.GAPE, said("The armholes have sleeves."))
    if bare is None or girths is None:
        return lacking(ProofId.GAPE, "armhole without a sleeve")
    gape, limit = max(girths[0] - girths[1], 0.0) / 2, bare.taken + LIES
    holds = keeps_to(gape, limit)
    says = said(
        "Above the bust each front is {} wider than the body and its ease; held in by {}, the "
        "armhole lies on it up to {}.",
        mm(gape), mm(bare.taken), mm(limit),
    )  # fmt: skip
    if not holds:
        says = said(
            "Above the bust each front is {} wider than the body and its ease, {} too much for its "
            "armhole to lie on it: a band, or a shorter one, holds it in.",
            mm(gape), off_by(gape - limit),
        )  # fmt: skip
    return (in_cm(ProofId.GAPE, "", gape, limit, holds, says),)
