"""Help, completion, the manual page, the doctor, and what may be meant by a slip."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tapewise_core import __version__
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people import store
from tapewise_tui.cli import main
from tapewise_tui.commands import COMMANDS
from tapewise_tui.commands import command as command_of
from tapewise_tui.exits import MEANINGS
from tapewise_tui.parser import parser
from tapewise_tui.parser_base import acts_of


def run(*arguments: str) -> int:
    """Run one command; argparse leaves by SystemExit."""
    try:
        return main(arguments)
    except SystemExit as left:
        return int(left.code or 0)


def test_help_has_a_map_and_the_exit_codes(capsys: pytest.CaptureFixture[str]) -> None:
    """Every command with a sentence, where to begin, and what each code means."""
    assert run("--help") == 0
    said = capsys.readouterr().out
    assert all(name in said for name in acts_of(parser()))
    for code, meaning in MEANINGS.items():
        assert f"{code:>3}  {meaning}" in said


def test_help_on_a_command_is_the_command_s_help(capsys: pytest.CaptureFixture[str]) -> None:
    """Acts too; a command that there is not is answered with the near one."""
    for words in ((), ("draft",), ("profiles", "delete")):
        assert run("help", *words) == 0
        helped = capsys.readouterr().out
        assert run(*words, "--help") == 0
        assert capsys.readouterr().out == helped
    assert run("help", "profiles", "delte") == 2
    assert "did you mean delete?" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("arguments", "says"),
    [(("drfat",), "did you mean draft?"), (("profiles", "delte", "x"), "did you mean delete?"),
     (("draft", "--formt", "y"), "did you mean --format"), (("schema", "persn"), "person?"),
     (("schema", "x"), "There is no schema “x”; choose from draft, person, check"),
     (("profiles", "list", "--jsn"), "did you mean --json?"),
     (("garments", "jersey-tpo"), "did you mean jersey-top?"),
     (("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--set", "sleev-length=3"),
      "did you mean sleeve-length"),
     (("draft", "Marta Lindqvst", "jersey-top", "--out", "t"), "did you mean Marta Lindqvist?")],
)  # fmt: skip
def test_a_slip_is_answered_with_what_may_be_meant(
    arguments: tuple[str, ...], says: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """On one line, exit 2."""
    assert run(*arguments) == 2
    err = capsys.readouterr().err
    assert says in err
    assert len(err.splitlines()) == 1


@pytest.mark.parametrize(
    ("arguments", "says"),
    [(("batch", "t.csv", "jersey-top", "--out", "x", "--jobs", "x"),
      "--jobs: “x” is no whole number such as 4"),
     (("serve", "--port", "4.5"), "--port: “4.5” is no whole number"),
     (("draft", "--out"), "--out needs DIR after it"), (("check", "x", "--unit"), "cm or in"),
     (("draft", "--out", ""), "--out: nothing is named"),
     (("check",), "Missing: PERSON"), (("batch", "t.csv"), "Missing: GARMENT, --out"),
     (("profiles", "--json=3"), "--json stands alone; take away what is after it, “3”"),
     (("draft", "--un", "cm"), "--un may be --unit or --unfolded; write it out"),
     (("profiles", "list", "extra"), "“extra” is more than this command takes"),
     (("draft", "a", "b", "c"), "“c” is more than this command takes"),
     (("check", "x", "--unit", "mm"), "There is no unit “mm”; choose from cm, in"),
     (("--vesion",), "There is no option --vesion; did you mean --version?"),
     (("profiles", "show", "--jsn"), "did you mean --json?"),
     (("check", "--garmnt=x"), "There is no option --garmnt; did you mean --garment?"),
     (("completion", "fsh"), "There is no shell “fsh”")],
)  # fmt: skip
def test_what_is_typed_wrong_is_told_in_plain_words(
    arguments: tuple[str, ...], says: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """One line, exit 2, and none of the library's words."""
    assert run(*arguments) == 2
    err = capsys.readouterr().err
    assert says in err
    assert len(err.splitlines()) == 1
    assert "rgument" not in err


