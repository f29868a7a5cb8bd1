"""The hem: wide enough for a stride.

Limits are common practice in the trade.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.piece import Pattern
from tapewise_core.proofs.proof import HAIR, Proof, in_cm
from tapewise_core.units import Unit

AT_KNEE, AT_ANKLE = 1100.0, 1400.0
"""What a hem must be round at the knee and at the ankle, or have a slit [mm]; between the two
by proportion."""


def stride(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """A hem at or below the knee lets the wearer stride out; above the knee the leg is free."""
    facts = pattern.facts
    if "hem round" not in facts or facts["hem below waist"] < facts["knee below waist"]:
        return ()
    round_, needed = facts["hem round"], least_round(facts)
    slit = facts.get("slit", 0.0) > 0
    holds = round_ >= needed - HAIR or slit
    says = f"The hem is {unit.spell(round_)} round; a stride needs {unit.spell(needed)} there."
    if slit:
        says += " A slit gives what is missing."
    if holds:
        return (in_cm(round_, True, needed, "hem for a stride", says),)
    says += (
        f" It is {unit.spell(needed - round_)} too narrow: give it more flare, a slit, or end it "
        "above the knee."
    )
    return (replace(in_cm(round_, False, needed, "hem for a stride", says), mend=_mend(pattern)),)


def least_round(facts: Mapping[str, float]) -> float:
    """Return how wide a hem must be at its height, at the knee or below [mm]."""
    knee, ankle = facts["knee below waist"], facts["ankle below waist"]
    share = (facts["hem below waist"] - knee) / max(ankle - knee, 1.0)
    return AT_KNEE + (AT_ANKLE - AT_KNEE) * min(max(share, 0.0), 1.0)


def _mend(pattern: Pattern) -> dict[str, str] | None:
    """The length that ends above the knee, for garments that have one."""
    above = pattern.facts["knee below waist"] - 10
    for key, start in (
        ("skirt-length", 0.0),
        ("body-length", pattern.facts.get("waist level", 0.0)),
    ):
        if f"option {key}" in pattern.facts:
            return {key: f"{(start + above) / 10:.1f} cm"}
    return None
