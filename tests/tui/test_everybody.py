"""Measuring for every garment and every kind of person, with wrong input on every page."""

from __future__ import annotations

from itertools import cycle

import pytest
from msgspec.structs import replace
from walking import SMALL, Walk, walk

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import wizard, work
from tapewise_core.tasks.people import store
from tapewise_core.units import Unit
from tapewise_tui.widgets.field import Field


def somebody(name: str, reference: Reference, unit: Unit, age: float | None) -> Profile:
    """Return a person with a height; the waist's place is said, so that nothing is asked of it."""
    made = Profile.of(name, unit=unit, reference=reference, waist_site=WaistSite.NAVEL)
    return made.with_age(age).with_value("height", 128.0 if age == 8 else 170.0)


KINDS = (
    somebody("Ada Woman", Reference.WOMEN, Unit.CM, 40),
    somebody("Abel Man", Reference.MEN, Unit.IN, None),
    somebody("Ben Child", Reference.NOT_SAID, Unit.CM, 8),
    somebody("Noa Anybody", Reference.NOT_SAID, Unit.IN, 70),
)
WRONG = cycle(("abc", "0", "-3", "1e400", "9,9,9", "900", "½½", "[red]", "inf", "five"))
RIGHT = {"waist": {Unit.CM: "71", Unit.IN: "31 3/8"}}


async def refused_then_kept(at: Walk, name: str) -> None:
    """Type something wrong for the waist, then something right, on the page that is open."""
    field = at.page.query_one(Field)
    before = store.load(name).measures.get("waist")
    field.value = next(WRONG)
    await at.press("enter")
    assert at.said.startswith("!"), (at.page.NAME, field.value)
    assert store.load(name).measures.get("waist") == before
    right = RIGHT["waist"][store.load(name).unit]
    field.value = right
    await at.press("enter")
    kept = store.load(name)
    assert kept.unit.number(kept.measures["waist"].value * 10) == right


@pytest.mark.parametrize("garment", [one.name for one in wizard.garments()])
def test_wrong_input_is_refused_and_right_input_kept(garment: str) -> None:
    """On the measure's page and in the table or the review, for a woman, a man, a child and
    whoever would rather not say; every garment asks for the waist."""
    place = [one.name for one in wizard.garments()].index(garment)
    pages = (("table", "review"), ("review", "table"))[place % 2]
    for person in KINDS:
        store.save(person)

    async def steps(at: Walk) -> None:
        for person, page in zip(KINDS, cycle(pages), strict=False):
            made = replace(work.fresh(person.name), garment=garment, page="measure")
            at.app.open_person(store.load(person.name), "measure", replace(made, measure="waist"))
            await at.settle()
            assert "Waist ·" in at.text()
            await refused_then_kept(at, person.name)
            at.app.desk.change("nothing", at.app.desk.profile.without("waist"))
            at.app.go(page)
            await at.settle()
            at.page.found("waist")
            await refused_then_kept(at, person.name)

    walk(steps, SMALL)
