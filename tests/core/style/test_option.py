"""One option: its words, its limits, and a default that must keep to them."""

import pytest

from tapewise_core.style.kind import ValueKind, value_told
from tapewise_core.style.option import Group, Option
from tapewise_core.text.told import OptionKey, Reader, said
from tapewise_core.units import Unit, cm


def option(**fields: object) -> Option:
    """Return an option from 1 to 9 cm, some of its fields changed."""
    usual: dict[str, object] = {
        "key": "width",
        "group": Group.BANDS,
        "says": said("a width"),
        "default": 4.0,
        "low": 1,
        "high": 9,
    }
    return Option(**{**usual, **fields})  # type: ignore[arg-type]


@pytest.mark.parametrize("default", [0.9, 9.1, -4.0])
def test_a_default_outside_its_limits_is_refused(default: float) -> None:
    """When the page is opened, not when somebody drafts."""
    with pytest.raises(ValueError, match=r"width: its default .* is outside"):
        option(default=default)


def test_a_default_on_its_limits_is_taken() -> None:
    """Both limits are allowed."""
    assert [option(default=end).default for end in (1.0, 9.0)] == [1.0, 9.0]


@pytest.mark.parametrize(
    ("kind", "default"), [(ValueKind.CHOICE, "blue"), (ValueKind.SWITCH, "on")]
)
def test_a_default_that_is_none_of_the_words_is_refused(kind: ValueKind, default: str) -> None:
    """A switch has yes and no alone."""
    words = ("red", "green") if kind is ValueKind.CHOICE else ()
    with pytest.raises(ValueError, match="is outside"):
        option(kind=kind, default=default, choices=words)


@pytest.mark.parametrize(
    "fields",
    [
        {"low": 9, "high": 9, "default": 9.0},
        {"kind": ValueKind.CHOICE, "default": "red"},
        {"choices": ("red", "green")},
    ],
)
def test_limits_and_words_leave_something_to_choose(fields: dict[str, object]) -> None:
    """A length has limits, a choice has words, and neither has both."""
    with pytest.raises(ValueError, match="neither words nor limits"):
        option(**fields)


def test_a_default_worked_out_from_a_body_is_not_fixed() -> None:
    """A length's fixed default is a length, told in either unit."""
    assert option(default=lambda body, style: cm(3)).fixed is None
    fixed = option(default=2.5).fixed
    assert fixed is not None
    assert Reader(Unit.IN).spell(value_told(ValueKind.LENGTH, fixed)) == "1 in"


@pytest.mark.parametrize(
    ("kind", "low", "high"),
    [
        (ValueKind.LENGTH, "7/16 in", "3 1/2 in"),
        (ValueKind.PERCENT, "1 %", "9 %"),
        (ValueKind.WEIGHT, "1 g/m²", "9 g/m²"),
        (ValueKind.RATIO, "1", "9"),
    ],
)
def test_limits_are_told_with_their_unit(kind: ValueKind, low: str, high: str) -> None:
    """Lengths in the reader's, others in their own."""
    spelt = tuple(map(Reader(Unit.IN).spell, option(kind=kind).limits))
    assert spelt == (low, high)


def test_a_length_is_told_without_its_working() -> None:
    """Only the result can be typed back."""
    assert value_told(ValueKind.LENGTH, cm(20) / 4) == (cm(5),)
    assert Reader(Unit.CM).spell(value_told(ValueKind.LENGTH, cm(20) / 4)) == "5 cm"


def test_options_named_in_words_are_plain_where_the_page_shows_them_so() -> None:
    """A name with a hyphen on the command line, without on the page."""
    says = option(says=said("sets {}", OptionKey("waist-shaping"))).says
    assert Reader(Unit.CM).spell(says) == "sets waist-shaping"
    assert Reader(Unit.CM, plain=True).spell(says) == "sets waist shaping"
