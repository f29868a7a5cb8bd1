"""The page on which one measure is taken."""

from __future__ import annotations

import pytest
from walking import LARGE, SMALL, Walk, walk

from tapewise_core.measures.body import Origin, WaistSite
from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import work
from tapewise_core.tasks.people import store
from tapewise_core.units import Unit
from tapewise_tui import order
from tapewise_tui.widgets.readings import Readings


def begin(*values: tuple[str, float], measure: str = "head", unit: Unit = Unit.CM) -> None:
    """Put a person on file who stopped at a measure."""
    profile = Profile.of("Ada Quist", unit=unit)
    for key, cm in values:
        profile = profile.with_value(key, cm)
    store.save(profile)
    work.save(work.Work("Ada Quist", measure=measure, when="2026-11-01T10:00:00"))


def kept(key: str) -> tuple[float, ...] | None:
    """Return the readings on file."""
    found = store.load("Ada Quist").measures.get(key)
    return None if found is None else found.readings


REFUSED = (
    ("", "Nothing was typed"),
    ("abc", "is not a length"),
    ("0", "cannot be"),
    ("-92", "below zero"),
    ("400", "cannot be"),
    ("92,5,3", "is not a length"),
    ("1e400", "is not a length"),
)


def test_what_is_no_measure_is_refused_with_a_sentence() -> None:
    """Nothing is kept, the cursor stays in the field, and the next try works."""
    begin(measure="bust")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        field = at.page.query_one(Readings).field(0)
        for typed, says in REFUSED:
            field.value = typed
            await at.press("enter")
            assert says in at.said, typed
            assert kept("bust") is None
            assert at.app.focused is field
        field.value = "92"
        await at.press("enter")
        assert kept("bust") == (92.0,)

    walk(steps)


def test_two_readings_that_agree_go_on_to_the_next_measure() -> None:
    """The mean is kept with both readings, and the next page is open."""
    begin(measure="bust")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await at.type("92", "enter")
        await at.type("93", "enter")
        assert "agree" in at.said
        assert "Under bust" in at.text()
        assert kept("bust") == (92.0, 93.0)
        assert store.load("Ada Quist").measures["bust"].value == 92.5

    walk(steps)


def test_readings_far_apart_ask_for_a_third() -> None:
    """The third field appears, and the middle one of three is kept."""
    begin(measure="hip")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await at.type("98", "enter")
        await at.type("104", "enter")
        assert "third" in at.said
        await at.type("98.4", "enter")
        assert store.load("Ada Quist").measures["hip"].value == 98.4

    walk(steps)


def test_the_unit_switches_at_any_time_and_nothing_changes() -> None:
    """What is typed but not entered is kept first, in the unit it was typed in."""
    begin(measure="bust")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await at.type("92", "f2")
        assert store.load("Ada Quist").unit is Unit.IN
        assert kept("bust") == (92.0,)
        assert at.page.query_one(Readings).field(0).value == "36 1/4"
        await at.press("f2", "enter", "enter")
        assert kept("bust") == (92.0,)

    walk(steps)


def test_skipping_leaves_a_measure_open_and_back_returns() -> None:
    """Skip, back, and the list all keep what was typed."""
    begin(measure="bust")

    async def steps(at: Walk) -> None:
        await at.press("enter", "f4")
        assert "Under bust" in at.text()
        assert kept("bust") is None
        await at.type("80", "f3")
        assert "Bust ·" in at.text()
        assert kept("under_bust") == (80.0,)
        await at.press("f5", "end", "enter")
        assert "Nape to floor" in at.text()

    walk(steps)


def test_the_estimate_taken_is_marked_as_one() -> None:
    """It is kept as an estimate, without a reading, and the field stays empty."""
    begin(("height", 168), ("bust", 92), measure="hip")

    async def steps(at: Walk) -> None:
        await at.press("enter", "f6")
        found = store.load("Ada Quist").measures["hip"]
        assert found.origin is Origin.ESTIMATED
        assert found.readings == ()
        await at.press("f3")
        assert at.page.query_one(Readings).field(0).value == ""

    walk(steps)


def test_the_waist_asks_where_the_elastic_sits() -> None:
    """The answer is kept with the person."""
    begin(measure="waist")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert "navel" in at.text()
        await at.press("home", "enter")
        assert store.load("Ada Quist").waist_site is WaistSite.NARROWEST
        await at.type("75", "enter")
        assert kept("waist") == (75.0,)
        await at.press("ctrl+z", "ctrl+z")
        assert store.load("Ada Quist").waist_site is WaistSite.NOT_SAID

    walk(steps)


def test_every_change_can_be_taken_back_and_made_again() -> None:
    """Undo goes back through readings and unit; redo goes forward; both reach the file."""
    begin(measure="bust")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await at.type("92", "enter", "f2")
        await at.press("ctrl+z")
        assert store.load("Ada Quist").unit is Unit.CM
        await at.press("ctrl+z")
        assert kept("bust") is None
        assert "Taken back: Bust 92 cm" in at.said
        await at.press("ctrl+y")
        assert kept("bust") == (92.0,)
        await at.press("ctrl+z", "ctrl+z")
        assert "nothing to take back" in at.said

    walk(steps)


def test_an_unlikely_value_is_kept_and_never_blocks() -> None:
    """A slip is remarked on at once; Enter goes on all the same."""
    begin(("height", 168), ("bust", 92), ("hip", 100), ("high_bust", 88), measure="waist")

    async def steps(at: Walk) -> None:
        await at.press("enter", "home", "enter")
        await at.type("29", "enter")
        assert at.said.startswith("!")
        assert kept("waist") == (29.0,)
        await at.press("enter")
        assert "High hip ·" in at.text()

    walk(steps)


@pytest.mark.parametrize("size", [SMALL, LARGE])
@pytest.mark.parametrize("unit", list(Unit))
def test_no_page_scrolls_its_field_away(size: tuple[int, int], unit: Unit) -> None:
    """On every measure's page all words, the fields and what others read are on the screen."""
    begin(("height", 168), ("bust", 92), measure="head", unit=unit)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for key in order.KEYS:
            at.app.desk.place("measure", key)
            at.page.show()
            await at.pilot.pause()
            how = at.page.query_one("#how")
            assert how.max_scroll_y == 0, key
            fields = at.page.query_one(Readings).region
            assert fields.bottom <= size[1] - 2, key
            assert at.page.query_one("#others").region.bottom <= size[1] - 1, key

    walk(steps, size)


def test_helpers_work_comes_last_and_together() -> None:
    """Every measure has a page, regions stay together, and what needs a helper is at the end."""
    assert sorted(order.KEYS) == sorted(row.key for row in CATALOGUE)
    helped = [row.helper for row in order.ORDER]
    assert helped == sorted(helped)
    groups = [order.group(row) for row in order.ORDER]
    changes = [
        group for group, before in zip(groups, ["", *groups], strict=False) if group != before
    ]
    assert len(changes) == len(set(changes))


def test_leaving_the_waist_s_place_unsaid_leads_on_to_the_field() -> None:
    """Enter on the answer that is marked already is an answer too; the next key is a number."""
    begin(measure="waist")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert "at the navel" in at.text()
        await at.press("enter")
        await at.type("74", "enter")
        assert kept("waist") == (74.0,)
        assert store.load("Ada Quist").waist_site is WaistSite.NOT_SAID

    walk(steps)
