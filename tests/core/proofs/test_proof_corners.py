"""Lines across seams, and lines that leave the fold."""

from __future__ import annotations

import math

import pytest
from hand_made import case, in_cm, judged, oblong, only, reason, shape
from making import DAY, person
from msgspec.structs import replace

from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import Join
from tapewise_core.proofs.case import Case
from tapewise_core.proofs.corners import corner, smooth_across, square_to_fold
from tapewise_core.proofs.proof import ProofId
from tapewise_core.tasks.drafting import draft

HEM = Join("hem across the side seam", ("back", "bottom", "right"), ("front", "bottom", "right"))


def slanted(name: str, more: float) -> Piece:
    """Return a piece whose lower right corner is so much over a right angle [degrees]."""
    foot = 100 - 100 * math.tan(math.radians(more))
    return shape(name, ((0, 0), (100, 0), (foot, 100), (0, 100)))


def joined_at(first: float, second: float) -> Case:
    """Return two pieces joined at their lower right corners, each over a right angle."""
    return case(slanted("back", first), slanted("front", second), joins=(HEM,))


def test_a_corner_is_measured_inside_whichever_edge_is_named_first() -> None:
    """The angle between two neighbours, at either end of the line."""
    piece = slanted("back", 20)
    assert corner(piece, "bottom", "right") == pytest.approx(110)
    assert corner(piece, "right", "bottom") == pytest.approx(110)
    assert corner(piece, "top", "right") == pytest.approx(70)
    assert corner(piece, "right", "top") == pytest.approx(70)
    assert corner(piece, "left", "bottom") == pytest.approx(90)


@pytest.mark.parametrize(
    ("first", "second", "off", "holds"),
    [
        (0.0, 0.0, 0.0, True),
        (20.0, -20.0, 0.0, True),
        (1.234, 0.0, 1.23, True),
        (4.0, 5.98, 9.98, True),
        (-4.0, -5.98, 9.98, True),
        (5.0, 5.02, 10.02, False),
        (-5.0, -5.02, 10.02, False),
    ],
)
def test_two_corners_make_a_straight_angle(
    first: float, second: float, off: float, holds: bool
) -> None:
    """Ten degrees may be missing or too much, together, no more."""
    proof = only(smooth_across(joined_at(first, second)))
    assert judged(proof) == (off, 10.0, "degrees", holds)
    assert (proof.id, proof.of, proof.offer) == (ProofId.LINE, "hem across the side seam", None)


@pytest.mark.parametrize(("more", "holds"), [(4.9, True), (-4.9, True), (5.1, False)])
def test_a_join_may_ask_for_less(more: float, holds: bool) -> None:
    """As a sleeve's hem does under the arm."""
    join = replace(HEM, within=5.0)
    proof = only(smooth_across(case(slanted("back", more), slanted("front", 0), joins=(join,))))
    assert judged(proof) == (abs(more), 5.0, "degrees", holds)


def test_what_it_says_of_a_line_across_a_seam() -> None:
    """Smooth, a peak or a dip, with what is too much."""
    assert in_cm(only(smooth_across(joined_at(3, -2)))) == (
        "The hem across the side seam runs on smoothly: 93° and 88°."
    )
    assert in_cm(only(smooth_across(joined_at(8, 8)))) == (
        "The hem across the side seam makes a peak of 16°, 6° too much; redraw its ends square "
        "to the seam."
    )
    assert "makes a dip of 13°, 3° too much" in in_cm(only(smooth_across(joined_at(-8, -5))))


def test_without_such_a_line_it_is_silent() -> None:
    """No join was drawn."""
    assert reason(smooth_across(case(oblong("strip", 10, 10)))) == (
        "This garment has no line that runs on across a seam."
    )


def folded(
    name: str,
    top: float,
    foot: float = 0.0,
    names: tuple[str, ...] = ("neckline", "side", "hem", "centre"),
    folds: tuple[str, ...] = ("centre",),
) -> Piece:
    """Return a piece with its left edge on the fold, its lines slanting from there [degrees]."""
    rise, fall = (100 * math.tan(math.radians(angle)) for angle in (top, foot))
    return shape(name, ((0, 0), (100, rise), (100, 200 + fall), (0, 200)), names, folds=folds)


@pytest.mark.parametrize(("off", "holds"), [(0.0, True), (1.99, True), (2.01, False)])
@pytest.mark.parametrize("way", [1, -1])
def test_lines_leave_the_fold_square(off: float, holds: bool, way: int) -> None:
    """Up to two degrees either way, at both ends of the fold."""
    answer = square_to_fold(case(folded("back", way * off, way * off)))
    assert isinstance(answer, tuple)
    assert {proof.of for proof in answer} == {"back neckline", "back hem"}
    for proof in answer:
        assert judged(proof) == (pytest.approx(off), 2.0, "degrees", holds)
        assert proof.id is ProofId.FOLD


def test_what_it_says_of_the_fold() -> None:
    """Which line of which piece, how far off, and what is allowed."""
    answer = square_to_fold(case(folded("back_facing", 2.14)))
    assert isinstance(answer, tuple)
    said = {proof.of: in_cm(proof) for proof in answer}
    assert said["back facing hem"] == "The back facing's hem is square to the fold."
    assert said["back facing neckline"] == (
        "The back facing's neckline is not square to the fold: 2.1° off, 2° allowed."
    )


def test_of_two_folds_the_worse_corner_counts() -> None:
    """A whole circle lies on the fold with both its straight edges; each line is named once."""
    names, folds = ("waist", "centre_2", "hem", "centre"), ("centre", "centre_2")
    answer = square_to_fold(case(folded("skirt", 3.0, 0.0, names, folds)))
    assert isinstance(answer, tuple)
    assert {proof.of: proof.value for proof in answer} == {"skirt waist": 3.0, "skirt hem": 0.0}
    later = shape("skirt", ((0, 0), (100, 0), (110, 200), (0, 200)), names, folds=folds)
    answer = square_to_fold(case(later))
    assert isinstance(answer, tuple)
    slant = round(math.degrees(math.atan(0.05)), 2)
    assert [proof.value for proof in answer] == [slant, slant]


@pytest.mark.parametrize("slants", [True, False])
def test_the_point_of_a_v_is_not_meant_to_be_square(slants: bool) -> None:
    """An edge that slants on purpose is let off, and no other of its piece."""
    made = folded("front", 30.0, 30.0)
    edges = tuple(replace(e, slants=slants and e.name == "neckline") for e in made.edges)
    answer = square_to_fold(case(replace(made, edges=edges)))
    assert isinstance(answer, tuple)
    assert ("front neckline" in {proof.of for proof in answer}) is not slants
    assert "front hem" in {proof.of for proof in answer}


@pytest.mark.parametrize(
    ("neckline", "slanted"), [("v", {"front", "front_facing"}), ("scoop", set())]
)
@pytest.mark.parametrize("garment", ["jersey-top", "set-in-top"])
def test_only_a_v_slants_and_only_in_front(garment: str, neckline: str, slanted: set[str]) -> None:
    """The front's neckline, and both long edges of its facing."""
    asked = {"neckline": neckline, "neck-finish": "facing" if garment == "jersey-top" else "turned"}
    pieces = draft(person(), garment, asked, made=DAY).pattern.pieces
    found = {piece.name for piece in pieces for edge in piece.edges if edge.slants}
    assert found == {name for name in slanted if name in {piece.name for piece in pieces}}


def test_without_a_fold_it_is_silent() -> None:
    """A body drafted on both sides is not cut on the fold."""
    assert reason(square_to_fold(case(oblong("back", 10, 10)))) == "No piece is cut on the fold."
