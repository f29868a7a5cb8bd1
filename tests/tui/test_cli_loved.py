"""Garments that fit, on the command line and from the garment page."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from walking import SMALL, Walk, walk

from tapewise_core.tasks import work
from tapewise_core.tasks.people import person, store
from tapewise_tui.cli import main
from tapewise_tui.dialogs.loved import LovedDialog
from tapewise_tui.pages.garment import GarmentPage
from tapewise_tui.widgets.choices import Choices

NAME = "Marta Lindqvist"


@pytest.fixture(autouse=True)
def marta(data_folder: Path) -> None:
    """An example person on file."""
    store.save(person(NAME))


def run(*arguments: str) -> int:
    """Run one command; argparse leaves by SystemExit."""
    try:
        return main(arguments)
    except SystemExit as left:
        return int(left.code or 0)


def test_a_garment_is_kept_shown_and_taken_off(capsys: pytest.CaptureFixture[str]) -> None:
    """Unlikely measures are told and end with 1; what was wrong changes nothing."""
    assert run("loved", NAME) == 0
    assert "no garment that fits" in capsys.readouterr().out
    assert run("loved", NAME, "blue", "bust=92", "stretch=40") == 1
    assert "Unlikely: Width at the bust: 92 cm" in capsys.readouterr().out
    assert run("loved", NAME, "blue", "bust=46", "hip=19 1/2 in") == 0
    assert run("loved", NAME, "blue", "bst=4") == 2
    capsys.readouterr()
    assert run("loved", NAME, "--json") == 0
    told = json.loads(capsys.readouterr().out)
    assert told == [
        {"name": "blue", "stretch": 40.0, "flat": {"bust": 46.0, "hip": 49.53}, "findings": []}
    ]
    assert run("loved", NAME, "blue", "--remove") == 0
    assert store.load(NAME).loved == ()


def test_half_a_loved_command_is_refused_in_one_sentence(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """Without a garment nothing is kept or taken off; what is measured needs no person."""
    assert run("loved") == 2
    assert "Say whose garment it is" in capsys.readouterr().err
    for half in (("bust=46",), ("--remove",)):
        assert run("loved", NAME, *half) == 2
        assert "Say what the garment is called" in capsys.readouterr().err
    assert store.load(NAME).loved == ()
    assert run("loved", "--measures") == 0
    assert "bust: " in capsys.readouterr().out


def test_a_draft_like_it_says_so_in_the_record(tmp_path: Path) -> None:
    """The eases are its own; a project keeps them for the next time."""
    run("loved", NAME, "blue", "bust=45", "waist=38", "hip=49", "stretch=50")
    out = ("--out", str(tmp_path / "top"), "--no-pages", "--quiet", "--project", "like blue")
    assert run("draft", NAME, "set-in-top", "--like", "Blue", *out) in (0, 1)
    told = json.loads((tmp_path / "top" / "draft.json").read_text("utf-8"))
    given = {row["name"]: row["given"] for row in told["like"]["rows"]}
    assert given == pytest.approx({"bust": 90.0, "waist": 76.0, "hip": 98.0}, abs=0.1)
    kept = next(one for one in work.projects(NAME) if one.title == "like blue")
    assert kept.asked["bust-ease"] == "-2 cm"
    assert run("draft", NAME, "set-in-top", "--like", "red", *out) == 2


def test_the_garment_page_makes_it_like_one_that_fits() -> None:
    """A whole for a half is told once; then the choices are made and what differs is told."""
    made = work.Work(NAME, page="garment", folder="top", garment="set-in-top")
    work.save(made.with_option("bust-ease", "9 cm"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        page = at.page
        assert isinstance(page, GarmentPage)
        page.query_one(Choices).to("like")
        await at.press("enter")
        assert isinstance(at.app.screen, LovedDialog)
        assert "What it is called" in at.text()
        await at.press("enter")
        assert "The garment's name must not be empty." in at.text()
        await at.type("blue", "enter")
        assert "Width at the bust [cm]" in at.text()
        await at.type("wide", "enter")
        assert "Width at the bust: “wide” is not a length" in at.text()
        await at.press(*["backspace"] * 4)
        await at.type("90", "ctrl+s")
        assert "Laid flat it would be 45 cm" in at.text()
        await at.press("backspace", "backspace")
        await at.type("45", "ctrl+s")
        assert "As “blue”: width at the bust." in at.text()
        assert work.load(NAME).asked == {"bust-ease": "-2.00 cm", "ease": "-2.00 cm"}
        assert store.load(NAME).loved[0].name == "blue"
        await at.press("escape", "ctrl+z")
        assert work.load(NAME).asked == {"bust-ease": "9 cm"}
        await at.press("enter")
        assert "another one" in at.text()

    walk(steps, SMALL)
