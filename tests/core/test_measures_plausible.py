"""What is unlikely in itself, and what contradicts."""

import pytest

from tapewise_core.errors import ReadingError
from tapewise_core.measures.catalogue import BY_KEY, CATALOGUE
from tapewise_core.measures.finding import Severity
from tapewise_core.measures.plausible import contradictions, out_of_range
from tapewise_core.measures.proportions import PROPORTIONS
from tapewise_core.measures.reading import read
from tapewise_core.profiles.examples import examples
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

VERY_FULL = {
    "height": 163.0, "bust": 131.0, "high_bust": 121.0, "under_bust": 116.0, "waist": 128.0,
    "hip": 136.0, "head": 57.0, "neck": 42.0, "upper_arm": 43.0, "wrist": 18.0,
    "back_waist_length": 45.0, "front_waist_length": 51.0, "hip_depth": 17.0,
    "bust_span": 25.0, "neck_to_bust_point": 34.0, "across_back": 44.0,
}  # fmt: skip
"""An invented woman of a body mass index of about 45 (NHANES 2017-2020: hip 136, waist 130)."""


def spelt(finding):
    """What a reader of centimetres reads."""
    return Reader(Unit.CM).spell(finding.says)


def test_every_remark_asks_one_question_and_says_what_follows():
    """What is odd, one question, and what happens if it is right; nothing of the person."""
    values = {"waist": 120.0, "hip": 98.0, "bust": 92.0, "wrist": 30.0, "upper_arm": 20.0}
    values |= {"nape_to_floor": 141.0, "back_waist_length": 37.0, "waist_to_floor": 90.0}
    found = out_of_range(values) + contradictions(values)
    assert len(found) >= 4
    for finding in found:
        assert spelt(finding).count("?") == 1
        assert "keep" in spelt(finding)
        assert not any(word in spelt(finding) for word in ("figure", "too large", "too small"))


def test_two_centimetres_round_the_shoulders_are_no_girth():
    """What was once an amount to add cannot be taken for the girth."""
    row = BY_KEY["over_shoulder_girth"]
    with pytest.raises(ReadingError, match="usually 76 to 190 cm"):
        read("2", row, Unit.CM)
    assert out_of_range({"over_shoulder_girth": 2.0})


def test_inches_typed_as_centimetres_are_seen_on_every_girth_of_the_trunk():
    """A whole form in inches is outside what an adult's measures are."""
    inches = {"bust": 36.0, "waist": 29.0, "hip": 39.0, "under_bust": 31.0}
    findings = out_of_range(inches)
    assert {finding.measures for finding in findings} == {(key,) for key in inches}
    assert all(finding.severity is Severity.WARNING for finding in findings)


def test_a_finding_speaks_the_unit_of_the_person():
    """Value and limits are told in inches to someone who reads inches."""
    (finding,) = out_of_range({"wrist": 30.48})
    says = Reader(Unit.IN).spell(finding.says)
    assert says.startswith("Wrist 12 in: ")
    assert "cm" not in says


@pytest.mark.parametrize("row", CATALOGUE, ids=lambda row: row.key)
def test_the_limits_themselves_are_plausible(row):
    """A value on the limit passes, one just outside is found."""
    assert not out_of_range({row.key: row.low}) + out_of_range({row.key: row.high})
    assert out_of_range({row.key: row.low - 0.1})
    assert out_of_range({row.key: row.high + 0.1})


@pytest.mark.parametrize("row", PROPORTIONS, ids=lambda row: f"{row.small}-{row.large}")
def test_every_proportion_fires_outside_its_bounds_alone(row):
    """Inside the bounds nothing is said; outside, one warning names both values."""
    size = BY_KEY[row.large].high
    inside = {row.large: size, row.small: size * (row.least + row.most) / 2}
    assert contradictions(inside) == ()
    for ratio in (row.least * 0.9, row.most * 1.1):
        values = {row.large: size, row.small: size * ratio}
        (finding,) = contradictions(values)
        assert finding.measures == (row.small, row.large)
        assert finding.severity is Severity.WARNING
        says = spelt(finding)
        assert all(Unit.CM.spell(value * 10) in says for value in values.values())
        usual = says.split("usually it is ")[1].split(" cm")[0]
        low, high = map(float, usual.split(" to "))
        assert (values[row.small] < low) is (ratio < row.least)
        assert (values[row.small] > high) is (ratio > row.most)


def test_a_waist_far_above_hip_and_bust_is_a_warning():
    """All three values stand in one sentence."""
    (finding,) = contradictions({"waist": 120.0, "hip": 98.0, "bust": 92.0})
    assert finding.severity is Severity.WARNING
    assert set(finding.measures) == {"waist", "hip", "bust"}
    assert all(cm in spelt(finding) for cm in ("120 cm", "98 cm", "92 cm"))


@pytest.mark.parametrize(
    "values",
    [
        {"waist": 112.0, "hip": 108.0, "bust": 114.0},
        {"waist": 112.0, "hip": 118.0, "bust": 108.0},
        {"waist": 112.0, "hip": 108.0},
        {"waist": 112.0, "hip": 109.0, "bust": 110.0},
    ],
)
def test_a_full_waist_is_never_more_than_a_hint(values):
    """Above the hip or the bust, or a little above both, a waist may well be right."""
    (finding,) = contradictions(values)
    assert finding.severity is Severity.HINT


def test_two_waists_in_one_set_of_lengths_are_seen():
    """From the nape to a narrow waist, and from the navel to the floor: seven are missing."""
    once = {"nape_to_floor": 141.0, "back_waist_length": 37.0, "waist_to_floor": 105.5}
    assert contradictions(once) == ()
    (finding,) = contradictions({**once, "waist_to_floor": 98.0})
    assert finding.severity is Severity.HINT
    assert "waist in the same place" in spelt(finding)
    assert spelt(finding).startswith(
        "Together the waist to floor of 98 cm and the back waist length of 37 cm miss "
    )


def test_a_very_full_woman_is_believed():
    """Nothing is found wrong with a body mass index of 45."""
    assert out_of_range(VERY_FULL) == ()
    assert contradictions(VERY_FULL) == ()


def test_a_full_bust_on_a_narrow_chest_is_believed():
    """A bust a third larger than the under bust, and 24 above the high bust."""
    values = {"bust": 116.0, "high_bust": 92.0, "under_bust": 80.0, "waist": 78.0, "hip": 100.0}
    assert out_of_range(values) + contradictions(values) == ()


def test_nothing_is_found_wrong_with_the_example_people():
    """Those who come with the program raise no finding, or they teach people to ignore one."""
    for _, profile in examples():
        values = {key: value.cm for key, value in profile.values().items()}
        assert out_of_range(values) + contradictions(values) == ()


def test_keys_of_no_measure_are_left_alone():
    """What is not in the table is not judged."""
    assert out_of_range({"mood": 3.0}) + contradictions({"mood": 3.0}) == ()
