"""Every symptom leads to a change that moves the redrafted garment the right way, by its amount."""

import pytest
from fitted_pieces import MOVES, OTHER_MOVES, drafted, off, what
from hand_compares import compared
from msgspec.structs import replace

from tapewise_core.fitting.changes import CHANGES
from tapewise_core.fitting.symptom import MOST_A_FITTING, Remedy, Symptom
from tapewise_core.fitting.symptoms import SYMPTOMS
from tapewise_core.proofs.proof import ProofId


def remedies(symptom: Symptom) -> list[Remedy]:
    """All that a symptom may lead to."""
    return [remedy for answer in symptom.answers for remedy in answer.remedies]


def test_there_are_twenty_six() -> None:
    """Each with a drawing of its folds, and a change at the end of one answer at least."""
    assert len(SYMPTOMS) == 26
    assert all(symptom.folds.lines for symptom in SYMPTOMS.values())
    assert all(remedies(symptom) for symptom in SYMPTOMS.values())


@pytest.mark.parametrize("symptom", SYMPTOMS.values(), ids=SYMPTOMS)
def test_a_symptom_moves_the_garment_the_right_way(symptom: Symptom) -> None:
    """Measured on the pieces: what was found is drawn, by what is proposed, and nothing else."""
    for remedy in remedies(symptom):
        assert off(remedy.change.key, remedy.proposed) == []


@pytest.mark.parametrize("key", CHANGES)
def test_a_change_the_wrong_way_is_seen(key: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """The measuring would tell if a change were turned round."""
    whole = CHANGES[key]
    turned = tuple({option: -share for option, share in way.items()} for way in whole.ways)
    monkeypatch.setitem(CHANGES, key, replace(whole, ways=turned))
    amount = next(r for s in SYMPTOMS.values() for r in remedies(s) if r.change.key == key).low
    assert off(key, amount + 0.01)  # what no other test drafts, and so remembers


@pytest.mark.parametrize("key", OTHER_MOVES)
def test_other_garments_have_ways_of_their_own(key: str) -> None:
    """A skirt's waist in place of a top's hem, more ease in place of a solved cap."""
    remedy = next(r for s in SYMPTOMS.values() for r in remedies(s) if r.change.key == what(key))
    assert off(key, remedy.high) == []
    assert off(key, remedy.low) == []


@pytest.mark.parametrize("key", MOVES)
def test_a_changed_garment_is_proved_and_drafted_by_hand_like_any_other(key: str) -> None:
    """What was asked for is asked of the proofs too; only a cloth that stretches too little for a
    shorter band is told. The printed words give the same lines."""
    remedy = next(r for s in SYMPTOMS.values() for r in remedies(s) if r.change.key == key)
    before, after = drafted(key, 0.0), drafted(key, remedy.proposed)
    held = {proof.which for proof in before.failing}
    assert {proof.id for proof in after.failing if proof.which not in held} <= {ProofId.NECKBAND}
    assert max(one.worst for one in compared(after.pattern)) < 2.0


def test_every_change_is_measured_and_asked_for() -> None:
    """No change is there that no symptom asks for, or that nobody measures."""
    used = {remedy.change.key for symptom in SYMPTOMS.values() for remedy in remedies(symptom)}
    assert used == set(CHANGES) == set(MOVES)


def test_no_more_than_two_centimetres_at_a_fitting() -> None:
    """Whatever the bulletins allow, one fitting changes no length by more."""
    for symptom in SYMPTOMS.values():
        for remedy in remedies(symptom):
            assert remedy.low <= remedy.proposed <= remedy.high
            assert remedy.high <= MOST_A_FITTING or remedy.change.measured.value != "cm"


def test_a_question_has_several_answers_and_one_answer_no_question() -> None:
    """What tells causes apart is asked, and nothing else."""
    for symptom in SYMPTOMS.values():
        assert bool(symptom.question) == (len(symptom.answers) > 1)
        for answer in symptom.answers:
            assert bool(answer.advice) != bool(answer.remedies)
