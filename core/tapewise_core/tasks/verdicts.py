"""How the proofs of a draft stand, in words: for the command line and the app."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.proofs.levels import ASKED, HALF_A_FIT
from tapewise_core.proofs.proof import Proof
from tapewise_core.proofs.report import in_order as in_order
from tapewise_core.proofs.verdict import AS_GOOD_AS_SURE, in_ten, verdict
from tapewise_core.proofs.verdict import outcome as outcome
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm


def verdict_told(drafted: Drafted) -> Told:
    """Return the verdict's sentence; before it was asked for, that of the proofs as estimated."""
    if drafted.verdict is not None:
        return drafted.verdict.says
    if drafted.estimated_keys and not drafted.failing:
        return said("All {} proofs hold as estimated.", str(len(drafted.proofs)))
    return verdict(drafted.proofs).says


def told_sure(sure: float) -> str:
    """Spell how sure a garment is as a whole.

    >>> told_sure(0.84), told_sure(1.0)
    ('8 in 10 sure', 'as good as sure')
    """
    return "as good as sure" if sure >= AS_GOOD_AS_SURE else f"{in_ten(sure)} sure"


def verdict_lines(drafted: Drafted) -> Iterator[str]:
    """Yield the verdict, then a line for each proof that fails or is uncertain."""
    spell = drafted.reader.spell
    yield spell(verdict_told(drafted))
    yield from (f"  {proof.name}: {spell(proof.told)}" for proof in drafted.failing)
    for proof in drafted.uncertain:
        yield f"  {proof.name}: {spell((*proof.says, ' ', *_share(proof)))}"


def _share(proof: Proof) -> Told:
    """For how many of the bodies that may be a proof holds, and how near that is."""
    what = said("comes out within {}", mm(HALF_A_FIT)) if proof.id in ASKED else "holds"
    return said("That {} for {} of the bodies these measures allow.", what, in_ten(proof.sure))
