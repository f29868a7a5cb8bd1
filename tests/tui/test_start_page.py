"""The first page: people on file, new ones, changed and deleted ones, and where one stopped."""

from __future__ import annotations

from pathlib import Path

import pytest
from textual.events import Key
from textual.widgets import Input
from walking import SMALL, Walk, walk

from tapewise_core.measures.body import Reference
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import work
from tapewise_core.tasks.guesses import used
from tapewise_core.tasks.people import store
from tapewise_core.units import Unit
from tapewise_tui import measuring
from tapewise_tui.dialogs.asking import AskDialog
from tapewise_tui.widgets.people_rows import PeopleRows
from tapewise_tui.widgets.rows import Rows


def saved() -> list[str]:
    """Return who is on file, examples left out."""
    return [entry.name for entry in store.listing() if not entry.shipped]


async def change(at: Walk, letters: str) -> None:
    """Choose from what can be done with the person marked."""
    await at.press("f8")
    await at.type(letters, "enter")


def test_people_show_when_they_were_measured_and_what_is_open() -> None:
    """Somebody new, somebody measured, and the examples, each with how many of the measures are
    there that the garment made last makes use of."""
    store.save(Profile.of("Abel Finch"))
    store.save(Profile.of("Zoe Hart").with_value("bust", 90))
    store.save(Profile.of("Ina Falk").with_value("bust", 90).with_value("waist", 70))
    work.save(work.Work("Ina Falk", garment="circle-skirt"))
    uses = {
        name: len(used(garment, {}, store.load(name), Unit.CM))
        for name, garment in (("Zoe Hart", "jersey-top"), ("Ina Falk", "circle-skirt"))
    }

    async def steps(at: Walk) -> None:
        rows = at.text().splitlines()
        assert any("Zoe Hart" in row and "day not noted" in row for row in rows)
        assert any("Zoe Hart" in row and f" 1 of {uses['Zoe Hart']}" in row for row in rows)
        assert any("Ina Falk" in row and f" 1 of {uses['Ina Falk']}" in row for row in rows)
        assert any("Abel Finch" in row and "never" in row and " 0 of " in row for row in rows)
        assert any("Adaeze Nwosu" in row and " all " in row for row in rows)
        assert any("Adaeze Nwosu (example)" in r and "5 September 2026" in r for r in rows)

    walk(steps)


def test_the_app_goes_on_where_one_stopped() -> None:
    """The cursor is on the person of the last run, and Enter opens that page and measure."""
    store.save(Profile.of("Abel Finch"))
    store.save(Profile.of("Zoe Hart").with_value("bust", 90))
    work.save(work.Work("Zoe Hart", page="measure", measure="hip", when="2026-11-01T10:00:00"))
    work.save(work.Work("Abel Finch", page="review", when="2026-10-01T10:00:00"))

    async def steps(at: Walk) -> None:
        assert "Zoe Hart, page measure at the hip" in at.text()
        await at.press("enter")
        assert "Hip ·" in at.text()

    walk(steps)


def test_a_person_is_opened_as_she_is_on_file_by_then() -> None:
    """A change made since the list was drawn, here or in another window, is not undone by it."""
    store.save(Profile.of("Zoe Hart").with_value("bust", 90))

    async def steps(at: Walk) -> None:
        people = at.page.query_one(PeopleRows)
        people.to(next(key for key in people.entries if "zoe" in key))
        store.save(store.load("Zoe Hart").with_value("hip", 98))
        await at.press("enter")
        assert set(at.app.desk.profile.values()) == {"bust", "hip"}

    walk(steps)


def test_a_name_that_cannot_be_is_refused() -> None:
    """Without a name, or with one that is taken: a sentence, the dialog stays, nothing is saved."""

    async def steps(at: Walk) -> None:
        await at.press("ctrl+n")
        for name, says in (("", "name"), ("   ", "name"), ("marta lindqvist", "already")):
            at.app.screen.query_one("#name", Input).value = name
            await at.press("enter")
            assert says in at.text().split("!")[-1]
        await at.press("escape")
        assert saved() == []

    walk(steps)


def test_all_questions_may_be_answered_in_one_burst() -> None:
    """Faster than the screen is drawn: arrows choose, Enter leads on, digits are the age."""
    named = {"\n": "enter", "v": "down"}

    async def steps(at: Walk) -> None:
        await at.press("ctrl+n")
        for sign in "Zoe Hart\nv\nvv\n40\n":
            at.app.post_message(Key(named.get(sign, sign), None if sign in named else sign))
        await at.settle()
        assert saved() == ["Zoe Hart"]
        made = store.load("Zoe Hart")
        assert (made.unit, made.reference, made.age) == (Unit.IN, Reference.MEN, 40)
        assert "What is made for Zoe Hart?" in at.text()

    walk(steps)


