"""Options: what was typed is read, bounded, and compared with the other values."""

import pytest
from people_made_up import body

from tapewise_core.errors import OptionError
from tapewise_core.garments.shelf import garment, garments
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.settle import settle
from tapewise_core.text.told import Reader, joined, said
from tapewise_core.units import Unit

TOP = garment("jersey-top")


def settled(asked: dict[str, str], unit: Unit = Unit.CM, **changed: float):
    """Return a top's style for a body of average build."""
    return settle(TOP.options, asked, body(**changed), unit)


def complaints(asked: dict[str, str], **changed: float) -> str:
    """Return what disagrees about a top's style, in one text."""
    one = body(**changed)
    return Reader(Unit.CM).spell(joined(TOP.agree(one, settle(TOP.options, asked, one, Unit.CM))))


def test_defaults_fill_what_was_not_asked():
    """And are marked as not asked for."""
    style = settled({"ease": "4"})
    assert style.asked("ease")
    assert not style.asked("hem-allowance")
    assert style.length("hem-allowance").mm == 25


def test_lengths_are_read_in_the_readers_unit():
    """An inch is an inch."""
    assert settled({"ease": "1 1/2"}, Unit.IN).length("ease").mm == pytest.approx(38.1)


def test_every_fault_is_named_at_once():
    """Not one after another."""
    with pytest.raises(OptionError) as refused:
        settled({"eas": "4", "neckline": "polo", "neck-depth": "99", "stretch": "400"})
    said = str(refused.value)
    assert "no option “eas”; did you mean ease?" in said
    assert "neckline is one of round, scoop, v, high, cowl, boat, not “polo”." in said
    assert "neck-depth must be from 3 cm to 30 cm, and is 99 cm." in said
    assert "stretch must be from 0 % to 200 %, and is 400 %." in said


def test_a_length_that_is_none_is_refused_with_its_option():
    """The sentence begins with the option's name."""
    with pytest.raises(OptionError, match="sleeve-length: “wide” is not a length"):
        settled({"sleeve-length": "wide"})


def test_defaults_stay_within_their_limits():
    """What a body asks beyond them is cut off."""
    style = settled({"sleeve": "long"}, arm_length=95.0)
    assert style.length("sleeve-length").mm == 900


def test_a_default_may_be_a_choice_or_a_number():
    """The boat's edge is turned, a V's band is hardly stretched."""
    assert settled({"neckline": "boat"}).choice("neck-finish") == "turned"
    assert settled({"neckline": "v"}).number("band-ratio") == 0.92


@pytest.mark.parametrize(
    ("asked", "named", "difference"),
    [
        ({"neck-depth": "30", "sleeve": "cap"}, ("neck-depth", "halfway"), "1 cm too much"),
        ({"neck-half-width": "20"}, ("neck-half-width", "shoulder length"), "too much"),
        ({"body-length": "25"}, ("body-length", "armscye depth"), "1 cm too little"),
        ({"sleeve-length": "62"}, ("sleeve-length", "arm length"), "1 cm too much"),
        ({"neck-rise": "4", "neck-half-width": "6"}, ("neck-rise", "neck-half-width"), "1 cm"),
        ({"band-width": "6"}, ("band-width", "neck-half-width"), "too much"),
        ({"round-back": "2", "neck-rise": "2"}, ("round-back", "neck-rise"), "0.3 cm too much"),
        ({"forward-shoulder": "2.5"}, ("forward-shoulder", "sleeve hem"), "0.9 cm too much"),
        ({"hem": "curved", "hem-rise": "15", "body-length": "40"}, ("hem-rise",), "too much"),
        ({"hem": "split", "split-length": "60"}, ("split-length", "body-length"), "too much"),
        (
            {"neckline": "boat", "back-neck-depth": "0", "shoulder-drop": "8"},
            ("back-neck-depth",),
            "1.5 cm too little",
        ),
        ({"neckline": "boat", "neck-finish": "band"}, ("boat", "neck-finish"), "to turned"),
    ],
)
def test_values_that_disagree_are_named_with_the_difference(
    asked: dict[str, str], named: tuple[str, ...], difference: str
):
    """Both values and by how much, in one sentence; the difference is enough to pass."""
    said = complaints(asked, back_waist_length=40.0, armscye_depth=18.0)
    assert all(name in said for name in named), said
    assert difference in said


def test_styles_of_the_trade_agree_for_an_average_body():
    """Nothing is said about any of the choices alone, but that a cuff needs a sleeve."""
    needs = {"cuff": {"sleeve": "short"}}
    for option in TOP.options:
        for choice in option.choices:
            asked = {option.key: choice, **needs.get(choice, {})}
            assert complaints(asked) == "", choice
    assert "sleeve" in complaints({"sleeve-finish": "cuff"})


def test_options_are_described():
    """Each has its words, and grounds for a default that is worked out."""
    for page in garments():
        assert len({option.key for option in page.options}) == len(page.options)
        for option in page.options:
            assert option.says, option.key
            if callable(option.default):
                assert option.default_says, option.key


OTHERS = {"cowl": ("neckline", "cowl"), "without sleeves": ("sleeve", "none")}
"""Words that explain an option, and the choice they speak of."""


def test_no_garment_s_options_speak_of_a_choice_it_does_not_have():
    """A top without a cowl among its necklines explains nothing by cowls."""
    for page in garments():
        told = [one.says for one in page.options]
        told += [one.default_says for one in page.options if one.default_says]
        text = " ".join(Reader(Unit.CM).spell(one) for one in told)
        for words, (key, choice) in OTHERS.items():
            has = key in page.options and choice in page.options[key].choices
            assert has or words not in text, (page.name, words)


def test_a_switch_takes_yes_or_no():
    """Anything else is refused with both words."""
    switch = Options.of(
        Option(
            key="pockets",
            group=Group.STYLE,
            says=said("pockets"),
            kind=ValueKind.SWITCH,
            default="no",
        )
    )
    assert settle(switch, {"pockets": " YES "}, body(), Unit.CM).choice("pockets") == "yes"
    with pytest.raises(OptionError, match="pockets is one of yes, no"):
        settle(switch, {"pockets": "two"}, body(), Unit.CM)
