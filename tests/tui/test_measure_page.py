"""The page on which one measure is taken."""

from __future__ import annotations

import re

import pytest
from textual.events import Key
from textual.widgets import OptionList
from walking import LARGE, SMALL, Walk, walk

from tapewise_core.measures import order
from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import work
from tapewise_core.tasks.people import person, store
from tapewise_core.units import Unit
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.readings import Readings
from tapewise_tui.widgets.site import SITES, SiteField
from tapewise_tui.widgets.sure import SureLine


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
        field = at.page.query_one(Readings).field
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
        assert "Waist ·" in at.text()
        assert kept("bust") == (92.0, 93.0)
        assert store.load("Ada Quist").measures["bust"].value == 92.5

    walk(steps)


def test_unlikely_readings_far_apart_are_told_to_be_both() -> None:
    """The third reading is asked for, and so is whether such a head can be; Enter goes on."""
    begin(("height", 168.0))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await at.type("101", "enter")
        await at.type("104", "enter")
        assert at.said.startswith("! ")
        assert "third reading is due" in at.said
        assert "the other measures suggest" in at.said
        await at.type("107", "enter")
        assert "the middle one counts" in at.said
        assert "the other measures suggest" in at.said
        await at.press("enter")
        assert at.app.desk.work.measure == "neck"

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
        assert at.said == "Bust 92 cm is kept. Lengths are now read and typed in inches."
        await at.press("up")
        assert at.page.query_one(Readings).field.value == "36 1/4"
        await at.press("f2", "enter", "enter")
        assert kept("bust") == (92.0,)

    walk(steps)


def test_skipping_leaves_a_measure_open_and_back_returns() -> None:
    """On and back keep what was typed; only what the garment uses is asked, all else on a key."""
    begin(measure="high_bust")

    async def steps(at: Walk) -> None:
        await at.press("enter", "f4")
        assert "Bust ·" in at.text()
        assert kept("high_bust") is None
        await at.type("80", "f3")
        assert "High bust ·" in at.text()
        assert kept("bust") == (80.0,)
        await at.press("f4", "f4")
        assert "Waist ·" in at.text()
        await at.press("escape", "ctrl+l", "escape", "f3")
        assert "Under bust ·" in at.text()

    walk(steps)


def test_what_is_left_to_the_estimate_stays_open() -> None:
    """Nothing is kept, so that it is estimated anew when anything changes."""
    begin(("height", 168), ("bust", 92), measure="hip")

    async def steps(at: Walk) -> None:
        await at.press("enter", "f6")
        assert "stays open" in at.said
        assert kept("hip") is None
        assert "hip" in at.app.desk.check.missing

    walk(steps)


def test_an_estimate_never_takes_a_reading_s_place() -> None:
    """F6 leaves a reading alone; of a slip it takes what the page proposes."""
    begin(("height", 169), ("bust", 93), ("high_bust", 90), ("hip", 101), measure="waist")

    async def steps(at: Walk) -> None:
        await at.press("enter", "enter")
        await at.type("77", "enter", "f6")
        assert kept("waist") == (77.0,)
        assert "is measured" in at.said
        await at.press("up")
        await at.type("30.5", "enter")
        assert kept("waist") == (30.5,)
        await at.press("f6")
        assert kept("waist") == (pytest.approx(77.47),)

    walk(steps)


def test_a_reading_is_taken_off_by_emptying_it() -> None:
    """Up goes to a reading that is there; the last one taken off opens the measure again."""
    begin(measure="bust")
    store.save(store.load("Ada Quist").with_value("bust", 93, readings=(92.0, 94.0)))

    async def steps(at: Walk) -> None:
        await at.press("enter", "down")
        assert at.page.query_one(Readings).field.value == "94"
        await at.press("backspace", "enter")
        assert kept("bust") == (92.0,)
        await at.press("up", "backspace", "enter")
        assert kept("bust") is None
        await at.press("ctrl+z", "ctrl+z")
        assert kept("bust") == (92.0, 94.0)

    walk(steps)


