"""Projects and settings on the command line."""

from __future__ import annotations

import json
import stat
import time
from pathlib import Path

import pytest
from msgspec.structs import replace

from tapewise_core.errors import OptionError
from tapewise_core.profiles.profile import Profile
from tapewise_core.sewing.machines import read_machines
from tapewise_core.tasks import settings, work
from tapewise_core.tasks.people import store
from tapewise_core.tasks.settings import Settings
from tapewise_tui.cli import main


@pytest.fixture(autouse=True)
def ada(data_folder: Path) -> Profile:
    """Somebody on file, and nothing set."""
    (data_folder / "settings.json").unlink()
    made = Profile.of("Ada Byron")
    for key, cm in {"bust": 92.0, "waist": 74.0, "hip": 99.0, "height": 167.0}.items():
        made = made.with_value(key, cm)
    store.save(made)
    return made


def run(*arguments: str) -> int:
    """Run one command; argparse leaves by SystemExit."""
    try:
        return main(arguments)
    except SystemExit as left:
        return int(left.code or 0)


def begin() -> int:
    """Draft a skirt as a project."""
    draft = ("draft", "Ada Byron", "circle-skirt", "--project", "summer", "--out", "summer")
    return run(*draft, "--set", "stretch=30", "--machines", "zigzag", "--no-pages")


def test_a_draft_kept_as_a_project_is_drawn_again_by_its_name(tmp_path: Path) -> None:
    """Person, garment, options, machines and folder come from the project."""
    assert begin() == 0
    first = json.loads((tmp_path / "summer" / "draft.json").read_text())
    store.save(store.load("Ada Byron").with_value("waist", 75.0))
    assert run("draft", "--project", "summer") == 0
    again = json.loads((tmp_path / "summer" / "draft.json").read_text())
    assert again["options"]["stretch"] == first["options"]["stretch"] == 30
    assert again["measures"]["waist"]["value"] == 75.0
    (one,) = work.projects("Ada Byron")
    assert [row["folder"] for row in one.drafts] == [str(tmp_path / "summer")] * 2
    assert one.machines == ("zigzag",)


def test_what_is_said_anew_counts_and_is_kept() -> None:
    """An option given beside the project is the project's from then on."""
    begin()
    assert run("draft", "--project", "summer", "--set", "stretch=35", "--out", "second") == 0
    (one,) = work.projects()
    assert (dict(one.asked), one.folder) == ({"stretch": "35"}, "second")


