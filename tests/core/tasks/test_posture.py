"""Postures read from measures: offered with their option, never applied."""

from __future__ import annotations

import pytest
from making import DAY, MIDDLE, person

from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.posture import posture_of
from tapewise_core.units import Unit

TAKEN = {
    **MIDDLE, "bust": 96.0, "high_bust": 93.0, "back_waist_length": 41.0,
    "front_waist_length": 43.0, "shoulder_length": 12.5, "shoulder_drop": 5.4,
}  # fmt: skip
"""Somebody whose measures show no posture."""


def drawn(garment: str = "jersey-top", **changed: float) -> Drafted:
    """Draft for her, some measures changed [cm]."""
    return draft(person({**TAKEN, **changed}), garment, {}, made=DAY)


def told(**changed: float) -> str:
    """What a draft remarks."""
    made = drawn(**changed)
    return " ".join(map(made.reader.spell, made.pattern.remarks))


def test_a_usual_body_is_offered_nothing() -> None:
    """No remark speaks of an option for her figure."""
    assert posture_of(person(TAKEN), "jersey-top", Unit.CM) == ()


@pytest.mark.parametrize(
    ("front", "offer"),
    [(41.0, ""), (39.0, "Set round-back to 2 cm"), (40.0, "Set round-back to")],
)
def test_a_short_front_is_a_round_back(front: float, offer: str) -> None:
    """From 2.3 cm shorter than the back and its rise; by as much, 2 cm at the most."""
    says = told(front_waist_length=front)
    assert (offer in says) if offer else ("round back" not in says)


def test_what_is_offered_is_not_applied_and_not_offered_twice() -> None:
    """The option keeps its usual value; once it is chosen nothing is said."""
    made = drawn(front_waist_length=39.0)
    assert made.style.length("round-back").mm == 0
    chosen = draft(
        person({**TAKEN, "front_waist_length": 39.0}), "jersey-top", {"round-back": "1"}, made=DAY
    )
    says = " ".join(map(chosen.reader.spell, chosen.pattern.remarks))
    assert "Set round-back" not in says


def test_a_wide_back_stands_forward() -> None:
    """With its amount where the garment can draw it; the reason alone where it can't."""
    says = told(across_back=41.0)
    assert "wider across than its girth says" in says
    assert "Set forward-shoulder to" in says
    assert "forward-shoulder" not in told(across_back=36.0)


def test_a_long_front_without_a_full_bust_is_held_erect() -> None:
    """A full bust is none, and neither is a bust that may be one."""
    assert "Set bust-room to raise" in told(front_waist_length=46.0)
    assert "hollow back" not in told(front_waist_length=46.0, high_bust=86.0)
    known = {key: value for key, value in TAKEN.items() if key != "high_bust"}
    made = draft(person({**known, "front_waist_length": 46.0}), "jersey-top", {}, made=DAY)
    assert "hollow" not in " ".join(map(made.reader.spell, made.pattern.remarks))


def test_a_full_bust_is_told_what_to_measure() -> None:
    """Where the front waist length was not taken; not where the bust is average."""
    known = {key: value for key, value in TAKEN.items() if key != "front_waist_length"}
    full = posture_of(person({**known, "bust": 104.0}), "set-in-top", Unit.CM)
    assert any("Measure the front waist length" in says for says in full)
    assert not posture_of(person(known), "set-in-top", Unit.CM)
    assert not posture_of(person({**TAKEN, "bust": 100.0}), "set-in-top", Unit.CM)


def test_a_skirt_has_no_posture() -> None:
    """And a garment that can't be drafted yet offers nothing."""
    slumped = person({**TAKEN, "front_waist_length": 39.0})
    assert posture_of(slumped, "circle-skirt", Unit.CM) == ()
    assert posture_of(person({"waist": 70.0}), "jersey-top", Unit.CM) == ()


def test_inches_are_told_in_inches() -> None:
    """What a check prints for one garment."""
    (says,) = posture_of(person({**TAKEN, "front_waist_length": 39.0}), "jersey-top", Unit.IN)
    assert " in" in says
    assert " cm" not in says
