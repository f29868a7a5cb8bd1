"""Girths of the garment against the body's, within what the cloth gives.

Limits are common practice in the trade: never more than half of the measured
stretch round the body, a quarter of it round an arm.
"""

from __future__ import annotations

from dataclasses import replace

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.piece import Girth, Pattern
from tapewise_core.proofs.proof import HAIR, Proof, in_cm
from tapewise_core.units import Unit

BODY_SHARE, ARM_SHARE = 0.5, 0.25
"""The shares of the stretch that a close fit may use up."""

MODERATE = 0.25
"""A cloth that stretches less wants ease (common practice: stable jersey)."""

STABLE_EASE = 50.0
"""The ease that a cloth without any stretch wants [mm]; in between by proportion."""

ARMS = ("upper arm", "sleeve hem")


def girths_fit(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """Compare every girth of the finished garment with the body's."""
    return tuple(_fits(pattern, girth, cloth, unit) for girth in pattern.girths)


def least(girth: Girth, cloth: Cloth) -> float:
    """Return the smallest girth that may be cut for a body's [mm]."""
    share = ARM_SHARE if girth.name in ARMS else BODY_SHARE
    return girth.body / (1 + cloth.stretch * share)


def _fits(pattern: Pattern, girth: Girth, cloth: Cloth, unit: Unit) -> Proof:
    limit, ease = least(girth, cloth), girth.garment - girth.body
    holds = girth.garment >= limit - HAIR
    says = (
        f"Finished {girth.name} {unit.spell(girth.garment)}, on {unit.spell(girth.body)} of body: "
        f"{unit.spell(ease)} of ease."
    )
    if not holds:
        says += (
            f" That is {unit.spell(limit - girth.garment)} too close for a cloth of "
            f"{cloth.stretch * 100:.0f} % stretch; give it that much more ease."
        )
    proof = in_cm(girth.garment, holds, limit, f"{girth.name} of the garment", says)
    return proof if holds else replace(proof, mend=_more_ease(pattern, girth, limit))


def _more_ease(pattern: Pattern, girth: Girth, limit: float) -> dict[str, str] | None:
    """The option that lets a girth out, with the value that is enough."""
    for key in ("sleeve-ease",) if girth.name in ARMS else ("ease", "waist-ease"):
        chosen = pattern.facts.get(f"option {key}")
        if chosen is not None:
            return {key: f"{(chosen + limit - girth.garment) / 10 + 0.05:.1f} cm"}
    return None


def ease_for_cloth(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """A close garment wants at least moderate stretch; below that, ease stands in for it."""
    if "ease" not in pattern.facts:
        return ()
    ease, limit = pattern.facts["ease"], _least_ease(pattern, cloth)
    holds = ease >= limit - HAIR
    says = (
        f"The cloth's {cloth.stretch * 100:.0f} % stretch is enough for {unit.spell(ease)} of ease."
    )
    if holds:
        return (in_cm(ease, True, limit, "ease for this cloth", says),)
    says = (
        f"A cloth of {cloth.stretch * 100:.0f} % stretch wants at least {unit.spell(limit)} of "
        f"ease and has {unit.spell(ease)}; set ease to {unit.spell(limit)}, or take a cloth that "
        f"stretches {MODERATE * 100:.0f} %."
    )
    mend = {"ease": f"{limit / 10:.1f} cm"}
    return (Proof("ease for this cloth", ease / 10, round(limit / 10, 3), "cm", False, says, mend),)


def _least_ease(pattern: Pattern, cloth: Cloth) -> float:
    """With moderate stretch, what half of it takes up round the bust; else by proportion."""
    if cloth.stretch < MODERATE:
        return STABLE_EASE * (1 - cloth.stretch / MODERATE)
    bust = next((girth for girth in pattern.girths if girth.name == "bust"), None)
    return least(bust, cloth) - bust.body if bust else 0.0
