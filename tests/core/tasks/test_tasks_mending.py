"""Mends: none is offered that was not tried, and what is offered is as little as is enough."""

from __future__ import annotations

import sys
from collections.abc import Mapping
from pathlib import Path

import pytest
from making import DAY, MIDDLE, person, top

from tapewise_core.errors import TapewiseError
from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.tasks import mending
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.judging import judged
from tapewise_core.tasks.mending import Trial, mended
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

sys.path.insert(0, str(Path(__file__).parents[2] / "population"))

from wishes import not_as_offered, wishes


def failing(drafted: Drafted, about: ProofId) -> Proof:
    """Return the one failing proof of a kind."""
    (proof,) = (one for one in drafted.failing if one.id is about)
    return proof


def test_no_offered_mend_fails() -> None:
    """Whoever and whatever was asked for; ``tests/population/mends.py`` tries 2,000."""
    tried = 0
    for who, garment, asked in wishes(25, seed=23):
        try:
            made = mended(draft(who, garment, asked, made=DAY))
        except TapewiseError:
            continue
        tried += sum(proof.mend is not None for proof in made.failing)
        assert not_as_offered(made) == []
        for proof in made.failing:
            assert proof.mend or proof.against, proof.name
    assert tried > 0


def test_a_mend_tells_before_and_after() -> None:
    """What is changed, from what to what, and what the proof says then."""
    made = mended(top({"band-ratio": "0.6"}))
    proof = failing(made, ProofId.NECKBAND)
    assert proof.mend is not None
    assert proof.settings == {"band-ratio": "0.78"}
    assert Reader(Unit.CM).spell(proof.mend.told) == (
        "With band-ratio 0.78 in place of 0.6 it holds: The neckband is 0.78 of the neckline: it "
        "is stretched by 28 % as it is sewn on."
    )
    assert proof.told == (*proof.says, " ", *proof.mend.told)


def test_what_holds_is_not_touched_and_nothing_is_tried_twice() -> None:
    """A whole draft comes back as it is, and so does one that was mended."""
    whole = top()
    assert mended(whole) is whole
    once = mended(top({"band-ratio": "0.6"}))
    assert mended(once) is once


def test_a_mend_that_breaks_another_proof_is_not_offered() -> None:
    """A band so short that it stretches too far would fail in its turn, so it is not offered."""
    tight = top({"stretch": "25"}, head=62.0)
    proof = failing(tight, ProofId.HEAD)
    breaking = {"neck-half-width": "12 cm", "band-ratio": "0.6"}
    again = top({"stretch": "25", **breaking}, head=62.0)
    assert ProofId.NECKBAND in {one.id for one in again.failing}
    assert not Trial(tight, proof).helps(breaking)
    assert Trial(tight, proof).helps({"neck-half-width": "12 cm"})


def test_only_so_much_is_tried() -> None:
    """After that nothing is taken to help, however much there still would be."""
    tight = top({"band-ratio": "0.6"})
    trial = Trial(tight, failing(tight, ProofId.NECKBAND))
    trial.left = 1
    assert not trial.helps({"band-ratio": "0.61"})
    assert not trial.helps({"band-ratio": "0.8"})


def test_two_options_are_tried_where_one_is_not_enough() -> None:
    """In a cloth without stretch a neckline for the largest head is widened and deepened."""
    proof = failing(mended(top({"stretch": "0", "ease": "6"}, head=74.0)), ProofId.HEAD)
    assert proof.settings is not None
    assert set(proof.settings) == {"neck-half-width", "neck-depth"}
    wider = top({"stretch": "0", "ease": "6", "neck-half-width": proof.settings["neck-half-width"]},
                head=74.0)  # fmt: skip
    assert failing(wider, ProofId.HEAD)


def test_a_change_is_no_larger_than_needed() -> None:
    """A shade less of it leaves the proof failing."""
    asked = {"band-ratio": "0.55"}
    settings = failing(mended(top(asked)), ProofId.NECKBAND).settings
    assert settings is not None
    shade = f"{float(settings['band-ratio']) - 0.02:.2f}"
    assert failing(top({"band-ratio": shade}), ProofId.NECKBAND)


def test_where_nothing_helps_it_is_said_what_does_not_go_together() -> None:
    """A cloth without stretch cannot pass hips far wider than the waist."""
    pear = {**MIDDLE, "waist": 62.0, "hip": 140.0}
    made = mended(draft(person(pear), "skirted-dress", {"stretch": "0", "ease": "6"}, made=DAY))
    proof = failing(made, ProofId.WAIST)
    assert proof.settings is None
    assert Reader(Unit.CM).spell(proof.against) == (
        "Nothing that was tried mends it: a body of these girths, in a cloth that stretches no "
        "more, and what was asked for (stretch, ease) do not go together."
    )


def test_what_nobody_waits_for_is_not_drafted() -> None:
    """Whoever types on wants another draft judged."""
    asked = []

    def wanted() -> bool:
        asked.append(None)
        return False

    assert not any(proof.mend for proof in mended(top({"band-ratio": "0.6"}), wanted).failing)
    assert asked


def test_what_was_drafted_for_one_proof_serves_the_next(monkeypatch: pytest.MonkeyPatch) -> None:
    """The same change is drafted once, though two proofs try it."""
    drafts = []
    real = mending.redrafted

    def counted(drafted: Drafted, settings: Mapping[str, str]) -> Drafted | None:
        drafts.append(tuple(settings.items()))
        return real(drafted, settings)

    monkeypatch.setattr(mending, "redrafted", counted)
    made = mended(top({"band-ratio": "0.5", "stretch": "30"}))
    assert {ProofId.HEAD, ProofId.NECKBAND} <= {one.id for one in made.failing}
    assert len(drafts) == len(set(drafts)) > 1


@pytest.mark.parametrize("unit", list(Unit))
def test_a_mend_is_typed_so_that_it_is_read_in_any_unit(unit: Unit) -> None:
    """A length carries its own."""
    made = mended(top({"ease": "0", "stretch": "10"}, unit=unit))
    settings = failing(made, ProofId.EASE).settings
    assert settings is not None
    assert settings["ease"].endswith(" cm")
    again = top({"stretch": "10", **settings}, unit=unit)
    assert all(one.holds for one in again.proofs if one.id is ProofId.EASE)


def test_judged_is_mended_and_has_its_verdict() -> None:
    """Both at once, for whoever shows a draft."""
    made = judged(top({"band-ratio": "0.6"}))
    assert made.verdict is not None
    assert not made.verdict.holds
    assert failing(made, ProofId.NECKBAND).mend
    assert judged(made) is made
