"""People on the command line: what they were, brought back, compared, deleted as asked."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people import store
from tapewise_tui.cli import main


@pytest.fixture(autouse=True)
def ada(data_folder: Path) -> Profile:
    """Somebody on file in three states."""
    made = Profile.of("Ada Byron").with_value("hip", 98.0)
    for cm in (97.0, 98.5, 99.0):
        store.save(made.with_value("hip", cm))
    return made


def run(*arguments: str) -> int:
    """Run one command; argparse leaves by SystemExit."""
    try:
        return main(("profiles", *arguments))
    except SystemExit as left:
        return int(left.code or 0)


def test_the_history_lists_every_state_with_what_changed(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """The newest first, in the person's unit; for a machine in cm."""
    assert run("history", "Ada Byron") == 0
    lines = capsys.readouterr().out.splitlines()
    assert len(lines) == 4
    assert "hip 98.5 cm to 99 cm (+0.5 cm)" in lines[1]
    assert lines[0] == "Ada Byron, 3 states; 1 is how she is now:"
    store.save(Profile.of("Bea Larkin"))
    run("history", "Bea Larkin")
    assert "Bea Larkin, 1 state; " in capsys.readouterr().out
    assert run("history", "Ada Byron", "--json") == 0
    rows = json.loads(capsys.readouterr().out)
    assert [(row["number"], row["measures"]["hip"]) for row in rows] == [
        (1, 99.0), (2, 98.5), (3, 97.0),
    ]  # fmt: skip


def test_two_states_are_compared(capsys: pytest.CaptureFixture[str]) -> None:
    """By number or by day; a state that is none is one sentence."""
    assert run("compare", "Ada Byron", "3", "1") == 0
    assert "hip 97 cm to 99 cm (+2 cm)" in capsys.readouterr().out
    assert run("compare", "Ada Byron", "3", "1", "--json") == 0
    assert json.loads(capsys.readouterr().out) == {"hip": {"before": 97.0, "after": 99.0}}
    today = store.states("Ada Byron")[0].when.date().isoformat()
    assert run("compare", "Ada Byron", today, "1") == 0
    assert "no measure differs" in capsys.readouterr().out
    for which in ("0", "4", "yesterday", "9" * 5000, "²"):
        assert run("compare", "Ada Byron", which, "1") == 2
        assert len(capsys.readouterr().err.splitlines()) == 1


def test_an_earlier_state_is_restored_as_a_new_one() -> None:
    """Nothing between is lost."""
    assert run("restore", "Ada Byron", "3") == 0
    hips = [state.profile.measures["hip"].value for state in store.states("Ada Byron")]
    assert hips == [97.0, 99.0, 98.5, 97.0]


