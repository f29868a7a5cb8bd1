"""A picture for each step, and the last act: allowances and notches."""

from __future__ import annotations

import pytest
from pictures_seen import covered, inked, texts
from seams_made_up import rectangle

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.guide_steps import Beside, Off
from tapewise_core.drafting.pictures import step_pictures as all_pictures
from tapewise_core.drafting.picturing.sheet import CLEAR
from tapewise_core.drafting.picturing.signs import HEAD, HEAVY, THIN, WING
from tapewise_core.drafting.picturing.step_picture import HIGH, LOW, WIDE
from tapewise_core.drafting.piece import Edge, Notch, make_piece
from tapewise_core.errors import DraftError
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.segments import Segment
from tapewise_core.paper.drawing import Dash, Drawing, Layer, Stroke, TextLine
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit, cm, mm


def step_pictures(draft: Draft, unit: Unit) -> list[Drawing]:
    """Return the first picture of each step."""
    return [first for first, *_ in all_pictures(draft, unit)]


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


def test_every_step_has_a_picture_that_finds_room_on_a_page() -> None:
    """As wide as a column each, none higher than a quarter of a page."""
    pictures = list(step_pictures(strip(), Unit.CM))
    assert len(pictures) == len(strip().steps)
    assert {p.box.width for p in pictures} == {WIDE}
    assert all(LOW <= p.box.height <= HIGH for p in pictures)


def test_a_picture_shows_where_the_step_happens() -> None:
    """A short length at one end of a long strip is drawn long enough to see, and where it is."""
    done = strip().across("b", "e", cm(1), "a little beside")
    *_, before, last = step_pictures(done, Unit.CM)
    assert "b" in texts(last)
    assert "d" not in texts(last)
    arrow = max(
        (ink for ink in last.inks if isinstance(ink, Stroke) and ink.layer is Layer.MARKS),
        key=lambda ink: ink.path.length() if ink.width == THIN else 0.0,
    )
    assert arrow.path.length() > 4
    assert (_frames(before), _frames(last)) == (0, 1)


def _frames(drawing: Drawing) -> int:
    """How many frames say which part of the whole is shown."""
    marks = [i for i in drawing.inks if isinstance(i, Stroke) and i.layer is Layer.MARKS]
    return sum(1 for ink in marks if len(ink.path.segments) == 4)


@pytest.mark.parametrize("unit", list(Unit))
def test_a_length_stands_along_its_line_with_arrows(unit: Unit) -> None:
    """In the reader's unit, turned as its line is, with a head at both ends."""
    across, down = list(step_pictures(strip(), unit))[1:3]
    for picture, long, angle in ((across, 600, 0), (down, 400, -90)):
        words = [ink for ink in picture.inks if isinstance(ink, TextLine)]
        (told,) = [ink for ink in words if ink.text == unit.spell(long)]
        assert told.angle == angle
        ((_, low, _, shaft, high, _, _),) = _arrows(picture)
        for tip, wing, far in (
            (low.start, low.end, shaft.end),
            (high.start, high.end, shaft.start),
        ):
            assert (wing - tip).length() == pytest.approx(HEAD)
            assert (wing - tip).angle_to(far - tip) == pytest.approx(WING)


def test_words_stand_close_to_what_they_name() -> None:
    """A letter at its point and a length along a slanting line, neither nearer than a line's own
    room, and neither with a line leading to it."""
    *_, last = step_pictures(strip().along("b", "d", "f", cm(30), "on the slant"), Unit.CM)
    words = {ink.text: covered(ink) for ink in last.inks if isinstance(ink, TextLine)}
    marks = [ink for ink in last.inks if isinstance(ink, Stroke) and ink.layer is Layer.MARKS]
    (line,) = (inked(ink) for ink in marks if ink.width == THIN)
    dot = inked(max(marks, key=lambda ink: ink.width))
    assert CLEAR < words["30 cm"].distance(line) < 1.5
    assert CLEAR < words["f"].distance(dot) < 1
    assert not [ink for ink in last.inks if isinstance(ink, Stroke) and ink.width == 0.15
                and ink.layer is Layer.GUIDE and ink.dash is Dash.SOLID]  # fmt: skip


def _arrows(drawing: Drawing) -> list[tuple[Segment, ...]]:
    """The lines of each arrow: one wing, there and back the other, then the shaft, and as many
    again."""
    thin = (ink for ink in drawing.inks if isinstance(ink, Stroke) and ink.width == THIN)
    return [ink.path.segments for ink in thin if len(ink.path.segments) == 7]


