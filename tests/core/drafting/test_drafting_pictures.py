"""A picture for each step, and the last act: allowances and notches."""

from __future__ import annotations

from itertools import combinations

import pytest
from making import DAY, person
from seams_made_up import rectangle

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.pictures import EDGE, HIGH, WIDE, step_pictures
from tapewise_core.drafting.piece import Notch
from tapewise_core.errors import DraftError
from tapewise_core.garments.shelf import garments
from tapewise_core.geometry.outline import box_of
from tapewise_core.paper.drawing import Layer, Stroke, TextLine
from tapewise_core.tasks.drafting import draft
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit, cm


def strip() -> Draft:
    """Return a strip of 60 by 40 cm as drawn by hand."""
    return (
        Draft("Strip")
        .start("a", "the corner")
        .across("a", "b", cm(60), "its length")
        .down("a", "d", cm(40), "its height")
        .down("b", "c", cm(40), "the other end")
        .rule("strip", "a", "b", "c", "d", "a")
    )


def test_every_step_has_a_picture_of_one_size() -> None:
    """None larger than its room, and all at one scale, so that they do not jump."""
    pictures = list(step_pictures(strip()))
    assert len(pictures) == len(strip().steps)
    assert len({(p.box.width, p.box.height) for p in pictures}) == 1
    scale = min(WIDE / 600, HIGH / 400)
    assert pictures[0].box.width == pytest.approx(600 * scale + 2 * EDGE)
    assert pictures[0].box.height == pytest.approx(400 * scale + 2 * EDGE)


def test_a_small_draft_is_not_blown_up() -> None:
    """Reduced, never enlarged."""
    small = Draft("Small").start("a", "the corner").across("a", "b", cm(3), "its length")
    assert next(step_pictures(small)).box.width == pytest.approx(30 + 2 * EDGE)


def test_what_a_step_adds_is_heavier() -> None:
    """The new letter is bold and the one before it no longer."""
    second = list(step_pictures(strip()))[1]
    bold = {ink.text: ink.bold for ink in second.inks if isinstance(ink, TextLine)}
    assert bold == {"a": False, "b": True}
    *_, before, last = step_pictures(strip())
    assert not [i for i in before.inks if isinstance(i, Stroke) and i.layer is Layer.STITCH]
    (line,) = [i for i in last.inks if isinstance(i, Stroke) and i.layer is Layer.STITCH]
    assert line.width > 0.5


def test_letters_at_one_place_are_one_word() -> None:
    """They would lie on top of each other."""
    draft = Draft("x").start("a", "here").across("a", "b", cm(10), "there")
    twice = draft.inward("b", "c", cm(10), "back again")
    last = list(step_pictures(twice))[-1]
    assert "a, c" in {ink.text for ink in last.inks if isinstance(ink, TextLine)}


def test_allowances_come_last_and_fold_and_mirror_are_left_out() -> None:
    """Each edge once with its allowance; the fold gets none, the second of a pair is the first."""
    piece = rectangle("back", 300, 400, {"left": 0.0, "bottom": 25.0}, on_fold=True)
    done = with_allowances(strip(), piece)
    said = Reader(Unit.CM).spell(done.steps[-1].tell())
    assert "2.5 cm" in said
    assert "bottom" in said
    assert "left" not in said
    assert len(done.steps) == len(strip().steps) + 1


def test_notches_are_told_before_the_allowances() -> None:
    """Where along which edge, and how many strokes."""
    marks = (Notch("right", 50.0, "waist", 2), Notch("top", 0.0, "centre front"))
    done = with_allowances(strip(), rectangle("back", 300, 400, notches=marks))
    said = Reader(Unit.CM).spell(done.steps[-2].tell())
    assert "waist, two strokes, on the right 5 cm from its start" in said
    assert "centre front, one stroke, on the top at its start" in said


def test_a_letter_is_used_once() -> None:
    """The paper refuses a second point or line of a name, and names what there is."""
    with pytest.raises(DraftError, match="Point a is already on the paper"):
        strip().across("b", "a", cm(1), "again")
    with pytest.raises(DraftError, match="strip is already on the paper"):
        strip().rule("strip", "a", "b")
    with pytest.raises(DraftError, match="no point x on the paper yet; so far: a, b, d, c"):
        strip()["x"]
    with pytest.raises(DraftError, match="so far: none"):
        DraftingPaper().line("hem")


def test_a_length_of_nothing_is_no_step() -> None:
    """A distance that comes to nothing or less is refused with what it would be."""
    with pytest.raises(DraftError, match="a–b, its length, would be 0 cm"):
        Draft("x").start("a", "here").across("a", "b", cm(0), "its length")


@pytest.mark.parametrize("garment", [page.name for page in garments()])
def test_letters_can_be_read_and_none_lies_over_another(garment: str) -> None:
    """At least seven points of type where the picture stands at its own size."""
    for drawn in draft(person(), garment, {}, made=DAY).pattern.drafts:
        for picture in step_pictures(drawn):
            words = [ink for ink in picture.inks if isinstance(ink, TextLine)]
            assert all(ink.size >= 7 * 25.4 / 72 for ink in words)
            boxes = [box_of(ink.corners()).grown(-0.3) for ink in words]
            for one, other in combinations(boxes, 2):
                assert (
                    one.right <= other.left
                    or other.right <= one.left
                    or one.bottom <= other.top
                    or other.bottom <= one.top
                ), picture.title
