"""Notes for the next time are there when the next garment begins."""

from __future__ import annotations

from pathlib import Path

import pytest

from tapewise_core.tasks import work
from tapewise_core.tasks.noted import noted
from tapewise_core.tasks.work import Work


@pytest.fixture(autouse=True)
def data(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """Keep work in a folder of the test's own."""
    monkeypatch.setenv("TAPEWISE_DATA", str(tmp_path))


def test_another_garment_begins_with_what_was_noted_before() -> None:
    """The latest first, on one line each, and nobody else's; its own notes are empty."""
    old = Work("Ada", name="summer", notes="neck 1 cm\nhigher", when="2026-01-03T10:00:00")
    top = Work("Ada", notes="longer sleeves", ticked=("a",), when="2026-02-03T10:00:00")
    for made in (old, top, Work("Bea", notes="not hers", when="2026-03-03T10:00:00")):
        work.save(made)
    skirt = work.of_garment(work.load("Ada"), "circle-skirt")
    assert (skirt.garment, skirt.notes, skirt.sewn) == ("circle-skirt", "", "")
    found = [(one.title, one.day, one.text) for one in noted(skirt)]
    assert found == [
        ("jersey-top", "2026-02-03", "longer sleeves"),
        ("summer", "2026-01-03", "neck 1 cm higher"),
    ]


def test_while_a_garment_is_under_way_nothing_is_said_and_once_sewn_its_own_notes_are() -> None:
    """They are for the next one of the same project."""
    work.save(Work("Ada", name="summer", notes="old"))
    top = Work("Ada", notes="longer", ticked=("a",), when="2026-02-03T10:00:00")
    work.save(top)
    assert noted(top) == ()
    sewn = Work("Ada", notes="longer", ticked=("a",), sewn="ABCDEF", when="2026-02-03T10:00:00")
    assert [one.text for one in noted(sewn)] == ["longer", "old"]
