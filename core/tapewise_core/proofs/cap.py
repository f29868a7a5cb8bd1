"""A set-in sleeve: its cap against the armhole.

Limits are common practice in the trade, for jersey.
"""

from __future__ import annotations

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.piece import Pattern, Seam, SeamKind
from tapewise_core.proofs.proof import HAIR, Proof
from tapewise_core.units import Unit

MOST_SHORTER = 1.0
"""How much shorter than the armhole a cap may be [%]; in jersey it is never longer."""


def cap_fits(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """The cap is as long as the armhole or up to one percent shorter, never longer."""
    sleeves = (seam for seam in pattern.seams if seam.kind is SeamKind.SLEEVE)
    return tuple(_cap(pattern, seam, unit) for seam in sleeves)


def _cap(pattern: Pattern, seam: Seam, unit: Unit) -> Proof:
    cap, armhole = pattern.run_length(seam.first), pattern.run_length(seam.second)
    shorter = (1 - cap / armhole) * 100
    holds = -HAIR <= shorter <= MOST_SHORTER + HAIR
    says = f"The sleeve's cap of {unit.spell(cap)} goes into an armhole of {unit.spell(armhole)}."
    if not holds:
        off = f"{unit.spell(cap - armhole)} too long" if shorter < 0 else f"{shorter:.1f} % shorter"
        says += f" It is {off}; a cap is 0 to {MOST_SHORTER:g} % shorter: set cap-shortening so."
    offered = not holds and "option cap-shortening" in pattern.facts
    mend = {"cap-shortening": "0.5"} if offered else None
    value = round(shorter, 3) + 0.0
    return Proof("sleeve cap against armhole", value, MOST_SHORTER, "%", holds, says, mend)
