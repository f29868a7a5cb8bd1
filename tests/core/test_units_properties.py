"""Lengths, and how they are spelt, for whatever comes."""

import re

import pytest
from chance import amount
from hypothesis import given
from hypothesis import strategies as st

from tapewise_core.text.typed import parse_length
from tapewise_core.units import Length, Unit, cm, mm, named

NAMES = {"bust": 920.0, "hip": 1000.5, "wrist": 156.2}
MEASURES = st.sampled_from(sorted(NAMES)).map(lambda name: named(name, NAMES[name]))
PLAIN = amount(-50, 300).map(cm) | amount(-500, 3000).map(mm)
FACTORS = st.integers(1, 2000).map(lambda hundredths: hundredths / 100)
UNITS = st.sampled_from(Unit)


def worked(length: Length) -> float:
    """The working done again with Python's own arithmetic [mm]."""
    signs = str.maketrans({"×": "*", "÷": "/", "−": "-"})
    parts = ("" if part.strip() in NAMES else part for part in map(_spelt, length.working))
    return float(eval("".join(parts).translate(signs), {}, {}))


def _spelt(part: str | float) -> str:
    return part if isinstance(part, str) else f"({part})"


@st.composite
def combined(draw: st.DrawFn) -> Length:
    """A length made in up to four steps from measures and plain lengths."""
    length = draw(MEASURES | PLAIN)
    for _ in range(draw(st.integers(0, 4))):
        match draw(st.sampled_from("+-×÷")):
            case "+":
                length = length + draw(MEASURES | PLAIN)
            case "-":
                length = length - draw(MEASURES | PLAIN)
            case "×":
                length = length * draw(FACTORS)
            case _:
                length = length / draw(FACTORS)
    return length


@given(combined(), combined())
def test_the_working_gives_the_length_it_stands_for(a: Length, b: Length) -> None:
    """Whoever does what a step says with a calculator comes to the length that is drawn."""
    for length in (a, a + b, a - b, (a - b) * 3, (a + b) / 4):
        assert worked(length) == pytest.approx(length.mm, rel=1e-9, abs=1e-6)


@given(combined(), combined())
def test_sums_and_differences_are_those_of_the_millimetres(a: Length, b: Length) -> None:
    """Order plays no part, and what is added can be taken off again."""
    assert (a + b).mm == (b + a).mm == a.mm + b.mm
    assert (a + b - b).mm == pytest.approx(a.mm, abs=1e-6)
    assert (a < b) == (a.mm < b.mm)


@given(combined(), FACTORS)
def test_scaling_is_undone_by_its_inverse(length: Length, factor: float) -> None:
    """Times and divided by are each other's contrary."""
    assert (length * factor).mm == length.mm * factor
    assert (length * factor / factor).mm == pytest.approx(length.mm, abs=1e-6)


@given(combined(), PLAIN)
def test_no_sign_is_told_twice(length: Length, plain: Length) -> None:
    """A negative length that is added or taken off reads as one minus or one plus."""
    for told in ((length + plain).tell(Unit.CM), (length - plain).tell(Unit.CM)):
        assert not re.search(r"[+−] −", told)


@given(amount(-3000, 3000), UNITS)
def test_what_is_spelt_reads_back_within_the_rounding(size: float, unit: Unit) -> None:
    """Half a millimetre, half an eighth of an inch, half a sixteenth below one inch."""
    read = parse_length(unit.spell(size), unit, signed=True)
    small = unit is Unit.IN and abs(size) < 25.4
    assert abs(read - size) <= (unit.grain / 2 if small else unit.grain) + 1e-9
    assert parse_length(unit.number(size), unit, signed=True) == read


def test_a_negative_amount_taken_off_is_added() -> None:
    """Its sign is turned in the working and in the length alike."""
    hip = named("hip", 1000)
    assert (hip - cm(-0.5)).tell(Unit.CM) == "hip 100 cm + 0.5 cm = 100.5 cm"
    assert (hip + cm(-0.5)).tell(Unit.CM) == "hip 100 cm − 0.5 cm = 99.5 cm"


def test_taking_nothing_off_is_not_told_and_what_comes_to_nothing_is() -> None:
    """A plain zero goes without saying; a sum that happens to be zero is a step all the same."""
    hip = named("hip", 1000)
    for nothing in (cm(0), named("ease", 0)):
        assert (hip - nothing).tell(Unit.CM) == (hip + nothing).tell(Unit.CM) == "hip = 100 cm"
    twice = named("ease", 0) * 2
    assert (hip + twice).tell(Unit.CM) == "hip 100 cm + ease 0 cm × 2 = 100 cm"
    assert (hip - (hip - hip)).tell(Unit.CM) == "hip 100 cm − (hip 100 cm − hip 100 cm) = 100 cm"
    assert (hip + (hip - hip)).tell(Unit.CM) == "hip 100 cm + hip 100 cm − hip 100 cm = 100 cm"


def test_how_a_length_was_made_plays_no_part_in_comparing_it() -> None:
    """A sum of 2 cm is as long as 2 cm, and stands for it in a table."""
    assert cm(1) + cm(1) == cm(2)
    assert {cm(1) + cm(1): "two"}[cm(2)] == "two"


@pytest.mark.parametrize(
    ("size", "metric", "imperial"),
    [(254.4, "25.4", "10"), (0.9, "0.1", "1/16"), (0.0, "0", "0"), (-0.9, "−0.1", "−1/16")],
)
def test_a_number_is_rounded_as_a_tape_is_read(size: float, metric: str, imperial: str) -> None:
    """To the millimetre; to the eighth of an inch, and to the sixteenth below one inch."""
    assert (Unit.CM.number(size), Unit.IN.number(size)) == (metric, imperial)


def test_the_grain_is_half_of_what_is_told() -> None:
    """Half a millimetre and half an eighth."""
    assert (Unit.CM.grain, Unit.IN.grain) == (0.5, 25.4 / 16)
