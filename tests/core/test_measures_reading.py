"""From what a person types to the value that stands."""

import pytest

from tapewise_core.errors import ReadingError
from tapewise_core.measures.catalogue import measure
from tapewise_core.measures.reading import Agreement, compare_readings, read, settled
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit


@pytest.mark.parametrize(
    ("text", "unit", "cm"),
    [("92", Unit.CM, 92.0), ("92,5 cm", Unit.IN, 92.5), ("36 1/4", Unit.IN, 92.075)],
)
def test_a_reading_becomes_centimetres(text, unit, cm):
    """A bare number is in the person's unit; a unit that was typed decides."""
    assert read(text, measure("bust"), unit) == cm


@pytest.mark.parametrize("text", ["0", "0.0 in", "301", "3 m 1", "-5", "abc", "", "nan", "inf"])
def test_a_reading_no_body_has_is_refused_in_one_sentence(text):
    """The sentence names the measure, and is one."""
    with pytest.raises(ReadingError) as refused:
        read(text, measure("back_waist_length"), Unit.CM)
    says = str(refused.value)
    assert says.startswith("Back waist length: ")
    assert says.count(". ") == 0
    assert says.endswith(".")


def test_the_refusal_says_what_would_be_right_in_the_unit_read():
    """Someone who reads inches is told inches."""
    with pytest.raises(ReadingError) as refused:
        read("120", measure("bust"), Unit.IN)
    told = Reader(Unit.IN).spell(refused.value.told)
    assert told == "Bust: 120 in cannot be; it is usually 24 3/8 to 74 3/4 in."


def test_an_unlikely_reading_passes():
    """What is merely unlikely is for findings to say, not for the field to refuse."""
    assert read("36", measure("bust"), Unit.CM) == 36


@pytest.mark.parametrize(
    ("readings", "due"),
    [
        ((), Agreement.ONE),
        ((98,), Agreement.ONE),
        ((98, 99.5), Agreement.AGREE),
        ((98, 99.6), Agreement.AGAIN),
        ((98, 101), Agreement.AGAIN),
        ((98, 101.1), Agreement.THIRD),
        ((98, 108, 98.5), Agreement.AGREE),
        ((98, 108, 103), Agreement.THIRD),
    ],
)
def test_two_readings_of_a_large_girth_agree_within_their_tolerance(readings, due):
    """Large girths: one reading up to 1.5 cm apart, a third beyond 3 (common practice)."""
    assert compare_readings(measure("hip"), readings) is due


def test_small_girths_and_lengths_have_their_own_tolerances():
    """A centimetre is little on a length and much on a wrist (common practice: 0.6/1.2, 1/2)."""
    assert compare_readings(measure("arm_length"), (55.0, 56.0)) is Agreement.AGREE
    assert compare_readings(measure("wrist"), (15.0, 16.0)) is Agreement.AGAIN
    assert compare_readings(measure("wrist"), (15.0, 16.3)) is Agreement.THIRD


def test_the_value_that_stands():
    """One reading stands as it is, two by their mean, three by the one in the middle."""
    assert settled([98.0]) == 98.0
    assert settled([98.0, 99.0]) == 98.5
    assert settled([98.0, 118.0, 98.4]) == 98.4


def test_nothing_settles_nothing():
    """Without a reading there is no value."""
    with pytest.raises(ReadingError, match="no reading yet"):
        settled([])
