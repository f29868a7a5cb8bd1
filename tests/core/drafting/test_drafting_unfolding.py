"""Pieces opened out about their fold, or drawn without allowances."""

from __future__ import annotations

import pytest
from making import DAY, person, top
from shapely.geometry import Polygon

from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.unfolding import bare, loops, opens
from tapewise_core.errors import OptionError
from tapewise_core.garments.shelf import garments
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Layer, Stroke, TextLine
from tapewise_core.paper.projector import heavy
from tapewise_core.tasks.asked_paper import Shown
from tapewise_core.tasks.documents import drawings_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft

WHOLE = Shown(unfolded=True)


def cuts(drawing: Drawing) -> list[Polygon]:
    """Return what is inside each cut line, the largest first."""
    found = [
        Polygon([(p.x, p.y) for p in ink.path.flattened(0.1)])
        for ink in drawing.inks
        if isinstance(ink, Stroke) and ink.layer is Layer.CUT
    ]
    return sorted(found, key=lambda shape: -shape.area)


def texts(drawing: Drawing) -> str:
    """Return all that is read on a drawing."""
    return " ".join(ink.text for ink in drawing.inks if isinstance(ink, TextLine))


def made(garment: str) -> Drafted:
    """Return a draft of some garment."""
    return draft(person(), garment, {}, made=DAY)


@pytest.mark.parametrize("garment", [page.name for page in garments()])
def test_a_half_opened_out_is_twice_the_half(garment: str) -> None:
    """Area, notches and the label: nothing is placed on a fold any more."""
    drafted = made(garment)
    pairs = zip(
        drafted.pattern.pieces, drawings_of(drafted), drawings_of(drafted, WHOLE), strict=True
    )
    for piece, half, whole in pairs:
        assert opens(piece) is piece.on_fold
        shapes = cuts(whole)
        area = shapes[0].area - sum(shape.area for shape in shapes[1:])
        times = 2 if piece.on_fold else 1
        assert area == pytest.approx(times * Polygon([(p.x, p.y) for p in piece.cut]).area)
        assert all(shape.is_valid for shape in shapes)
        assert _notches(whole) == times * _notches(half)
        assert "on the fold" not in texts(whole)
        assert ("on the fold" in texts(half)) is piece.on_fold


def _notches(drawing: Drawing) -> int:
    return sum(isinstance(i, Stroke) and i.name.startswith("notch") for i in drawing.inks)


def test_a_round_piece_folded_in_two_is_cut_along_two_lines() -> None:
    """A full circle has a hem and a waist, neither of them with a step at the fold."""
    outer, inner = cuts(drawings_of(made("circle-skirt"), WHOLE)[0])
    assert outer.contains(inner)
    assert outer.area > 10 * inner.area


def test_loops_leave_the_fold_out() -> None:
    """A rectangle on the fold becomes one of twice the width, without a line in the middle."""
    cut = [Point(0, 0), Point(30, 0), Point(30, 80), Point(0, 80)]
    (line,) = loops(cut, (Point(0, 80), Point(0, 0)))
    assert {(p.x, p.y) for p in line} == {(0, 0), (30, 0), (30, 80), (0, 80), (-30, 80), (-30, 0)}
    assert loops([Point(5, 0), Point(9, 0), Point(9, 9)], (Point(0, 1), Point(0, 0))) == []


def test_without_allowances_the_cut_line_is_the_stitch_line() -> None:
    """And the label says so."""
    drafted = top()
    for piece in drafted.pattern.pieces:
        stripped: Piece = bare(piece)
        assert list(stripped.cut) == piece.stitch_line()
        assert not any(edge.allowance for edge in stripped.edges)
    for drawing in drawings_of(drafted, Shown(allowances=False)):
        assert "without allowances" in texts(drawing)
        assert "allowances included" not in texts(drawing)


def test_only_the_pieces_asked_for_are_drawn() -> None:
    """In the order of the draft; one that is not there is refused with those that are."""
    drafted = top()
    assert len(drawings_of(drafted, Shown(pieces=("neckband", "back")))) == 2
    (front,) = drawings_of(drafted, Shown(pieces=("front",)))
    assert "piece 2 of 3" in texts(front)
    assert drawings_of(drafted, Shown(pieces=("Front",))) == (front,), "as it is printed"
    with pytest.raises(OptionError, match=r"no piece “hood” .* back, front, neckband"):
        drawings_of(drafted, Shown(pieces=("hood",)))


def test_a_projected_piece_without_allowances_says_so() -> None:
    """Of a canvas larger than the table its head is not seen; the piece itself is."""
    (front,) = drawings_of(top(), Shown(unfolded=True, allowances=False, pieces=("front",)))
    words = [ink.text for ink in heavy(front) if isinstance(ink, TextLine)]
    assert words[0] == "Front"
    assert "without allowances" in words
    (front,) = drawings_of(top(), Shown(unfolded=True, pieces=("front",)))
    assert "without" not in " ".join(i.text for i in heavy(front) if isinstance(i, TextLine))
