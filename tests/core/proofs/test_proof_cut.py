"""A cut line without teeth, and pieces that lie behind their fold."""

from __future__ import annotations

import pytest
from hand_made import case, in_cm, judged, oblong, only, reason, shape
from msgspec.structs import replace

from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.point import Point
from tapewise_core.proofs.cut import behind_fold, no_teeth
from tapewise_core.proofs.proof import ProofId


def spiked(out: float, wide: float) -> Piece:
    """Return an oblong with a spike in its cut line above the upper edge [mm]."""
    piece = oblong("front", 200, 100)
    spike = Point(90, -10), Point(90 + wide / 2, -10 - out), Point(90 + wide, -10)
    first, *rest = piece.cut
    return replace(piece, cut_as=(first, *spike, *rest))


def test_a_plain_cut_line_has_no_tooth() -> None:
    """Corners are none."""
    proof = only(no_teeth(case(oblong("front", 200, 100))))
    assert judged(proof) == (0.0, 0.0, "1", True)
    assert (proof.id, proof.of) == (ProofId.TEETH, "front")
    assert in_cm(proof) == "The front's cut line runs on without a tooth."


@pytest.mark.parametrize(("out", "wide", "holds"), [(9.0, 8.0, True), (9.0, 6.0, False)])
def test_a_spike_is_a_tooth(out: float, wide: float, holds: bool) -> None:
    """Nine millimetres out and six wide turns back by 143 degrees, eight wide by 132."""
    proof = only(no_teeth(case(spiked(out, wide))))
    assert judged(proof) == (0.0 if holds else 1.0, 0.0, "1", holds)
    if not holds:
        assert in_cm(proof) == (
            "The front's cut line has a tooth beside the top; scissors can't follow it. Smooth it "
            "there, or take other measures."
        )


@pytest.mark.parametrize(("far", "holds"), [(0.0, True), (60.0, False)])
def test_a_sharp_point_of_the_piece_itself_is_no_tooth(far: float, holds: bool) -> None:
    """As where a V's facing comes to the fold; one that lies far from it is."""
    piece = shape("facing", ((0.0, 0.0), (200.0, 0.0), (0.0, 50.0)), ("top", "outer", "left"))
    spike = Point(140 - far, -10), Point(143 - far, -19), Point(146 - far, -10)
    cut = (*spike, *piece.cut) if far else piece.cut
    assert only(no_teeth(case(replace(piece, cut_as=cut)))).holds is holds


def folded(beyond: float, *, turned: bool = False) -> Piece:
    """Return a piece with its left edge on the fold whose cut line reaches beyond it [mm]."""
    fold, corners = "left", ((0.0, 0.0), (200.0, 0.0), (200.0, 160.0), (0.0, 160.0))
    if turned:
        fold = "right"
    piece = shape("back", corners, folds=(fold,))
    edge = 200 if turned else 0
    out = beyond if turned else -beyond
    cut = tuple(Point(p.x + out if abs(p.x - edge) < 1 else p.x, p.y) for p in piece.cut)
    return replace(piece, cut_as=cut)


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize(
    ("beyond", "over", "holds"),
    [(0.0, 0.0, True), (0.04, 0.004, True), (0.06, 0.006, False), (20.0, 2.0, False)],
)
def test_nothing_reaches_beyond_a_fold(
    beyond: float, over: float, holds: bool, turned: bool
) -> None:
    """Wherever the fold lies on the piece."""
    proof = only(behind_fold(case(folded(beyond, turned=turned))))
    assert judged(proof) == (over, 0.005, "cm", holds)
    assert (proof.id, proof.of) == (ProofId.BEHIND_FOLD, "back")


def test_a_stitch_line_that_crosses_the_fold_is_caught() -> None:
    """However good the cut line is."""
    corners = ((0.0, 0.0), (200.0, 0.0), (200.0, 160.0), (0.0, 160.0), (0.0, 90.0), (-5.0, 45.0))
    names = ("top", "right", "bottom", "left", "neck", "neck_2")
    piece = replace(shape("back", corners, names, folds=("left",)), cut_as=folded(0.0).cut)
    assert judged(only(behind_fold(case(piece)))) == (0.5, 0.005, "cm", False)


def test_what_it_says_of_a_fold() -> None:
    """How far beyond it, and what would do."""
    assert in_cm(only(behind_fold(case(folded(0.0))))) == "The back lies behind its fold."
    assert in_cm(only(behind_fold(case(folded(20.0))))) == (
        "The back reaches 2 cm beyond its fold, where there is no cloth: both halves would be cut "
        "into. Take a shallower neckline or a narrower allowance."
    )
    assert reason(behind_fold(case(oblong("back", 100, 60)))) == "No piece is cut on the fold."
