"""Options on their way from one value to another, as they are typed."""

from __future__ import annotations

import pytest
from making import top

from tapewise_core.proofs.ways import less, more, word
from tapewise_core.tasks.changing import Turn, at, taken_back, turns


def turn(asked: dict[str, str], key: str, way: str) -> Turn:
    """Return the one turn of an option of a jersey top."""
    (found,) = turns(top(asked), more(key) if way == "more" else less(key))
    return found


def test_an_option_goes_half_of_the_way_to_its_limit() -> None:
    """Beyond, it is another garment."""
    ease = turn({"ease": "4"}, "ease", "more")
    assert (ease.start, ease.end) == (4.0, 22.0)
    assert (ease.at(0.0), ease.at(0.5), ease.at(1.0)) == ("4 cm", "13 cm", "22 cm")
    assert turn({"ease": "4"}, "ease", "less").end == -8.0


def test_a_value_is_rounded_onwards() -> None:
    """So that what was enough stays enough: up where it grows, down where it shrinks."""
    assert turn({"ease": "4"}, "ease", "more").at(0.1001) == "5.9 cm"
    assert turn({"ease": "4"}, "ease", "less").at(0.1001) == "2.7 cm"
    assert turn({"band-ratio": "0.7"}, "band-ratio", "more").at(0.01) == "0.71"
    assert turn({"waist-shaping": "50"}, "waist-shaping", "more").at(0.01) == "50.5"


def test_a_word_has_no_way_between() -> None:
    """It is there at once; where it is that word already, there is no way."""
    (found,) = turns(top(), word("neck-finish", "turned"))
    assert found.at(0.1) == "turned"
    assert turns(top({"neck-finish": "turned"}), word("neck-finish", "turned")) == ()


def test_a_way_needs_all_its_options() -> None:
    """One that the garment lacks or that is at its limit leaves none."""
    assert turns(top(), more("ease", "flare")) == ()
    assert turns(top({"ease": "40"}), more("ease")) == ()
    both = turns(top(), more("ease", "neck-depth"))
    assert list(at(both, 0.5)) == ["ease", "neck-depth"]


def test_what_was_asked_for_goes_back_to_what_is_usual() -> None:
    """The cloth is what it is, and what was asked for as usual has nowhere to go."""
    back = taken_back(top({"ease": "9", "stretch": "30", "hem": "split", "fit": "fitted"}))
    assert [(one.option.key, one.end) for one in back] == [("ease", 0.0), ("hem", "straight")]


@pytest.mark.parametrize("share", [0.0, 1.0])
def test_no_value_leaves_the_limits(share: float) -> None:
    """Rounded onwards, it stops at them."""
    found = Turn(top().garment.options["band-ratio"], 0.999, 1.0)
    assert found.at(share) == "1"
