"""Lengths and numbers, for whatever is typed."""

import math

import pytest
from chance import amount
from hypothesis import assume, example, given
from hypothesis import strategies as st

from tapewise_core.errors import ReadingError
from tapewise_core.text.typed import parse_length, parse_number
from tapewise_core.units import Unit

UNITS = st.sampled_from(Unit)


@given(amount(0, 3000), UNITS)
def test_a_spelt_unit_wins_over_the_reader_s(size: float, unit: Unit) -> None:
    """A number with its unit means the same to everybody."""
    first, second = (parse_length(unit.spell(size), other) for other in Unit)
    assert first == second


@given(amount(0, 300))
def test_a_decimal_comma_and_a_minus_change_nothing_but_the_sign(number: float) -> None:
    """Both ways of writing are the same length."""
    plain = parse_length(f"{number:.3f}", Unit.CM)
    assert plain == pytest.approx(number * 10, abs=1e-9)
    assert parse_length(f"{number:.3f}".replace(".", ","), Unit.CM) == plain
    assert parse_length(f"−{number:.3f}", Unit.CM, signed=True) == -plain


TYPED = st.text() | st.text(alphabet="0123456789.,/ -+−'\"″ftincm¼½⅞⁄%e²٣", max_size=12)


@given(TYPED, UNITS, st.booleans())
@example("²", Unit.CM, False)
@example("٣", Unit.CM, False)
@example("1" * 400, Unit.IN, False)
@example("9" * 5000, Unit.IN, False)
def test_any_text_is_a_length_or_refused_with_a_sentence(
    text: str, unit: Unit, signed: bool
) -> None:
    """Nothing else: no traceback, no infinity, no negative that was not allowed."""
    try:
        size = parse_length(text, unit, signed=signed)
    except ReadingError as error:
        assert_sentence(str(error))
    else:
        assert math.isfinite(size)
        assert signed or size >= 0


@given(TYPED)
@example("1e999")
@example("9" * 5000)
def test_any_text_is_a_number_or_refused_with_a_sentence(text: str) -> None:
    """Ratios and percentages likewise."""
    try:
        assert math.isfinite(parse_number(text))
    except ReadingError as error:
        assert_sentence(str(error))


def assert_sentence(told: str) -> None:
    """One line that begins, ends and stays short enough to be read."""
    assert told[0] in "N“"
    assert told.endswith(".")
    assert len(told) < 120
    assert "\n" not in told


@given(st.integers(0, 40), st.integers(0, 200), st.integers(1, 64))
def test_inches_and_fractions_add_up(whole: int, top: int, bottom: int) -> None:
    """“3 5/8” is three and five eighths, with a blank or a hyphen between."""
    assume(top < 1000)
    wanted = (whole + top / bottom) * 25.4
    for typed in (f"{whole} {top}/{bottom} in", f'{whole}-{top}/{bottom}"'):
        assert parse_length(typed, Unit.CM) == pytest.approx(wanted, abs=1e-9)


def test_a_refusal_shows_what_was_typed_and_what_would_be_right() -> None:
    """Whole up to 24 characters, cut to 23 and a sign past that; examples in the reader's unit."""
    for count, shown in ((24, "x" * 24), (25, "x" * 23 + "…")):
        with pytest.raises(ReadingError, match=f"“{shown}” is not a length"):
            parse_length("x" * count, Unit.CM)
    for unit, first in ((Unit.CM, "like 92, 92.5 or 36 1/4 in"), (Unit.IN, "or 92 cm")):
        with pytest.raises(ReadingError, match=first):
            parse_length("tall", unit)
