"""What is kept of a person: every state, whoever was deleted, and nothing that lies about."""

from __future__ import annotations

import json
import os
import shutil
import stat
import time
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from tapewise_core.errors import FilesError
from tapewise_core.profiles import copying, history, store
from tapewise_core.profiles.history import State, kept
from tapewise_core.profiles.memory import FEWEST
from tapewise_core.profiles.profile import Profile

ADA = Profile.of("Ada Byron").with_value("hip", 98.0)
NOW = datetime(2026, 11, 2, 12)


@pytest.fixture(autouse=True)
def data(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A data folder of the test's own."""
    monkeypatch.setenv(store.DATA_VARIABLE, str(tmp_path / "data"))
    return tmp_path / "data"


def hips(name: str = "Ada Byron") -> list[float]:
    """The hips of all states kept, the newest first."""
    return [state.profile.measures["hip"].value for state in store.states(name)]


def test_every_state_is_kept_the_newest_first() -> None:
    """Saving the same again is no new state."""
    for cm in (98.0, 99.0, 99.0, 97.5):
        store.save(ADA.with_value("hip", cm))
    assert hips() == [97.5, 99.0, 98.0]


def test_a_person_changed_by_hand_is_a_state_too(data: Path) -> None:
    """What stood in the file before the next save is not lost either."""
    place = store.save(ADA)
    place.write_text(ADA.with_value("hip", 90.0).text(), "utf-8")
    store.save(ADA.with_value("hip", 91.0))
    assert hips() == [91.0, 90.0, 98.0]


def test_the_last_fifty_and_the_last_of_each_day_are_kept() -> None:
    """Of older days one state each; of the newest fifty all."""
    days = [NOW + timedelta(days=day, hours=hour) for day in range(30) for hour in range(4)]
    rows = [State(when, ADA) for when in days]
    left = kept(rows)
    assert left[-50:] == tuple(rows[-50:])
    older = left[:-50]
    assert all(state.when.hour == 15 for state in older)
    assert len(older) == len({state.when.date() for state in older}) == 17


def test_a_long_history_is_trimmed_on_disk(data: Path) -> None:
    """The file does not grow for ever, and what is read is the same."""
    for number in range(130):
        history.note(data, ADA.with_value("hip", 60.0 + number), NOW)
    place = history.file_of(data, ADA.id)
    assert len(place.read_text("utf-8").splitlines()) < 70
    assert [s.profile.measures["hip"].value for s in history.states(data, ADA.id)][:3] == [
        189.0, 188.0, 187.0,
    ]  # fmt: skip


def test_a_line_cut_off_by_a_crash_costs_that_line_alone(data: Path) -> None:
    """Those before and after are read."""
    store.save(ADA)
    place = history.file_of(data, ADA.id)
    with place.open("a", encoding="utf-8") as file:
        file.write('{"when": "2026-11-02T12:00:00", "pers')
    store.save(ADA.with_value("hip", 99.0))
    assert hips() == [99.0, 98.0]


def test_whoever_is_deleted_can_be_brought_back_with_everything(data: Path) -> None:
    """Measures, states and what is made for her; meanwhile nothing of her can be found."""
    store.save(ADA)
    store.save(ADA.with_value("hip", 99.0))
    (data / "projects" / ADA.id).mkdir(parents=True)
    (data / "projects" / ADA.id / "top.json").write_text("{}")
    store.delete("Ada Byron")
    assert not list((data / "history").iterdir())
    assert not list((data / "projects").iterdir())
    assert store.restore("Ada Byron") == ADA.with_value("hip", 99.0)
    assert hips() == [99.0, 98.0]
    assert (data / "projects" / ADA.id / "top.json").read_text() == "{}"
    assert not list((data / "deleted").iterdir())


def test_for_good_leaves_nothing_at_once(data: Path) -> None:
    """No byte of the name or the measures, not even of an earlier deletion."""
    store.save(ADA)
    store.delete("Ada Byron")
    store.restore("Ada Byron")
    store.delete("Ada Byron", for_good=True)
    left = [path for path in data.rglob("*") if path.is_file() and path.name != "lock"]
    assert left == []
    with pytest.raises(FilesError, match="Nobody was deleted"):
        store.restore("Ada Byron")


def test_a_deletion_is_final_after_a_day(data: Path) -> None:
    """The next start takes it away."""
    store.save(ADA)
    store.delete("Ada Byron")
    (gone,) = (data / "deleted").iterdir()
    store.tidy()
    assert gone.exists()
    old = gone.with_name(f"{ADA.id}-{int(time.time()) - 90_000}")
    gone.rename(old)
    store.tidy()
    assert not old.exists()


def test_nobody_is_restored_over_somebody_of_that_name() -> None:
    """The two would be one from then on."""
    store.save(ADA)
    store.delete("Ada Byron")
    store.save(Profile.of("Ada Byron"))
    with pytest.raises(FilesError, match="somebody called Ada Byron already"):
        store.restore("Ada Byron")


def test_a_deletion_cut_short_is_taken_back_at_the_next_start(data: Path) -> None:
    """Her states were moved already, her file was not: all is where it was."""
    store.save(ADA)
    moved = data / "deleted" / f"{ADA.id}-{int(time.time())}" / "history"
    moved.mkdir(parents=True)
    os.replace(history.file_of(data, ADA.id), moved / f"{ADA.id}.jsonl")
    store.save(ADA.with_value("hip", 99.0))
    store.tidy()
    assert hips() == [99.0, 98.0]
    assert not list((data / "deleted").iterdir())


@pytest.mark.parametrize("typed", ["Ana_Li", "ana-li!", "ana-li", "Ana Li"])
def test_only_the_exact_name_deletes(typed: str) -> None:
    """A name that comes near is offered, not taken."""
    store.save(Profile.of("Ana-Li!"))
    with pytest.raises(FilesError, match="did you mean Ana-Li!"):
        store.delete(typed)
    assert store.load("Ana-Li!")


def test_a_copy_of_a_file_is_shown_as_a_copy(data: Path) -> None:
    """The person is read from and written to her own file, whatever the copy is called."""
    own = store.save(ADA)
    for name in ("ada-byron_old.json", "aaa.json"):
        shutil.copy(own, own.with_name(name))
    store.save(ADA.with_value("hip", 99.0))
    copies = {entry.name: entry.fault for entry in store.listing() if entry.fault}
    assert set(copies) == {"ada-byron_old", "aaa"}
    assert all("which of the two counts?" in fault for fault in copies.values())
    assert store.load("Ada Byron").measures["hip"].value == 99.0
    assert Profile.from_text(own.with_name("aaa.json").read_text("utf-8")) == ADA


def test_a_copy_that_counts_takes_the_place_of_the_file(data: Path) -> None:
    """As its fault says: copied in with --replace, it is the person, and no copy any more."""
    own = store.save(ADA)
    copy = own.with_name("ada-byron_old.json")
    shutil.copy(own, copy)
    store.save(ADA.with_value("hip", 99.0))
    copying.copy_in(copy, replace=True)
    assert [path.name for path in own.parent.iterdir()] == ["ada-byron.json"]
    assert hips() == [98.0, 99.0, 98.0]


def test_a_copy_under_another_name_inside_is_still_a_copy(data: Path) -> None:
    """The id tells, not the name."""
    own = store.save(ADA)
    own.with_name("bea.json").write_text(ADA.with_name("Bea").text(), "utf-8")
    faults = [entry.fault for entry in store.listing() if entry.fault]
    assert len(faults) == 1
    assert "copy of Ada Byron" in faults[0]


def test_a_newer_file_is_left_untouched(data: Path) -> None:
    """It is listed with the reason, and nothing writes over it."""
    place = store.save(ADA)
    newer = place.read_text("utf-8").replace('"version": 2', '"version": 3')
    place.write_text(newer, "utf-8")
    store.save(ADA.having(id="0123456789abcdef").with_value("hip", 90.0))
    assert place.read_text("utf-8") == newer
    assert any("newer Tapewise" in entry.fault for entry in store.listing())


def test_strays_are_swept_at_the_next_start(data: Path) -> None:
    """Whatever a crash left, with a full set of measures in it."""
    place = store.save(ADA)
    for folder in ("people", "history", "."):
        (data / folder / ".tapewise-abc123.tmp").write_text(ADA.text())
    store.tidy()
    assert not list(data.rglob(".tapewise-*"))
    assert place.exists()


@pytest.mark.skipif(os.name != "posix", reason="permissions as POSIX has them")
def test_what_is_kept_is_the_owner_s_whatever_the_umask_says(data: Path) -> None:
    """Folders that were open are closed; one that holds other things is left as it is."""
    before = os.umask(0)
    try:
        data.mkdir(mode=0o777)
        (data / "people").mkdir(mode=0o777)
        store.save(ADA)
        store.delete("Ada Byron")
        store.save(ADA)
    finally:
        os.umask(before)
    for path in (data, *data.rglob("*")):
        assert not stat.S_IMODE(path.stat().st_mode) & 0o077, path
    data.chmod(0o755)
    (data / "letters").mkdir()
    store.save(ADA.with_value("hip", 99.0))
    assert stat.S_IMODE(data.stat().st_mode) == 0o755


def test_many_people_are_listed_without_reading_every_file(
    data: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """From then on only what changed is read; a file put there by hand is found."""
    (data / "people").mkdir(parents=True)
    for number in range(FEWEST):
        made = Profile.of(f"Pupil {number:02}").with_value("hip", 90.0)
        (data / "people" / f"pupil-{number:02}.json").write_text(made.text(), "utf-8")
    store.listing()
    read: list[str] = []
    look = store.entries_in.__globals__["index"].look

    def counted(path: Path) -> object:
        read.append(path.name)
        return look(path)

    monkeypatch.setattr("tapewise_core.profiles.index.look", counted)
    changed = store.load("Pupil 07").with_value("hip", 91.0)
    store.save(changed)
    (data / "people" / "new.json").write_text(Profile.of("Somebody").text(), "utf-8")
    read.clear()
    listed = [entry for entry in store.listing() if not entry.shipped]
    assert len(listed) == FEWEST + 1
    assert set(read) - {path.name for path in Path("profiles").glob("*")} >= {"new.json"}
    assert sum(name.startswith("pupil") for name in read) <= 1
    assert store.load("Pupil 07").measures["hip"].value == 91.0


def test_a_spoilt_index_is_made_again(data: Path) -> None:
    """It only saves time."""
    (data / "people").mkdir(parents=True)
    for number in range(FEWEST):
        place = data / "people" / f"p{number}.json"
        place.write_text(Profile.of(f"P {number}").text(), "utf-8")
    store.listing()
    true = json.loads((data / "index.json").read_text())
    true["files"]["people/p1.json"][1]["id"] = "../../elsewhere"
    for spoilt in (
        json.dumps(true),
        "",
        "[]",
        json.dumps({"by": true["by"], "files": {"people/p1.json": [[1, 2, 3], {"nme": 1}]}}),
        json.dumps({"by": true["by"], "files": {"people/p1.json": 7, "people/p2.json": []}}),
        json.dumps({"by": true["by"], "files": 7}),
        "[" * 100_000,
    ):
        (data / "index.json").write_text(spoilt)
        listed = [entry for entry in store.listing() if not entry.shipped]
        assert len(listed) == FEWEST
        assert not [entry for entry in listed if "elsewhere" in entry.known.id]


def test_a_second_person_with_the_same_measures() -> None:
    """Each is changed by itself from then on."""
    store.save(ADA)
    twin = copying.duplicate("Ada Byron", "Ada for trousers")
    store.save(twin.with_value("hip", 101.0))
    assert hips("Ada Byron") == [98.0]
    with pytest.raises(FilesError, match="already"):
        copying.duplicate("Ada Byron", "Ada for trousers")


def test_copies_of_her_file_go_and_come_back_with_a_person(data: Path) -> None:
    """Left lying there, a copy would be all of her again; somebody else's stays."""
    place = store.save(ADA)
    copy, other = place.with_name("ada-byron_old.json"), place.with_name("bea.json")
    copy.write_bytes(place.read_bytes())
    other.write_text(ADA.with_name("Bea Larkin").text(), "utf-8")  # her id, another name
    store.delete("Ada Byron")
    assert [entry.name for entry in store.listing() if not entry.shipped] == ["Bea Larkin"]
    other.unlink()
    store.restore("Ada Byron")
    assert (place.is_file(), copy.is_file()) == (True, True)
    store.delete("Ada Byron", for_good=True)
    assert not [path for path in data.rglob("*.json*") if "Ada" in path.read_text("utf-8")]
