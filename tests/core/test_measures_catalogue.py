"""The table of measures: complete, readable, and usable on oneself."""

import textwrap

import pytest

from tapewise_core.errors import ReadingError
from tapewise_core.measures.catalogue import BY_KEY, CATALOGUE, NAMES, measure
from tapewise_core.measures.measure import Region
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

READER = Reader(Unit.CM)

KEYS = [
    "height",
    "bust",
    "high_bust",
    "under_bust",
    "waist",
    "hip",
    "head",
    "neck",
    "upper_arm",
    "wrist",
    "armscye_depth",
    "back_waist_length",
    "front_waist_length",
    "hip_depth",
    "shoulder_length",
    "shoulder_drop",
    "across_back",
    "arm_length",
    "neck_to_bust_point",
    "bust_span",
    "waist_to_knee",
    "waist_to_floor",
    "nape_to_floor",
    "across_front",
    "high_hip",
    "over_shoulder_girth",
]


def test_every_measure_of_the_file_format_has_one_row():
    """The keys are those of the file format, each once, and each has its own name."""
    assert sorted(row.key for row in CATALOGUE) == sorted(KEYS)
    assert set(BY_KEY) == set(NAMES) == set(KEYS)
    assert len(set(NAMES.values())) == len(KEYS)


def test_measures_come_region_by_region():
    """Nobody is turned round twice: each region is one run, in the order of the regions."""
    regions = [row.region for row in CATALOGUE]
    order = list(Region)
    assert regions == sorted(regions, key=order.index)
    assert set(regions) == set(Region)


@pytest.mark.parametrize("row", CATALOGUE, ids=lambda row: row.key)
def test_a_row_is_short_enough_to_read_beside_the_field(row):
    """Landmarks and the way to hold the tape fit in five lines, the definition in three."""
    lines = textwrap.wrap(READER.spell(row.landmarks), 76) + textwrap.wrap(row.how, 76)
    assert 2 <= len(lines) <= 5
    assert len(textwrap.wrap(row.definition, 76)) <= 3


@pytest.mark.parametrize("row", CATALOGUE, ids=lambda row: row.key)
def test_a_row_is_whole_sentences(row):
    """Each text ends as a sentence does, and none holds a doubled blank."""
    for text in (row.definition, READER.spell(row.landmarks), row.how):
        assert text.endswith(".")
        assert text[0].isupper()
        assert "  " not in text


@pytest.mark.parametrize("row", [row for row in CATALOGUE if row.helper], ids=lambda row: row.key)
def test_what_wants_a_helper_can_be_done_alone(row):
    """A measure that wants a helper says what to do without one."""
    assert "Alone:" in row.how


@pytest.mark.parametrize("row", CATALOGUE, ids=lambda row: row.key)
def test_tolerances_and_limits_are_in_order(row):
    """Readings agree within less than calls for a third; limits leave room for people."""
    assert 0 < row.agree < row.third
    assert 0 < row.low < row.high <= 300


def test_the_waist_says_that_its_place_has_to_be_noted():
    """A waist means nothing until one knows how it was found."""
    row = measure("waist")
    text = row.definition + READER.spell(row.landmarks)
    assert all(site in text for site in ("narrowest", "midway", "navel"))


def test_the_shoulder_drop_is_told_from_the_shoulder_length():
    """The drop is a difference of two heights."""
    assert "difference of two heights" in measure("shoulder_drop").definition
    assert "higher" in measure("shoulder_drop").definition


def test_a_measure_is_found_by_key_or_by_name():
    """Keys and the trade's names both lead to the row, in any capitals."""
    assert measure("NECK BASE") is measure("neck")
    assert measure("back-waist-length") is BY_KEY["back_waist_length"]


def test_an_unknown_measure_is_answered_with_near_ones():
    """The sentence names what was asked and what comes near."""
    with pytest.raises(ReadingError, match="“hips” is not a measure; did you mean hip"):
        measure("hips")
    with pytest.raises(ReadingError, match="there are head, neck"):
        measure("xyzzy")