def test_a_length_too_small_to_see_is_shown_enlarged() -> None:
    """In a frame of its own, long enough to see on which side of the line the point lies."""
    line = Draft("x").start("N", "here").down("N", "B", cm(30), "low")
    (near, far) = (
        step_pictures(line.then(Beside("N", "B", "side", (_off(out),))), Unit.CM) for out in (40, 2)
    )
    assert (_framed(near[-1]), _framed(far[-1])) == (0, 1)
    assert texts(far[-1])["0.2 cm"] == 1
    assert texts(far[-1])["C1"] == 2
    arrows = [shaft.length() for _, _, _, shaft, *_ in _arrows(far[-1])]
    assert 4 < min(arrows, key=lambda length: abs(length - 5)) < 7


def _off(out: float) -> Off:
    return Off("C1", cm(12), mm(out), "to the right")


def _framed(drawing: Drawing) -> int:
    """How many frames stand round details."""
    guides = [i for i in drawing.inks if isinstance(i, Stroke) and i.layer is Layer.GUIDE]
    return sum(1 for ink in guides if len(ink.path.segments) == 4 and ink.width == 0.3)


def test_lengths_on_one_line_are_drawn_beside_each_other() -> None:
    """The second starts where the first does and would lie on it."""
    places = (Off("c", cm(10), cm(2), "to the right"), Off("e", cm(20), cm(3), "to the right"))
    *_, last = step_pictures(
        Draft("x")
        .start("a", "here")
        .down("a", "b", cm(30), "low")
        .then(Beside("a", "b", "side", places)),
        Unit.CM,
    )
    told = {"10 cm", "20 cm", "2 cm", "3 cm"}
    assert told <= set(texts(last))
    shafts = [shaft for _, _, _, shaft, *_ in _arrows(last)]
    upright = {round(one.start.x, 1) for one in shafts if one.length() > 15}
    assert len(upright) == 2


def test_what_a_step_adds_is_heavier() -> None:
    """The new letter is bold and the one before it no longer."""
    second = list(step_pictures(strip(), Unit.CM))[1]
    bold = {ink.text: ink.bold for ink in second.inks if isinstance(ink, TextLine)}
    assert bold == {"a": False, "b": True, "60 cm": False}
    *_, before, last = step_pictures(strip(), Unit.CM)
    assert not [i for i in before.inks if isinstance(i, Stroke) and i.layer is Layer.STITCH]
    (line,) = [i for i in last.inks if isinstance(i, Stroke) and i.layer is Layer.STITCH]
    assert line.width > 0.5


def test_notches_are_drawn_in_the_step_that_marks_them() -> None:
    """One stroke or two across the line, heavy, with the name of what they meet."""
    marks = (Notch("right", 50.0, "waist", 2), Notch("top", 100.0, "halfway"))
    done = with_allowances(strip(), rectangle("strip", 600, 400, notches=marks))
    *_, before, step, _ = step_pictures(done, Unit.CM)
    assert {"waist", "halfway"} <= set(texts(step))

    def heavy(drawing: Drawing) -> int:
        return sum(1 for ink in drawing.inks if isinstance(ink, Stroke) and ink.width == HEAVY)

    assert (heavy(before), heavy(step)) == (0, 3)


def test_the_last_picture_of_a_piece_has_its_sizes() -> None:
    """Height and width, and each edge's own length."""
    *_, last = step_pictures(with_allowances(strip(), rectangle("strip", 610, 400)), Unit.CM)
    assert texts(last) == {"40 cm": 3, "61 cm": 3}


def test_how_a_hem_s_corner_is_mirrored_is_drawn() -> None:
    """The fold line, and as much below it as above."""
    a, b, c, d = Point(0, 0), Point(200, 0), Point(220, 100), Point(0, 100)
    edges = (
        Edge("top", ruled(a, b), 8),
        Edge("side", ruled(b, c), 10),
        Edge("hem", ruled(c, d), 25, turned=True),
        Edge("centre", ruled(d, a), 0, fold=True),
    )
    piece = make_piece("strip", edges, {}, (a, d), on_fold=True)
    *_, (_, last) = all_pictures(with_allowances(strip(), piece), Unit.CM)
    assert texts(last)["2 cm"] == 2
    assert "fold line" in texts(last)
    assert "as far below the fold line as above it" in texts(last)


def test_letters_at_one_place_are_one_word() -> None:
    """They would lie on top of each other."""
    draft = Draft("x").start("a", "here").across("a", "b", cm(10), "there")
    twice = draft.inward("b", "c", cm(10), "back again")
    last = list(step_pictures(twice, Unit.CM))[-1]
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
    """From which letter along which edge, and how many strokes."""
    marks = (Notch("right", 50.0, "waist", 2), Notch("top", 0.0, "centre front"))
    done = with_allowances(strip(), rectangle("back", 600, 400, notches=marks))
    said = Reader(Unit.CM).spell(done.steps[-2].tell())
    assert "waist, two strokes across the right, 5 cm from b" in said
    assert "centre front, one stroke across the top, at a" in said


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
