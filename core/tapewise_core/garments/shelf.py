"""The garments there are, by name; adding one is adding its page and a row here."""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING

from tapewise_core.errors import OptionError
from tapewise_core.text.near import near_words

if TYPE_CHECKING:
    from tapewise_core.garments.garment import Garment

PAGES = {
    "jersey-top": ("jersey_top", "JERSEY_TOP"),
    "flared-dress": ("flared_dress", "FLARED_DRESS"),
    "circle-skirt": ("circle_skirt", "CIRCLE_SKIRT"),
    "gathered-skirt": ("gathered_skirt", "GATHERED_SKIRT"),
    "straight-skirt": ("straight_skirt", "STRAIGHT_SKIRT"),
    "skirted-dress": ("skirted_dress", "SKIRTED_DRESS"),
    "set-in-top": ("set_in_top", "SET_IN_TOP"),
    "raglan-top": ("raglan_top", "RAGLAN_TOP"),
}
"""Garment name to its page and the name it has there; a page is opened only when asked for."""


def refuse_unknown(name: str) -> None:
    """Raise OptionError naming the garments there are for one there is not; opens no page."""
    if name not in PAGES:
        raise OptionError(f"There is no garment “{name}”; {near_words(name, tuple(PAGES))}")


def garment(name: str) -> Garment:
    """Return a garment; raises OptionError naming the ones there are."""
    refuse_unknown(name)
    from tapewise_core.garments.garment import Garment  # with all that a draft is

    page, attribute = PAGES[name]
    found = getattr(import_module(f"tapewise_core.garments.{page}.page"), attribute)
    assert isinstance(found, Garment)
    return found


def title_of(name: str) -> str:
    """Return a garment's title without opening its page; of a garment that is no more, its name."""
    if name not in PAGES:
        return name
    return str(import_module(f"tapewise_core.garments.{PAGES[name][0]}").TITLE)


def garments() -> tuple[Garment, ...]:
    """Return all garments."""
    return tuple(garment(name) for name in PAGES)


def listing() -> tuple[tuple[str, str, str], ...]:
    """Return name, title and a sentence for every garment, without opening its page."""
    packages = {
        name: import_module(f"tapewise_core.garments.{page}") for name, (page, _) in PAGES.items()
    }
    return tuple((name, one.TITLE, one.SAYS) for name, one in packages.items())
