"""How sure a draft is, beside bodies that are drafted one by one."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from making import DAY, MIDDLE, person

from tapewise_core.proofs.proof import Case, Proof, ProofId
from tapewise_core.proofs.worn import body_side, rooms
from tapewise_core.tasks.drafting import Drafted, draft
from tapewise_core.tasks.how_sure import drafted_for, how_sure
from tapewise_core.tasks.people import plausible_bodies

FOUR = {key: MIDDLE[key] for key in ("height", "bust", "waist", "hip")}


def top(measures: dict[str, float], garment: str = "jersey-top", **asked: str) -> Drafted:
    """Return a draft for somebody with these measures taken."""
    return draft(person(measures), garment, asked, made=DAY)


def by_id(drafted: Drafted) -> dict[ProofId, Proof]:
    """Return the last proof of each kind."""
    return {proof.id: proof for proof in drafted.proofs}


def brute(drafted: Drafted, number: int) -> dict[tuple[ProofId, str], float]:
    """Return for what share of plausible bodies each proof holds, each body drafted itself."""
    own = body_side(drafted.pattern)
    far = {name: 1e6 if name.endswith("height") else value for name, value in own.items()}
    found = []
    for body in plausible_bodies(drafted.profile, number, seed=3):
        known = drafted.body
        body = replace(body, reference=known.reference, waist_site=known.waist_site)
        pattern = drafted_for(drafted, drafted.garment.sees(body))
        if pattern is not None:
            found.append({**far, **body_side(pattern)})
    bodies = {name: np.array([one[name] for one in found]) for name in own}
    case = Case(drafted.pattern, drafted.style, drafted.cloth)
    return {about: float(np.mean(left >= 0)) for about, left in rooms(case, bodies).items()}


@pytest.mark.parametrize("garment", ["jersey-top", "set-in-top"])
def test_a_share_is_what_many_bodies_drafted_one_by_one_give(garment: str) -> None:
    """Within what chance leaves of eighty bodies; ``tests/population`` draws 2,000."""
    sure = how_sure(top(FOUR, garment))
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


def test_an_estimate_that_was_kept_is_judged_by_what_the_body_may_be() -> None:
    """Kept far from what the others suggest, it makes its proofs less sure."""
    from tapewise_core.measures.body import Origin

    usual = person(FOUR).with_value("upper_arm", 27.5, origin=Origin.ESTIMATED)
    small = person(FOUR).with_value("upper_arm", 22.0, origin=Origin.ESTIMATED)
    shares = [
        by_id(how_sure(draft(who, "set-in-top", {}, made=DAY)))[ProofId.UPPER_ARM].sure
        for who in (usual, small)
    ]
    assert shares[1] < shares[0] - 0.3
