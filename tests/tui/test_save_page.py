"""The page that writes the files: folder, formats and what is asked of paper."""

from __future__ import annotations

from pathlib import Path

import pytest
from textual.widgets import Input
from walking import Walk, walk

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import work
from tapewise_core.tasks.people import store
from tapewise_tui.dialogs.replacing import ReplacingDialog
from tapewise_tui.dialogs.written import WrittenDialog


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


@pytest.mark.parametrize(
    ("field", "typed", "says"),
    [
        ("overlap", "wide", "is not a length"),
        ("overlap", "25 cm", "does not suit"),
        ("margin", "15 cm", "Margins of 150 mm"),
        ("margin", "-3", "below zero"),
    ],
)
def test_paper_that_cannot_be_is_refused_and_nothing_is_written(
    elsewhere: Path, field: str, typed: str, says: str
) -> None:
    """The sentence names what is wrong; the folder is not made."""
    begin()

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.query_one(f"#{field}", Input).value = typed
        await at.press("ctrl+s")
        await at.settle()
        assert says in at.said
        assert not (elsewhere / "top").exists()

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