def test_projects_are_listed_shown_copied_and_deleted(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """What a project wrote stays where it is."""
    begin()
    capsys.readouterr()
    assert run("projects") == 0
    assert "summer for Ada Byron: circle-skirt, 1 option set" in capsys.readouterr().out
    assert run("projects", "copy", "summer", "autumn") == 0
    assert run("projects", "copy", "summer", "Autumn") == 2
    capsys.readouterr()
    assert run("projects", "show", "autumn", "--json") == 0
    shown = json.loads(capsys.readouterr().out)
    assert (shown["person"], shown["garment"]) == ("Ada Byron", "circle-skirt")
    assert shown["cloth"] == {"name": "", "stretch": "30"}
    assert shown["drafts"] == []
    assert run("projects", "delete", "summer", "--yes") == 0
    assert (tmp_path / "summer" / "draft.json").exists()
    capsys.readouterr()
    assert run("projects", "list", "--json") == 0
    assert [row["name"] for row in json.loads(capsys.readouterr().out)] == ["autumn"]


def test_a_project_s_deletion_is_asked_for_and_undone(
    data_folder: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Nobody to ask: it needs --yes; no is no; restored it is as it was, and its history too."""
    begin()
    begin()
    (before,) = work.projects()
    files = {path.name for path in (data_folder / "projects").rglob("*.json*")}
    assert run("projects", "delete", "summer") == 2
    assert "needs --yes" in capsys.readouterr().err
    monkeypatch.setattr("sys.stdin.isatty", lambda: True, raising=False)
    monkeypatch.setattr("builtins.input", lambda _: "")
    assert run("projects", "delete", "summer") == 130
    monkeypatch.setattr("builtins.input", lambda _: "y")
    assert run("projects", "delete", "summer") == 0
    assert work.projects() == ()
    assert run("projects", "restore", "sumer") == 2
    assert "did you mean summer?" in capsys.readouterr().err
    assert run("projects", "restore") == 0
    assert "summer for Ada Byron: deleted " in capsys.readouterr().out
    assert run("projects", "restore", "Summer") == 0
    assert work.projects() == (before,)
    assert {path.name for path in (data_folder / "projects").rglob("*.json*")} == files
    assert run("projects", "restore", "--json") == 0
    assert json.loads(capsys.readouterr().out.partition("\n")[2]) == []


def test_a_deleted_project_is_not_restored_over_another() -> None:
    """The one that is there stays."""
    begin()
    assert run("projects", "delete", "summer", "--yes") == 0
    begin()
    (there,) = work.projects()
    assert run("projects", "restore", "summer") == 2
    assert work.projects() == (there,)


def test_a_project_s_deletion_cut_short_is_taken_back(data_folder: Path) -> None:
    """What it was before had gone already, the project itself had not."""
    begin()
    begin()
    (place,) = (data_folder / "projects").rglob("*.before")
    gone = data_folder / "deleted" / f"project-{place.parent.name}-summer-{int(time.time())}"
    moved = gone / place.relative_to(data_folder)
    moved.parent.mkdir(parents=True)
    place.rename(moved)
    assert run("profiles") == 0
    assert place.exists()
    assert not gone.exists()


def test_a_deleted_project_goes_for_good_with_its_person(data_folder: Path) -> None:
    """No byte of her is left."""
    begin()
    run("projects", "delete", "summer", "--yes")
    assert run("profiles", "delete", "Ada Byron", "--yes", "--for-good") == 0
    assert b"Ada" not in b"".join(p.read_bytes() for p in data_folder.rglob("*") if p.is_file())


def spoil(data_folder: Path) -> Path:
    """Let a project's file be cut off, with a good state before it."""
    begin()
    begin()
    (place,) = (data_folder / "projects").rglob("*.json")
    place.write_text(place.read_text()[:100])
    return place


def test_a_spoilt_project_is_named_and_its_last_good_state_taken_up(
    data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """By projects, show and doctor; nothing is changed before that is asked for."""
    place = spoil(data_folder)
    capsys.readouterr()
    assert run("projects") == 0
    said = capsys.readouterr()
    assert "“summer” of Ada Byron cannot be used (it cannot be read as JSON)" in said.err
    assert "restore summer" in said.err
    assert run("projects", "--json") == 0
    (row,) = json.loads(capsys.readouterr().out)
    assert "cannot be used" in row["fault"]
    assert run("projects", "show", "summer") == 2
    assert run("doctor") == 1
    assert "“summer” of Ada Byron" in capsys.readouterr().out
    assert len(place.read_text()) == 100
    assert run("projects", "restore", "summer") == 0
    (back,) = work.projects()
    assert len(back.drafts) == 1
    assert len(place.with_name("summer.json.unusable").read_text()) == 100
    assert run("projects", "restore", "summer") == 2


def test_a_spoilt_project_without_an_earlier_state_answers_to_its_name(
    data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Its file alone tells what it was called; what to type is quoted."""
    own = work.Work("Ada Byron", "circle-skirt", name="Summer top")
    work.save(own)
    (place,) = (data_folder / "projects").rglob("*.json")
    place.write_text("{")
    assert run("projects", "show", "Summer top") == 2
    assert "cannot be used" in capsys.readouterr().err
    assert run("projects", "restore", "Summer top") == 0
    assert not place.exists()
    for ticked in ("first", "second"):
        work.save(replace(own, ticked=(ticked,)))
    place.write_text("{")
    run("projects")
    assert "restore 'Summer top'" in capsys.readouterr().err


def test_a_spoilt_project_is_not_written_over(
    data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A draft that takes its place sets it aside first, and says so."""
    place = spoil(data_folder)
    capsys.readouterr()
    begin()
    assert "its file is set aside, and it begins anew" in capsys.readouterr().err
    assert len(place.with_name("summer.json.unusable").read_text()) == 100


def test_a_project_of_several_people_needs_a_person(capsys: pytest.CaptureFixture[str]) -> None:
    """The sentence names them."""
    begin()
    store.save(Profile.of("Bea Larkin"))
    work.save(work.Work("Bea Larkin", "circle-skirt", name="summer"))
    assert run("projects", "show", "summer") == 2
    assert "Ada Byron, Bea Larkin" in capsys.readouterr().err
    assert run("projects", "show", "summer", "--person", "Bea Larkin") == 0


@pytest.mark.parametrize(
    ("arguments", "says"),
    [(("draft", "--project", "sumer"), "did you mean summer?"),
     (("draft", "Ada Byron", "circle-skirt"), "--out DIR"),
     (("draft", "--out", "x"), "PERSON"),
     (("draft", "Ada Byron", "jersey-top", "--project", "summer", "--out", "x"),
      "give the jersey-top another name"),
     (("projects", "show", "x"), "There is no project “x”"),
     (("projects", "copy", "summer", "a\x1bb"), "one line of plain characters")],
)  # fmt: skip
def test_what_there_is_not_is_one_sentence(
    arguments: tuple[str, ...], says: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """Exit 2, and what would be right."""
    begin()
    capsys.readouterr()
    assert run(*arguments) == 2
    err = capsys.readouterr().err
    assert says in err
    assert len(err.splitlines()) == 1


def test_two_projects_of_one_file_name_are_two(data_folder: Path) -> None:
    """Names that differ in a mark alone take nothing from each other, whichever goes first."""
    begin()
    assert run("projects", "copy", "summer", "Summer!") == 0
    assert run("projects", "copy", "summer", "sümmer") == 0
    assert {one.title for one in work.projects()} == {"summer", "Summer!", "sümmer"}
    assert run("projects", "delete", "summer", "--yes") == 0
    (exact,) = (one for one in work.projects() if one.title == "Summer!")
    work.save(replace(exact, notes="mine"))
    assert {one.title: one.notes for one in work.projects()} == {"Summer!": "mine", "sümmer": ""}
    assert run("projects", "restore", "summer") == 0
    assert len(work.projects()) == 3


def test_signs_that_a_terminal_obeys_are_marked_in_a_project(
    data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Wherever in the file they stand."""
    begin()
    (place,) = (data_folder / "projects").rglob("*.json")
    told = json.loads(place.read_text())
    told |= {"name": "sum\x1b[2Jmer", "notes": "a\x9bb", "cloth": "\u202ec"}
    place.write_text(json.dumps(told))
    capsys.readouterr()
    assert run("projects", "show", "sum?[2Jmer") == 0
    out = capsys.readouterr().out
    assert "notes: a?b" in out
    assert "cloth: ?c" in out


def test_a_project_goes_with_its_person(data_folder: Path) -> None:
    """Deleted with her, brought back with her, hers under another name."""
    begin()
    assert run("profiles", "delete", "Ada Byron", "--yes") == 0
    assert work.projects() == ()
    assert run("profiles", "restore", "Ada Byron") == 0
    assert [one.title for one in work.projects("Ada Byron")] == ["summer"]


def test_settings_are_kept_once_for_all(
    capsys: pytest.CaptureFixture[str], data_folder: Path, tmp_path: Path
) -> None:
    """Shown, set, opened again; other words for machines are understood."""
    assert run("settings", "unit=in", "machines=Serger, zig-zag", "paper=letter", "--json") == 0
    told = json.loads(capsys.readouterr().out)
    assert told == {"unit": "in", "paper": "letter", "machines": "overlocker, zigzag", "look": None}
    assert stat.S_IMODE((data_folder / "settings.json").stat().st_mode) == 0o600
    assert run("garments", "jersey-top") == 0
    assert " in" in capsys.readouterr().out
    made = work.fresh("Ada Byron")
    assert (made.machines, made.formats) == (("overlocker", "zigzag"), ("pdf-letter",))
    run("draft", "Ada Byron", "circle-skirt", "--out", "x")
    assert "cover stitch" not in (tmp_path / "x" / "checklist.md").read_text()
    assert run("settings", "unit=") == 0
    assert settings.settings() == Settings(paper="letter", machines="overlocker, zigzag")


@pytest.mark.parametrize(
    "wrong", ["unit=mm", "machines=loom", "colour=red", "unit", "paper=a9", "look=dark", "=in"]
)
def test_a_setting_that_there_is_not_changes_nothing(
    wrong: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """One sentence; what was set stays."""
    run("settings", "unit=in")
    capsys.readouterr()
    assert run("settings", "paper=a4", wrong) == 2
    assert len(capsys.readouterr().err.splitlines()) == 1
    assert settings.settings() == Settings(unit="in")


@pytest.mark.parametrize(
    "text", ["", "[", "[]", "null", '{"unit": "yards", "paper": 4}', "[" * 100_000, "\x00"]
)
def test_settings_that_cannot_be_used_are_as_none(text: str, data_folder: Path) -> None:
    """Nothing stops."""
    (data_folder / "settings.json").write_text(text)
    assert settings.settings() == Settings()
    assert run("settings") == 0


def test_spoilt_settings_are_named_and_those_of_before_count(
    data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Whatever is set next, the spoilt file is set aside, not written over."""
    run("settings", "unit=in")
    run("settings", "look=paper")
    place = data_folder / "settings.json"
    place.write_text("{")
    assert settings.settings() == Settings(unit="in")
    capsys.readouterr()
    assert run("settings") == 0
    said = capsys.readouterr()
    assert "unit: in" in said.out
    assert "cannot be read as JSON" in said.err
    assert "--restore" in said.err
    assert run("doctor") == 1
    assert run("settings", "--restore") == 0
    assert settings.found() == settings.Found(Settings(unit="in"))
    assert (data_folder / "settings.json.unusable").read_text() == "{"


def test_one_setting_that_there_is_no_longer_costs_that_one_alone(data_folder: Path) -> None:
    """It is named."""
    run("settings", "unit=in")
    place = data_folder / "settings.json"
    place.write_text('{"unit": "in", "look": "tartan", "paper": 4}')
    found = settings.found()
    assert found.settings == Settings(unit="in")
    assert "not “tartan”" in found.fault
    assert "“paper” must be text" in found.fault


def test_other_words_for_machines() -> None:
    """What people call them; anything else is refused."""
    assert read_machines("serger") == read_machines("overlocker")
    assert read_machines("Cover  Stitch, household") == read_machines("coverstitch,zigzag")
    with pytest.raises(OptionError, match="not loom"):
        read_machines("serger, loom")


def test_a_project_drawn_again_by_another_reader_is_the_same_size(tmp_path: Path) -> None:
    """What was typed is kept with its unit: 60 cm does not become 60 in."""
    draft = ("draft", "Ada Byron", "circle-skirt", "--project", "summer", "--no-pages")
    assert run(*draft, "--out", "a", "--set", "skirt-length=60") == 0
    assert run("draft", "--project", "summer", "--unit", "in", "--out", "b", "--no-pages") == 0
    records = [json.loads((tmp_path / name / "draft.json").read_text()) for name in "ab"]
    assert [record["options"]["skirt-length"] for record in records] == [60, 60]
