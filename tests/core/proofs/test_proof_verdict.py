"""The verdict on all proofs of a draft, and how one of them stands, in words."""

from __future__ import annotations

import pytest

from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.proofs.verdict import outcome, verdict
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit


def proof(sure: float = 1.0, holds: bool = True, about: ProofId = ProofId.BUST) -> Proof:
    """Return a proof that holds, or does not, for a share of bodies."""
    return Proof(about, "", 0.0, 0.3, "cm", holds, (), sure=sure)


def says(*proofs: Proof, helps: str | None = None) -> str:
    """Spell the verdict on some proofs."""
    return Reader(Unit.CM).spell(verdict(proofs, helps).says)


@pytest.mark.parametrize(
    ("sure", "stands"),
    [
        (1.0, "holds"),
        (0.995, "holds"),
        (0.994, "holds, 9 in 10 sure"),
        (0.9, "holds, 9 in 10 sure"),
        (0.899, "holds, 8 in 10 sure"),
        (0.8, "holds, 8 in 10 sure"),
        (0.799, "uncertain"),
        (0.0, "uncertain"),
    ],
)
def test_a_proof_that_holds_is_as_sure_as_its_share_of_bodies(sure: float, stands: str) -> None:
    """Told in tenths and never as more than it is; under eight it is uncertain."""
    assert outcome(proof(sure)) == stands
    assert proof(sure).uncertain is (stands == "uncertain")


def test_a_proof_that_fails_is_never_uncertain() -> None:
    """However many of the bodies it may hold for."""
    assert outcome(proof(0.4, holds=False)) == "fails"
    assert not proof(0.4, holds=False).uncertain


def test_all_that_hold_surely_need_no_advice() -> None:
    """And where there is a little doubt, the measure that takes most of it."""
    assert says(proof(), proof()) == "All 2 proofs hold."
    assert says(proof(), proof(0.995)) == "All 2 proofs hold."
    assert says(proof(), proof(0.92)) == "All 2 proofs hold, 9 in 10 sure."
    told = says(proof(), proof(0.92), helps="upper_arm")
    assert told == "All 2 proofs hold, 9 in 10 sure; to be surer, take the upper arm."


def test_what_is_uncertain_asks_for_a_measure_or_a_trial_garment() -> None:
    """The least sure is named."""
    assert says(proof(0.7), proof(), helps="bust") == (
        "All 2 proofs hold as estimated, but one is uncertain (bust as asked, 7 in 10 sure): take "
        "the bust, which helps most, or sew a trial garment from cheap cloth first."
    )
    least = proof(0.05, about=ProofId.HIP)
    assert says(proof(0.7), least) == (
        "All 2 proofs hold as estimated, but 2 are uncertain (first of all hip as asked, under 1 "
        "in 10 sure): sew a trial garment from cheap cloth first."
    )


def test_what_fails_comes_before_all_doubt() -> None:
    """Nothing is to be cut; advice follows only where something is uncertain too."""
    failing = proof(0.3, holds=False)
    assert says(failing, proof(), helps="bust") == "1 of 2 proofs fails: do not cut yet."
    assert says(failing, failing, proof(0.5), helps="bust") == (
        "2 of 3 proofs fail, and one is uncertain: do not cut yet; take the bust, which helps "
        "most, or sew a trial garment from cheap cloth first."
    )
    assert "and 2 are uncertain" in says(failing, proof(0.5), proof(0.5))


def test_a_verdict_is_as_sure_as_its_least_sure_proof() -> None:
    """Uncertain only where everything holds as estimated; sure where nothing was proved."""
    found = verdict([proof(0.9), proof(0.6)], "bust")
    assert (found.holds, found.sure, found.helps_most) == (True, 0.6, "bust")
    assert found.uncertain
    assert not verdict([proof(0.6), proof(holds=False)]).uncertain
    assert not verdict([proof(0.8)]).uncertain
    assert verdict([]).sure == 1.0
