"""What the world does to a command: closed pipes, full disks, old encodings, hostile files."""

from __future__ import annotations

import contextlib
import json
import os
import stat
import subprocess
import sys
import tempfile
from functools import cache
from pathlib import Path

import pytest

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people import store
from tapewise_tui import trouble
from tapewise_tui.cli import main

posix = pytest.mark.skipif(os.name != "posix", reason="files and permissions as POSIX has them")


def shell(command: str, **more: str) -> subprocess.CompletedProcess[bytes]:
    """Run a line of shell in which $T is the command; its own exit code is kept."""
    environment = {**os.environ, "T": f"{sys.executable} -m tapewise_tui", **more}
    return subprocess.run(
        ["bash", "-c", f"set -o pipefail; {command}"], env=environment, capture_output=True
    )


def run(*arguments: str) -> int:
    """Run one command; argparse leaves by SystemExit."""
    try:
        return main(arguments)
    except SystemExit as left:
        return int(left.code or 0)


@posix
@pytest.mark.parametrize("command", ["--version", "garments", "profiles list --json", "--help"])
def test_a_closed_pipe_is_no_trouble(command: str) -> None:
    """Whoever reads no further hears no complaint."""
    done = shell(f"$T {command} | true")
    assert done.stderr == b""
    assert done.returncode == 0


@posix
@pytest.mark.skipif(not Path("/dev/full").exists(), reason="this system has no /dev/full")
@pytest.mark.parametrize("command", ["--version", "garments", "schema draft", "--help"])
def test_a_full_output_is_one_sentence(command: str) -> None:
    """No traceback, and no success claimed."""
    done = shell(f"$T {command} > /dev/full")
    assert done.returncode == 2
    assert done.stderr.decode() == (
        "tapewise: The output cannot be written: no space left on device.\n"
    )


@cache
def in_utf_8(command: str) -> subprocess.CompletedProcess[bytes]:
    """Run a command on the example people alone, every sign of its own to be had."""
    with tempfile.TemporaryDirectory() as folder:
        return shell(f"$T {command}", PYTHONIOENCODING="utf-8", TAPEWISE_DATA=folder)


@pytest.mark.parametrize("encoding", ["cp1252", "ascii", "latin-1", "cp437"])
@pytest.mark.parametrize("command", ["garments jersey-top", "check 'Rosa Benítez' --unit in"])
def test_an_old_encoding_spells_what_it_can(encoding: str, command: str) -> None:
    """Signs it lacks come as the nearest it has; the command ends as in any other."""
    plain = in_utf_8(command)
    done = shell(f"$T {command}", PYTHONIOENCODING=encoding)
    assert done.returncode == plain.returncode
    assert done.returncode in (0, 1)
    assert done.stderr == b""
    assert len(done.stdout.splitlines()) == len(plain.stdout.splitlines())


def test_json_in_an_old_encoding_is_the_same_json() -> None:
    """Escaped, not spoilt."""
    plain, done = (
        shell("$T profiles list --json", PYTHONIOENCODING=encoding)
        for encoding in ("utf-8", "ascii")
    )
    assert json.loads(done.stdout) == json.loads(plain.stdout)