@pytest.mark.parametrize(
    "arguments",
    [("Marta Lindqvist", "circle-skirt", "--out", "x"), ("--out", "x", "Marta Lindqvist",
      "circle-skirt"), ("Marta Lindqvist", "--out", "x", "circle-skirt")],
)  # fmt: skip
def test_options_may_stand_anywhere(arguments: tuple[str, ...], tmp_path: Path) -> None:
    """Before, between and after what a command is about."""
    assert run("draft", *arguments, "--quiet") == 0
    assert (tmp_path / "x" / "draft.json").exists()


def test_the_version_for_a_machine(capsys: pytest.CaptureFixture[str]) -> None:
    """The program's, and of each kind of file it writes."""
    assert run("--version", "--json") == 0
    told = json.loads(capsys.readouterr().out)
    assert told["tapewise"] == __version__
    assert told["formats"]["tapewise profile"] == 2


def test_quiet_says_only_what_is_wrong(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Codes and files are as ever."""
    (tmp_path / "ada.json").write_text(Profile.of("Ada").text(), "utf-8")
    assert run("profiles", "copy-in", "ada.json", "--quiet") == 0
    assert run("draft", "Marta Lindqvist", "circle-skirt", "--out", "x", "--quiet") == 0
    assert run("profiles", "delete", "Ada", "--yes", "--quiet") == 0
    assert capsys.readouterr().out == ""
    assert (tmp_path / "x" / "draft.json").exists()
    assert run("profiles", "copy-out", "Nobody", "x.json", "--quiet") == 2
    assert capsys.readouterr().err


def test_the_doctor_finds_nothing_wrong_where_nothing_is(
    data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """What is installed and where things lie; exit 0."""
    store.save(Profile.of("Ada"))
    assert run("doctor", "--json") == 0
    told = json.loads(capsys.readouterr().out)
    assert told["faults"] == []
    assert told["packages"]["pydantic"]
    assert told["places"]["people"] == f"1 in {data_folder / 'people'}"
    assert run("doctor") == 0
    assert "Nothing is wrong." in capsys.readouterr().out


@pytest.mark.skipif(os.name != "posix", reason="permissions as POSIX has them")
def test_the_doctor_names_what_is_wrong(
    data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A broken person, a spoilt project, an open folder; exit 1."""
    store.save(Profile.of("Ada"))
    (data_folder / "people" / "bent.json").write_text("{")
    (data_folder / "projects" / "abcdefgh").mkdir(parents=True)
    (data_folder / "projects" / "abcdefgh" / "top.json").write_text("[")
    data_folder.chmod(0o755)
    assert run("doctor", "--json") == 1
    faults = " ".join(json.loads(capsys.readouterr().out)["faults"])
    for name in ("bent.json", "top.json; no earlier state", "may be looked into by others"):
        assert name in faults


@pytest.mark.parametrize("shell", ["bash", "zsh", "tcsh"])
def test_a_shell_gets_its_completion(shell: str, capsys: pytest.CaptureFixture[str]) -> None:
    """With every command in it, in the shell's own language where it can be asked."""
    assert run("completion", shell) == 0
    said = capsys.readouterr().out
    assert all(name in said for name in acts_of(parser()))
    found = shutil.which(shell)
    if found and shell != "tcsh":
        assert subprocess.run([found, "-n"], input=said.encode()).returncode == 0


def test_the_manual_page_is_made_from_the_commands(capsys: pytest.CaptureFixture[str]) -> None:
    """Every command, act and option, and the exit codes."""
    assert run("man") == 0
    said = capsys.readouterr().out
    assert said.startswith(".TH TAPEWISE 1")
    for name, command in acts_of(parser()).items():
        assert f".SS tapewise {name}" in said
        for act in acts_of(command):
            assert f".SS tapewise {name} {act}".replace("-", "\\-") in said
    assert "\\-\\-for\\-good" in said
    assert all(f".B {code}\n" in said for code in MEANINGS)


def test_every_command_the_parser_knows_is_done_by_something() -> None:
    """And nothing is done that the parser does not know."""
    assert set(COMMANDS) == set(acts_of(parser()))
    assert all(callable(command_of(name)) for name in COMMANDS)


def test_a_command_is_understood_alone_as_among_all() -> None:
    """One that is named first is the only one prepared; its help is the same to the letter."""
    every = acts_of(parser())
    for name in every:
        ((alone, one),) = acts_of(parser(name)).items()
        assert alone == name
        assert one.format_help() == every[name].format_help()


@pytest.mark.parametrize(
    ("arguments", "unused"),
    [(["--version"], {"argparse"}), (["garments"], {"pydantic"}), (["help", "draft"], {"pydantic"}),
     (["profiles"], {"shapely", "textual", "pydantic"}),
     (["garments", "jersey-top"], {"numpy"}), (["measure", "--print"], {"numpy"}),
     (["check", "Marta Lindqvist"], {"shapely", "tapewise_core.garments.shelf", "pydantic"}),
     (["draft", "Marta Lindqvist", "jersy-top", "--out", "x"], {"numpy", "pydantic"}),
     (["cloth", "Marta Lindqvist", "jersy-top"], {"numpy", "pydantic"}),
     (["fitting", "Nobody", "--garment", "jersey-top"], {"numpy"})],
)  # fmt: skip
def test_a_command_loads_nothing_that_it_does_not_need(
    arguments: list[str], unused: set[str]
) -> None:
    """So that each is there as soon as it can be."""
    code = "import sys\nfrom tapewise_tui.cli import main\n"
    code += f"main({arguments!r})\nassert not {unused!r} & sys.modules.keys(), 'loaded'\n"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr


def test_words_of_the_trade_are_explained(capsys: pytest.CaptureFixture[str]) -> None:
    """All, or one by either name; what is not among them is said with what comes near."""
    assert run("words") == 0
    assert "overlocker (serger)" in capsys.readouterr().out
    assert run("words", "serger", "--json") == 0
    assert list(json.loads(capsys.readouterr().out)) == ["overlocker"]
    assert run("words", "notsh") == 2
    assert "did you mean notch?" in capsys.readouterr().err


NARROW = ("Marta Lindqvist", "skirted-dress", "--set", "skirt=straight", "--set", "vent=none",
          "--set", "skirt-length=80")  # fmt: skip


@pytest.mark.parametrize("how", [("--out", "x", "--no-pages", "--quiet"), ("--hand",)])
def test_a_proof_that_fails_is_said_where_little_else_is(
    how: tuple[str, ...], capsys: pytest.CaptureFixture[str]
) -> None:
    """Asked for quiet, or for a sheet to draft by hand: where faults are read, with code 1."""
    assert run("draft", *NARROW, *how) == 1
    told = capsys.readouterr()
    assert "do not cut yet" in told.err
    assert "hem for a stride: The hem is" in told.err
    assert "do not cut yet" not in told.out
    assert bool(told.out) is (how == ("--hand",))


def test_quiet_says_which_measures_are_unlikely_and_which_cloth_is_too_short(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """One line each, and nothing of what is well."""
    (tmp_path / "ada.json").write_text(Profile.of("Ada").with_value("bust", 92).text(), "utf-8")
    assert run("check", "ada.json", "--quiet") == 0
    assert run("cloth", "Marta Lindqvist", "circle-skirt", "--quiet") == 0
    assert capsys.readouterr().err == ""
    odd = Profile.of("Ada").with_value("bust", 92).with_value("upper_arm", 60)
    (tmp_path / "ada.json").write_text(odd.text(), "utf-8")
    assert run("check", "ada.json", "--quiet") == 1
    assert run("cloth", "Marta Lindqvist", "circle-skirt", "--quiet", "--cloth-length", "40cm") == 1
    told = capsys.readouterr()
    assert told.out == ""
    assert [line.split()[1] for line in told.err.splitlines()] == ["Unlikely:", "DO"]
