"""Girths of the garment against the body's, within what the cloth gives.

Limits are common practice in the trade: never more than half of the measured
stretch round the body, a quarter of it round an arm.
"""

from __future__ import annotations

import math

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.pattern import Girth
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import HAIR, at_least, enough, in_cm, off_by, reaches
from tapewise_core.proofs.proof import Proof, ProofId, Silent, lacking
from tapewise_core.text.told import said
from tapewise_core.units import Length, mm

BODY_SHARE, ARM_SHARE = 0.5, 0.25
"""The shares of the stretch that a close fit may use up."""

MODERATE = 0.25
"""A cloth that stretches less wants ease (common practice: stable jersey)."""

STABLE_EASE = 50.0
"""The ease that a cloth without any stretch wants [mm]; in between by proportion."""

ARMS = ("upper arm", "sleeve hem")


def girths_fit(case: Case) -> Answer:
    """Compare every girth of the finished garment with the body's."""
    if not case.pattern.girths and case.facts.hem is None:
        return lacking(ProofId.GIRTH, "level of the body to be compared with")
    if not case.pattern.girths:
        why = said("It reaches no level of the body whose height and girth are known.")
        return Silent(ProofId.GIRTH, why)
    return tuple(_fits(case, girth) for girth in case.pattern.girths)


def least(girth: Girth, cloth: Cloth) -> float:
    """Return the smallest girth that may be cut for a body's [mm]."""
    return girth.body * least_share(girth.name, cloth)


def least_share(name: str, cloth: Cloth) -> float:
    """Return the same as a share of the body's, for the girth of a name."""
    return 1 / (1 + cloth.stretch * (ARM_SHARE if name in ARMS else BODY_SHARE))


def _fits(case: Case, girth: Girth) -> Proof:
    limit, ease = least(girth, case.cloth), girth.garment - girth.body
    holds = reaches(girth.garment, limit)
    says = said(
        f"Finished {girth.name} {{}}, on {{}} of body: {{}} of ease.",
        mm(girth.garment), mm(girth.body), mm(ease),
    )  # fmt: skip
    if not holds:
        says += said(
            " That is {} too close for a cloth of {} % stretch; give it that much more ease.",
            off_by(limit - girth.garment), _percent(case.cloth.stretch),
        )  # fmt: skip
    offer = None if holds else _more_ease(case, girth, limit)
    return in_cm(ProofId.GIRTH, girth.name, girth.garment, limit, holds, says, offer)


def _percent(share: float) -> str:
    return f"{share * 100:.0f}"


def _more_ease(case: Case, girth: Girth, limit: float) -> dict[str, Length | str] | None:
    """The option that lets a girth out, with the value that is enough."""
    for key in ("sleeve-ease",) if girth.name in ARMS else ("ease", "waist-ease"):
        if case.offers(key):
            return {key: at_least(case.style.length(key).mm + limit - girth.garment)}
    return None


def ease_for_cloth(case: Case) -> Answer:
    """A close garment wants at least moderate stretch; below that, ease stands in for it."""
    ease = case.facts.ease
    if ease is None:
        return lacking(ProofId.EASE, "ease round the body that stretch could stand in for")
    limit, stretch = _least_ease(case), _percent(case.cloth.stretch)
    if reaches(ease, limit):
        says = said("The cloth's {} % stretch is enough for {} of ease.", stretch, mm(ease))
        return (in_cm(ProofId.EASE, "", ease, limit, True, says),)
    more = mm(float(math.ceil(limit - HAIR)))
    says = said(
        "A cloth of {} % stretch wants at least {} of ease and has {}; give it more, or take a "
        "cloth that stretches {} %.",
        stretch, mm(limit), mm(ease), enough(_stretch_for(case, ease) * 100),
    )  # fmt: skip
    return (in_cm(ProofId.EASE, "", ease, limit, False, says, {"ease": more}),)


def _stretch_for(case: Case, ease: float) -> float:
    """How far a cloth has to stretch for an ease: moderately, or so that half of it is enough."""
    bust = _bust(case)
    if bust is None or ease >= 0:
        return MODERATE
    return max(MODERATE, (bust.body / (bust.body + ease) - 1) / BODY_SHARE)


def _bust(case: Case) -> Girth | None:
    return next((girth for girth in case.pattern.girths if girth.name == "bust"), None)


def _least_ease(case: Case) -> float:
    """With moderate stretch, what half of it takes up round the bust; else by proportion."""
    if case.cloth.stretch < MODERATE:
        return STABLE_EASE * (1 - case.cloth.stretch / MODERATE)
    bust = _bust(case)
    return least(bust, case.cloth) - bust.body if bust else 0.0