@pytest.mark.parametrize("size", [(60, 15), SMALL, LARGE])
def test_a_reading_is_shown_whole(size: tuple[int, int]) -> None:
    """Three readings in eighths of an inch, the one at hand and those beside it."""
    begin(measure="bust", unit=Unit.IN)
    readings = tuple(inches * 2.54 for inches in (36.75, 38.125, 40.875))
    store.save(store.load("Ada Quist").with_value("bust", readings[1], readings=readings))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for _ in range(3):
            line = next(line for line in at.text().splitlines() if "1st" in line)
            for reading in ("36 3/4", "38 1/8", "40 7/8"):
                assert re.search(rf"[ ▌]{reading} ", f"{line} ")
            await at.press("down")

    walk(steps, size)


def test_typing_ahead_mixes_no_two_values() -> None:
    """Keys that come faster than pages turn all reach the measure they were meant for."""
    begin(measure="height")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        typed = "168\n168\n56\n56\n36\n36.5\n90\n91\n94\n94\n75\n76\n101\n"
        signs = {"\n": "enter", ".": "full_stop"}
        for sign in typed:
            at.app.post_message(Key(signs.get(sign, sign), None if sign == "\n" else sign))
        await at.settle()
        found = {key: row.readings for key, row in store.load("Ada Quist").measures.items()}
        assert found == {
            "height": (168.0, 168.0),
            "head": (56.0, 56.0),
            "neck": (36.0, 36.5),
            "high_bust": (90.0, 91.0),
            "bust": (94.0, 94.0),
            "waist": (75.0, 76.0),
            "hip": (101.0,),
        }

    walk(steps)


def test_numbers_typed_ahead_of_the_sheet_are_typed_into_the_sheet() -> None:
    """F10 and F4 pressed before a page stands turn to where the numbers behind them belong."""
    begin(measure="height")

    async def steps(at: Walk) -> None:
        at.app.open_person(store.load("Ada Quist"), "measure")
        assert not at.page.stands
        for key in ("f10", *"168", "enter", *"57", "enter"):
            at.app.post_message(Key(key, key if len(key) == 1 else None))
        await at.settle()
        assert at.page.NAME == "table"
        assert kept("height") == (168.0,)
        assert kept("head") == (57.0,)

    walk(steps)


def test_the_page_says_what_is_open_and_what_helps_most() -> None:
    """After each measure, of those that the garment uses."""
    begin(("height", 168), measure="bust")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert "1 of 15 measures are there." in " ".join(at.text().split())
        await at.type("92", "enter")
        assert "2 of 15" in " ".join(at.text().split())

    walk(steps, LARGE)


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


def test_a_visit_to_the_people_leaves_what_can_be_taken_back() -> None:
    """Opened again as she was, a person's last change can be undone; once another was open, not."""
    begin(measure="bust")
    store.save(Profile.of("Zoe Hart").with_value("bust", 90))

    async def steps(at: Walk) -> None:
        await at.press("enter", "enter")
        await at.type("92", "enter", "f2")
        for back in ("unit in", "Bust 92 cm"):
            at.app.go("start")
            await at.settle()
            await at.press("enter", "ctrl+z")
            assert f"Taken back: {back}" in at.said
        assert kept("bust") is None
        await at.press("ctrl+y")
        for name in ("Zoe Hart", "Ada Quist"):
            at.app.open_person(store.load(name), "review")
            at.app.go("start")
            await at.settle()
        at.app.open_person(store.load("Ada Quist"), "measure")
        await at.settle()
        await at.press("ctrl+z")
        assert "nothing to take back" in at.said
        assert kept("bust") == (92.0,)

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
        assert "Hip ·" in at.text()

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
    """Height is first, then girths, then lengths; what needs a helper is at the end."""
    assert order.KEYS[0] == "height"
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


@pytest.mark.parametrize(
    ("reference", "age", "worn"),
    [(Reference.WOMEN, 40.0, True), (Reference.MEN, 40.0, False), (Reference.WOMEN, 8.0, False)],
)
def test_a_bra_is_spoken_of_only_where_one_is_worn(
    reference: Reference, age: float, worn: bool
) -> None:
    """Before the first measure and where the bust points are found; a child's cautions are told."""
    store.save(Profile.of("Ada Quist", reference=reference).with_age(age))

    async def steps(at: Walk) -> None:
        await at.press("home", "enter")
        told = " ".join(at.text().split())
        assert ("bra you" in told) == worn
        assert "nobody pregnant" in told
        assert ("For a child:" in told) == (age < 17)
        await at.press("enter")
        at.app.desk.place("measure", "bust")
        at.page.show()
        await at.settle()
        assert ("bra you" in at.text()) == worn

    walk(steps, LARGE)


