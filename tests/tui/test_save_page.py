"""The page that writes the files: folder, formats and what is asked of paper."""

from __future__ import annotations

import json
import threading
from pathlib import Path
from typing import Any

import pytest
from textual.widgets import Input
from walking import LARGE, Walk, walk

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import files, shop, work
from tapewise_core.tasks.paper_asked import SIZED
from tapewise_core.tasks.people import store
from tapewise_core.tasks.settings import settings
from tapewise_tui import saving
from tapewise_tui.app import TapewiseApp
from tapewise_tui.dialogs.replacing import ReplacingDialog
from tapewise_tui.dialogs.written import WrittenDialog
from tapewise_tui.widgets.ticks import TickList


@pytest.fixture(autouse=True)
def elsewhere(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Work in a folder of its own."""
    monkeypatch.chdir(tmp_path)
    return tmp_path


def begin() -> None:
    """Put a person on file who stopped at saving, A4 pages wanted."""
    profile = Profile.of("Ada Quist").with_value("bust", 92.0).with_value("height", 167.0)
    store.save(profile.with_value("waist", 75.0).with_value("hip", 99.0))
    work.save(
        work.Work(
            "Ada Quist", page="save", folder="top", formats=("pdf-a4",), when="2026-11-01T10:00:00"
        )
    )


def test_what_is_asked_of_paper_is_kept_and_used(elsewhere: Path) -> None:
    """A wider overlap makes other pages; the wish is there the next time."""
    begin()

    async def plain(at: Walk) -> None:
        await at.press("enter", "ctrl+s")
        await at.settle()

    walk(plain)
    usual = (elsewhere / "top" / "pattern-a4.pdf").read_bytes()

    async def wider(at: Walk) -> None:
        await at.press("enter")
        at.page.query_one("#overlap", Input).value = "30 mm"
        await at.press("ctrl+s")
        await at.settle()

    walk(wider)
    assert (elsewhere / "top" / "pattern-a4.pdf").read_bytes() != usual
    assert work.load("Ada Quist").overlap == "30 mm"


UNPRINTABLE = (
    ("overlap", "wide", "is not a length"),
    ("overlap", "25 cm", "does not suit"),
    ("margin", "15 cm", "Margins of 150 mm"),
    ("margin", "-3", "below zero"),
)


def test_paper_that_cannot_be_is_refused_and_nothing_is_written(elsewhere: Path) -> None:
    """The sentence names what is wrong; the folder is not made."""
    begin()

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for field, typed, says in UNPRINTABLE:
            place = at.page.query_one(f"#{field}", Input)
            usual, place.value = place.value, typed
            await at.press("ctrl+s")
            await at.settle()
            assert says in at.said, (typed, at.said)
            assert not (elsewhere / "top").exists()
            place.value = usual

    walk(steps)


def test_a_file_of_ones_own_is_asked_about(elsewhere: Path) -> None:
    """Enter leaves it and nothing is written; F6 replaces it."""
    begin()
    own = elsewhere / "top" / "checklist.md"
    own.parent.mkdir()
    own.write_text("mine")

    async def leave(at: Walk) -> None:
        await at.press("enter", "ctrl+s")
        await at.settle()
        assert isinstance(at.app.screen, ReplacingDialog)
        await at.press("enter")
        assert "Nothing was written" in at.said

    walk(leave)
    assert [path.name for path in own.parent.iterdir()] == ["checklist.md"]

    async def give(at: Walk) -> None:
        await at.press("enter", "ctrl+s")
        await at.settle()
        await at.press("f6")
        await at.settle()
        assert isinstance(at.app.screen, WrittenDialog)

    walk(give)
    assert own.read_text() != "mine"


def test_nobody_goes_on_while_files_are_being_replaced(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """F4 behind the answer waits for what is written, as it does behind Ctrl+S."""
    begin()
    (tmp_path / "top").mkdir()
    (tmp_path / "top" / "checklist.md").write_text("mine")
    real, go_on = files.save, threading.Event()

    def slow(*given: Any, replace: bool = False, **more: Any) -> Any:
        assert not replace or go_on.wait(30)
        return real(*given, replace=replace, **more)

    monkeypatch.setattr(files, "save", slow)

    async def steps(at: Walk) -> None:
        await at.press("enter", "ctrl+s")
        await at.pilot.press("f6", "f4")
        here = at.page.NAME
        go_on.set()
        await at.settle()
        assert (here, at.page.NAME) == ("save", "save")
        assert isinstance(at.app.screen, WrittenDialog)

    walk(steps)


def fresh() -> None:
    """Put a person on file who never wrote anything."""
    begin()
    work.save(work.Work("Ada Quist", page="save", when="2026-11-01T10:00:00"))


def ticked(at: Walk) -> set[str]:
    """Return the formats ticked on the page."""
    return {item.key for item in at.page.query_one(TickList).items if item.ticked and item.key}


def test_pages_for_home_and_one_to_read_are_ticked_from_the_start(elsewhere: Path) -> None:
    """Nobody need know formats; whatever is unticked stays so, down to the last; the paper that
    was printed is usual for the next garment."""
    fresh()

    async def first(at: Walk) -> None:
        await at.press("enter")
        assert ticked(at) == {"pdf-a4", "pdf-reading"}
        at.page.found(str(next(
            place for place, item in enumerate(at.page.query_one(TickList).items)
            if item.key == "pdf-reading")))  # fmt: skip
        await at.press("space")
        assert ticked(at) == {"pdf-a4"}
        await at.press("home", "space")
        assert ticked(at) == set()
        await at.press("down", "space", "ctrl+s")
        await at.settle()
        assert "pattern-letter.pdf" in at.text()

    walk(first)
    assert settings().paper == "letter"
    store.save(Profile.of("Zoe Hart").with_value("bust", 92.0).with_value("height", 167.0))
    work.save(work.fresh("Zoe Hart"))

    async def second(at: Walk) -> None:
        at.app.open_person(store.load("Zoe Hart"), "save")
        await at.settle()
        assert ticked(at) == {"pdf-letter", "pdf-reading"}

    walk(second)


def test_what_was_written_is_opened_shown_and_copied(
    elsewhere: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """First what to print, marked; Enter opens it, F its folder, C copies its path; the printer's
    words stand below; where there is no desktop, the path is told."""
    fresh()
    asked: list[str] = []
    monkeypatch.setattr(TapewiseApp, "open_url", lambda self, url: asked.append(url))
    monkeypatch.setattr("tapewise_tui.opening.has_desktop", lambda: True)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.query_one("#folder", Input).value = "out"
        await at.press("ctrl+s")
        await at.settle()
        shown = at.text()
        assert shown.index("Print this") < shown.index("Read this") < shown.index("Keep this")
        assert shown.index("reading.pdf") < shown.index("instructions.md")
        assert "100 %" in shown
        await at.press("enter", "f", "c")
        out = (elsewhere / "out").absolute()
        assert asked == [(out / "pattern-a4.pdf").as_uri(), out.as_uri()]
        assert at.app.clipboard == str(out / "pattern-a4.pdf")
        monkeypatch.setattr("tapewise_tui.opening.has_desktop", lambda: False)
        await at.press("enter")
        assert "There is no desktop here" in " ".join(at.text().split())
        assert len(asked) == 2
        await at.press("f4")
        assert at.page.NAME == "sew"

    walk(steps, LARGE)


def test_the_project_knows_what_was_written_from_it(elsewhere: Path) -> None:
    """When, where, and the signs of its sheets; undoing a choice does not undo that."""
    fresh()

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.query_one("#folder", Input).value = "out"
        await at.press("ctrl+s")
        await at.settle()
        await at.press("escape", "ctrl+z")

    walk(steps)
    record = json.loads((elsewhere / "out" / "draft.json").read_text("utf-8"))
    (row,) = work.load("Ada Quist").drafts
    assert row["folder"] == str((elsewhere / "out").resolve())
    assert row["fingerprint"] == record["fingerprint"]


def test_every_format_has_its_words() -> None:
    """Each format there is stands under a heading, but for the one whose size is typed."""
    named = {name for names in saving.LABELS.values() for name in names}
    assert named == {name for name, _ in shop.formats()} - {SIZED}


@pytest.mark.parametrize("typed", ["wide", "-3", "9,9,9", "12 kg"])
def test_what_is_no_length_of_paper_stays_on_the_page(elsewhere: Path, typed: str) -> None:
    """Whatever key would lead away: it is refused with a sentence, and the project keeps none."""
    begin()

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.query_one("#margin", Input).value = typed
        await at.press("f4")
        assert at.page.NAME == "save"
        assert at.said.startswith("! The paper's margin: ")
        assert at.page.query_one("#margin", Input).value == typed
        assert not work.load("Ada Quist").margin

    walk(steps)


def test_what_is_being_laid_out_is_called_as_on_the_page() -> None:
    """Every format ticked has its label in the line that tells how far the writing is."""
    for names in saving.LABELS.values():
        for name, label in names.items():
            assert saving.named(f"2 of 4: laying out {name} …") == f"2 of 4: laying out {label} …"
