"""Outlines that close without crossing, and allowances as wide as asked."""

from __future__ import annotations

import pytest
from hand_made import SIDES, case, in_cm, in_inches, judged, oblong, only, shape
from msgspec.structs import replace

from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.proofs.proof import ProofId
from tapewise_core.proofs.shape import allowances, outlines

BOW = ((0.0, 0.0), (100.0, 0.0), (0.0, 100.0), (100.0, 100.0))
"""Corners in an order whose outline crosses itself."""


def test_an_outline_that_closes_holds() -> None:
    """Stitch line and cut line of a plain oblong."""
    proof = only(outlines(case(oblong("back_facing", 100, 60))))
    assert judged(proof) == (0.0, 0.0, "1", True)
    assert (proof.id, proof.of, proof.name) == (
        ProofId.OUTLINE,
        "back facing",
        "back facing outline",
    )
    assert in_cm(proof) == "The back facing's outline is closed and does not cross itself."


def test_a_stitch_line_that_crosses_itself_is_caught() -> None:
    """A bow, however good its cut line is."""
    bow = replace(shape("back", BOW), cut_as=oblong("back", 100, 100).cut)
    proof = only(outlines(case(bow)))
    assert judged(proof) == (1.0, 0.0, "1", False)
    assert in_cm(proof) == (
        "The back's outline crosses itself; its measures can't be drawn like this."
    )


def test_a_cut_line_that_crosses_itself_is_caught() -> None:
    """However good the stitch line is; where both cross, both are counted."""
    cut = tuple(Point(*corner) for corner in BOW)
    proof = only(outlines(case(replace(oblong("back", 100, 100), cut_as=cut))))
    assert judged(proof) == (1.0, 0.0, "1", False)
    assert only(outlines(case(replace(shape("back", BOW), cut_as=cut)))).value == 2.0


@pytest.mark.parametrize(("gap", "holds"), [(0.0095, True), (0.011, False)])
@pytest.mark.parametrize("index", range(4))
def test_an_outline_with_a_gap_is_caught(gap: float, holds: bool, index: int) -> None:
    """Wherever it is open, also between the last edge and the first."""
    proof = only(outlines(case(_opened(oblong("back", 100, 60), index, gap))))
    assert judged(proof) == (0.0 if holds else 1.0, 0.0, "1", holds)


def test_what_it_says_of_a_gap() -> None:
    """Between which edges, and how wide."""
    proof = only(outlines(case(_opened(oblong("back", 100, 60), 1, 30.0))))
    assert in_cm(proof) == ("The back's outline is open: its right and its bottom are 3 cm apart.")
    assert in_inches(proof).endswith("are 1 1/8 in apart.")


def _opened(piece: Piece, index: int, gap: float) -> Piece:
    """The piece with one edge ending short of the next [mm]."""
    edge = piece.edges[index]
    a, b = edge.path.start, edge.path.end
    short = a + (b - a).unit() * ((b - a).length() - gap)
    edges = list(piece.edges)
    edges[index] = replace(edge, path=ruled(a, short))
    return replace(piece, edges=tuple(edges))


def widened(by: float, edge: str = "bottom", allowance: float = 10.0) -> Piece:
    """Return an oblong whose cut line lies so much further out along one edge [mm]."""
    piece = shape("front_facing", ((0, 0), (200, 0), (200, 160), (0, 160)), allowance=allowance)
    box = [-allowance, -allowance, 200 + allowance, 160 + allowance]
    at = {"left": 0, "top": 1, "right": 2, "bottom": 3}[edge]
    box[at] += by if at > 1 else -by
    left, top, right, bottom = box
    cut = Point(left, top), Point(right, top), Point(right, bottom), Point(left, bottom)
    return replace(piece, cut_as=cut)


@pytest.mark.parametrize("edge", SIDES)
@pytest.mark.parametrize("allowance", [10.0, 0.0])
@pytest.mark.parametrize(
    ("by", "off", "holds"),
    [
        (0.0, 0.0, True),
        (0.04, 0.004, True),
        (-0.04, 0.004, True),
        (0.06, 0.006, False),
        (-0.06, 0.006, False),
    ],
)
def test_an_allowance_is_true_to_a_twentieth_of_a_millimetre(
    edge: str, allowance: float, by: float, off: float, holds: bool
) -> None:
    """Too wide or too narrow, at any edge, also where none was asked for."""
    proof = only(allowances(case(widened(by, edge, allowance))))
    assert judged(proof) == (off, 0.005, "cm", holds)
    assert (proof.id, proof.of) == (ProofId.ALLOWANCES, "front facing")


def test_an_allowance_nine_millimetres_off_is_caught() -> None:
    """And told with its edge."""
    proof = only(allowances(case(widened(9.0))))
    assert judged(proof) == (0.9, 0.005, "cm", False)
    assert in_cm(proof) == "The front facing's allowance at the bottom is off by 0.9 cm."
    assert in_inches(proof) == "The front facing's allowance at the bottom is off by 3/8 in."


def test_a_cut_line_inside_the_stitch_line_is_caught() -> None:
    """The whole allowance is missing."""
    assert judged(only(allowances(case(widened(-30.0)))))[0] == 1.0
    assert judged(only(allowances(case(widened(-30.0, allowance=0.0)))))[0] == 3.0


def test_a_cut_line_beyond_the_fold_is_caught() -> None:
    """Nothing is added along a fold."""
    piece = shape("back", ((0, 0), (200, 0), (200, 160), (0, 160)), folds=("left",))
    assert only(allowances(case(piece))).holds
    beyond = tuple(Point(p.x - 8 if p.x < 1 else p.x, p.y) for p in piece.cut)
    proof = only(allowances(case(replace(piece, cut_as=beyond))))
    assert judged(proof) == (0.8, 0.005, "cm", False)


def test_what_it_says_where_all_are_true() -> None:
    """One sentence a piece."""
    assert in_cm(only(allowances(case(widened(0.0))))) == (
        "Every allowance of the front facing is as wide as asked for."
    )


def test_every_piece_is_judged() -> None:
    """In the pattern's order."""
    good, bad = oblong("back", 100, 100), replace(shape("front", BOW), name="front")
    answer = outlines(case(good, bad))
    assert isinstance(answer, tuple)
    assert [(proof.of, proof.holds) for proof in answer] == [("back", True), ("front", False)]
    both = allowances(case(good, widened(5.0)))
    assert isinstance(both, tuple)
    assert [proof.holds for proof in both] == [True, False]
