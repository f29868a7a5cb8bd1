"""The list to sew by: what is ticked stays ticked, whoever reads."""

from __future__ import annotations

import pytest
from walking import Walk, walk

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import settings, work
from tapewise_core.tasks.people import person, store
from tapewise_tui.widgets.ticks import TickList

NAME = "Marta Lindqvist"


def ticked(at: Walk) -> list[str]:
    """Return what is ticked, as it is read."""
    return [item.text for item in at.page.query_one(TickList).items if item.ticked]


def test_a_tick_stays_when_the_unit_changes() -> None:
    """A sentence with a length ticked in cm is ticked in inches, after turning pages too."""
    store.save(person(NAME))
    work.save(work.Work(NAME, page="sew", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        chores = at.page.query_one(TickList)
        place = next(p for p, i in enumerate(chores.items) if i.key and " cm" in i.text)
        chores.to(str(place))
        await at.press("space")
        assert len(ticked(at)) == 1
        await at.press("f2", "f3", "f4")
        assert at.page.NAME == "sew"
        told = ticked(at)
        assert len(told) == 1
        assert " in" in told[0]
        assert " cm" not in told[0]

    walk(steps)


def test_what_a_new_draft_leaves_true_stays_ticked_and_the_rest_is_told() -> None:
    """The cloth stays washed though its stretch is measured later, what was cut is open once it
    has changed; the last seam ends it, and the same is made once more; the next garment begins with
    what was noted."""
    store.save(person(NAME))
    made = work.Work(NAME, page="sew", when="2026-11-01T10:00:00", notes="neck higher")
    work.save(made)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        chores = at.page.query_one(TickList)
        items = [item for item in chores.items if item.key]
        for item in items:
            if item.text.startswith(("Wash", "Back: cut")):
                chores.to(str(chores.items.index(item)))
                await at.press("space")
        desk = at.app.desk
        await at.press("f9", "4")
        at.page.found("fold")
        await at.press("enter")
        await at.type("15.5", "enter")
        while at.app.screen is not at.page:
            await at.press("enter")
        assert desk.work.asked["stretch"] == "55"
        await at.press("f9", "7")
        assert len(ticked(at)) == 2
        chores = at.page.query_one(TickList)
        desk.change("longer", made=desk.work.with_option("body-length", "80 cm"))
        at.page.show()
        assert [text[:4] for text in ticked(at)] == ["Wash"]
        assert "1 thing is open again" in at.text()
        for item in chores.items:
            if item.key and item.ticked is False:
                chores.post_message(TickList.Ticked(item.key))
        await at.settle()
        assert desk.work.sewn
        assert "open again" not in at.text()
        await at.press("f9", "4")
        assert "Noted for this time, jersey-top: Neck higher" in at.said
        await at.press("f9", "7", "end", "enter")
        assert (desk.work.ticked, desk.work.sewn) == ((), "")
        await at.press("ctrl+z")
        assert desk.work.sewn

    walk(steps)


@pytest.mark.parametrize("page", ["save", "sew", "cut"])
def test_machines_nobody_named_are_said_to_be_assumed(page: str) -> None:
    """Whoever turns past the garment reads what is taken for granted; once told, it is not said."""
    settings.keep(settings.Settings())
    store.save(person(NAME))
    work.save(work.Work(NAME, page=page, when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert "overlocker and coverstitch are assumed. Page 4 changes that." in at.said
        at.app.desk.usual("machines", "overlocker, coverstitch")
        await at.press("f3", "f4")
        assert "assumed" not in at.said

    walk(steps)


def test_where_nothing_can_be_drafted_it_is_said_why() -> None:
    """A child with a height alone: what is still to measure, not which machines are assumed."""
    store.save(Profile.of("Kit Quist").having(age=8.0).with_value("height", 128.0))
    work.save(work.Work("Kit Quist", page="sew", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert at.said.startswith("! Still to measure: ")
        assert "There is no pattern to sew yet." in at.text()

    walk(steps)
