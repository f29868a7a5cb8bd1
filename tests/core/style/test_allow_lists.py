"""Garments name what they take from the top: nothing new comes along by accident."""

from importlib import import_module

import pytest
from making import person
from people_made_up import body

from tapewise_core.blocks.top.options import TOP
from tapewise_core.errors import OptionError
from tapewise_core.garments.shelf import PAGES, garments
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.settle import settle
from tapewise_core.tasks.drafting import draft
from tapewise_core.text.told import said
from tapewise_core.units import Unit

HEIRS = ("flared_dress", "skirted_dress", "set_in_top")
"""The garments that take options from the top."""

CHOICES = [option.key for option in TOP if option.choices and option.group is not Group.CLOTH]
"""What is drafted one way or another; how the cloth lies is the same for every garment."""

NEW = Option(
    key="hood-height", group=Group.NECK, says=said("a hood"), default=30.0, low=20, high=40
)


def of_heir(heir: str, top: Options) -> Options:
    """Return a garment's options as it would take them from another top."""
    page = import_module(f"tapewise_core.garments.{heir}.options")
    found: Options = page.options_from(top)
    return found


@pytest.mark.parametrize("heir", HEIRS)
def test_an_option_added_to_the_top_comes_to_no_other_garment(heir: str) -> None:
    """It stays the top's."""
    assert of_heir(heir, TOP + Options.of(NEW)) == of_heir(heir, TOP)


@pytest.mark.parametrize("heir", HEIRS)
@pytest.mark.parametrize("key", CHOICES)
def test_a_word_added_to_the_top_comes_to_no_other_garment(heir: str, key: str) -> None:
    """It is drafted where somebody has thought about it."""
    more = TOP.changed(key, choices=(*TOP[key].choices, "keyhole"))
    options = of_heir(heir, more)
    words = options[key].choices if key in options else ()
    assert "keyhole" not in words
    style = settle(options, {}, body(), Unit.CM)
    assert style.as_json() == settle(of_heir(heir, TOP), {}, body(), Unit.CM).as_json()


def test_a_word_that_is_not_offered_is_refused_with_those_that_are() -> None:
    """A facing on a set-in top, a curved hem on a dress."""
    for name, key, word in (
        ("set-in-top", "neck-finish", "facing"),
        ("flared-dress", "hem", "curved"),
    ):
        with pytest.raises(OptionError, match=f"{key} is one of .*, not “{word}”"):
            draft(person(), name, {key: word})


def test_the_page_and_the_list_agree() -> None:
    """What the shelf offers is what the garment takes from the top as it is."""
    for page in garments():
        folder, _ = PAGES[page.name]
        if folder in HEIRS:
            assert page.options == of_heir(folder, TOP)
