"""``tapewise cloth`` and the cloth's options of ``draft``, as people and machines use them."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tapewise_tui.cli import main


@pytest.fixture(autouse=True)
def own_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Every test has a working folder and a data folder of its own."""
    monkeypatch.setenv("TAPEWISE_DATA", str(tmp_path / "data"))
    monkeypatch.chdir(tmp_path)


def run(*arguments: str) -> int:
    """Run one command; argparse leaves by SystemExit."""
    try:
        return main(arguments)
    except SystemExit as left:
        return int(left.code or 0)


def test_it_says_how_much_to_buy(capsys: pytest.CaptureFixture[str]) -> None:
    """Amount, price and reason, in the reader's unit."""
    assert run("cloth", "Marta Lindqvist", "jersey-top", "--price", "10") == 0
    said = capsys.readouterr().out
    assert "Jersey 150 cm wide: buy 80 cm, which costs 8.00." in said
    assert run("cloth", "Marta Lindqvist", "jersey-top", "--unit", "in") == 0
    assert "buy 7/8 yd." in capsys.readouterr().out


def test_it_says_whether_a_length_will_do(capsys: pytest.CaptureFixture[str]) -> None:
    """Too little ends with 1, with the longest skirt there is cloth for."""
    asked = ("cloth", "Marta Lindqvist", "circle-skirt", "--cloth-length")
    assert run(*asked, "1.4m") == 1
    said = capsys.readouterr().out
    assert "DO NOT CUT YET: there are 140 cm of this cloth, and 152 cm are needed." in said
    assert "The longest skirt-length that fits on this cloth is 52 cm." in said
    assert run(*asked, "1.6m") == 0
    assert run(*asked, "1 1/2 yd") == 1
    assert run(*asked, "1 3/4 yd") == 0
    capsys.readouterr()


def test_it_compares_widths_for_a_machine(capsys: pytest.CaptureFixture[str]) -> None:
    """Each with its price; the cheapest named."""
    widths = ("--width", "140=9.90", "--width", "180=20")
    assert run("cloth", "Marta Lindqvist", "set-in-top", *widths, "--json") == 0
    told = json.loads(capsys.readouterr().out)
    assert [row["width"] for row in told["cloths"]] == [140, 180]
    first = told["cloths"][0]
    assert first["price"] == pytest.approx(first["buy"] / 100 * 9.9, abs=0.01)
    assert told["cheapest"] == 140


def test_a_cloth_that_will_not_do_is_told_apart_from_the_others(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """By its width, in words; a machine reads no amount where a piece is wider than the cloth."""
    widths = ("--set", "lay=folded", "--width", "90", "--width", "150")
    assert run("cloth", "Marta Lindqvist", "jersey-top", *widths) == 1
    said = capsys.readouterr().out
    assert "90 cm wide: DO NOT BUY YET: neckband is wider than this cloth folded in two." in said
    assert "\nJersey 150 cm wide: buy" in said
    assert run("cloth", "Marta Lindqvist", "jersey-top", *widths, "--json") == 1
    narrow, wide = json.loads(capsys.readouterr().out)["cloths"]
    assert [narrow[key] for key in ("length", "least", "buy", "used", "price")] == [None] * 5
    assert wide["buy"] > 0


def test_every_width_that_is_compared_is_laid_as_was_asked(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """So many seconds for each, and it is said how it goes."""
    from tapewise_core.lay.lay import lay_of
    from tapewise_core.tasks import cloth as tasks

    asked: list[int] = []

    def found(pattern: object, cloth: object, seconds: int, heard: object) -> object:
        asked.append(seconds)
        return lay_of(pattern, cloth)  # type: ignore[arg-type]

    monkeypatch.setattr(tasks, "closer_lay", found)
    widths = ("--width", "140", "--width", "180", "--closer-lay", "3")
    assert run("cloth", "Marta Lindqvist", "jersey-top", *widths) == 0
    assert asked == [3, 3]
    capsys.readouterr()


@pytest.mark.parametrize(
    ("asked", "says"),
    [
        (("--width", "wide"), "--width: “wide” is not a length"),
        (("--width", "140", "--width", "1.4m"), "names 1.4m twice"),
        (("--price", "-3"), "A price is a number from 0"),
        (("--closer-lay", "0"), "--closer-lay is a number of seconds from 1 to 600, not 0."),
        (("--cloth-length", "1m", "--set", "cloth-length=90"), "say the same; leave one out"),
        (("--cloth-length", "90 m"), "cloth-length"),
    ],
)
def test_what_cannot_be_is_refused(
    asked: tuple[str, ...], says: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """In one sentence."""
    assert run("cloth", "Marta Lindqvist", "jersey-top", *asked) == 2
    said = capsys.readouterr().err
    assert says in said
    assert said.count("\n") == 1


def test_a_draft_is_proved_on_the_length_there_is(capsys: pytest.CaptureFixture[str]) -> None:
    """Before anybody cuts, with a mend; the record has it too."""
    asked = ("circle-skirt", "--out", "s", "--cloth-length", "1.4m", "--no-pages")
    assert run("draft", "Marta Lindqvist", *asked) == 1
    assert "pieces on the length there is: The pieces take 144.4 cm" in capsys.readouterr().out
    record = json.loads(Path("s/draft.json").read_text("utf-8"))
    proof = next(one for one in record["proofs"] if one["id"] == "pieces on the length there is")
    assert (proof["holds"], proof["value"], proof["limit"]) == (False, 144.369, 133.0)
