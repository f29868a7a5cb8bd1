"""What a person is making is kept between runs, and a spoilt file stops nobody."""

from __future__ import annotations

import stat
from pathlib import Path

import pytest

from tapewise_core.errors import FilesError
from tapewise_core.tasks import work
from tapewise_core.tasks.work import Work

FULL = Work(
    person="Zoë Łuczak",
    asked={"body-length": "70 cm"},
    machines=("zigzag",),
    folder="top",
    formats=("pdf-a4",),
    ticked=("Cut",),
    notes="longer\nnext time",
    page="sew",
    measure="hip",
    when="2026-11-02T10:00:00",
)


def test_work_comes_back_as_it_was_kept() -> None:
    """Every field, whatever script the name is in."""
    work.save(FULL)
    assert work.load("Zoë Łuczak") == FULL
    assert work.latest() == FULL


def test_two_people_with_one_slug_do_not_share_work() -> None:
    """Names that differ only in signs keep files of their own."""
    work.save(Work("Ada-Lee", notes="one"))
    work.save(Work("Ada Lee", notes="two"))
    assert work.load("Ada-Lee").notes == "one"


def test_the_file_is_for_its_owner_alone() -> None:
    """Notes may be private."""
    work.save(FULL)
    place = next(work.folder().rglob("*.json"))
    assert stat.S_IMODE(place.stat().st_mode) == 0o600


@pytest.mark.parametrize(
    "text",
    ["[" * 100_000,
     "", "[]", "{", '{"format": "tapewise work", "version": 2, "person": "Ada"}', "\xff", "null",
     '{"format": "tapewise work", "version": 1, "person": 3}',
     '{"format": "tapewise work", "version": 1, "person": "Ada", "machines": [1]}'],
)  # fmt: skip
def test_a_spoilt_file_is_a_fresh_start(text: str) -> None:
    """Nothing is refused: it holds no measure."""
    work.save(Work("Ada", notes="x"))
    place = next(work.folder().rglob("*.json"))
    place.write_text(text, "latin-1")
    assert work.load("Ada") == Work("Ada")
    assert work.latest() is None


def test_a_folder_that_cannot_be_made_is_said(data_folder: Path) -> None:
    """One sentence names the folder."""
    (data_folder / "projects").write_text("in the way")
    with pytest.raises(FilesError, match="projects"):
        work.save(FULL)


def test_a_second_garment_takes_nothing_from_the_first() -> None:
    """Each garment of a person keeps its own choices; going back finds them as they were."""
    top = Work("Ada", asked={"stretch": "25"}, ticked=("Cut",), when="2026-11-01T10:00:00")
    work.save(top)
    skirt = work.of_garment(top, "circle-skirt")
    assert (skirt.garment, dict(skirt.asked), skirt.ticked) == ("circle-skirt", {}, ())
    work.save(skirt.with_option("stretch", "40"))
    back = work.of_garment(skirt, "jersey-top")
    assert (dict(back.asked), back.ticked) == ({"stretch": "25"}, ("Cut",))
    assert {one.title for one in work.projects("Ada")} == {"jersey-top", "circle-skirt"}
