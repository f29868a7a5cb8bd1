"""The lengths by which a draft made by hand is checked."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hand_draws import Sheet, drawn
from hand_reads import read
from making import MIDDLE, person

from tapewise_core.drafting.by_hand import by_hand
from tapewise_core.drafting.control import Control, controls
from tapewise_core.drafting.steps import spoken
from tapewise_core.drafting.told_steps import told_steps
from tapewise_core.garments.shelf import garments
from tapewise_core.paper.document import Heading, NumberedStep, Table
from tapewise_core.tasks.documents import control_of, instructions_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

NAMES = [page.name for page in garments()]
MORE = {"waist_to_knee": 58.0, "across_back": 36.0, "high_bust": 88.0}


def made(name: str, unit: Unit = Unit.CM, **asked: str) -> Drafted:
    """A garment for the middle woman."""
    return draft(person({**MIDDLE, **MORE}), name, asked, unit=unit)


def measured(sheet: Sheet, one: Control) -> float:
    """What a tape reads on the hand's own paper [mm]."""
    words = one.what.replace(" straight to ", "–").replace(" to ", "–").split(", ")
    start, end = (sheet.points[name] for name in words[-1].split("–"))
    if len(words) == 1:
        return float(np.linalg.norm(end - start))
    own = [line for called, line in sheet.lines if called.split(" ")[0] == words[0].split(" ")[0]]
    line = min(own, key=lambda line: _from(line, start, end))
    return float(np.linalg.norm(np.diff(line, axis=0), axis=1).sum())


def _from(line: np.ndarray, start: np.ndarray, end: np.ndarray) -> float:
    both = ((line[0], line[-1]), (line[-1], line[0]))
    return min(np.linalg.norm(a - start) + np.linalg.norm(b - end) for a, b in both)


@pytest.mark.parametrize("name", NAMES)
def test_what_the_hand_drew_measures_as_the_sheet_says(name: str) -> None:
    """Within the 3 mm that it allows, every length of every piece."""
    done: dict[str, Sheet] = {}
    for told in map(by_hand, made(name).pattern.drafts):
        sheet = drawn(read(told_steps(told, Reader(Unit.CM))), done)
        done[spoken(told.title)] = sheet
        found = list(controls(told))
        assert found, told.title
        for one in found:
            assert measured(sheet, one) == pytest.approx(one.by, abs=3.0), (told.title, one)


def test_a_slip_of_a_centimetre_is_seen_and_its_step_is_named() -> None:
    """The side at the hem set off wrong: lengths to M are off, and its step stands beside them."""
    pattern = made("jersey-top").pattern
    told = by_hand(pattern.drafts[0])
    acts = read(told_steps(told, Reader(Unit.CM)))
    slip = next(i for i, (_, act) in enumerate(acts) if getattr(act, "name", "") == "M")
    acts[slip] = acts[slip][0], replace(acts[slip][1], by=acts[slip][1].by + 10)
    sheet = drawn(acts, {})
    off = [one for one in controls(told) if abs(measured(sheet, one) - one.by) > 3]
    assert off
    assert all(one.what[-1] == "M" for one in off)
    straight = next(one for one in off if "straight" in one.what)
    assert slip + 1 in straight.steps


@pytest.mark.parametrize("name", NAMES)
def test_steps_are_numbered_as_in_the_instructions(name: str) -> None:
    """The last step named beside a length draws the line, or marks one of its ends."""
    drafted = made(name)
    texts = {
        block.number: block.text
        for block in instructions_of(drafted).blocks
        if isinstance(block, NumberedStep)
    }
    for block in control_of(drafted).blocks:
        if isinstance(block, Table) and block.head[0] == "length":
            for what, _, empty, steps in block.rows:
                assert empty == ""
                last = texts[int(steps.split(", ")[-1])]
                if "straight" in what:
                    assert any(letter in last for letter in what.split() if letter[0].isupper())
                else:
                    assert what.partition(",")[0] in last


def test_seams_and_girths_stand_below() -> None:
    """Both sides of what is sewn together, as the pattern has them, in the reader's unit."""
    blocks = control_of(made("set-in-top", Unit.IN)).blocks
    titles = [block.text for block in blocks if isinstance(block, Heading)]
    assert titles[-2:] == ["What is sewn together", "Girths"]
    seams, girths = (block for block in blocks[-6:] if isinstance(block, Table))
    assert {row[0] for row in seams.rows} >= {"shoulder", "side", "sleeve"}
    assert {row[0] for row in girths.rows} >= {"bust", "waist", "hip"}
    assert all(" in" in cell for row in seams.rows for cell in row if any(map(str.isdigit, cell)))