def test_the_page_says_how_sure_the_garment_is_by_now() -> None:
    """Worked out aside after each measure, and surer with it."""
    store.save(person("Marta Lindqvist").without("bust").without("high_bust"))
    work.save(work.Work("Marta Lindqvist", measure="bust", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        told = " ".join(str(at.page.query_one(SureLine).content).split())
        assert re.search(r"By now (\d in 10 sure|under 1 in 10|\d+ of \d+ proofs fail)", told)
        await at.type("94", "enter")
        after = " ".join(str(at.page.query_one(SureLine).content).split())
        assert "By now" in after
        assert after != told

    walk(steps, judges=True)


def test_what_is_no_length_stays_to_be_mended_whatever_key_leads_away() -> None:
    """No key drops it without a word: the page stays and says why; Escape puts the field back."""
    profile = Profile.of("Ada Quist").with_value("height", 168, readings=(168.0,))
    store.save(profile)
    work.save(work.Work("Ada Quist", page="measure", measure="bust", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for key in ("f2", "f3", "f4", "f5", "f6", "f7", "f8", "f10", "ctrl+l"):
            await at.type("9q", key)
            assert at.app.screen is at.page
            assert at.page.NAME == "measure"
            assert at.app.desk.work.measure == "bust"
            assert "is not a length" in at.said, key
            await at.press("escape")
            assert at.page.query_one(Field).value == ""
            assert at.said == ""
        await at.press("f10")
        for key in ("f2", "f3", "f4", "f6", "f7", "f8", "ctrl+l"):
            await at.type("9q", key)
            assert at.page.NAME == "table"
            assert "is not a length" in at.said, key
            await at.press("escape")

    walk(steps)


def test_a_number_typed_after_a_refused_one_takes_its_place() -> None:
    """A digit begins anew, on its page and in the table; keys that edit, and units, do not."""
    begin(measure="bust")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for typed in (("9", "2"), ("backspace", "backspace", "9", "2"), ("m", "m")):
            field = at.page.query_one(Field)
            await at.type("920", "enter")
            assert "cannot be" in at.said
            await at.press(*typed)
            assert field.value == {"9": "92", "b": "992", "m": "920mm"}[typed[0][0]]
            await at.press("escape")
        await at.type("920", "f4", "home", "5")
        assert at.page.query_one(Field).value == "5920"
        await at.press("escape", "f10")
        await at.type("920", "down", "9", "2", "enter")
        assert kept("bust") == (92.0,)

    walk(steps)


def test_the_list_of_places_takes_page_keys_before_it_is_drawn(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """They go to its ends; what Textual does where it is not laid out yet would end the app."""
    begin(measure="waist")

    def not_laid_out(places: OptionList, direction: int) -> None:
        raise KeyError(places.highlighted)

    monkeypatch.setattr(OptionList, "_move_page", not_laid_out)

    async def steps(at: Walk) -> None:
        await at.press("enter", "pageup")
        places = at.page.query_one(SiteField).query_one(OptionList)
        assert places.highlighted == 0
        await at.press("pagedown")
        assert places.highlighted == len(SITES) - 1

    walk(steps)


def test_the_list_of_places_is_not_opened_on_a_page_that_was_left() -> None:
    """It is asked for before the page is drawn, and keys may lead on sooner."""
    begin(measure="waist")

    async def steps(at: Walk) -> None:
        await at.press("enter", "escape")
        places = at.page.query_one(SiteField)
        await places.remove_children()
        places.action_show_overlay()
        assert not places.expanded

    walk(steps)


def test_a_measure_is_found_by_its_own_name_before_those_that_hold_it() -> None:
    """The bust, not the high bust, which stands above it in the list."""
    begin()

    async def steps(at: Walk) -> None:
        await at.press("enter", "enter", "f5")
        await at.type("bust", "enter")
        assert at.app.desk.work.measure == "bust"
        await at.press("f5")
        await at.type("high b", "enter")
        assert at.app.desk.work.measure == "high_bust"
        await at.press("f5")
        await at.type("chest", "enter")
        assert at.app.desk.work.measure == "bust"

    walk(steps)