def test_unit_and_reference_are_chosen_by_keyboard() -> None:
    """Tab to the choices, arrows to choose, F4 keeps."""

    async def steps(at: Walk) -> None:
        await at.press("ctrl+n")
        await at.type("Ida", "tab", "down", "tab", "up", "f4")
        profile = store.load("Ida")
        assert profile.unit is Unit.IN
        assert profile.reference is Reference.MEN

    walk(steps)


def test_a_person_renamed_or_deleted_comes_back_with_undo() -> None:
    """Every change to the list can be taken back."""
    store.save(Profile.of("Abel Finch").with_value("bust", 95))

    async def steps(at: Walk) -> None:
        await change(at, "name")
        at.app.screen.query_one("#name", Input).value = "Abel Fincher"
        await at.press("f4")
        assert saved() == ["Abel Fincher"]
        await at.press("ctrl+z")
        assert saved() == ["Abel Finch"]
        at.page.query_one(Rows).to("Abel Finch")
        await at.press("delete", "enter")
        assert saved() == ["Abel Finch"]
        await at.press("delete", "y")
        assert saved() == []
        await at.press("ctrl+z")
        assert store.load("Abel Finch").measures["bust"].value == 95

    walk(steps)


def test_a_new_name_keeps_what_is_made_for_the_person() -> None:
    """Notes, options, garment and ticks stay with whoever is renamed, and come back with undo."""
    store.save(Profile.of("Abel Finch"))
    made = work.Work("Abel Finch", garment="circle-skirt", ticked=("Cut",), notes="longer")
    work.save(made.with_option("stretch", "25"))

    async def steps(at: Walk) -> None:
        await change(at, "name")
        at.app.screen.query_one("#name", Input).value = "Abel Fincher"
        await at.press("f4")
        kept = work.load("Abel Fincher")
        assert (kept.garment, kept.ticked, kept.notes) == ("circle-skirt", ("Cut",), "longer")
        assert dict(kept.asked) == {"stretch": "25"}
        assert work.load("Abel Finch") == work.Work("Abel Finch")
        await at.press("ctrl+z")
        assert work.load("Abel Finch").notes == "longer"

    walk(steps)


def test_whoever_is_deleted_takes_her_work_along_and_brings_it_back() -> None:
    """Somebody else of that name later inherits nothing; undo brings everything."""
    store.save(Profile.of("Abel Finch"))
    work.save(work.Work("Abel Finch", notes="private"))

    async def steps(at: Walk) -> None:
        at.page.query_one(Rows).to(str(store.find("Abel Finch").path))
        await at.press("delete", "y")
        assert work.load("Abel Finch").notes == ""
        await at.press("ctrl+z")
        assert work.load("Abel Finch").notes == "private"

    walk(steps)


def test_an_example_stays_and_is_copied_when_changed() -> None:
    """Deleting is refused with a sentence; a measure typed makes a copy of one's own."""

    async def steps(at: Walk) -> None:
        await at.press("delete")
        assert "stays" in at.said
        await at.press("enter", "f2")
        assert saved() == ["Adaeze Nwosu"]

    walk(steps)


def test_a_file_that_cannot_be_read_is_listed_with_its_fault(data_folder: Path) -> None:
    """The other people stay usable; Enter says what is wrong with the file."""
    people = data_folder / "people"
    people.mkdir(parents=True)
    (people / "broken.json").write_text("{nonsense")

    async def steps(at: Walk) -> None:
        assert "cannot be read" in at.text()
        at.page.query_one(Rows).to("broken")
        await at.press("enter")
        assert at.said.startswith("! ")
        assert "broken.json" in at.said

    walk(steps)


def test_other_pages_ask_for_a_person_first() -> None:
    """F9 and a number turn to a page only once somebody is chosen."""

    async def steps(at: Walk) -> None:
        await at.press("f9", "4")
        assert "Choose a person first" in at.said

    walk(steps)


def test_help_lists_the_keys_that_work_now() -> None:
    """F1 shows what the page is for and its live keys, and closes again."""

    async def steps(at: Walk) -> None:
        await at.press("f1")
        assert "begin with somebody new" in at.text()
        await at.press("escape", "enter", "f1")
        assert "take what is proposed" in at.text()

    walk(steps)


