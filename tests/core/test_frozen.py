"""Frozen dataclasses that cost little before they are used, beside the standard library's."""

from __future__ import annotations

import dataclasses
import pickle
from collections.abc import Callable
from dataclasses import FrozenInstanceError, asdict, field, fields, replace
from functools import cached_property
from typing import Any

import pytest

from tapewise_core import frozen
from tapewise_core.geometry.point import Point


def kinds(dataclass: Callable[..., Any]) -> dict[str, Any]:
    """Return one dataclass of each kind that there is here, made by a decorator."""

    @dataclass(frozen=True, slots=True)
    class Slotted:
        """With slots, a default, one made afresh, and a field that does not count."""

        a: float
        b: str = "b"
        c: list[int] = field(default_factory=list)
        note: str = field(default="", compare=False, repr=False)

    @dataclass(frozen=True)
    class Open:
        """Without slots, so that what is worked out can be kept."""

        a: tuple[int, ...]

        @cached_property
        def whole(self) -> int:
            """Work the sum out once."""
            return sum(self.a)

    @dataclass(frozen=True, slots=True, kw_only=True)
    class Named:
        """Filled by name alone."""

        a: int = 0
        b: int

    @dataclass(frozen=True, eq=False)
    class Own:
        """Equal to itself alone, and checked when it is made."""

        a: int

        def __repr__(self) -> str:
            """Spell it in a way of its own."""
            return f"own {self.a}"

        def __post_init__(self) -> None:
            """Refuse less than nought."""
            if self.a < 0:
                raise ValueError("less than nought")

    return {each.__name__: each for each in (Slotted, Open, Named, Own)}


@frozen.dataclass(frozen=True, slots=True)
class Below(Point):
    """One more field than what it stands on."""

    z: float = 0.0


OURS, THEIRS = kinds(frozen.dataclass), kinds(dataclasses.dataclass)
GIVEN: dict[str, Any] = {
    "Slotted": {"a": 1.5},
    "Open": {"a": (1, 2)},
    "Named": {"b": 2},
    "Own": {"a": 3},
}


@pytest.mark.parametrize("name", GIVEN)
def test_a_value_reads_compares_and_changes_as_the_standard_librarys(name: str) -> None:
    """Both spell it alike, know its fields, hash it alike and give the same copy."""
    ours, theirs = (kind[name](**GIVEN[name]) for kind in (OURS, THEIRS))
    assert repr(ours) == repr(theirs)
    assert asdict(ours) == asdict(theirs)
    assert [row.name for row in fields(ours)] == [row.name for row in fields(theirs)]
    assert repr(replace(ours, a=7)) == repr(replace(theirs, a=7))
    if name in ("Open", "Named"):
        assert hash(ours) == hash(theirs)
    again = OURS[name](**GIVEN[name])
    assert (ours == again) == (theirs == THEIRS[name](**GIVEN[name]))
    assert ours != theirs


@pytest.mark.parametrize("name", GIVEN)
def test_what_was_made_cannot_be_changed(name: str) -> None:
    """A field can be neither set nor deleted, nor one more be put there."""
    value = OURS[name](**GIVEN[name])
    for change in (lambda: setattr(value, "a", 9), lambda: setattr(value, "more", 9)):
        with pytest.raises(FrozenInstanceError, match="cannot assign to field"):
            change()
    with pytest.raises(FrozenInstanceError):
        del value.a
    assert value.a == GIVEN[name].get("a", 0)


@pytest.mark.parametrize("name", GIVEN)
def test_what_is_missing_or_too_much_is_refused_by_name(name: str) -> None:
    """The first value as well as the next is refused in the words of the standard library."""
    for wrong in ({}, {**GIVEN[name], "other": 1}):
        with pytest.raises(TypeError) as theirs:
            THEIRS[name](**wrong)
        for _ in range(2):
            with pytest.raises(TypeError) as ours:
                OURS[name](**wrong)
            assert str(ours.value) == str(theirs.value)


def test_each_value_gets_a_default_of_its_own() -> None:
    """What a factory makes is made for each value."""
    one, other = OURS["Slotted"](1.0), OURS["Slotted"](1.0)
    one.c.append(1)
    assert (other.c, one.b) == ([], "b")


def test_a_field_that_does_not_count_changes_no_comparison() -> None:
    """Two values that differ in it alone are equal."""
    assert OURS["Slotted"](1.0, note="one") == OURS["Slotted"](1.0, note="other")


def test_what_is_checked_when_made_is_checked_the_first_time_too() -> None:
    """A value that must not be is refused, and one with a sum keeps it."""
    with pytest.raises(ValueError, match="less than nought"):
        OURS["Own"](-1)
    value = OURS["Open"]((1, 2))
    assert value.whole == 3
    assert vars(value)["whole"] == 3


def test_a_kind_that_stands_on_another_has_the_fields_of_both() -> None:
    """Their order is that of the classes; one is never equal to the other."""
    assert repr(Below(1.0, 2.0)) == "Below(x=1.0, y=2.0, z=0.0)"
    assert Below(1.0, 2.0) != Point(1.0, 2.0)


def test_values_with_slots_go_to_another_process_and_back() -> None:
    """A batch sends them to its workers."""
    assert pickle.loads(pickle.dumps(Point(1.0, 2.0))) == Point(1.0, 2.0)
