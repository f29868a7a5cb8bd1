"""A garment drafted for a person: what is asked, what is refused, what is used."""

from __future__ import annotations

import pytest
from making import DAY, MIDDLE, person, top

from tapewise_core.errors import DraftError, OptionError
from tapewise_core.garments.shelf import garment
from tapewise_core.measures.body import Body, Value
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.sewing.machines import Machine
from tapewise_core.tasks.documents import drawings_of
from tapewise_core.tasks.drafting import USUAL_MACHINES, draft
from tapewise_core.units import Unit


def test_measures_that_are_needed_are_asked_for_by_name(monkeypatch: pytest.MonkeyPatch) -> None:
    """All that are missing in one sentence, and why they were not estimated."""
    nobody = Body({"waist": Value(74.0)}, NAMES), "These measures do not agree."
    monkeypatch.setattr("tapewise_core.tasks.drafting.body_of", lambda *_: nobody)
    with pytest.raises(DraftError) as asked:
        draft(person(), "jersey-top", {}, made=DAY)
    said = str(asked.value)
    assert said.startswith("Still to measure: ")
    assert said.endswith(". These measures do not agree.")
    named = said.removeprefix("Still to measure: ").split(". ")[0].split(", ")
    assert named == [NAMES[key] for key in garment("jersey-top").needs if key != "waist"]


def test_what_is_missing_and_can_be_estimated_is_told_as_an_estimate() -> None:
    """A head that nobody measured is among the estimated, with how far off it may be."""
    few = {key: value for key, value in MIDDLE.items() if key != "head"}
    made = draft(person(few), "jersey-top", {}, made=DAY)
    assert "head" in made.estimated_keys
    assert len(made.estimated) == len(made.estimated_keys)
    assert any("head" in words and "±" in words for words in made.estimated)
    assert "head" not in top().estimated_keys


def test_an_unknown_garment_or_option_is_refused() -> None:
    """Before anything is drawn."""
    with pytest.raises(OptionError, match="ball-gown"):
        draft(person(), "ball-gown", {}, made=DAY)
    with pytest.raises(OptionError, match="train"):
        draft(person(), "jersey-top", {"train": "3"}, made=DAY)


def test_options_are_read_in_the_readers_unit() -> None:
    """A bare 28 is 28 inches for whoever reads inches."""
    made = top({"body-length": "28"}, unit=Unit.IN)
    assert made.style.length("body-length").mm == pytest.approx(28 * 25.4)
    assert top({"body-length": "70"}).style.length("body-length").mm == pytest.approx(700)


def test_the_least_of_cloth_and_machines_decides_how_far_a_seam_gives() -> None:
    """An overlocker gives 60 %, a zigzag 30 %, and neither more than the cloth."""
    zigzag = frozenset({Machine.ZIGZAG})
    made = draft(person(), "jersey-top", {"stretch": "80"}, machines=zigzag, made=DAY)
    assert (made.cloth.stretch, made.cloth.band, made.cloth.seam) == (0.8, 0.8, 0.3)
    assert made.cloth.usable == 0.3
    usual = draft(person(), "jersey-top", {"stretch": "40"}, made=DAY)
    assert usual.stitching.machines == USUAL_MACHINES
    assert usual.cloth.usable == 0.4


def test_the_cloth_is_the_one_described() -> None:
    """Width and shrinkage go from the options to the amount to buy."""
    made = top({"cloth-width": "120", "shrinkage": "7"})
    assert made.cloth.width == pytest.approx(1200)
    assert made.cloth.shrinkage == pytest.approx(0.07)


def test_only_measures_that_are_used_are_told() -> None:
    """What the garment has no use for is not in its record, and no estimate is called measured."""
    made = top()
    assert set(made.used) <= {*made.garment.needs, *made.garment.helps}
    assert set(made.estimated_keys) <= set(made.used)
    assert "bust" in made.used
    assert "bust" not in made.estimated_keys


def test_a_measure_that_the_style_leaves_idle_is_not_used() -> None:
    """A wrist matters to a long sleeve and not to a cap."""
    assert "wrist" in top({"sleeve-length": "50"}).used
    assert "wrist" not in top({"sleeve-length": "10"}).used


def test_every_piece_is_drawn_and_every_failing_proof_is_told() -> None:
    """In the pattern's order; proofs that hold are not among the failing."""
    made = top()
    assert len(drawings_of(made)) == len(made.pattern.pieces)
    assert made.failing == tuple(proof for proof in made.proofs if not proof.holds)
    tight = top({"stretch": "15", "ease": "-4"}, head=62.0)
    assert tight.failing
    assert not any(proof.holds for proof in tight.failing)
