"""Values that never change."""

from __future__ import annotations

import pickle
from functools import cached_property

import pytest
from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.units import Length, cm


class Pair(Frozen, dict=True):
    """Two numbers, and what is worked out of them once."""

    one: float
    two: float = 2.0

    @cached_property
    def both(self) -> list[float]:
        """Work out something that is not the same twice."""
        return [self.one + self.two]


def test_a_value_cannot_be_changed() -> None:
    """Neither what it has nor what it never had can be set, and nothing taken away."""
    pair = Pair(1.0)
    for name in ("one", "three"):
        with pytest.raises(AttributeError):
            setattr(pair, name, 3.0)
    with pytest.raises(AttributeError):
        del pair.two


def test_values_of_one_kind_are_told_apart_by_their_fields() -> None:
    """They compare, hash and show by what they hold, given by place or by name."""
    assert Pair(1.0) == Pair(one=1.0, two=2.0) != Pair(2.0)
    assert len({Pair(1.0), Pair(1.0), Pair(1.0, 3.0)}) == 2
    assert repr(Pair(1.0)) == "Pair(one=1.0, two=2.0)"


def test_what_is_worked_out_is_kept_and_no_part_of_a_value() -> None:
    """It is worked out once, and again for a changed value."""
    pair = Pair(1.0)
    assert pair.both is pair.both
    assert replace(pair, two=4.0).both == [5.0]
    assert pair == Pair(1.0)


def test_what_a_value_must_be_is_asked_of_a_changed_one_too() -> None:
    """A change to what could not be made is refused, and so is a field that there is not."""

    class Above(Frozen):
        least: float

        def __post_init__(self) -> None:
            if self.least < 0:
                raise ValueError("below nothing")

    with pytest.raises(ValueError, match="below nothing"):
        replace(Above(1.0), least=-1.0)
    with pytest.raises(TypeError, match="most"):
        replace(Above(1.0), most=1.0)


def test_a_value_goes_to_another_process_and_back() -> None:
    """As a batch sends its orders and results."""
    for value in (cm(3) + cm(4), Length(1.0, ("hip ", 1.0)), Pair(1.0)):
        assert pickle.loads(pickle.dumps(value)) == value
