"""The hem: wide enough for a stride.

Limits are common practice in the trade.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from tapewise_core.drafting.facts import Hem
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import in_cm, off_by, reaches
from tapewise_core.proofs.proof import Proof, ProofId, Silent, lacking
from tapewise_core.text.told import said
from tapewise_core.units import Length, mm

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Lengths = float | NDArray[np.float64]
    """A length, or those of many bodies [mm]."""

AT_KNEE, AT_ANKLE = 1100.0, 1400.0
"""What a hem must be round at the knee and at the ankle, or have a slit [mm]; between the two
by proportion."""

GROWN = 770.0
"""From waist to ankle a grown leg has at least so much [mm]; a child's shorter one strides less by
as much (our choice)."""

ABOVE_KNEE = 10.0
"""A mend ends this far above the knee [mm] (our choice)."""


def stride(case: Case) -> Answer:
    """A hem at or below the knee lets the wearer stride out; above the knee the leg is free."""
    hem = case.facts.hem
    if hem is None:
        return lacking(ProofId.STRIDE, "hem round the legs")
    if hem.knee is None or hem.ankle is None:
        return Silent(ProofId.STRIDE, said("How high knee and ankle lie is not known."))
    if hem.below_waist < hem.knee:
        return Silent(ProofId.STRIDE, said("The hem lies above the knee, where the leg is free."))
    return (_strides(case, hem, hem.knee, hem.ankle),)


def strides(hem: Hem) -> bool | None:
    """Say whether a hem lets the wearer stride out; None where the leg is not known."""
    if hem.knee is None or hem.ankle is None:
        return None
    if hem.below_waist < hem.knee:
        return True
    wide = reaches(hem.round, float(least_round(hem.below_waist, hem.knee, hem.ankle)))
    return wide or _opened(hem, hem.knee, hem.ankle)


def _opened(hem: Hem, knee: float, ankle: float) -> bool:
    """Whether a slit opens far enough: to where the leg is free, or the garment is wide enough."""
    if hem.slit <= 0 or hem.above_slit is None:
        return hem.slit > 0
    top = _top(hem)
    return top < knee or reaches(hem.above_slit, float(least_round(top, knee, ankle)))


def _strides(case: Case, hem: Hem, knee: float, ankle: float) -> Proof:
    needed, slit = float(least_round(hem.below_waist, knee, ankle)), hem.slit > 0
    holds = bool(strides(hem))
    says = said("The hem is {} round; a stride needs {} there.", mm(hem.round), mm(needed))
    if slit and not holds:
        says += said(" It opens no higher than {} below the knee.", off_by(_top(hem) - knee))
    elif slit:
        says += said(" A slit gives what is missing.")
    if not holds:
        says += said(
            " It is {} too narrow: {}, or end it above the knee.",
            off_by(needed - hem.round), _wider(case),
        )  # fmt: skip
    offer = None if holds else _shorter(case, hem, knee - ABOVE_KNEE)
    return in_cm(ProofId.STRIDE, "", hem.round, needed, holds, says, offer)


def _wider(case: Case) -> str:
    """What gives this garment's hem more room."""
    if case.facts.gathers:
        return "give it more fullness, in a lighter cloth if this one takes no more"
    if case.offers("circle") and case.style.choice("skirt", "circle") == "circle":
        return "take a larger part of a circle"
    return "give it more flare, a slit"


def _top(hem: Hem) -> float:
    """How far below the waist a slit begins [mm]."""
    return hem.below_waist - hem.slit


def least_round(below_waist: Lengths, knee: Lengths, ankle: Lengths) -> NDArray[np.float64]:
    """Return how wide a hem must be at its height, at the knee or below [mm]."""
    import numpy as np  # whoever lists a garment's options does not wait for it

    share = (below_waist - np.asarray(knee, np.float64)) / np.maximum(ankle - knee, 1.0)
    grown = np.minimum(np.asarray(ankle, np.float64) / GROWN, 1.0)
    wide = AT_KNEE + (AT_ANKLE - AT_KNEE) * np.clip(share, 0.0, 1.0)
    return np.asarray(wide * grown, np.float64)


def _shorter(case: Case, hem: Hem, end: float) -> dict[str, Length | str] | None:
    """The length that ends so far below the waist [mm], for garments that have one."""
    if case.offers("skirt-length"):
        return {"skirt-length": mm(end)}
    if case.offers("body-length") and hem.below_nape is not None:
        return {"body-length": mm(hem.below_nape - hem.below_waist + end)}
    return None
