"""The key map: one meaning a key, on every page, and help and leaving in every footer."""

from __future__ import annotations

import pytest
from textual.binding import Binding
from textual.events import Key
from walking import Walk, walk

from tapewise_core.tasks.people import person, store
from tapewise_tui.app import TapewiseApp
from tapewise_tui.dialogs.palette import Palette
from tapewise_tui.entry_page import EntryPage
from tapewise_tui.keys import KEYS, at_work, both
from tapewise_tui.page import Page
from tapewise_tui.turning import PAGE_OF
from tapewise_tui.widgets.foot import Foot
from tapewise_tui.widgets.lines import Lines
from tapewise_tui.widgets.rows import Rows

NAME = "Marta Lindqvist"


def test_no_key_has_two_meanings() -> None:
    """In the table each key, action and word stands once."""
    for part in ("key", "action", "word"):
        found = [getattr(row, part) for row in KEYS.values()]
        assert len(found) == len(set(found)), part
    keys = [key for row in KEYS.values() for key in (row.key, row.other) if key]
    assert len(keys) == len(set(keys))


def test_what_a_browser_keeps_has_another_key(monkeypatch: pytest.MonkeyPatch) -> None:
    """Ctrl+N and Ctrl+T open windows there: the footer names the other key, and it works."""
    assert all(row.other for row in KEYS.values() if row.key in ("ctrl+n", "ctrl+t", "ctrl+w"))
    monkeypatch.setattr(TapewiseApp, "is_web", True)

    async def steps(at: Walk) -> None:
        assert "+ New" in at.text()
        assert "Ctrl+N New" not in at.text()
        look = at.app.theme
        await at.press("shift+f2")
        assert at.app.theme != look
        await at.press("plus")
        assert "Whose measures are these?" in at.text() or "Name" in at.text()
        assert at.app.screen is not at.page

    walk(steps)


@pytest.mark.parametrize("page", [Page, *PAGE_OF.values()], ids=lambda page: page.__name__)
def test_a_page_gives_no_key_a_meaning_of_its_own(page: type[Page]) -> None:
    """Whatever a page binds and shows is in the table, word for word; Escape alone is free."""
    rows = {key: row for row in KEYS.values() for key in (row.key, row.other)}
    for found in page.BINDINGS:
        assert isinstance(found, Binding)
        if found.key != "escape":
            row = rows[found.key]
            assert found.action == row.action
            assert found.description in ("", row.word)


@pytest.mark.parametrize("size", [(60, 15), (80, 24)], ids=str)
def test_help_and_leaving_stand_in_every_footer(size: tuple[int, int]) -> None:
    """However narrow the terminal; on every page, and what has no room is left out whole."""
    store.save(person(NAME))

    async def steps(at: Walk) -> None:
        at.app.open_person(store.load(NAME), "measure")
        await at.settle()
        for name in PAGE_OF:
            at.app.go(name)
            await at.settle()
            last = at.text().splitlines()[-1]
            assert "F1 Help" in last, name
            assert "Ctrl+Q Quit" in last, name
            assert len(last) <= size[0]
            words = [row.word for row in at.page.query_one(Foot).rows()]
            assert last.split()[-1] == words[-1].split()[-1]

    walk(steps, size)


def test_help_and_palette_know_every_key_of_the_page() -> None:
    """What the footer has no room for is found in both."""
    store.save(person(NAME))

    async def steps(at: Walk) -> None:
        at.app.open_person(store.load(NAME), "prove")
        await at.settle()
        there = [row for row, _ in at_work(at.page)]
        known = [command.title for command in at.app.get_system_commands(at.page)]
        await at.press("f1")
        table = at.app.screen.rows  # type: ignore[attr-defined]
        for row in there:
            assert f"{row.word} ({both(row)})" in known
            assert both(row) in dict(table)

    walk(steps)


def test_the_palette_does_what_it_says() -> None:
    """A key's command does what the key does."""
    store.save(person(NAME))

    async def steps(at: Walk) -> None:
        at.app.open_person(store.load(NAME), "review")
        await at.settle()
        await at.press("ctrl+p")
        await at.type("cm/in", "enter")
        assert store.load(NAME).unit.value == "in"

    walk(steps)


def test_a_line_is_found_by_its_letters() -> None:
    """F5, some letters, Enter: the cursor is there; Home and End go to the first and last line."""
    store.save(person(NAME))

    async def steps(at: Walk) -> None:
        at.app.open_person(store.load(NAME), "review")
        await at.settle()
        await at.press("f5")
        await at.type("back waist", "enter")
        assert at.page.query_one(Rows).at == "back_waist_length"
        table = at.page.query_one(Rows)
        await at.press("end")
        assert table.cursor_row == table.row_count - 1
        await at.press("home")
        assert table.cursor_row == 0
        await at.press("f5")
        await at.type("chest", "enter")
        assert table.at == "bust"
        await at.press("f5")
        await at.type("no such line", "enter")
        await at.press("escape")
        assert at.app.screen is at.page

    walk(steps)


