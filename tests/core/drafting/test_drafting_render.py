"""What is drawn on a piece: every line where it belongs."""

from __future__ import annotations

import pytest
from msgspec.structs import replace
from seams_made_up import rectangle

from tapewise_core.drafting.labels import LabelHead
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.drafting.render import BORDER, NOTCH_APART, NOTCH_LEAST, piece_drawing
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.paper.drawing import Dash, Drawing, Layer, Stroke, TextLine
from tapewise_core.units import Unit

HEADING = LabelHead("Top", "Ada Test", "2026-01-31", "0.1.0", Unit.CM)


def drawn(piece: Piece) -> Drawing:
    """Draw a piece alone."""
    return piece_drawing(piece, 1, 1, HEADING)


def strokes(piece: Piece, name: str) -> list[Stroke]:
    """Return the strokes of one name."""
    return [ink for ink in drawn(piece).inks if isinstance(ink, Stroke) and ink.name == name]


def words(piece: Piece) -> list[str]:
    """Return every word on a piece."""
    return [ink.text for ink in drawn(piece).inks if isinstance(ink, TextLine)]


def notched(edge: str, distance: float, marks: int = 1, allowance: float = 8.0) -> Piece:
    """Return a rectangle with one notch."""
    notch = Notch(edge, distance, "waist", marks)
    return rectangle("front", 300, 400, {edge: allowance}, notches=(notch,))


def test_cut_and_stitch_lines_are_on_layers_of_their_own() -> None:
    """Every edge is stitched along, and one closed line is cut."""
    piece = rectangle("front", 300, 400)
    (cut,) = strokes(piece, "cut")
    assert (cut.layer, cut.closed) == (Layer.CUT, True)
    ends = [(s.path.start, s.path.end) for s in strokes(piece, "stitch right")]
    edge = piece.edge("right").path
    assert ends == [(edge.start, edge.end)]


def test_the_paper_reaches_beyond_the_cut_line() -> None:
    """A border is left all round, so that nothing is clipped."""
    piece = rectangle("front", 300, 400)
    box, cut = drawn(piece).box, box_of(piece.cut)
    assert box.left <= cut.left - BORDER
    assert box.right >= cut.right + BORDER
    assert box.bottom >= cut.bottom + BORDER


def test_a_notch_runs_from_the_stitch_line_out_to_the_cut_line() -> None:
    """On the right edge, 50 mm down, as long as the allowance."""
    (mark,) = strokes(notched("right", 50.0), "notch waist")
    assert (mark.path.start.x, mark.path.start.y) == pytest.approx((300, 50))
    assert (mark.path.end.x, mark.path.end.y) == pytest.approx((308, 50))


def test_a_double_notch_is_two_strokes_apart() -> None:
    """Centred on the place that is marked."""
    marks = strokes(notched("right", 50.0, marks=2), "notch waist")
    heights = sorted(mark.path.start.y for mark in marks)
    assert heights == pytest.approx([50 - NOTCH_APART / 2, 50 + NOTCH_APART / 2])


def test_a_notch_without_an_allowance_points_into_the_piece() -> None:
    """Outside there would be no paper to draw it on; it has a least length."""
    (mark,) = strokes(notched("right", 50.0, allowance=0.0), "notch waist")
    assert mark.path.end.x == pytest.approx(300 - NOTCH_LEAST)


def test_a_double_notch_at_an_end_stays_on_its_edge() -> None:
    """Neither stroke runs off the corner."""
    marks = strokes(notched("right", 0.0, marks=2), "notch waist")
    assert min(mark.path.start.y for mark in marks) == pytest.approx(0)


def test_a_fold_is_chained_and_says_where_to_lay_it() -> None:
    """A bracket's arrows touch the edge, and a piece without a fold has none."""
    half = rectangle("back", 300, 400, {"left": 0.0}, on_fold=True)
    assert strokes(half, "stitch left")[0].dash is Dash.CHAIN
    assert strokes(half, "stitch right")[0].dash is Dash.DASHED
    assert "place on the fold" in words(half)
    assert min(s.path.end.x for s in strokes(half, "fold")) == pytest.approx(0)
    whole = rectangle("back", 300, 400)
    assert "place on the fold" not in words(whole)
    assert not strokes(whole, "fold")


def test_the_grain_has_an_arrow_at_both_ends() -> None:
    """The line itself and two barbs an end, named where there is room."""
    piece = rectangle("front", 300, 400, grain=(0.0, 100.0))
    line, *barbs = strokes(piece, "grain")
    assert (line.path.start, line.path.end) == piece.grain
    tips = [barb.path.end for barb in barbs]
    assert [tips.count(end) for end in piece.grain] == [2, 2]
    assert "grain" in words(piece)
    assert "grain" not in words(rectangle("front", 300, 400, grain=(0.0, 30.0)))


def test_a_level_runs_from_the_centre_to_the_side() -> None:
    """The waist line crosses at its own height, and a level off the piece is not drawn."""
    side = rectangle("front", 300, 400)
    edges = tuple(
        replace(edge, name="side") if edge.name == "right" else edge for edge in side.edges
    )
    piece = replace(side, edges=edges, levels={"waist": 150.0, "hip": 500.0})
    (line,) = [
        ink for ink in drawn(piece).inks if isinstance(ink, Stroke) and ink.layer is Layer.GUIDE
    ]
    assert (line.path.start.x, line.path.start.y) == pytest.approx((0, 150))
    assert (line.path.end.x, line.path.end.y) == pytest.approx((300, 150))
    assert "waist line" in words(piece)
    assert "hip line" not in words(piece)


def test_short_edges_and_folds_are_not_named() -> None:
    """A name would not fit on one, and the other says already that it is the fold."""
    half = rectangle("back", 300, 20, {"left": 0.0}, on_fold=True)
    assert "top" in words(half)
    assert "right" not in words(half)
    tall = rectangle("back", 300, 400, {"left": 0.0}, on_fold=True)
    assert "left" not in words(tall)


def test_no_words_stand_on_their_head() -> None:
    """Edges walked from right to left are named the way one reads."""
    angles = [
        ink.angle for ink in drawn(rectangle("a", 300, 400)).inks if isinstance(ink, TextLine)
    ]
    assert all(-90 <= angle < 90.001 for angle in angles)


def test_a_label_stands_in_the_room_kept_for_it() -> None:
    """A piece that names a place gets its label there."""
    piece = replace(rectangle("front", 300, 400), label=Box(40, 200, 240, 300))
    (first,) = [
        ink for ink in drawn(piece).inks if isinstance(ink, TextLine) and ink.text == "Front"
    ]
    assert 40 <= first.at.x <= 240
    assert 200 <= first.at.y <= 300
