"""Lengths and numbers as people type them."""

import math

import pytest

from tapewise_core.errors import OptionError, ReadingError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people_changes import aged
from tapewise_core.tasks.wizard import plainly
from tapewise_core.text.typed import parse_length, parse_number
from tapewise_core.units import Unit


@pytest.mark.parametrize(
    ("text", "unit", "mm"),
    [
        ("92", Unit.CM, 920),
        ("92,5", Unit.CM, 925),
        ("92.5 cm", Unit.CM, 925),
        ('36 1/4"', Unit.CM, 36.25 * 25.4),
        ("36 1/4 in", Unit.CM, 36.25 * 25.4),
        ("36.25in", Unit.CM, 36.25 * 25.4),
        ("36¼", Unit.IN, 36.25 * 25.4),
        ("36 ¼ ″", Unit.CM, 36.25 * 25.4),
        ("36-1/4", Unit.IN, 36.25 * 25.4),
        ("5'6\"", Unit.CM, 66 * 25.4),
        ("5 ft 6 in", Unit.CM, 66 * 25.4),
        ("1.65 m", Unit.IN, 1650),
        ("925 mm", Unit.IN, 925),
        ("½", Unit.IN, 12.7),
        ("0", Unit.CM, 0),
    ],
)
def test_a_length_is_read_as_people_write_it(text: str, unit: Unit, mm: float) -> None:
    """Points, commas, fractions and units of both kinds; bare numbers follow the unit."""
    assert parse_length(text, unit) == pytest.approx(mm, abs=1e-9)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "  ",
        "tall",
        "nan",
        "inf",
        "1e3",
        "36 1/0",
        "3 4",
        "92 5",
        "12..5",
        "1/2/3",
        "9,5,1",
        "--3",
    ],
)
def test_what_is_not_a_length_is_refused_with_a_sentence(text: str) -> None:
    """The sentence quotes what was typed and shows what would be right."""
    with pytest.raises(ReadingError, match="type") as caught:
        parse_length(text, Unit.CM)
    assert str(caught.value).endswith((".", "cm."))


def test_a_minus_is_refused_unless_a_length_may_be_negative() -> None:
    """Ease may be negative, a measure may not."""
    assert parse_length("−4", Unit.CM, signed=True) == -40
    with pytest.raises(ReadingError, match="below zero"):
        parse_length("-4", Unit.CM)


@pytest.mark.parametrize("text", ["", "many", "nan", "inf", "1/2"])
def test_a_number_that_is_none_is_refused(text: str) -> None:
    """Ratios and percentages are finite numbers."""
    with pytest.raises(ReadingError):
        parse_number(text)


@pytest.mark.parametrize(
    "text",
    ["9²", "9₂", "²", "3①", "36¹", "1_000", "9" * 310, "0." + "1" * 4_300, "1" * 4_301, "1e3",
     "9" * 310 + ".5", "." + "0" * 400 + "1", "0x10"],
)  # fmt: skip
def test_what_only_a_program_would_take_is_no_length(text: str) -> None:
    """Powers, indices, underscores and endless digits are refused with one short sentence."""
    for unit in Unit:
        with pytest.raises(ReadingError, match="not a length") as refused:
            parse_length(text, unit)
        assert len(str(refused.value)) < 120
    with pytest.raises(ReadingError, match="not a number"):
        parse_number(text)


@pytest.mark.parametrize("text", ["36¹⁄₄", "36 ¹⁄₄", "36¼", "36 1⁄4", "36 ¹/₄"])
def test_a_fraction_may_be_written_small(text: str) -> None:
    """Raised over lowered digits, as a word processor makes them."""
    assert parse_length(text, Unit.IN) / 25.4 == 36.25


def test_a_percentage_may_carry_its_sign() -> None:
    """People write 50 % as readily as 50."""
    assert parse_number("50 %") == 50
    assert math.isclose(parse_number("0,83"), 0.83)


def test_what_is_no_number_is_told_with_what_it_is_of_and_might_be_like() -> None:
    """Nobody is told to type her age like 0.83, nor a share of stretch."""
    with pytest.raises(ReadingError, match=r"^Age: “abc” is not a number; type it like 8 or 43\.$"):
        aged(Profile.of("Ada Quist"), "abc")
    with pytest.raises(OptionError, match=r"“much” is not a number; type it like 50\.$"):
        plainly("jersey-top", "stretch", "much", Unit.CM)
    with pytest.raises(OptionError, match=r"“much” is not a number; type it like 0\.83\.$"):
        plainly("jersey-top", "band-ratio", "much", Unit.CM)
