"""What a person is making, changed and kept between runs."""

from __future__ import annotations

from pathlib import Path

import pytest

from tapewise_core.profiles.memory import FEWEST
from tapewise_core.tasks import work, work_index
from tapewise_core.tasks.asked_paper import USUAL_PAPER, Paper
from tapewise_core.tasks.work import Work
from tapewise_core.tasks.work_text import text_of, work_of


@pytest.fixture(autouse=True)
def data(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """Keep work in a folder of the test's own."""
    monkeypatch.setenv("TAPEWISE_DATA", str(tmp_path))


def test_an_option_is_chosen_and_given_back() -> None:
    """Others stay, and the work it came from is as it was."""
    plain = Work("Ada", asked={"hem": "split"})
    chosen = plain.with_option("ease", "4 cm")
    assert dict(chosen.asked) == {"hem": "split", "ease": "4 cm"}
    assert dict(chosen.with_option("hem", None).asked) == {"ease": "4 cm"}
    assert dict(plain.asked) == {"hem": "split"}


def test_a_thing_is_ticked_and_unticked() -> None:
    """The order of the others is kept."""
    some = Work("Ada").toggled("a").toggled("b").toggled("c")
    assert some.ticked == ("a", "b", "c")
    assert some.toggled("b").ticked == ("a", "c")


def test_wishes_for_paper_are_none_where_nothing_was_said() -> None:
    """An empty field is the usual, not a length of nothing."""
    assert Work("Ada").paper == USUAL_PAPER
    asked = Work("Ada").with_paper("1", "", "90 cm")
    assert asked.paper == Paper(overlap="1", margin=None, roll_width="90 cm")


def test_nobody_known_starts_afresh() -> None:
    """With the usual garment and machines."""
    assert work.load("Ada") == Work("Ada")
    assert work.latest() is None


def test_the_work_that_changed_last_is_taken_up() -> None:
    """By its own time, not by name or by when the file was copied."""
    work.save(Work("Ada", when="2026-03-01T10:00:00"))
    work.save(Work("Bea", when="2026-02-01T10:00:00"))
    latest = work.latest()
    assert latest is not None
    assert latest.person == "Ada"
    assert work.load("Bea").person == "Bea"


def test_a_field_this_version_does_not_know_is_left_out() -> None:
    """A newer version's extra costs nothing."""
    work.save(Work("Ada", notes="kept"))
    (place,) = work.folder().rglob("*.json")
    place.write_text(place.read_text("utf-8").replace("{", '{"colour": "red",', 1), "utf-8")
    assert work.load("Ada").notes == "kept"


def test_the_latest_of_many_is_found_from_what_is_remembered(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Only what changed since is read; a memory that is spoilt or of elsewhere is made again."""
    for number in range(FEWEST):
        work.save(Work(f"P {number:02}", when=f"2026-01-01T10:00:{number:02}"))
    assert work.latest() == work.load(f"P {FEWEST - 1:02}")
    looked: list[Path] = []
    look = work_index.look

    def counted(place: Path) -> work_index.Brief:
        looked.append(place)
        return look(place)

    monkeypatch.setattr(work_index, "look", counted)
    work.save(Work("P 07", when="2026-01-02T10:00:00"))
    found = work.latest()
    assert found is not None
    assert (found.person, len(looked)) == ("P 07", 1)
    for spoilt in ("", "[", "7", '{"by": "0", "files": {}}'):
        (tmp_path / "projects" / "index.json").write_text(spoilt)
        assert work.latest() == found


def test_an_option_that_is_a_measure_now_is_dropped_and_told() -> None:
    """An old dress project goes on without it."""
    old = Work("Ada", "skirted-dress", owner="ada-1", asked={"round-shoulders": "100", "ease": "2"})
    made, told = work_of(text_of(old))
    assert dict(made.asked) == {"ease": "2"}
    assert told == ("the option “round-shoulders” (the over-shoulder girth is a measure now)",)
