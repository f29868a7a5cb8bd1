"""The last steps of a piece as they are told: notches, allowances, corners, halves joined."""

from __future__ import annotations

from functools import cache

import pytest
from making import MIDDLE, person
from msgspec.structs import replace
from read_aloud import spelt

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.join_step import JoinHalves
from tapewise_core.drafting.notch_step import Notches
from tapewise_core.drafting.outline_step import Outline
from tapewise_core.drafting.piece import Notch
from tapewise_core.garments.shelf import garments
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft

NAMES = [page.name for page in garments()]


@cache
def made(name: str, **asked: str) -> Drafted:
    """A garment for the middle woman."""
    more = {"waist_to_knee": 58.0, "across_back": 36.0, "high_bust": 88.0}
    options = {key.replace("_", "-"): value for key, value in asked.items()}
    return draft(person({**MIDDLE, **more}), name, options)


def told(drawn: Draft, kind: type) -> list[str]:
    """The sentences of one kind of step."""
    return [spelt(step) for step in drawn.steps if isinstance(step, kind)]


@pytest.mark.parametrize("name", NAMES)
def test_notches_and_allowances_are_told_once_a_piece(name: str) -> None:
    """Whatever is marked on a piece later takes the place of what was told before."""
    for drawn in made(name).pattern.drafts:
        assert len(told(drawn, Notches)) <= 1, drawn.title
        assert len(told(drawn, Outline)) == 1, drawn.title


@pytest.mark.parametrize("name", NAMES)
def test_every_notch_of_a_piece_is_told(name: str) -> None:
    """Also those that a skirt or a pocket adds to a bodice."""
    pattern = made(name, **({"pockets": "yes"} if name == "flared-dress" else {})).pattern
    for drawn in pattern.drafts:
        for piece in pattern.pieces:
            if piece.name == drawn.title.lower().replace(" ", "_"):
                words = " ".join(told(drawn, Notches))
                assert all(notch.pair in words for notch in piece.notches), piece.name


def test_a_bodice_s_waist_is_marked() -> None:
    """Where the skirt's seam and the centre front come."""
    back, front, *_ = made("skirted-dress").pattern.drafts
    assert "side at the waist, two strokes across the waist" in told(back, Notches)[0]
    assert "centre front, one stroke across the waist" in told(front, Notches)[0]


def test_mirrored_corners_are_told_in_three_sentences() -> None:
    """Fold, cut, open; and nothing where there is no corner to mirror."""
    back, *_, band = made("jersey-top").pattern.drafts
    words = told(back, Outline)[0]
    _, _, how = words.partition("Mirror the corners of the hem first")
    assert [part.split()[0] for part in how.split(": ")[1].split(". ")] == ["fold", "Cut", "Open"]
    assert "Mirror" not in told(band, Outline)[0]


@pytest.mark.parametrize("name", ["jersey-top", "set-in-top"])
def test_halves_that_differ_become_one_piece(name: str) -> None:
    """Joined at the centre, then marked and cut as a whole, each side's marks told apart."""
    drafts = made(name, lower_shoulder="left").pattern.drafts
    titles = [drawn.title for drawn in drafts[:6]]
    assert titles[2] == "Back"
    assert titles[5] == "Front"
    joined = drafts[2]
    assert isinstance(joined.steps[0], JoinHalves)
    words = told(joined, Notches)[0]
    assert "on the right of the paper" in words
    assert "on the left of the paper" in words
    assert "upper end" in words
    assert "lower end" not in words


def test_a_finished_draft_is_finished_anew() -> None:
    """Its steps before stay as they are."""
    pattern = made("jersey-top").pattern
    drawn, piece = pattern.drafts[0], pattern.pieces[0]
    again = with_allowances(drawn, piece)
    assert [spelt(step) for step in again.steps] == [spelt(step) for step in drawn.steps]
    marked = replace(piece, notches=(*piece.notches, Notch("hem", 10.0, "something")))
    assert "something" in told(with_allowances(drawn, marked), Notches)[0]