def test_no_home_folder_is_one_sentence(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """It names the way out; a person's file needs no home at all."""
    monkeypatch.delenv("TAPEWISE_DATA")

    def nowhere(*_: object, **__: object) -> Path:
        raise RuntimeError("no home")

    monkeypatch.setattr("platformdirs.user_data_path", nowhere)
    assert run("profiles") == 2
    (tmp_path / "ada.json").write_text(Profile.of("Ada").text(), "utf-8")
    assert run("check", str(tmp_path / "ada.json")) in (0, 1)


def test_a_fault_with_no_home_is_still_one_sentence(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """The details find no place, and that is no second fault."""
    monkeypatch.delenv("TAPEWISE_DATA")
    monkeypatch.setattr("platformdirs.user_data_path", lambda *_, **__: Path("~/nowhere"))

    def broken(_: object) -> int:
        raise ZeroDivisionError

    monkeypatch.setattr("tapewise_tui.commands.run", broken)
    assert run("garments") == 3
    err = capsys.readouterr().err
    assert len(err.splitlines()) == 1
    assert "ZeroDivisionError" in err


ESC = "\x1b]0;owned\x07\x9b2J\u202e"


def hostile(folder: Path) -> list[Path]:
    """Files whose keys, names and texts try to command the terminal."""
    folder.mkdir(parents=True, exist_ok=True)
    least = {"format": "tapewise profile", "version": 1, "name": "Ada"}
    contents = {
        "key": {**least, ESC: 1},
        "measure": {**least, "measures": {ESC: {"value": 1}}},
        "name": {**least, "name": f"Ada{ESC}"},
        "unit": {**least, "unit": ESC},
    }
    paths = []
    for name, content in contents.items():
        path = folder / f"{name}.json"
        path.write_text(json.dumps(content, ensure_ascii=False), "utf-8")
        paths.append(path)
    evil = folder / f"evil{ESC.replace('/', '')}.json"
    evil.write_text("{", "utf-8")
    twice = folder / "twice.json"
    twice.write_text(f'{{"{json.dumps(ESC)[1:-1]}": 1, "{json.dumps(ESC)[1:-1]}": 2}}', "utf-8")
    return [*paths, evil, twice]


@posix
def test_no_control_character_of_a_file_reaches_the_terminal(
    data_folder: Path, tmp_path: Path, capfd: pytest.CaptureFixture[str]
) -> None:
    """Not from keys, values or names of files, nor from what was typed."""
    paths = hostile(tmp_path / "files")
    hostile(data_folder / "people")
    for path in paths:
        for command in (("check", str(path)), ("profiles", "copy-in", str(path))):
            assert run(*command) == 2
    run("profiles")
    run("profiles", "--json")
    run("profiles", "show", f"x{ESC}")
    run(f"dr{ESC}aft")
    run("garments", ESC)
    run("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--set", f"{ESC}=3")
    out, err = capfd.readouterr()
    for sign in "\x1b\x07\x9b\u202e":
        assert sign not in out + err


@posix
def test_outputs_and_notes_are_the_owner_s_whatever_the_umask_says(
    tmp_path: Path, data_folder: Path
) -> None:
    """A pattern says how a person is built, and so may a note of trouble."""
    before = os.umask(0)
    try:
        assert run("demo") == 0
        trouble.note(ValueError("planted"))
    finally:
        os.umask(before)
    files = [*(tmp_path / "tapewise-demo").rglob("*"), data_folder / "trouble.txt"]
    open_files = [p for p in files if p.is_file() and stat.S_IMODE(p.stat().st_mode) & 0o077]
    assert open_files == []
    for folder in (tmp_path / "tapewise-demo", data_folder):
        assert not stat.S_IMODE(folder.stat().st_mode) & 0o077
    (data_folder / "trouble.txt").unlink()


@pytest.mark.trouble
def test_a_fault_in_a_worker_is_written_down_where_it_happened(data_folder: Path) -> None:
    """The trouble that wraps it says nothing; the line that failed does."""
    from textual.worker import WorkerFailed

    def in_a_worker() -> None:
        raise LookupError("planted")

    try:
        in_a_worker()
    except LookupError as error:
        says = trouble.note(WorkerFailed(error))
    assert "LookupError" in says
    noted = (data_folder / "trouble.txt").read_text("utf-8")
    assert "in in_a_worker" in noted


def test_a_reading_of_a_day_to_come_is_remarked(capsys: pytest.CaptureFixture[str]) -> None:
    """The value stands; the day is named, for people and machines."""
    from datetime import date

    made = Profile.of("Ada").with_value("bust", 92.0).with_value("hip", 98.0)
    store.save(made.with_value("hip", 98.0, taken=date(2099, 1, 2)))
    assert run("check", "Ada") == 0
    assert "Hip: taken on 2099-01-02, a day still to come" in capsys.readouterr().out
    run("check", "Ada", "--json")
    findings = json.loads(capsys.readouterr().out)["findings"]
    assert any("2099" in row["says"] and row["measures"] == ["hip"] for row in findings)


def test_stopping_takes_back_what_was_not_finished(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Stopped in the middle of putting files in place, the folder is as it was; exit 130."""
    draft = ("draft", "Marta Lindqvist", "--out", "t")
    run(*draft, "circle-skirt")
    folder = tmp_path / "t"
    before = {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    real, calls = os.replace, []

    def stopped(a: Path, b: Path) -> None:
        calls.append(b)
        if len(calls) == 9:
            raise KeyboardInterrupt
        real(a, b)

    monkeypatch.setattr("tapewise_core.writers.whole_set.os.replace", stopped)
    assert run(*draft, "jersey-top") == 130
    monkeypatch.undo()
    assert len(calls) > 9
    assert "stopped" in capsys.readouterr().err
    assert {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()} == before
    assert not list(tmp_path.glob(".tapewise-*"))


@pytest.mark.skipif(os.name != "posix", reason="home folders as POSIX has them")
def test_where_there_is_no_home_folder_one_sentence_says_so(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Neither told by the environment nor known of the user; exit 2, as for any wrong input."""
    import pwd

    def nobody(uid: int) -> object:
        raise KeyError(uid)

    monkeypatch.setattr(pwd, "getpwuid", nobody)
    for name in ("HOME", "XDG_DATA_HOME", "TAPEWISE_DATA"):
        monkeypatch.delenv(name, raising=False)
    for arguments in (("profiles",), ("projects",), ("draft", "Ada", "jersey-top", "--out", "x")):
        assert main(arguments) == 2
        err = capsys.readouterr().err
        assert "no home folder to keep people in; set TAPEWISE_DATA" in err
        assert len(err.splitlines()) == 1
    for arguments in (("settings",), ("garments",), ("doctor",)):
        assert main(arguments) in (0, 1)


def on_a_terminal(*arguments: str, **environment: str) -> str:
    """What a command shows on a terminal, faults too."""
    import pty

    seen, theirs = pty.openpty()
    env = {**os.environ, "TERM": "xterm", **environment}
    command = [sys.executable, "-m", "tapewise_tui", *arguments]
    with subprocess.Popen(command, stdout=theirs, stderr=theirs, env=env) as running:
        os.close(theirs)
        told = b""
        with contextlib.suppress(OSError):  # how a terminal ends whose other end is closed
            while part := os.read(seen, 4096):
                told += part
        running.wait(60)
    os.close(seen)
    return told.decode()


@pytest.mark.skipif(os.name != "posix", reason="terminals as POSIX has them")
def test_what_wants_a_look_is_in_colour_where_a_terminal_has_it(tmp_path: Path) -> None:
    """Faults and unlikely values; never where nobody sees colour or it was asked not to."""
    half = Profile.of("Half").with_value("bust", 92.0).with_value("hip", 49.0)
    (tmp_path / "half.json").write_text(half.text(), "utf-8")
    assert "\x1b[33munlikely:\x1b[0m" in on_a_terminal("check", "half.json")
    assert "\x1b[31mtapewise:\x1b[0m There is no file" in on_a_terminal("check", "no.json")
    for plain in ({"NO_COLOR": "1"}, {"TERM": "dumb"}):
        assert "\x1b" not in on_a_terminal("check", "half.json", **plain)
        assert "\x1b" not in on_a_terminal("check", "no.json", **plain)
    done = subprocess.run(
        [sys.executable, "-m", "tapewise_tui", "check", "half.json"], capture_output=True
    )
    assert b"\x1b" not in done.stdout
