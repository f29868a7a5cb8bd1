"""The verdict: how the proofs of a draft stand together, in a sentence a person acts on."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.frozen import Frozen
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.proofs.proof import SURE_ENOUGH, Proof
from tapewise_core.text.told import Told, said

AS_GOOD_AS_SURE = 0.995
"""From this share on no doubt is told (our choice): it rounds to all of a hundred bodies."""

TRIAL = "sew a trial garment from cheap cloth first"
"""What is advised where a proof is uncertain."""


class Verdict(Frozen):
    """Whether all proofs hold as estimated, and how ``sure`` the least sure of them is.

    ``helps_most`` is the measure whose taking would make them surest, None where none would.
    """

    holds: bool
    sure: float
    says: Told
    helps_most: str | None = None

    @property
    def uncertain(self) -> bool:
        """Whether all hold as estimated, but one of them too seldom to be trusted."""
        return self.holds and self.sure < SURE_ENOUGH


def verdict(proofs: Sequence[Proof], helps_most: str | None = None) -> Verdict:
    """Return the verdict on all proofs of a draft; ``helps_most`` is a measure's key."""
    holds = all(proof.holds for proof in proofs)
    sure = min((proof.sure for proof in proofs), default=1.0)
    doubtful = [proof for proof in proofs if proof.uncertain]
    if not holds:
        says = _failed(proofs, doubtful, helps_most)
    elif doubtful:
        says = _doubted(proofs, doubtful, helps_most)
    else:
        says = _held(proofs, sure, helps_most)
    return Verdict(holds, sure, says, helps_most)


def _held(proofs: Sequence[Proof], sure: float, helps: str | None) -> Told:
    if sure >= AS_GOOD_AS_SURE:
        return said("All {} proofs hold.", str(len(proofs)))
    surer = f"; to be surer, take the {NAMES[helps]}" if helps else ""
    return said("All {} proofs hold, {} sure{}.", str(len(proofs)), in_ten(sure), surer)


def _doubted(proofs: Sequence[Proof], doubtful: Sequence[Proof], helps: str | None) -> Told:
    least = min(doubtful, key=lambda proof: proof.sure)
    which = f"{least.name}, {in_ten(least.sure)} sure"
    if len(doubtful) > 1:
        which = f"first of all {which}"
    return said(
        "All {} proofs hold as estimated, but {} uncertain ({}): {}{}.",
        str(len(proofs)), _number(doubtful), which, _taking(helps), TRIAL,
    )  # fmt: skip


def _failed(proofs: Sequence[Proof], doubtful: Sequence[Proof], helps: str | None) -> Told:
    failing = sum(not proof.holds for proof in proofs)
    verb = "fails" if failing == 1 else "fail"
    more = f", and {_number(doubtful)} uncertain" if doubtful else ""
    advice = f"; {_taking(helps)}{TRIAL}" if doubtful else ""
    return said(
        "{} of {} proofs {}{}: do not cut yet{}.",
        str(failing), str(len(proofs)), verb, more, advice,
    )  # fmt: skip


def _number(doubtful: Sequence[Proof]) -> str:
    return "one is" if len(doubtful) == 1 else f"{len(doubtful)} are"


def _taking(helps: str | None) -> str:
    return f"take the {NAMES[helps]}, which helps most, or " if helps else ""


def outcome(proof: Proof) -> str:
    """Say in a word or two how a proof stands.

    >>> from tapewise_core.proofs.proof import ProofId
    >>> outcome(Proof(ProofId.HEAD, "", 60.0, 57.0, "cm", True, (), sure=0.93))
    'holds, 9 in 10 sure'
    """
    if not proof.holds:
        return "fails"
    if proof.uncertain:
        return "uncertain"
    return "holds" if proof.sure >= AS_GOOD_AS_SURE else f"holds, {in_ten(proof.sure)} sure"


def in_ten(share: float) -> str:
    """Spell a share of bodies as people say it, never more than it is.

    >>> in_ten(0.89), in_ten(0.04)
    ('8 in 10', 'under 1 in 10')
    """
    tenths = int(share * 10)
    return f"{tenths} in 10" if tenths else "under 1 in 10"
