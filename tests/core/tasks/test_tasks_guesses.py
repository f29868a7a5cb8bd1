"""What estimates do to a garment, on bodies whose uncertainty is plain."""

from __future__ import annotations

import pytest
from making import MIDDLE, person
from msgspec.structs import replace

from tapewise_core.errors import OptionError
from tapewise_core.garments.shelf import garment
from tapewise_core.measures.body import Body, Origin, Value
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.tasks.guesses import (
    SLIGHT,
    UNSAID,
    Effect,
    effect_words,
    effects,
    grounds_words,
    next_measure,
    unused,
)
from tapewise_core.units import Unit


def guess(cm: float, off: float, how: str = "") -> Value:
    """Return an estimate that may be so far off either way [cm]."""
    return Value(cm, Origin.ESTIMATED, (cm - off, cm + off), how)


PAGE = replace(
    garment("jersey-top"),
    moves={"bust": (1.0, "round the bust"), "neck": (0.4, "the neckline's width")},
)
BODY = Body({"bust": guess(92, 2), "neck": guess(36, 1), "wrist": guess(15, 4)})


def test_an_estimate_moves_a_place_by_its_share() -> None:
    """2 cm of bust move all of it, 1 cm of neck 0.4 of it; a wrist moves nothing here."""
    found = effects(PAGE, BODY, ("neck", "bust", "wrist"))
    assert [(e.measure, e.place, round(e.plus_minus, 3)) for e in found] == [
        ("bust", "round the bust", 2.0),
        ("neck", "the neckline's width", 0.4),
    ]


def test_what_moves_little_is_not_told() -> None:
    """Just under the least is silent, at the least it speaks."""
    share = {"bust": (1.0, "round the bust")}
    for off, told in ((SLIGHT - 0.01, 0), (SLIGHT + 0.01, 1)):
        body = Body({"bust": guess(92, off)})
        assert len(effects(replace(PAGE, moves=share), body, ("bust",))) == told


def test_a_measured_value_moves_nothing() -> None:
    """It has no interval."""
    assert effects(PAGE, Body({"bust": Value(92.0)}), ("bust",)) == ()


def test_effects_are_told_in_the_readers_unit() -> None:
    """In one sentence, and none where there is nothing to tell."""
    found = (Effect("bust", "round the bust", 2.0), Effect("neck", "the neckline", 1.27))
    assert effect_words(found, Unit.CM) == (
        "So these are uncertain: round the bust ± 2 cm, the neckline ± 1.3 cm."
    )
    assert "round the bust ± 13/16 in, the neckline ± 1/2 in" in effect_words(found, Unit.IN)
    assert effect_words((), Unit.CM) == ""


def test_grounds_are_told_or_said_to_be_lost() -> None:
    """Each estimate with what it was drawn from."""
    body = Body({"bust": guess(92, 2, "estimated from height"), "neck": guess(36, 1)})
    said = grounds_words(replace(body, values={**body.values}), ("bust",))
    assert said == "Bust estimated from height."
    assert grounds_words(Body({"neck": Value(36, how="")}), ("neck",)).endswith(f"{UNSAID}.")
    assert grounds_words(body, ()) == ""


def test_the_measure_that_helps_most_is_one_that_is_missing() -> None:
    """Named with how far off it leaves a line now and then; nothing where all are there."""
    few = person({k: MIDDLE[k] for k in ("height", "bust", "waist", "hip")})
    said = next_measure(few, "jersey-top", Unit.CM)
    assert said.startswith("Of what is missing, the ")
    missing = [NAMES[key] for key in NAMES if key not in ("height", "bust", "waist", "hip")]
    assert any(f"the {name} helps most" in said for name in missing)
    with pytest.raises(OptionError):
        next_measure(few, "ball-gown", Unit.CM)


def test_measures_without_a_use_are_named() -> None:
    """A skirt has no use for a neck, a top has."""
    assert "neck" in unused("circle-skirt")
    assert "neck" not in unused("jersey-top")
    assert not {*garment("circle-skirt").needs} & {*unused("circle-skirt")}
