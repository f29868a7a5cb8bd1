"""Wrong input at every field, for every garment and every kind of person: a sentence, no change.

A sample of fields and texts runs here; ``TAPEWISE_FIELDS=all`` takes them all, by hand, and
``TAPEWISE_SEED`` another sample.
"""

from __future__ import annotations

import os
import random
import re
from collections.abc import Callable, Iterator

import pytest
from msgspec.structs import replace
from walking import LARGE, Walk, walk
from wrong_input import WRONG, Spot, choices, dialogs, measures, paper, rows

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import wizard, work
from tapewise_core.tasks.people import store
from tapewise_core.units import Unit

ALL = os.environ.get("TAPEWISE_FIELDS") == "all"
SEED = int(os.environ.get("TAPEWISE_SEED", "20261126"))

PAGES: tuple[tuple[str, Callable[[Walk], Iterator[Spot]]], ...] = (
    ("measure", measures), ("table", rows), ("review", rows), ("garment", choices), ("save", paper),
)  # fmt: skip
MANY = 3
"""So many fields of a page are tried where not all are, each with two texts."""

RIGHT = re.compile(r"\d|such as|type |more than|from .+ to ")
"""What says what would be right."""


def somebody(name: str, reference: Reference, unit: Unit, height: float, age: float) -> Profile:
    """Return a person measured at three places."""
    made = Profile.of(name, unit=unit, reference=reference, waist_site=WaistSite.NAVEL)
    made = made.with_age(age).with_value("height", height)
    return made.with_value("bust", height * 0.55).with_value("hip", height * 0.58)


PEOPLE = (
    somebody("Ada Woman", Reference.WOMEN, Unit.CM, 166.0, 40),
    somebody("Abel Man", Reference.MEN, Unit.IN, 178.0, 33),
    somebody("Ben Child", Reference.NOT_SAID, Unit.IN, 128.0, 8),
    somebody("Noa Anybody", Reference.NOT_SAID, Unit.CM, 171.0, 70),
)


def stored(at: Walk) -> object:
    """What is known of the person and chosen for the garment."""
    made = at.app.desk.work
    return at.app.desk.profile, made.asked, made.paper, store.load(at.app.desk.profile.name)


def check(at: Walk, spots: list[Spot], chance: random.Random) -> None:
    """Type what is wrong into fields, and see that it is answered and nothing is kept."""
    for spot in spots if ALL else chance.sample(spots, min(MANY, len(spots))):
        for text in WRONG if ALL else chance.sample(WRONG, 2):
            before = stored(at)
            spot.put(text)
            said = spot.said()
            where = (at.page.NAME, spot.name, text[:20], said)
            assert said.startswith("! "), where
            assert said[-1] in ".?!", where
            assert len(said) < 300, where
            assert spot.name.casefold() in said.casefold() or text[:5] in said, where
            assert RIGHT.search(said.replace(text, "")), where
            assert not re.search(r"Error|Traceback|None|[{}]", said), where
            assert stored(at) == before, where


@pytest.mark.parametrize("person", PEOPLE, ids=lambda one: one.name)
def test_wrong_input_is_answered_with_a_sentence_and_nothing_is_kept(person: Profile) -> None:
    """On every page and in every question: it says what is wrong and what would be right."""
    chance = random.Random(f"{SEED} {person.name}")
    store.save(person)
    garments = [one.name for one in wizard.garments()]

    async def steps(at: Walk) -> None:
        for garment in garments if ALL else chance.sample(garments, 1):
            made = replace(work.fresh(person.name), garment=garment, measure="height")
            at.app.open_person(store.load(person.name), "measure", made)
            await at.settle()
            for page, spots in PAGES:
                at.app.go(page)
                await at.settle()
                check(at, list(spots(at)), chance)
                at.app.screen.action_leave() if page in ("table", "review") else None
        check(at, await dialogs(at), chance)
        assert at.app.is_running

    walk(steps, LARGE)
