"""The app and the command line tell every length in the unit of whoever reads."""

from __future__ import annotations

import argparse
from pathlib import Path

import pytest
from quiet import run
from test_snapshots import FOLDER
from units_seen import foreign

from tapewise_core.measures.advice import BEFORE
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people import store
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui.cli import main
from tapewise_tui.dialogs import fold, help, written
from tapewise_tui.parser import parser
from tapewise_tui.screens import SCENES, Scene, own_data, play
from tapewise_tui.turning import PAGE_OF

LARGE = (120, 40)
EACH_UNIT = pytest.mark.parametrize("unit", list(Unit), ids=lambda unit: unit.name)


def _in(unit: Unit) -> None:
    """Let everybody on file read a unit."""
    for entry in store.listing():
        if entry.profile is not None and not entry.shipped:
            store.save(entry.profile.with_unit(unit))


@pytest.mark.parametrize("scene", SCENES, ids=lambda scene: scene.name)
def test_a_page_tells_inches_alone(scene: Scene) -> None:
    """Every page and dialog, with what it says when something is wrong."""
    with own_data(scene.page):
        _in(Unit.IN)
        shown = run(play(scene, LARGE)).text
    assert foreign(shown.splitlines(), Unit.IN) == []


@pytest.mark.parametrize("scene", SCENES, ids=lambda scene: scene.name)
def test_a_page_tells_centimetres_alone(scene: Scene) -> None:
    """The same on the screens as they are kept; `test_snapshots` holds the app to them."""
    kept = FOLDER / f"{scene.name}-{LARGE[0]}x{LARGE[1]}.txt"
    assert foreign(kept.read_text("utf-8").splitlines(), Unit.CM) == []


@EACH_UNIT
def test_advice_and_help_tell_one_unit(unit: Unit) -> None:
    """What lies below the edge of a screen too."""
    texts = [page.PURPOSE for page in PAGE_OF.values()]
    texts += [help.EVERYWHERE, written.NEXT]
    texts += [fold.told(words, unit) for words in (fold.FOLD, fold.WASH, *fold.ASKED.values())]
    texts += [Reader(unit).spell(rest) for _, rest in BEFORE]
    assert foreign(texts, unit) == []


def _helps(command: argparse.ArgumentParser) -> list[str]:
    """The help of a command and of all below it."""
    found = [" ".join(command.format_help().split())]
    for action in command._actions:
        if isinstance(action, argparse._SubParsersAction):
            found += [text for below in action.choices.values() for text in _helps(below)]
    return found


@EACH_UNIT
def test_the_command_lines_help_tells_both_units(unit: Unit) -> None:
    """It is read before anything is known of the reader, so that a length stands in both."""
    assert foreign(_helps(parser()), unit) == []


def test_an_error_is_told_in_the_persons_unit(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Whoever is on file with inches reads them without asking, of the paper too."""
    monkeypatch.setenv("TAPEWISE_DATA", str(tmp_path / "data"))
    monkeypatch.chdir(tmp_path)
    ada = Profile.of("Ada Quist", unit=Unit.IN).with_value("waist", 76).with_value("hip", 100)
    store.save(ada)
    one_piece = ["--set=skirt-length=45", "--set=panels=1"]
    for asked in (one_piece, ["--format=pdf-a4", "--page-margin=7"]):
        assert main(["draft", "Ada Quist", "circle-skirt", "--out", "out", *asked]) == 2
        told = capsys.readouterr().err
        assert " in" in told
        assert foreign([told], Unit.IN) == []
    wide = ["--format=pdf-a4", "--page-margin=180", "--unit=cm"]
    assert main(["draft", "Ada Quist", "circle-skirt", "--out", "out", *wide]) == 2
    assert "Margins of 180 mm" in capsys.readouterr().err
