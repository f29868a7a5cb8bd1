"""The list to sew by: what is ticked stays ticked, whoever reads."""

from __future__ import annotations

from walking import Walk, walk

from tapewise_core.tasks import work
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