def test_leaving_asks_nothing() -> None:
    """Ctrl+Q ends the app wherever one is."""

    async def steps(at: Walk) -> None:
        await at.press("ctrl+n", "ctrl+q")
        assert isinstance(at.app, TapewiseApp)
        assert not at.app.is_running

    walk(steps)


@pytest.mark.parametrize(
    ("letters", "page"), [("g", "garment"), ("sa", "save"), ("sew", "sew"), ("xr", "review")]
)
def test_a_page_is_turned_to_by_its_name(letters: str, page: str) -> None:
    """Letters mark the page that begins with them, one that begins nothing is passed over."""

    async def steps(at: Walk) -> None:
        at.app.open_person(person(NAME), "measure")
        await at.settle()
        await at.press("f9")
        await at.type(letters, "enter")
        assert page == at.page.NAME

    walk(steps)


def test_a_page_is_turned_to_by_a_click() -> None:
    """A click on its line under F9 turns there."""

    async def steps(at: Walk) -> None:
        at.app.open_person(person(NAME), "measure")
        await at.settle()
        await at.press("f9")
        await at.pilot.click(Lines, offset=(5, 2))
        await at.settle()
        assert at.page.NAME == "review"

    walk(steps)


def test_a_key_of_the_footer_can_be_clicked() -> None:
    """A click on a key's word does what the key does."""
    store.save(person(NAME))

    async def steps(at: Walk) -> None:
        at.app.open_person(store.load(NAME), "review")
        await at.settle()
        column = at.text().splitlines()[-1].index("F4 On") + 4
        await at.pilot.click(Foot, offset=(column, 0))
        await at.settle()
        assert at.page.NAME == "garment"

    walk(steps)


def test_keys_before_a_page_stands_do_no_harm() -> None:
    """Pages turned and keys pressed faster than a page can be made: the last one wins."""
    store.save(person(NAME))

    async def steps(at: Walk) -> None:
        at.app.open_person(store.load(NAME), "measure")
        for name in (*PAGE_OF, "garment", "prove"):
            at.app.go(name)
            for row in KEYS.values():
                if row.key not in ("ctrl+q", "f1", "f3", "f4", "f9", "ctrl+p", "f2"):
                    at.app.simulate_key(row.key)
        await at.settle()
        at.app.go("sew")
        await at.settle()
        assert at.page.NAME == "sew"

    walk(steps)


def test_no_key_reaches_a_page_that_is_still_being_made() -> None:
    """What the app itself does on a page waits until there is one to do it on; nothing is undone
    unseen."""
    store.save(person(NAME))

    async def steps(at: Walk) -> None:
        at.app.open_person(store.load(NAME), "measure")
        await at.settle()
        at.app.desk.change("Hip 99 cm", at.app.desk.profile.with_value("hip", 99))
        at.app.go("save")
        for act in ("undo", "redo", "help", "pages", "steps", "cloth", "fitting"):
            getattr(at.app, f"action_{act}")()
            assert at.app.screen is at.page, act
        await at.settle()
        await at.press("ctrl+z")
        assert "Taken back: Hip 99 cm" in at.said
        early = PAGE_OF["review"](at.app.desk)
        assert isinstance(early, EntryPage)
        early.entered("99")
        assert not early.stands

    walk(steps)


def test_the_palette_opens_again_before_it_has_gone() -> None:
    """Ctrl+P, Escape, Ctrl+P as fast as one types them."""

    async def steps(at: Walk) -> None:
        await at.press("ctrl+p")
        first = at.app.screen
        assert isinstance(first, Palette)
        first.dismiss()
        at.app.action_command_palette()
        await at.settle()
        assert isinstance(at.app.screen, Palette)
        assert at.app.screen is not first

    walk(steps)


def test_a_question_is_answered_once_however_fast_one_types() -> None:
    """Two digits over the list of pages: the first one counts, and the app goes on."""
    store.save(person(NAME))

    async def steps(at: Walk) -> None:
        at.app.open_person(store.load(NAME), "prove")
        await at.settle()
        await at.press("f9")
        for digit in "34":
            at.app.screen.post_message(Key(digit, digit))
        await at.settle()
        assert at.page.NAME == "review"

    walk(steps)