def test_the_command_palette_turns_pages() -> None:
    """Everything a function key does to the whole app is in the palette too."""

    async def steps(at: Walk) -> None:
        await at.press("enter", "ctrl+p")
        await at.type("review")
        await at.pilot.pause(0.5)
        await at.press("enter")
        await at.settle()
        assert at.page.NAME == "review"

    walk(steps)


def test_the_palette_knows_what_can_be_done_with_a_person() -> None:
    """What F8 lists is found there by its words, such as a duplicate."""

    async def steps(at: Walk) -> None:
        await at.press("ctrl+p")
        await at.type("duplicate the")
        await at.pilot.pause(0.5)
        await at.press("enter")
        await at.settle()
        assert isinstance(at.app.screen, AskDialog)

    walk(steps)


def test_going_back_to_the_people_keeps_where_one_stopped() -> None:
    """The first page is no place to go on at; Enter leads to the one before it."""

    async def steps(at: Walk) -> None:
        await at.press("enter", "f9", "3", "f9", "1")
        assert at.page.NAME == "start"
        assert "page review" in at.text()
        await at.press("enter")
        assert at.page.NAME == "review"

    walk(steps)


def test_the_mouse_turns_pages_at_the_tape() -> None:
    """A page's name on the tape can be clicked."""

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await at.pilot.click("PagesTape", offset=(25, 0))
        await at.settle()
        assert at.page.NAME == "review"

    walk(steps)


def test_an_age_is_asked_and_may_be_left_out() -> None:
    """Typed, it is kept with the person; what is no age is refused in the dialog."""

    async def steps(at: Walk) -> None:
        await at.press("ctrl+n")
        at.app.screen.query_one("#name", Input).value = "Zoe Hart"
        await at.press("enter", "enter", "enter")
        for wrong in ("old", "300"):
            at.app.screen.query_one("#age", Input).value = wrong
            await at.press("enter")
            assert "!" in at.text()
            assert saved() == []
        at.app.screen.query_one("#age", Input).value = "41"
        await at.press("enter")
        assert store.load("Zoe Hart").age == 41

    walk(steps)


