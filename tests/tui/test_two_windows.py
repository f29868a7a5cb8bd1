"""Two windows on one person, and the command line beside them: each changes its own alone."""

from __future__ import annotations

import os
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
from textual.events import Key
from walking import Walk, walk

from tapewise_core.measures.body import Origin
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import work
from tapewise_core.tasks.people import store
from tapewise_tui.cli import main
from tapewise_tui.desk import Desk
from tapewise_tui.widgets.field import Field

NAME = "Ada Byron"


def desk() -> Desk:
    """A window with Ada on the desk."""
    made = Desk(date(2026, 11, 2))
    made.open(store.load(NAME))
    return made


@pytest.fixture
def windows() -> tuple[Desk, Desk]:
    """Two of them."""
    store.save(Profile.of(NAME).with_value("hip", 98.0))
    return desk(), desk()


def enter(at: Desk, key: str, cm: float) -> None:
    """Type a reading."""
    at.value(key, (cm,), cm, Origin.MEASURED, f"{key} {cm:g}")


def on_file() -> dict[str, float]:
    """What is on file [cm]."""
    return {key: value.cm for key, value in store.load(NAME).values().items()}


def test_each_window_s_measures_are_kept(windows: tuple[Desk, Desk]) -> None:
    """And each shows what came in from the other with its own next change."""
    one, other = windows
    enter(one, "neck", 36.0)
    enter(other, "waist", 74.0)
    enter(one, "head", 56.0)
    assert on_file() == {"hip": 98.0, "neck": 36.0, "waist": 74.0, "head": 56.0}
    assert one.profile.values()["waist"].cm == 74.0


def test_undo_takes_back_only_what_was_done_here(windows: tuple[Desk, Desk]) -> None:
    """The other window's reading stays through undo and redo."""
    one, other = windows
    enter(one, "neck", 36.0)
    enter(other, "waist", 74.0)
    enter(one, "head", 56.0)
    one.undo()
    one.undo()
    assert on_file() == {"hip": 98.0, "waist": 74.0}
    one.redo()
    assert on_file() == {"hip": 98.0, "waist": 74.0, "neck": 36.0}


def test_the_same_measure_changed_in_both_is_asked_about(windows: tuple[Desk, Desk]) -> None:
    """What is on file stands, both are named, and entering it once more decides."""
    one, other = windows
    enter(one, "hip", 99.0)
    enter(other, "hip", 100.0)
    assert "99 cm while this one made it 100 cm" in other.question
    assert on_file()["hip"] == 99.0
    enter(other, "hip", 100.0)
    assert (other.question, on_file()["hip"]) == ("", 100.0)
    hips = [state.profile.values()["hip"].cm for state in store.states(NAME)]
    assert {98.0, 99.0, 100.0} <= set(hips)


def test_a_question_waits_until_it_is_answered(windows: tuple[Desk, Desk]) -> None:
    """Another change in between does not drop it; mine counts once that was said."""
    one, other = windows
    enter(one, "hip", 99.0)
    enter(other, "hip", 100.0)
    enter(other, "head", 56.0)
    assert "Which counts for hip" in other.question
    other.settle(mine=True)
    assert (other.question, on_file()) == ("", {"hip": 100.0, "head": 56.0})
    enter(one, "hip", 98.5)
    one.settle(mine=False)
    assert (one.question, on_file()["hip"]) == ("", 100.0)
    assert one.profile.values()["hip"].cm == 100.0


