"""How sure a draft is, beside bodies that are drafted one by one."""

from __future__ import annotations

import pytest
from making import DAY, MIDDLE, person
from wearing import brute

from tapewise_core.garments.shelf import PAGES
from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.proofs.worn import body_side
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.following import drafted_for
from tapewise_core.tasks.how_sure import how_sure

FOUR = {key: MIDDLE[key] for key in ("height", "bust", "waist", "hip")}


def top(measures: dict[str, float], garment: str = "jersey-top", **asked: str) -> Drafted:
    """Return a draft for somebody with these measures taken."""
    return draft(person(measures), garment, asked, made=DAY)


def by_id(drafted: Drafted) -> dict[ProofId, Proof]:
    """Return the last proof of each kind."""
    return {proof.id: proof for proof in drafted.proofs}


@pytest.mark.parametrize(("garment", "sleeve"), [("jersey-top", "cap"), ("set-in-top", "long")])
def test_a_share_is_what_many_bodies_drafted_one_by_one_give(garment: str, sleeve: str) -> None:
    """Within what chance leaves of eighty bodies; ``tests/population`` draws 2,000."""
    sure = how_sure(top(FOUR, garment, sleeve=sleeve))
    shares = brute(sure, 80)
    told = [proof for proof in sure.proofs if (proof.id, proof.of) in shares]
    assert any(proof.uncertain for proof in told)
    for proof in told:
        counted = shares[proof.id, proof.of]
        chance = 2.6 * (proof.sure * (1 - proof.sure) / 80) ** 0.5
        assert proof.sure == pytest.approx(counted, abs=0.05 + chance), proof.name


def test_where_everything_is_measured_nothing_is_in_doubt() -> None:
    """Every proof is sure, and no measure would help."""
    sure = how_sure(top(MIDDLE))
    assert sure.verdict is not None
    assert {proof.sure for proof in sure.proofs} == {1.0}
    assert (sure.verdict.sure, sure.verdict.helps_most) == (1.0, None)


def test_a_name_alone_proves_little() -> None:
    """The girths that were asked for hold as estimated, and for few bodies; lines stay true."""
    sure = how_sure(top({}))
    found = by_id(sure)
    assert found[ProofId.BUST].holds
    assert found[ProofId.BUST].sure < 0.3
    assert found[ProofId.SEAM].sure == 1.0
    assert sure.verdict is not None
    assert sure.verdict.uncertain
    assert sure.uncertain


def test_a_circle_skirt_on_a_guessed_waist_is_uncertain() -> None:
    """That its edge passes the hips says nothing of the waist it is cut for: take that first."""
    sure = how_sure(top({}, "circle-skirt"))
    waist = by_id(sure)[ProofId.WAIST_LEVEL]
    assert waist.holds
    assert waist.sure < 0.3
    assert sure.verdict is not None
    assert sure.verdict.uncertain
    assert sure.verdict.helps_most == "waist"


def test_the_measure_that_helps_most_makes_the_draft_surer_than_another() -> None:
    """Taken as it was estimated, the named one leaves less doubt than the head does."""
    few = top({})
    named = how_sure(few).verdict
    assert named is not None
    assert named.helps_most is not None

    def doubt(key: str) -> float:
        taken = how_sure(top({key: round(few.body.values[key].cm, 1)}))
        return sum(1 - proof.sure for proof in taken.proofs)

    assert doubt(named.helps_most) < doubt("head") - 0.2


def test_a_verdict_is_asked_for_once() -> None:
    """Asked again, the same draft comes back; the same draft gives the same shares."""
    sure = how_sure(top(FOUR))
    assert how_sure(sure) is sure
    assert how_sure(top(FOUR)).proofs == sure.proofs


def test_what_cannot_be_told_apart_is_drafted_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whether estimates are moved together or one at a time, the shares are the same."""
    few = top({}, "skirted-dress")
    together = how_sure(few)
    monkeypatch.setattr("tapewise_core.tasks.following.ALONE", frozenset(few.estimated_keys))
    alone = how_sure(few)
    for one, other in zip(together.proofs, alone.proofs, strict=True):
        assert one.sure == pytest.approx(other.sure, abs=0.02), one.name


def test_a_handful_of_drafts_is_enough(monkeypatch: pytest.MonkeyPatch) -> None:
    """Nine at most for a top with sleeves, however much was estimated."""
    drafts = []
    real = drafted_for

    def counted(drafted: Drafted, body: object) -> object:
        drafts.append(body)
        return real(drafted, body)  # type: ignore[arg-type]

    monkeypatch.setattr("tapewise_core.tasks.following.drafted_for", counted)
    how_sure(top({}, "set-in-top"))
    assert 1 < len(drafts) <= 9


@pytest.mark.parametrize("garment", PAGES)
def test_nothing_is_cut_to_see_what_follows_a_body(garment: str) -> None:
    """A pattern has its numbers without a cut line drawn, and the same as one that is proved."""
    whole = top({}, garment)
    bare = drafted_for(whole, whole.body)
    assert bare is not None
    assert body_side(bare) == body_side(whole.pattern)
    assert bare.girths == whole.pattern.girths
    assert not any("cut_rows" in vars(piece) for piece in bare.pieces)
    assert all("cut_rows" in vars(piece) for piece in whole.pattern.pieces)


@pytest.mark.parametrize("garment", ["circle-skirt", "flared-dress"])
def test_a_slip_that_was_kept_is_judged_all_the_same(garment: str) -> None:
    """A floor 5 cm below the waist puts the ankle above it; nothing is known, and nothing ends."""
    slip = {**FOUR, "back_waist_length": 41.0, "waist_to_floor": 5.0}
    assert how_sure(top(slip, garment)).verdict is not None
