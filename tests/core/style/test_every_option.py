"""Every option of every garment changes something, and none of its values breaks a draft."""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache

import pytest
from making import DAY, MIDDLE, person

from tapewise_core.errors import TapewiseError
from tapewise_core.garments.shelf import garment, garments
from tapewise_core.paper.document import Heading
from tapewise_core.style.option import Option
from tapewise_core.tasks.documents import checklist_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.units import Unit

MIDDLE_BUILD = {**MIDDLE, "waist_to_knee": 58.0, "waist_to_floor": 102.0}
FULL_BUILD = {**MIDDLE_BUILD, "bust": 124.0, "waist": 112.0, "hip": 128.0, "upper_arm": 40.0}
CURVED_BUILD = {
    **MIDDLE_BUILD, "bust": 108.0, "high_bust": 93.0, "waist": 68.0, "hip": 124.0,
    "front_waist_length": 47.0,
}  # fmt: skip
BUILDS = {"middle": MIDDLE_BUILD, "full": FULL_BUILD, "curved": CURVED_BUILD}
"""Bodies of different build, invented [cm]."""

ON_CURVES = ("waist-darts", "bust-room")
"""Options that matter to a body of strong curves alone."""

MATTERS_WITH = {
    "hem-rise": {"hem": "curved"},
    "split-length": {"hem": "split"},
    "lower-shoulder-by": {"lower-shoulder": "left"},
    "sleeve-hem-ease": {"sleeve": "long", "fit": "eased"},
    "facing-width": {"neck-finish": "facing"},
    "band-width": {"waist-finish": "band"},
    "band-length": {"waist-finish": "band"},
    "belt-width": {"belt": "yes"},
    "belt-ends": {"belt": "yes"},
    "pocket-below-waist": {"pockets": "yes"},
    "pocket-opening": {"pockets": "yes"},
    "armhole-finish": {"sleeve": "none"},
    "armhole-band-width": {"sleeve": "none"},
    "armhole-band-ratio": {"sleeve": "none"},
    "armhole-facing-width": {"sleeve": "none", "armhole-finish": "facing"},
    "sleeve-finish": {"sleeve": "short"},
    "cuff-width": {"sleeve-finish": "cuff", "sleeve": "short"},
    "cuff-ratio": {"sleeve-finish": "cuff", "sleeve": "short"},
    "hem-finish": {"skirt": "straight"},
    "hem-band-width": {"hem-finish": "band", "skirt": "straight"},
    "hem-band-ratio": {"hem-finish": "band", "skirt": "straight"},
    "collar": {"neckline": "high"},
    "collar-height": {"neckline": "high"},
    "cowl-depth": {"neckline": "cowl"},
    "placket-length": {"shoulder-placket": "left"},
    "placket-buttons": {"shoulder-placket": "left"},
    "waist-darts": {"waist-shaping": "100", "waist-ease": "0"},
    "armhole-drop": {"sleeve": "none"},
    "cap-shortening": {"sleeve-cut": "set-in"},
    "sleeve-sewn": {"sleeve-cut": "set-in"},
    "hip-ease": {"skirt": "straight"},
    "flare": {"skirt": "straight"},
    "vent": {"skirt": "straight"},
    "vent-length": {"skirt": "straight", "vent": "back"},
    "fullness": {"skirt": "gathered"},
    "tiers": {"skirt": "gathered"},
    "tier-fullness": {"skirt": "gathered", "tiers": "3"},
}
"""The choices beside which an option matters, as far as a garment offers them."""

EVERY = [(page.name, option.key) for page in garments() for option in page.options]


@cache
def drafted(name: str, who: str, asked: tuple[tuple[str, str], ...]) -> Drafted | str:
    """Return a draft, or the sentence that refuses it; anything else is a crash."""
    try:
        return draft(person(BUILDS[who]), name, dict(asked), unit=Unit.CM, made=DAY)
    except TapewiseError as error:
        return str(error)


def rest_of_checklist(found: Drafted) -> tuple[str, ...]:
    """Return the checklist but for its list of the style itself and the set's own mark."""
    blocks: list[str] = []
    for block in checklist_of(found).blocks:
        if isinstance(block, Heading) and block.text == "Chosen style":
            break
        blocks.append(repr(block).replace(found.label.set_words(), ""))
    return tuple(blocks)


def differ(usual: Drafted, others: Iterable[Drafted | str]) -> bool:
    """Say whether the wearer gets something else of one: pattern, proofs or, looked at last because
    it takes longest, checklist."""
    found = [other for other in others if isinstance(other, Drafted)]
    if any((one.pattern, one.proofs) != (usual.pattern, usual.proofs) for one in found):
        return True
    wanted = rest_of_checklist(usual) if found else ()
    return any(rest_of_checklist(one) != wanted for one in found)


def beside(name: str, option: Option) -> tuple[tuple[str, str], ...]:
    """Return the choices beside which an option is tried."""
    offered = {each.key: each.words for each in garment(name).options}
    wanted = MATTERS_WITH.get(option.key, {}).items()
    return tuple(
        (k, word) for k, word in wanted if k in offered and (not offered[k] or word in offered[k])
    )


def ends(option: Option) -> tuple[str, ...]:
    """Return the words of an option, or both its limits as one types them."""
    return option.words or (f"{option.low:g}", f"{option.high:g}")


def between(option: Option) -> tuple[str, ...]:
    """Return two values between the limits, for an option both whose limits may be refused."""
    span = option.high - option.low
    return () if option.words else tuple(f"{option.low + span * part:g}" for part in (0.1, 0.5))


@pytest.mark.parametrize(("name", "key"), EVERY)
def test_an_option_changes_something_and_breaks_nothing(name: str, key: str) -> None:
    """Some value gives one of two builds something else than the usual one: an option that nobody
    reads is found.

    Both limits and every word are drafted or refused with a sentence, for the build that leaves
    the least room: never a crash, never an empty refusal.
    """
    option = garment(name).options[key]
    way, who = beside(name, option), "curved" if key in ON_CURVES else "middle"
    full = [drafted(name, "full", (*way, (key, end))) for end in ends(option)]
    for found in full:
        if isinstance(found, str):
            assert found.endswith("."), found
            assert len(found.split()) > 4, found
    usual = drafted(name, "full", way)
    if isinstance(usual, Drafted) and differ(usual, full):
        return
    usual = drafted(name, who, way)
    assert isinstance(usual, Drafted), usual
    values = ends(option) + between(option)
    assert differ(usual, (drafted(name, who, (*way, (key, value))) for value in values))


@pytest.mark.parametrize("name", [page.name for page in garments()])
def test_the_usual_style_fits_the_full_build(name: str) -> None:
    """Otherwise its refusals would say nothing about the options."""
    assert isinstance(drafted(name, "full", ()), Drafted)


def test_an_option_that_nobody_reads_is_found_out() -> None:
    """A style that differs in its own list alone counts as the same."""
    usual, same = (drafted("jersey-top", "middle", asked) for asked in ((), (("hem-rise", "9"),)))
    assert isinstance(usual, Drafted)
    assert isinstance(same, Drafted)
    assert usual.style != same.style
    assert not differ(usual, [same])
