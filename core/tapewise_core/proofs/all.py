"""Everything that is proved before anyone cuts: each proof answers, or says why it is silent."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from tapewise_core.frozen import Frozen
from tapewise_core.proofs.bands import bands_fit, bands_pass
from tapewise_core.proofs.bare import armhole_lies
from tapewise_core.proofs.cap import cap_fits
from tapewise_core.proofs.case import Case, Prover
from tapewise_core.proofs.cloth import length_fits, pieces_fit
from tapewise_core.proofs.corners import smooth_across, square_to_fold
from tapewise_core.proofs.cut import behind_fold, no_teeth
from tapewise_core.proofs.fit import ease_for_cloth, girths_fit
from tapewise_core.proofs.gathers import gathers_fit
from tapewise_core.proofs.levels import ASKED, as_asked
from tapewise_core.proofs.neck import band_fits, head_passes
from tapewise_core.proofs.notches import notches_pair
from tapewise_core.proofs.proof import Proof, ProofId, Silent
from tapewise_core.proofs.seams import seams_meet
from tapewise_core.proofs.shape import allowances, outlines
from tapewise_core.proofs.side import not_too_high, not_too_low, waist_limit
from tapewise_core.proofs.sleeve import armholes_inside, cap_height, hand_passes
from tapewise_core.proofs.stride import stride
from tapewise_core.proofs.waist import casing_turns, waist_passes, waistband_fits

PROVERS: Mapping[ProofId, Prover] = MappingProxyType(
    {
        ProofId.HEAD: head_passes,
        ProofId.NECKBAND: band_fits,
        ProofId.WAIST: waist_passes,
        ProofId.WAISTBAND: waistband_fits,
        ProofId.CASING: casing_turns,
        ProofId.GATHERS: gathers_fit,
        ProofId.STRIDE: stride,
        ProofId.GIRTH: girths_fit,
        **{about: as_asked(about) for about in ASKED},
        ProofId.EASE: ease_for_cloth,
        ProofId.HAND: hand_passes,
        ProofId.BAND: bands_fit,
        ProofId.BAND_OVER: bands_pass,
        ProofId.SEAM: seams_meet,
        ProofId.CAP: cap_fits,
        ProofId.CAP_HEIGHT: cap_height,
        ProofId.ARMHOLE: armholes_inside,
        ProofId.GAPE: armhole_lies,
        ProofId.LINE: smooth_across,
        ProofId.FOLD: square_to_fold,
        ProofId.BEHIND_FOLD: behind_fold,
        ProofId.UNDERARM_TOP: not_too_high,
        ProofId.UNDERARM_FOOT: not_too_low,
        ProofId.SIDE: waist_limit,
        ProofId.OUTLINE: outlines,
        ProofId.ALLOWANCES: allowances,
        ProofId.TEETH: no_teeth,
        ProofId.CLOTH: pieces_fit,
        ProofId.CLOTH_LENGTH: length_fits,
        ProofId.NOTCHES: notches_pair,
    }
)
"""Every proof with the function that answers for it."""


class Proven(Frozen):
    """What was proved of a draft, and which proofs were silent."""

    proofs: tuple[Proof, ...]
    silent: tuple[Silent, ...]


def prove(case: Case) -> Proven:
    """Ask every proof, in the order above."""
    answers = [prover(case) for prover in PROVERS.values()]
    silent = tuple(answer for answer in answers if isinstance(answer, Silent))
    spoken = (answer for answer in answers if not isinstance(answer, Silent))
    return Proven(tuple(proof for answer in spoken for proof in answer), silent)
