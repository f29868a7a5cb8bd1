"""What is typed is read in the reader's unit; what is answered is told in it."""

import re
from typing import Any

import pytest
from people_made_up import body

from tapewise_core.errors import OptionError
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.shelf import garment, garments
from tapewise_core.parts import sleeve_trials
from tapewise_core.parts.shape.grown_drawn import Arm
from tapewise_core.style.settle import read, settle, within
from tapewise_core.text.told import OptionKey, Reader
from tapewise_core.units import Unit

TOP = garment("jersey-top").options


def refusal(asked: dict[str, str], unit: Unit) -> OptionError:
    """Return the error that an answer raises."""
    with pytest.raises(OptionError) as refused:
        settle(TOP, asked, body(), unit)
    return refused.value


@pytest.mark.parametrize(
    ("unit", "typed", "told"),
    [
        (Unit.CM, "31", "neck-depth must be from 3 cm to 30 cm, and is 31 cm."),
        (Unit.IN, "12", "neck-depth must be from 1 3/16 in to 11 3/4 in, and is 12 in."),
    ],
)
def test_limits_are_told_in_the_readers_unit(unit: Unit, typed: str, told: str) -> None:
    """A reader in inches never meets a centimetre."""
    fault = refusal({"neck-depth": typed}, unit)
    assert Reader(unit).spell(fault.told) == told  # type: ignore[arg-type]


@pytest.mark.parametrize(
    "asked", [{"neck-depth": "99"}, {"neck-depth": "wide"}, {"neckline": "polo"}, {"hem-ris": "3"}]
)
def test_options_in_a_refusal_are_named_by_key(asked: dict[str, str]) -> None:
    """So that the page can show them as it labels them."""
    fault = refusal(asked, Unit.CM)
    keys = [part.key for part in fault.told if isinstance(part, OptionKey)]
    assert keys == [key if key in TOP else "hem-rise" for key in asked]


def test_an_answer_that_cannot_be_leaves_what_follows_from_it_as_usual() -> None:
    """A cowl as deep as a neck without width would hang is never reckoned."""
    fault = refusal({"neckline": "cowl", "neck-half-width": "0"}, Unit.CM)
    assert str(fault).startswith("neck-half-width must be from ")


def test_a_sleeve_is_tried_once_while_options_settle(monkeypatch: pytest.MonkeyPatch) -> None:
    """Its kind, its ease and its length ask for the same sleeves; another body's are its own."""
    arms: list[Arm] = []
    really = sleeve_trials.had

    def had(arm: Arm, *rest: Any) -> Any:
        arms.append(arm)
        return really(arm, *rest)

    monkeypatch.setattr(sleeve_trials, "had", had)
    settle(TOP, {}, body(), Unit.CM)
    tried = set(arms)
    assert len(arms) == len(tried) > 0
    settle(TOP, {}, body(upper_arm=36.0), Unit.CM)
    assert set(arms) - tried


def test_less_ease_than_there_is_waist_leaves_gathers_to_the_cloth() -> None:
    """An edge with nothing round it is no measure of how full a skirt is."""
    skirt, asked = garment("gathered-skirt").options, {"waist-ease": "-5"}
    style = settle(skirt, asked, body(waist=5.0), Unit.CM)
    assert style.number("fullness") == settle(skirt, asked, body(waist=4.0), Unit.CM).number(
        "fullness"
    )


def test_an_unknown_option_like_no_other_is_answered_with_all_there_are() -> None:
    """One cannot guess what was meant."""
    said = str(refusal({"qqq": "1"}, Unit.CM))
    assert said.startswith("This garment has no option “qqq”; it has stretch, cloth-width, ")
    assert said.endswith(f"{TOP.keys[-1]}.")


def test_a_default_beyond_its_limits_is_cut_off_in_silence() -> None:
    """The wearer did not ask for it."""
    style = settle(TOP, {"sleeve": "long"}, body(arm_length=95.0), Unit.CM)
    assert style.length("sleeve-length").mm == 900
    assert not style.asked("sleeve-length")


def test_a_style_says_what_it_has_not() -> None:
    """An option that is not there is an error, unless what it would be is given."""
    style = settle(TOP.only("ease", "fit"), {"ease": "3"}, body(), Unit.CM)
    with pytest.raises(KeyError):
        style.choice("hem")
    assert style.choice("hem", "straight") == "straight"
    assert not style.asked("hem")


def test_a_style_refuses_a_value_of_another_kind() -> None:
    """A word is no length."""
    style = settle(TOP, {}, body(), Unit.CM)
    for ask, key in (
        (style.length, "fit"),
        (style.number, "ease"),
        (style.choice, "ease"),
    ):
        with pytest.raises(TypeError, match=key):
            ask(key)


@pytest.mark.parametrize("unit", list(Unit))
@pytest.mark.parametrize("page", garments(), ids=lambda page: page.name)
def test_a_limit_passes_as_it_was_told(page: Garment, unit: Unit) -> None:
    """Whoever types what the refusal says would be right is not refused again."""
    for option in page.options:
        if option.bounded:
            for told in map(Reader(unit).spell, option.limits):
                typed = told.removesuffix(" %").replace("−", "-")
                assert within(option, read(option, typed, unit)) == (), (option.key, told)


def test_what_one_option_asks_of_another_passes_as_it_was_told() -> None:
    """The shortest body, in sixteenths: told from above, typed back."""
    page, someone = garment("jersey-top"), body()
    for unit, shortest in ((Unit.CM, "{} cm"), (Unit.IN, "{} in")):
        fault = page.agree(someone, settle(TOP, {"body-length": "25 cm"}, someone, unit))[0]
        found = re.search(r"asks for (.*?) (?:cm|in) at least", Reader(unit).spell(fault))
        assert found, fault
        asked = {"body-length": shortest.format(found[1])}
        assert page.agree(someone, settle(TOP, asked, someone, unit)) == ()
