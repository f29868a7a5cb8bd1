"""Lengths as people read them."""

import pytest

from tapewise_core.text.typed import parse_length
from tapewise_core.units import MM_PER_YARD, Length, Unit, cm, inside, named


def test_inches_are_spelt_to_the_eighth_and_below_one_inch_to_the_sixteenth() -> None:
    """An allowance of 8 mm read as 3/8 in would be 1.5 mm too wide on every seam."""
    assert Unit.IN.spell(250) == "9 7/8 in"
    assert Unit.IN.spell(8) == "5/16 in"
    assert Unit.IN.spell(0) == "0 in"
    assert Unit.IN.spell(-25.4) == "−1 in"
    assert Unit.CM.spell(-0.01) == "0 cm"


@pytest.mark.parametrize(
    ("limit", "least", "most"), [(0.5, "1/16", "0"), (-0.5, "0", "−1/16"), (20.0, "13/16", "3/4")]
)
def test_a_limit_in_inches_is_told_within_it(limit: float, least: str, most: str) -> None:
    """To the next sixteenth as numbers go, on both sides of nothing."""
    assert inside(limit, "up", Unit.IN) == least
    assert inside(limit, "down", Unit.IN) == most


def test_a_yard_is_three_feet() -> None:
    """Which is 0.9144 m exactly."""
    assert pytest.approx(914.4) == MM_PER_YARD


@pytest.mark.parametrize("unit", list(Unit))
def test_what_is_spelt_reads_back_within_the_unit_s_grain(unit: Unit) -> None:
    """Nothing is lost between screen and keyboard but the rounding that is promised."""
    for tenth in range(1, 3000, 7):
        mm = tenth / 3
        assert abs(parse_length(unit.spell(mm), unit) - mm) <= unit.grain + 1e-9


def test_a_length_tells_its_working_in_the_reader_s_unit() -> None:
    """The same draft reads in centimetres and in inches."""
    quarter = (named("hip", 960) + cm(4)) / 4
    assert quarter.tell(Unit.CM) == "(hip 96 cm + 4 cm) ÷ 4 = 25 cm"
    assert quarter.tell(Unit.IN) == "(hip 37 3/4 in + 1 5/8 in) ÷ 4 = 9 7/8 in"


def test_adding_nothing_leaves_the_working_as_it_was() -> None:
    """Ease of zero is not told."""
    assert (named("bust", 920) + cm(0)).tell(Unit.CM) == "bust = 92 cm"


def test_negative_ease_is_told_as_taken_away() -> None:
    """A person reads minus, not plus minus."""
    assert (named("bust", 920) + cm(-4)).tell(Unit.CM) == "bust 92 cm − 4 cm = 88 cm"


def test_lengths_compare_by_size_alone() -> None:
    """The working plays no part in which is longer."""
    assert Length(10, ("a",)) < Length(11, ("b",))
    assert Length(10, ("a",)) == Length(10, ("b",))