@pytest.mark.parametrize(("key", "counts"), [("f6", 99.0), ("f7", 97.0), ("escape", 97.0)])
def test_the_app_asks_which_counts(windows: tuple[Desk, Desk], key: str, counts: float) -> None:
    """Changed on the command line while the app was open: a dialog, and one key answers."""
    work.save(work.Work(NAME, page="measure", measure="hip"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert main(("profiles", "set", NAME, "hip=97")) == 0
        await at.type("100", "enter")  # beside the 98 read before, so that it is 99
        await at.press("enter")  # typed on without looking: nothing is answered by it
        assert "Which counts?" in at.text()
        assert "what was entered here, 99 cm" in at.text()
        await at.press(key)
        assert "Which counts?" not in at.text()
        assert on_file()["hip"] == counts
        assert at.page.desk.profile.values()["hip"].cm == counts

    walk(steps)


def ahead(at: Walk, *keys: str) -> None:
    """Send keys at once, as from somebody who does not wait."""
    for key in keys:
        letter = "." if key == "full_stop" else key if len(key) == 1 else None
        at.app.post_message(Key(key, letter))


@pytest.mark.parametrize("key", ["f6", "f7"])
def test_what_is_typed_on_while_that_is_asked_is_kept(windows: tuple[Desk, Desk], key: str) -> None:
    """Numbers typed ahead before and over the question land in the measures they were meant for."""
    work.save(work.Work(NAME, page="table", measure="bust"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.found("hip")
        assert main(("profiles", "set", NAME, "hip=97")) == 0
        following = at.app.desk.order[at.app.desk.order.index("hip") + 1 :][:2]
        ahead(at, "1", "0", "0", "enter", "3", "1")
        await at.settle()
        assert "Which counts?" in at.text()
        ahead(at, "full_stop", "5", "enter", "1", "4")
        await at.settle()
        await at.press(key)
        assert on_file()["hip"] == {"f6": 100.0, "f7": 97.0}[key]
        assert on_file()[following[0]] == 31.5
        assert at.page.query_one(Field).value == "14"
        await at.press("enter")
        assert on_file()[following[1]] == 14.0

    walk(steps)


def test_the_same_value_from_both_is_no_question(windows: tuple[Desk, Desk]) -> None:
    """Read on other days or more often: the one with more readings is kept."""
    one, other = windows
    assert main(("profiles", "set", NAME, "hip=99")) == 0
    one.value("hip", (98.5, 99.5), 99.0, Origin.MEASURED, "hip")
    assert one.question == ""
    assert store.load(NAME).measures["hip"].readings == (98.5, 99.5)
    enter(other, "hip", 99.0)
    assert other.question == ""
    assert store.load(NAME).measures["hip"].readings == (98.5, 99.5)


def test_a_measure_set_on_the_command_line_is_not_overwritten(windows: tuple[Desk, Desk]) -> None:
    """Nor is a whole file copied in."""
    one, _ = windows
    assert main(("profiles", "set", NAME, "waist=75")) == 0
    enter(one, "neck", 36.0)
    assert on_file() == {"hip": 98.0, "waist": 75.0, "neck": 36.0}


def test_whoever_is_deleted_elsewhere_stays_deleted(windows: tuple[Desk, Desk]) -> None:
    """The window says so; what was typed stays on its desk; restored, it is saved again."""
    one, _ = windows
    assert main(("profiles", "delete", NAME, "--yes")) == 0
    enter(one, "neck", 36.0)
    assert "no longer on file" in one.trouble
    assert [entry.name for entry in store.listing() if not entry.shipped] == []
    assert main(("profiles", "restore", NAME)) == 0
    enter(one, "waist", 74.0)
    assert one.trouble == ""
    assert on_file() == {"hip": 98.0, "neck": 36.0, "waist": 74.0}


def test_an_example_opened_in_two_windows_is_one_copy() -> None:
    """Changed in both, it is one person with both changes."""
    windows = [Desk(date(2026, 11, 2)), Desk(date(2026, 11, 2))]
    for at in windows:
        at.open(store.load("Noor Haddad"))
    enter(windows[0], "neck", 32.0)
    enter(windows[1], "head", 54.0)
    found = store.load("Noor Haddad").values()
    assert (found["neck"].cm, found["head"].cm) == (32.0, 54.0)


def chosen(at: Desk, key: str, text: str) -> None:
    """Choose an option."""
    at.change(f"{key} {text}", made=at.work.with_option(key, text))


def test_each_window_s_choices_in_one_project_are_kept(windows: tuple[Desk, Desk]) -> None:
    """Options, ticks and notes; the newer place counts; undo takes back only its own."""
    one, other = windows
    chosen(one, "ease", "4 cm")
    chosen(other, "hem", "split")
    one.jot("wider next time")
    other.change("Cut ticked", made=other.work.toggled("Cut"))
    chosen(one, "stretch", "30")
    found = work.load(NAME)
    assert dict(found.asked) == {"ease": "4 cm", "hem": "split", "stretch": "30"}
    assert (found.notes, found.ticked) == ("wider next time", ("Cut",))
    assert dict(one.work.asked) == dict(found.asked)
    one.undo()
    one.undo()
    assert dict(work.load(NAME).asked) == {"hem": "split"}
    assert work.load(NAME).ticked == ("Cut",)
    one.redo()
    assert dict(work.load(NAME).asked) == {"ease": "4 cm", "hem": "split"}


def test_a_draft_of_a_project_keeps_what_its_window_chose(
    windows: tuple[Desk, Desk], tmp_path: Path
) -> None:
    """Drawn on the command line while it is open: the window goes on, and the draft is listed."""
    one, _ = windows
    one.change("summer", made=work.Work(NAME, "circle-skirt", name="summer"))
    draft = ("draft", "--project", "summer", "--out", str(tmp_path / "out"), "--no-pages")
    assert main((*draft, "--set", "stretch=30", "--quiet")) in (0, 1)
    chosen(one, "skirt-length", "60 cm")
    (found,) = (made for made in work.projects(NAME) if made.title == "summer")
    assert dict(found.asked) == {"stretch": "30", "skirt-length": "60 cm"}
    assert len(found.drafts) == 1


ROUNDS = int(os.environ.get("ROUNDS", "12"))
"""By hand: ``ROUNDS=200 pytest tests/tui/test_two_windows.py -k command_line_at_once``."""


def in_a_process(act: Callable[[], None]) -> int:
    """Begin something in a process of its own; return its number."""
    child = os.fork()
    if child == 0:
        code = 1
        try:
            act()
            code = 0
        finally:
            os._exit(code)
    return child


def typing(key: str) -> None:
    """A window in which one measure is entered again and again."""
    at = desk()
    for number in range(ROUNDS):
        enter(at, key, 40.0 + number / 2)
        assert (at.trouble, at.question, on_file()[key]) == ("", "", 40.0 + number / 2)


def setting() -> None:
    """The command line beside them, whose measure nobody else touches."""
    for number in range(ROUNDS):
        assert main(("profiles", "set", NAME, f"waist={60 + number / 2}", "--quiet")) == 0
        assert on_file()["waist"] == 60 + number / 2


@pytest.mark.skipif(os.name != "posix", reason="processes are forked as POSIX does it")
def test_two_windows_and_the_command_line_at_once_lose_nothing() -> None:
    """Each changes its own measure of one person, over and over; the last of each is on file."""
    store.save(Profile.of(NAME).with_value("hip", 98.0))
    acts = (lambda: typing("neck"), lambda: typing("head"), setting)
    codes = [os.waitpid(child, 0)[1] for child in [*map(in_a_process, acts)]]
    assert codes == [0, 0, 0]
    last = (ROUNDS - 1) / 2
    assert on_file() == {"hip": 98.0, "neck": 40 + last, "head": 40 + last, "waist": 60 + last}
