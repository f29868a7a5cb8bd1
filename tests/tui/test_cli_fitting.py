"""Trying on at the command line: listed, proposed, kept, taken off; by options or asked."""

from __future__ import annotations

import io
import json
from collections.abc import Sequence
from pathlib import Path

import pytest
from making import person

from tapewise_core.tasks.people import store
from tapewise_tui.cli import main

NECK = ("--garment", "jersey-top", "--symptom", "back-neck-stands-off", "--answer", "above")


@pytest.fixture(autouse=True)
def ada(data_folder: Path) -> None:
    """Somebody on file with all measures of a top."""
    store.save(person(name="Ada Byron"))


def run(*arguments: str) -> int:
    """Run the command; argparse leaves by SystemExit."""
    try:
        return main(("fitting", *arguments))
    except SystemExit as left:
        return int(left.code or 0)


class Terminal(io.StringIO):
    """A terminal at which somebody types."""

    def isatty(self) -> bool:
        """Somebody is there."""
        return True


def at_terminal(monkeypatch: pytest.MonkeyPatch, answers: Sequence[str]) -> None:
    """Let somebody type these lines."""
    monkeypatch.setattr("sys.stdin", Terminal("\n".join((*answers, ""))))


def test_symptoms_are_listed_for_people_and_machines(capsys: pytest.CaptureFixture[str]) -> None:
    """With questions, answers, limits and the lines of each drawing."""
    assert run("--symptoms") == 0
    out = capsys.readouterr().out
    assert "back-neck-stands-off: the back neckline stands away from the neck" in out
    assert run("--symptoms", "--json") == 0
    rows = json.loads(capsys.readouterr().out)
    assert len(rows) == 26
    neck = next(row for row in rows if row["key"] == "back-neck-stands-off")
    (change,) = neck["answers"][0]["changes"]
    assert (change["low"], change["high"], change["unit"]) == (0.3, 1.0, "cm")
    assert neck["folds"]["view"] == "back"
    assert len(neck["folds"]["lines"]) == 4


def test_a_change_is_tried_kept_listed_and_taken_off(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    """Nothing is kept unasked; both pictures are written where asked for."""
    assert run("Ada Byron", *NECK, "--out", str(tmp_path)) == 0
    out = capsys.readouterr().out
    assert "Change: back neck raised 0.6 cm (at one fitting 0.3 cm to 1 cm)." in out
    assert "before" in out
    assert {path.name for path in tmp_path.iterdir() if path.suffix == ".svg"} == {
        "fitting-folds.svg", "fitting-overlay.svg",
    }  # fmt: skip
    assert store.load("Ada Byron").adjustments == ()
    kept = ("--amount", "0.5", "--date", "2026-03-03", "--keep", "--json")
    assert run("Ada Byron", *NECK, *kept) == 0
    told = json.loads(capsys.readouterr().out)
    assert (told["amount"], told["kept"], told["says"]) == (0.5, True, "back neck raised 0.5 cm")
    assert run("Ada Byron", "--list") == 0
    assert "  1  back neck raised 0.5 cm (after the fitting of 3 March" in capsys.readouterr().out
    assert run("Ada Byron", "--list", "--json") == 0
    (row,) = json.loads(capsys.readouterr().out)
    for act in ("show", "history"):
        assert main(("profiles", act, "Ada Byron")) == 0
        assert "back neck raised 0.5 cm" in capsys.readouterr().out
    assert (row["number"], row["what"], row["date"]) == (1, "back-neck-raised", "2026-03-03")
    assert run("Ada Byron", "--remove", "1") == 0
    assert "Taken off Ada Byron: back neck raised 0.5 cm." in capsys.readouterr().out
    assert store.load("Ada Byron").adjustments == ()


def test_what_is_wrong_is_one_sentence(capsys: pytest.CaptureFixture[str]) -> None:
    """What is missing, unknown or beyond its limits is named, with what would be right."""
    wrong = {
        (): "Name who tried it on",
        ("Ada Byron",): "Name what was tried on: --garment",
        ("Ada Byron", "--garment", "jersey-top"): "--symptoms",
        ("Ada Byron", "--garment", "jrsey-top"): "did you mean jersey-top",
        ("Ada Byron", *NECK[:4]): "Where is the bone at the back of the neck",
        ("Ada Byron", *NECK[:5], "zzz"): "choose from above, beside, behind",
        ("Ada Byron", *NECK, "--amount", "3"): "changed by 0.3 cm to 1 cm, and not by 3 cm",
        ("Ada Byron", *NECK, "--date", "March"): "such as 2026-03-03, not “March”",
        ("Ada Byron", *NECK, "--date", "2099-03-03"): "2099-03-03 is still to come",
        ("Ada Byron", *NECK, "--date", "2126-03-03"): "such as 2026-03-03, not “2126-03-03”",
        ("Ada Byron", "--remove", "1"): "There is no adjustment 1",
        ("Ada Byron", "--remove", "one"): "a number that --list counts",
    }
    for arguments, words in wrong.items():
        assert run(*arguments) == 2, arguments
        told = capsys.readouterr().err
        assert words in told
        assert told.count("\n") == 1


def test_it_is_asked_in_order_at_a_terminal(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Garment, symptom, its question, how much, and whether to keep; a slip is asked again."""
    at_terminal(monkeypatch, ("jersey-top", "99", "2", "1", "a bit", "0.4", "y"))
    assert run("Ada Byron") == 0
    said = capsys.readouterr()
    assert "What was tried on?" in said.out
    assert "Where is the bone at the back of the neck, against the band?" in said.out
    assert "Type a number from 1 to 26." in said.err
    (one,) = store.load("Ada Byron").adjustments
    assert (one.what, one.amount, one.symptom) == (
        "back-neck-raised", 0.4, "back-neck-stands-off",
    )  # fmt: skip


def test_no_keeps_nothing(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """An answer of no, or none, leaves the person as she is."""
    at_terminal(monkeypatch, ("", "n"))
    assert run("Ada Byron", *NECK) == 130
    assert "Nothing is kept." in capsys.readouterr().out
    assert store.load("Ada Byron").adjustments == ()


def test_a_change_that_no_length_shows_says_so(capsys: pytest.CaptureFixture[str]) -> None:
    """A shoulder seam that moves forward leaves every girth as it was; nothing is left unsaid."""
    behind = ("--garment", "jersey-top", "--symptom", "shoulder-seam-behind")
    assert run("Ada Byron", *behind) == 0
    out = capsys.readouterr().out
    assert "The lines move and no finished girth or length that is told" in out
    assert run("Ada Byron", *NECK) == 0
    assert "The lines move" not in capsys.readouterr().out
