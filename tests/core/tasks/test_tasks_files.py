"""The files a draft leaves: which they are, and what is told while they are made."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from making import top

from tapewise_core.drafting.by_hand import by_hand
from tapewise_core.errors import OptionError
from tapewise_core.tasks.asked_paper import Paper
from tapewise_core.tasks.contents import contents, pattern_set, step_files
from tapewise_core.tasks.documents import instructions_of
from tapewise_core.tasks.files import save
from tapewise_core.units import Unit

MADE = top()
PLAIN = contents(MADE)


def test_the_usual_files_are_always_there() -> None:
    """The pattern, each piece, instructions with a picture a step, checklist and record."""
    pieces = {f"pieces/{piece.name}.svg" for piece in MADE.pattern.pieces}
    texts = {
        "pattern.svg",
        "instructions.md",
        "hand.md",
        "checklist.md",
        "draft.json",
        "lay-plan.svg",
    }
    pictures = set(step_files(instructions_of(MADE)))
    plain = {name for name in pictures if not name.endswith("-corner.svg")}
    assert len(plain) == sum(len(by_hand(draft).steps) for draft in MADE.pattern.drafts)
    assert set(PLAIN) == pieces | texts | pictures


def test_pictures_that_are_named_are_there() -> None:
    """No instruction points at a file that is not written."""
    text = PLAIN["instructions.md"].decode()
    assert all(f"({name})" in text for name in step_files(instructions_of(MADE)))


def test_the_record_lists_every_file_and_itself() -> None:
    """Further formats too."""
    files = contents(MADE, ("dxf",))
    assert sorted(json.loads(files["draft.json"])["files"]) == sorted(files)
    assert any(name.endswith(".dxf") for name in files)


def test_a_format_asked_for_twice_is_made_once() -> None:
    """And what is at hand is told in as many parts as there are."""
    said: list[str] = []
    contents(MADE, ("dxf", "dxf"), tell=said.append)
    assert [line.split(":")[0] for line in said] == ["1 of 3", "2 of 3"]


def test_saving_writes_what_was_made(tmp_path: Path) -> None:
    """Names and sizes are those on disk, and the last part told is the writing."""
    said: list[str] = []
    written = dict(save(MADE, tmp_path / "top", tell=said.append).files)
    assert said[-1] == f"2 of 2: writing {len(written)} files …"
    on_disk = {
        str(file.relative_to(tmp_path / "top")): file.stat().st_size
        for file in (tmp_path / "top").rglob("*")
        if file.is_file()
    }
    assert on_disk == written


def test_nothing_is_written_for_a_format_that_does_not_exist(tmp_path: Path) -> None:
    """It is refused before the folder is made."""
    with pytest.raises(OptionError, match="papyrus"):
        save(MADE, tmp_path / "top", ("papyrus",))
    assert not (tmp_path / "top").exists()


@pytest.mark.parametrize(("paper", "what"), [
    (Paper(overlap="wide"), "overlap"),
    (Paper(margin="x"), "margin"),
    (Paper(roll_width="?"), "roll"),
])  # fmt: skip
def test_a_wish_for_paper_that_is_no_length_is_refused(paper: Paper, what: str) -> None:
    """The sentence says which wish."""
    with pytest.raises(OptionError, match=f"The paper's {what}: "):
        contents(MADE, ("pdf-a4",), paper)


def test_a_set_says_whose_it_is_and_what_was_guessed() -> None:
    """For every paper format alike."""
    made = pattern_set(MADE)
    assert (made.title, made.person, made.date) == (MADE.garment.title, "Ada Test", "2026-01-31")
    assert made.description.startswith(f"{len(made.pieces)} pieces at full size.")
    assert bool(made.note) is bool(MADE.estimated)


def test_the_checklist_written_is_in_the_readers_unit() -> None:
    """Inches for whoever reads inches."""
    text = contents(top(unit=Unit.IN))["checklist.md"].decode()
    assert "1 in" in text[text.index("## Sew") :]


def test_a_format_that_fails_leaves_the_others(tmp_path: Path) -> None:
    """A roll too narrow for the piece names itself; pages and record are there without it."""
    narrow = Paper(roll_width="30 cm")
    written = save(MADE, tmp_path / "top", ("pdf-roll", "dxf"), narrow)
    assert [one.format for one in written.failed] == ["pdf-roll"]
    (says,) = written.failed_words(MADE.reader)
    assert says.startswith("Not written: pdf-roll. “")
    assert "does not fit a roll of 300 mm" in says
    names = {name for name, _ in written.files}
    assert "pattern.dxf" in names
    assert "pattern-roll.pdf" not in names
    assert set(json.loads((tmp_path / "top" / "draft.json").read_text())["files"]) == names