def test_a_long_list_stands_whole_and_the_last_person_can_be_reached() -> None:
    """More people than there are lines; the cursor is where one stopped."""
    for number in range(130):
        store.save(Profile.of(f"Pupil {number:03}"))
    work.save(work.Work("Pupil 120", page="measure", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        table = at.page.query_one(Rows)
        assert table.row_count == len(store.listing())
        assert table.at is not None
        assert table.at.endswith("pupil-120.json")
        assert "Pupil 120" in at.text()

    walk(steps)


def test_who_and_what_are_asked_before_the_measures() -> None:
    """Each question once, Enter leaves it as it is; then what is made, then what that needs."""

    async def steps(at: Walk) -> None:
        await at.press("ctrl+n")
        await at.type("Zoe Hart", "enter")
        assert saved() == []
        await at.press("down", "enter", "enter", "enter")
        assert store.load("Zoe Hart").unit is Unit.IN
        assert "What is made for Zoe Hart?" in at.text()
        await at.type("circle", "enter")
        await at.press("enter")
        assert at.page.NAME == "measure"
        assert at.app.desk.work.garment == "circle-skirt"
        assert at.app.desk.order[:3] == ("height", "waist", "hip")
        assert "0 of 6 measures are there" in " ".join(at.text().split())

    walk(steps)


@pytest.mark.parametrize("size", [(60, 15), SMALL])
def test_somebody_is_found_among_forty_by_letters(size: tuple[int, int]) -> None:
    """A letter begins the search; Home, End and the pages' keys go through the list."""
    for number in range(40):
        store.save(Profile.of(f"Pupil {number:02d} {'Quinn' if number == 31 else 'Moore'}"))

    async def steps(at: Walk) -> None:
        table = at.page.query_one(Rows)
        for letter in "quinn":
            at.app.post_message(Key(letter, letter))
        await at.press("enter")
        assert at.app.screen is at.page
        assert table.at == str(store.find("Pupil 31 Quinn").path)
        await at.press("end")
        assert table.cursor_row == table.row_count - 1
        await at.press("home", "pagedown")
        assert 0 < table.cursor_row < 40

    walk(steps, size)


def test_groups_are_shown_and_found() -> None:
    """Groups typed with commas stand beside the name and can be searched for."""
    store.save(Profile.of("Abel Finch"))
    store.save(Profile.of("Zoe Hart").with_value("bust", 90))

    async def steps(at: Walk) -> None:
        await at.press("home")
        await change(at, "groups")
        await at.type("Tuesday, Evening", "enter")
        assert store.load("Abel Finch").groups == ("Tuesday", "Evening")
        assert "Tuesday" in at.text()
        assert "1 of " in at.text()
        await at.press("end")
        await at.type("tues", "enter")
        assert at.page.query_one(Rows).at == str(store.find("Abel Finch").path)
        await at.press("ctrl+z")
        assert store.load("Abel Finch").groups == ()

    walk(steps)


def test_a_second_garment_begins_without_the_first_one_s_ticks() -> None:
    """Each project is its own; one can be gone on with, duplicated, deleted and brought back."""
    store.save(Profile.of("Abel Finch").with_value("waist", 80))
    work.save(work.Work("Abel Finch", ticked=("Cut",), when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("home")
        await change(at, "another garment")
        await at.type("circle", "enter")
        assert (at.app.desk.work.garment, at.app.desk.work.ticked) == ("circle-skirt", ())
        at.app.go("start")
        await at.settle()
        await change(at, "go on with jersey")
        assert at.app.desk.work.ticked == ("Cut",)
        at.app.go("start")
        await at.settle()
        await change(at, "duplicate the project jersey top with grown-on sleeves")
        await at.type("summer", "enter")
        titles = [one.title for one in work.projects("Abel Finch")]
        assert titles == ["circle-skirt", "jersey-top", "summer"]
        await change(at, "delete the project summer")
        await at.press("y")
        assert len(work.projects("Abel Finch")) == 2
        await change(at, "bring back summer")
        assert len(work.projects("Abel Finch")) == 3

    walk(steps)


def test_a_duplicate_and_the_last_time() -> None:
    """A second person with the same measures; what changed since the last day is told."""
    store.save(Profile.of("Abel Finch").with_value("waist", 80))

    async def steps(at: Walk) -> None:
        await at.press("home")
        await change(at, "duplicate the person")
        await at.type("Abel", "enter")
        assert store.load("Abel").measures["waist"].value == 80
        await change(at, "compare")
        assert "from an earlier day are on file" in at.text()
        await at.press("escape", "ctrl+z")
        assert "Abel" not in saved()

    walk(steps)


def test_what_was_done_to_the_list_is_taken_back_a_page_later() -> None:
    """Undo goes back in the order of doing, over list and pages; what was deleted is on no page."""
    store.save(Profile.of("Zoe Hart").with_value("bust", 90))
    store.save(Profile.of("Abel Finch").with_value("bust", 95))

    async def steps(at: Walk) -> None:
        at.page.query_one(Rows).to(str(store.find("Zoe Hart").path))
        await at.press("delete", "y")
        at.app.open_person(store.load("Abel Finch"), "review")
        await at.settle()
        measuring.replaced(at.app.desk, "hip", "99")
        await at.press("f9", "1", "ctrl+z")
        assert at.said == "Taken back: Abel Finch, Hip 99 cm."
        assert "hip" not in store.load("Abel Finch").measures
        await at.press("ctrl+z")
        assert "Zoe Hart deleted" in at.said
        await at.press("ctrl+z")
        assert "nothing to take back" in at.said
        at.page.query_one(Rows).to(str(store.find("Abel Finch").path))
        await at.press("delete", "y", "f9", "3")
        assert at.page.NAME == "start"
        assert "Choose a person first" in at.said

    walk(steps)


def test_a_run_later_it_is_said_where_the_deleted_are() -> None:
    """Whoever deleted somebody and left is led to F8, which brings back all."""
    store.save(Profile.of("Zoe Hart").with_value("bust", 90))
    store.remove(store.find("Zoe Hart"))

    async def steps(at: Walk) -> None:
        await at.press("ctrl+z")
        assert "F8 offers to bring back Zoe Hart" in at.said
        await change(at, "bring back zoe")
        assert saved() == ["Zoe Hart"]

    walk(steps)


def test_letters_that_nothing_is_written_with_are_answered() -> None:
    """The list of garments says that it has none; Enter then begins nothing, letters go again."""

    async def steps(at: Walk) -> None:
        await at.press("ctrl+n")
        await at.type("Zoe Hart", "enter", "enter", "enter", "enter")
        assert "What is made for Zoe Hart?" in at.text()
        await at.type("xyz")
        assert "Nothing here is written with “xyz”." in at.text()
        await at.press("enter")
        assert "What is made for Zoe Hart?" in at.text()
        await at.press("backspace", "backspace", "backspace", "enter", "enter")
        assert at.page.NAME == "measure"

    walk(steps)
