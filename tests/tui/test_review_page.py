"""The table of all measures: what is unlikely, and mending it in place."""

from __future__ import annotations

import pytest
from msgspec.structs import replace
from textual.widgets import Static
from walking import LARGE, SMALL, Walk, walk

from tapewise_core.measures.body import Origin
from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.measures.finding import Finding
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import work
from tapewise_core.tasks.people import store
from tapewise_core.units import Unit
from tapewise_tui import measuring, reviewing
from tapewise_tui.desk import Desk
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.room import cut_short
from tapewise_tui.widgets.rows import Rows
from tapewise_tui.widgets.sure import SureLine

GOOD = {"height": 169.0, "bust": 93.0, "high_bust": 90.0, "under_bust": 79.0, "hip": 101.0}


def begin(**more: float) -> None:
    """Put a person on file who stopped at the review."""
    profile = Profile.of("Ada Quist")
    for key, cm in {**GOOD, **more}.items():
        profile = profile.with_value(key, cm, readings=(cm,))
    store.save(profile)
    work.save(work.Work("Ada Quist", page="review", when="2026-11-01T10:00:00"))


def measures() -> dict[str, tuple[float, Origin]]:
    """Return what is on file."""
    kept = store.load("Ada Quist").measures
    return {key: (reading.value, reading.origin) for key, reading in kept.items()}


def test_an_unlikely_value_stands_on_top_and_its_correction_is_one_key() -> None:
    """A waist typed in inches is offered in centimetres; the offer can be taken and undone."""
    begin(waist=30.5)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert at.page.query_one(Rows).at == "waist"
        assert "1 unlikely" in at.text()
        assert "inches" in at.text()
        await at.press("f6")
        assert measures()["waist"][0] == pytest.approx(77.47, abs=0.01)
        assert "None unlikely" in at.text()
        await at.press("ctrl+z")
        assert measures()["waist"][0] == 30.5

    walk(steps)


def test_girths_in_inches_are_mended_at_once_and_the_height_stays() -> None:
    """Taking the proposal changes the girths alone, and the app goes on."""
    begin(**{key: cm / 2.54 for key, cm in GOOD.items() if key != "height"})

    async def steps(at: Walk) -> None:
        await at.press("enter", "f6")
        for key, cm in GOOD.items():
            assert measures()[key][0] == pytest.approx(cm, abs=0.01)
        assert "None unlikely" in at.text()

    walk(steps)