def test_a_deletion_is_asked_for(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Without a terminal it needs --yes; with one, no is no."""
    assert run("delete", "Ada Byron") == 2
    assert "needs --yes" in capsys.readouterr().err
    monkeypatch.setattr("sys.stdin.isatty", lambda: True, raising=False)
    monkeypatch.setattr("builtins.input", lambda _: "n")
    assert run("delete", "Ada Byron") == 130
    assert store.load("Ada Byron")
    monkeypatch.setattr("builtins.input", lambda _: " Yes ")
    assert run("delete", "Ada Byron") == 0
    assert run("show", "Ada Byron") == 2
    assert run("restore", "Ada Byron") == 0
    assert run("show", "Ada Byron") == 0


def test_what_is_deleted_for_good_cannot_be_restored(data_folder: Path) -> None:
    """No byte of her is left."""
    assert run("delete", "Ada Byron", "--yes", "--for-good") == 0
    assert run("restore", "Ada Byron") == 2
    assert b"Ada" not in b"".join(p.read_bytes() for p in data_folder.rglob("*") if p.is_file())


def test_measures_are_set_and_taken_off(capsys: pytest.CaptureFixture[str]) -> None:
    """Several at once, in either unit; what is no measure or no length changes nothing."""
    assert run("set", "Ada Byron", "hip=40", "waist=30 1/2", "--unit", "in") == 0
    found = store.load("Ada Byron").values()
    assert (found["hip"].cm, found["waist"].cm) == (101.6, 77.47)
    assert run("set", "Ada Byron", "hip=") == 0
    assert "hip" not in store.load("Ada Byron").measures
    capsys.readouterr()
    for wrong in ("hips=98", "hip=much", "hip", "=3"):
        assert run("set", "Ada Byron", "waist=80", wrong) == 2
        assert len(capsys.readouterr().err.splitlines()) == 1
    assert store.load("Ada Byron").values()["waist"].cm == 77.47


def test_groups_are_joined_listed_and_left(capsys: pytest.CaptureFixture[str]) -> None:
    """Only those of the group are listed."""
    store.save(Profile.of("Bea Larkin"))
    assert run("group", "Ada Byron", "Tuesday", "beginners") == 0
    capsys.readouterr()
    assert run("list", "--group", "Tuesday", "--json") == 0
    (row,) = json.loads(capsys.readouterr().out)
    assert (row["name"], row["groups"]) == ("Ada Byron", ["Tuesday", "beginners"])
    assert run("group", "Ada Byron", "Tuesday", "--leave") == 0
    assert store.load("Ada Byron").groups == ("beginners",)
    capsys.readouterr()
    assert run("group", "Ada Byron", " ") == 2
    assert capsys.readouterr().err == "tapewise: The group's name must not be empty.\n"


def test_a_second_person_is_made_of_one() -> None:
    """With an id of her own."""
    assert run("duplicate", "Ada Byron", "Ada for trousers") == 0
    twin, own = store.load("Ada for trousers"), store.load("Ada Byron")
    assert twin.values() == own.values()
    assert twin.id != own.id
    assert run("duplicate", "Ada Byron", "Ada for trousers") == 2


def test_what_a_crash_left_is_swept_by_the_next_command(data_folder: Path) -> None:
    """Strays hold full sets of measures; none outlives the next look at the people."""
    stray = data_folder / "people" / ".tapewise-x1.tmp"
    stray.write_text("{}")
    assert run("list") == 0
    assert not stray.exists()


def test_compared_with_the_last_time_she_was_measured(
    data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The last state of an earlier day against now; where there is none that is said."""
    assert run("compare", "Ada Byron") == 2
    assert "are of one day" in capsys.readouterr().err
    (place,) = (data_folder / "history").iterdir()
    lines = place.read_text("utf-8").splitlines()
    today = store.states("Ada Byron")[0].when.date().isoformat()
    old = [line.replace(f'"when": "{today}', '"when": "2020-02-03') for line in lines[:2]]
    place.write_text("\n".join((*old, lines[2])) + "\n", "utf-8")
    assert run("compare", "Ada Byron", "--json") == 0
    assert json.loads(capsys.readouterr().out) == {"hip": {"before": 98.5, "after": 99.0}}
    assert run("compare", "Ada Byron", "3", "--json") == 0
    assert json.loads(capsys.readouterr().out) == {"hip": {"before": 97.0, "after": 99.0}}


def test_groups_and_whoever_was_deleted_are_listed(capsys: pytest.CaptureFixture[str]) -> None:
    """Counted by name; a deletion with the time until which it can be undone."""
    store.save(Profile.of("Bea Larkin").having(groups=("Tuesday",)))
    run("group", "Ada Byron", "Tuesday", "beginners")
    capsys.readouterr()
    assert run("group", "--json") == 0
    assert json.loads(capsys.readouterr().out) == {"beginners": 1, "Tuesday": 2}
    assert run("restore") == 0
    assert "Nobody was deleted" in capsys.readouterr().out
    run("delete", "Bea Larkin", "--yes")
    capsys.readouterr()
    assert run("restore", "--json") == 0
    (row,) = json.loads(capsys.readouterr().out)
    assert (row["name"], row["person"]) == ("Bea Larkin", None)


@pytest.mark.parametrize("spoilt", ["", "{", '{"format": "tapewise profile"}', "\x00" * 500])
def test_a_spoilt_person_s_last_good_state_is_offered_and_taken_up(
    spoilt: str, data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The file is set aside; her history goes on; deleted for good nothing of either is left."""
    (place,) = (data_folder / "people").iterdir()
    place.write_text(spoilt)
    assert run("list") == 0
    assert "profiles restore ada-byron" in capsys.readouterr().out
    assert run("restore", "ada-byron") == 0
    assert [state.profile.measures["hip"].value for state in store.states("Ada Byron")] == [
        99.0, 98.5, 97.0,
    ]  # fmt: skip
    (aside,) = (data_folder / "history").glob("*.unusable")
    assert aside.read_text() == spoilt
    assert run("restore", "ada-byron") == 2
    assert run("delete", "Ada Byron", "--yes", "--for-good") == 0
    assert not aside.exists()


def test_no_state_stands_in_for_a_newer_program_s_file(
    data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """It is listed with its fault alone; asked for, ``restore`` says so and leaves it be."""
    (place,) = (data_folder / "people").iterdir()
    newer = place.read_text("utf-8").replace('"version": 2', '"version": 3')
    place.write_text(newer, "utf-8")
    assert run("list") == 0
    told = capsys.readouterr().out
    assert "newer Tapewise" in told
    assert "restore" not in told
    assert run("restore", place.stem) == 2
    assert "is not spoilt" in capsys.readouterr().err
    assert place.read_text("utf-8") == newer


def test_a_name_that_may_be_two_people_is_asked_about(capsys: pytest.CaptureFixture[str]) -> None:
    """In other capitals either is meant: nobody is changed; written as it stands it is one."""
    for name in ("avg", "Avg"):
        store.save(Profile.of(name).with_value("hip", 90.0))
    assert run("set", "AVG", "hip=91") == 2
    assert "may be “Avg” or “avg”; write the name as it stands" in capsys.readouterr().err
    assert run("set", "Avg", "hip=91") == 0
    hips = [store.load(name).values()["hip"].cm for name in ("avg", "Avg")]
    assert hips == [90.0, 91.0]


@pytest.mark.parametrize(
    "arguments", [("show", "x" * 5000), ("copy-out", "Ada Byron", "x" * 5000),
                  ("copy-out", "x" * 5000 + ".csv")],
)  # fmt: skip
def test_a_name_longer_than_any_file_s_is_wrong_input(
    capsys: pytest.CaptureFixture[str], arguments: tuple[str, ...]
) -> None:
    """One sentence, and it is not called a fault of the program."""
    assert run(*arguments) == 2
    assert len(capsys.readouterr().err.splitlines()) == 1
