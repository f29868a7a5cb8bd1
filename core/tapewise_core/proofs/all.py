"""Everything that is proved before anyone cuts, failing proofs first when told."""

from __future__ import annotations

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.piece import Pattern
from tapewise_core.proofs.cap import cap_fits
from tapewise_core.proofs.corners import smooth_across, square_to_fold
from tapewise_core.proofs.fit import ease_for_cloth, girths_fit
from tapewise_core.proofs.neck import band_fits, head_passes
from tapewise_core.proofs.proof import Proof, Prover
from tapewise_core.proofs.seams import seams_meet
from tapewise_core.proofs.shape import (
    allowances,
    notches_pair,
    outlines,
    underarm_level,
    waist_limit,
)
from tapewise_core.proofs.stride import stride
from tapewise_core.proofs.waist import casing_turns, waist_passes, waistband_fits
from tapewise_core.units import Unit

PROVERS: tuple[Prover, ...] = (
    head_passes,
    band_fits,
    waist_passes,
    waistband_fits,
    casing_turns,
    stride,
    girths_fit,
    ease_for_cloth,
    seams_meet,
    cap_fits,
    smooth_across,
    square_to_fold,
    underarm_level,
    waist_limit,
    outlines,
    allowances,
    notches_pair,
)


def prove(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """Return every proof that applies to a pattern, in the order above."""
    return tuple(proof for prover in PROVERS for proof in prover(pattern, cloth, unit))
