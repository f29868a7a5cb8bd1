"""Every option of every garment changes something, and none of its values breaks a draft."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

import pytest
from making import DAY, MIDDLE, person

from tapewise_core.errors import TapewiseError
from tapewise_core.garments.shelf import garment, garments
from tapewise_core.paper.document import Block, Heading
from tapewise_core.style.option import Option
from tapewise_core.tasks.drafting import Drafted, draft
from tapewise_core.units import Unit

LONG = {"waist_to_knee": 58.0, "waist_to_floor": 102.0}
BODIES = {
    "middle": {**MIDDLE, **LONG},
    "full": {**MIDDLE, **LONG, "bust": 124.0, "waist": 112.0, "hip": 128.0, "upper_arm": 40.0},
    "curved": {
        **MIDDLE, **LONG, "bust": 108.0, "high_bust": 93.0, "waist": 68.0, "hip": 124.0,
        "front_waist_length": 47.0, "hip_depth": 14.0,
    },
}  # fmt: skip
"""Bodies of different build, invented [cm]."""

WAYS: tuple[dict[str, str], ...] = (
    {},
    {"neck-finish": "facing"},
    {"hem": "curved"},
    {"hem": "split"},
    {"belt": "yes", "pockets": "yes"},
    {"waist-finish": "band"},
    {"lower-shoulder": "left"},
    {"sleeve": "long", "fit": "eased"},
)
"""Styles in which an option may matter that does not matter to the usual one."""

EVERY = [(page.name, option.key) for page in garments() for option in page.options]


@cache
def drafted(who: str, name: str, asked: tuple[tuple[str, str], ...]) -> Drafted | str:
    """Return a draft, or the sentence that refuses it; anything else is a crash."""
    try:
        return draft(person(BODIES[who]), name, dict(asked), unit=Unit.CM, made=DAY)
    except TapewiseError as error:
        return str(error)


def made_of(found: Drafted) -> tuple[object, ...]:
    """Return what the wearer gets: pattern, proofs, and the checklist but for its list of the
    style itself."""
    blocks: list[Block] = []
    for block in found.checklist().blocks:
        if isinstance(block, Heading) and block.text == "Chosen style":
            break
        blocks.append(block)
    return found.pattern, found.proofs, tuple(blocks)


def ends(option: Option) -> tuple[str, ...]:
    """Return the words of an option, or both its limits as one types them."""
    return option.words or (f"{option.low:g}", f"{option.high:g}")


def values(option: Option) -> tuple[str, ...]:
    """Return the same, and two values between the limits."""
    span = option.high - option.low
    between = (f"{option.low + span * share:g}" for share in (0.1, 0.5))
    return (*ends(option), *(() if option.words else between))


def settings(name: str, option: Option) -> Iterator[tuple[str, dict[str, str]]]:
    """Yield bodies and styles to try an option in, as far as the garment offers them."""
    offered = {(each.key, word) for each in garment(name).options for word in each.words}
    for who in BODIES:
        yield from ((who, way) for way in WAYS if offered >= way.items() and option.key not in way)


def changes(who: str, name: str, way: dict[str, str], option: Option) -> bool:
    """Say whether any value of an option gives something else than another does."""
    base = drafted(who, name, tuple(way.items()))
    if isinstance(base, str):
        return False
    usual = made_of(base)
    for value in values(option):
        other = drafted(who, name, (*way.items(), (option.key, value)))
        if not isinstance(other, str) and made_of(other) != usual:
            return True
    return False


@pytest.mark.parametrize(("name", "key"), EVERY)
def test_every_option_changes_something(name: str, key: str) -> None:
    """For at least one body and style; an option that nobody reads is found here."""
    option = garment(name).options[key]
    assert any(changes(who, name, way, option) for who, way in settings(name, option))


@pytest.mark.parametrize(("name", "key"), EVERY)
def test_each_end_is_drafted_or_refused_with_a_sentence(name: str, key: str) -> None:
    """Both limits and every word, for every body: never a crash, never an empty refusal."""
    option = garment(name).options[key]
    for who in BODIES:
        for end in ends(option):
            found = drafted(who, name, ((key, end),))
            if isinstance(found, str):
                assert found.endswith("."), found
                assert len(found.split()) > 4, found


def test_an_option_that_nobody_reads_is_found_out() -> None:
    """A style that differs in its own list alone counts as the same."""
    usual, same = (drafted("middle", "jersey-top", asked) for asked in ((), (("hem-rise", "9"),)))
    assert not isinstance(usual, str)
    assert not isinstance(same, str)
    assert usual.style != same.style
    assert made_of(usual) == made_of(same)