def test_a_proposal_that_cannot_be_taken_is_said_and_the_app_goes_on(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """A correction that no profile may hold changes nothing, and a sentence says why."""
    begin(waist=30.5)

    def wild(_desk: Desk, finding: Finding) -> str:
        return correct(_desk, replace(finding, proposed={"waist": 419.0}))

    correct = measuring.correct
    monkeypatch.setattr(measuring, "correct", wild)

    async def steps(at: Walk) -> None:
        await at.press("enter", "f6")
        assert at.said.startswith("!")
        assert "at most 300 cm" in at.said
        assert measures()["waist"][0] == 30.5
        await at.press("f7")
        assert measures()["waist"] == (30.5, Origin.CONFIRMED)

    walk(steps)


def test_a_value_said_to_be_right_is_quiet_from_then_on() -> None:
    """Confirming marks its origin and nothing is said of it again."""
    begin(waist=30.5)

    async def steps(at: Walk) -> None:
        await at.press("enter", "f7")
        assert measures()["waist"] == (30.5, Origin.CONFIRMED)
        assert "None unlikely" in at.text()

    walk(steps)


def test_measuring_again_opens_the_measures_own_page() -> None:
    """A key turns to the page of the row marked."""
    begin(waist=30.5)

    async def steps(at: Walk) -> None:
        await at.press("enter", "f8")
        assert "Waist ·" in at.text()

    walk(steps)


def test_wrong_input_in_place_is_refused() -> None:
    """What was typed stays, nothing is kept, and Escape leaves it."""
    begin(waist=30.5)
    refused = (("abc", "not a length"), ("0", "cannot be"), ("900", "cannot be"), ("-3", "below"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        field = at.page.query_one(Field)
        for typed, says in refused:
            field.value = typed
            await at.press("enter")
            assert says in at.said, typed
            assert field.value == typed
            assert measures()["waist"][0] == 30.5
        await at.press("down")
        assert at.page.query_one(Rows).at == "waist"
        await at.press("escape")
        assert field.value == "30.5"

    walk(steps)


def test_digits_begin_an_entry_on_the_row_marked() -> None:
    """A number typed takes the value's place, Enter keeps it; an emptied field takes it off."""
    begin(waist=30.5)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await at.type("77.5", "enter")
        assert measures()["waist"] == (77.5, Origin.MEASURED)
        at.page.query_one(Rows).to("waist")
        await at.settle()
        await at.press("backspace", "enter")
        assert "waist" not in measures()

    walk(steps)


def test_where_there_is_one_line_the_remark_on_any_row_fits_it() -> None:
    """An estimate's range is told to its end, and what is measured with what to do; in inches."""
    begin(waist=77.5)
    store.save(store.load("Ada Quist").with_unit(Unit.IN))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for row in at.page.query_one(Rows).lines():
            at.page.found(row.key or "")
            await at.settle()
            told = str(at.page.query_one("#advice", Static).content)
            assert len(told) <= 58, told
            assert told[-1] == ".", told

    walk(steps, (60, 15))


def test_columns_have_the_room_that_there_is_after_a_change_of_size() -> None:
    """A window made larger shows the columns and names that a large one begins with."""
    begin(waist=77.5)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for page in ("review", "prove", "start"):
            at.app.go(page)
            await at.settle()
            await at.pilot.resize_terminal(*LARGE)
            await at.pilot.pause(0.2)
            await at.settle()
            large = at.page.query_one(Rows)._columns
            await at.pilot.resize_terminal(60, 15)
            await at.pilot.pause(0.2)
            await at.settle()
            assert at.page.query_one(Rows)._columns != large, page

    walk(steps, (60, 15))


@pytest.mark.parametrize("size", [(60, 15), SMALL, LARGE])
def test_an_estimate_never_looks_like_a_measurement(size: tuple[int, int]) -> None:
    """What was not measured says so in a whole word, with how far it may be off."""
    begin(waist=77.5)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        line = next(line for line in at.text().splitlines() if "neck base" in line)
        assert "estimated" in line
        assert "±" in line
        at.page.query_one(Rows).to("neck")
        await at.settle()
        await at.press("f6")
        assert "neck" not in measures()
        assert "stays open" in at.said

    walk(steps, size)


def test_what_cannot_be_done_on_a_row_is_said() -> None:
    """Nothing offered, nothing to confirm: one sentence each."""
    begin(waist=77.5)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.query_one(Rows).to("bust")
        await at.settle()
        await at.press("f6")
        assert "is measured" in at.said
        at.page.query_one(Rows).to("neck")
        await at.settle()
        await at.press("f7")
        assert "not measured" in at.said

    walk(steps)


def test_readings_that_do_not_agree_are_remarked_on() -> None:
    """Two readings far apart stand near the top until they are confirmed or taken again."""
    begin(waist=77.5)
    store.save(store.load("Ada Quist").with_value("hip", 99.0, readings=(96.0, 102.0)))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert at.page.query_one(Rows).at == "hip"
        assert "? readings 96 and 102" in at.text()
        assert "The readings 96 and 102 lie 6 cm apart. F8 measures again" in at.text()
        assert "unlikely" not in at.text()
        assert "1 to look at again" in at.text()
        await at.press("f7")
        assert "apart" not in at.text()

    walk(steps)


def test_an_unlikely_mean_is_told_with_the_readings_it_comes_of() -> None:
    """57 and 37.4 are two slips to choose from; their mean alone would tell of neither."""
    begin(waist=77.5)
    store.save(store.load("Ada Quist").with_value("neck", 47.2, readings=(57.0, 37.4)))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert at.page.query_one(Rows).at == "neck"
        assert "! unlikely: readings 57 and 37.4" in at.text()
        assert "The readings 57 and 37.4 lie 19.6 cm apart. Neck base" in at.text()

    walk(steps)


def test_the_measure_most_worth_taking_is_named() -> None:
    """What is missing and moves the garment most is told with what taking it brings."""
    begin(waist=77.5)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert "helps most:" in at.text()

    walk(steps)


def test_only_what_matters_is_listed_until_all_is_asked_for() -> None:
    """What the garment uses and what was measured; a key lists all there are."""
    begin(waist=77.5)
    made = work.Work("Ada Quist", garment="circle-skirt", page="review", when="2026-11-02T10:00:00")
    work.save(made)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        table = at.page.query_one(Rows)
        assert table.row_count == len({*GOOD, "waist", *at.app.desk.used})
        assert "neck base" not in at.text()
        await at.press("ctrl+l")
        assert table.row_count == len(CATALOGUE)

    walk(steps)


def test_the_whole_remark_has_room() -> None:
    """What an unlikely value may be, and the keys that help, can be read to the end."""
    begin(waist=30.5)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert "F8 measures again." in at.text()

    walk(steps)


def test_enter_goes_from_one_unlikely_value_to_the_next() -> None:
    """What is mended sinks to its place; the cursor stays where the next one to look at is."""
    begin(waist=30.5)
    store.save(store.load("Ada Quist").with_value("neck", 76).with_value("hip", 200))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        right = {"neck": "36", "waist": "77.5", "hip": "99"}
        while right:
            key = at.page.query_one(Rows).at or ""
            await at.type(right.pop(key), "enter")
        assert "None unlikely" in at.text()

    walk(steps)


@pytest.mark.parametrize(("age", "says"), [(None, "? age not said"), (8.0, "")])
def test_a_child_s_height_is_nothing_to_look_at_again(age: float | None, says: str) -> None:
    """The age is missed where it is not said, and where it is, nothing is remarked on."""
    profile = Profile.of("Kit Quist").having(age=age).with_value("height", 128.0, readings=(128.0,))
    desk = Desk()
    desk.open(profile)
    (row,) = reviewing.in_order(desk, ("height",))
    assert row.remark == says
    assert "page 1" in reviewing.advice(row, desk) or not says


def test_the_summary_stands_whole_on_the_smallest_screen() -> None:
    """At 60 by 15 too it says what is unlikely, what is there, how sure it is, what helps most."""
    begin()

    async def steps(at: Walk) -> None:
        await at.press("enter")
        line = str(at.page.query_one(SureLine).content)
        assert line.startswith("None unlikely. 4 of 15 there. By now ")
        assert line.endswith(".")
        assert "helps most" in line
        assert line not in cut_short(at.page)

    walk(steps, (60, 15), judges=True)


def test_what_has_become_unlikely_keeps_the_cursor() -> None:
    """The number typed after the question is for the measure that was asked about."""
    begin(waist=76.0)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.query_one(Rows).to("hip")
        await at.settle()
        await at.type("202", "enter")
        assert "the other measures suggest" in at.said
        assert at.page.query_one(Rows).at == "hip"
        await at.type("102", "enter")
        assert measures()["hip"][0] == 102
        assert measures()["height"][0] == GOOD["height"]

    walk(steps)
