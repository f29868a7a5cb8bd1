"""Every piece lies between the selvedges."""

from __future__ import annotations

import pytest
from hand_made import CLOTH, case, in_cm, in_inches, judged, oblong, only, shape
from msgspec.structs import replace

from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.point import Point
from tapewise_core.proofs.cloth import pieces_fit
from tapewise_core.proofs.proof import Proof, ProofId

NARROW = replace(CLOTH, width=1030.0)
"""A metre is left between the selvedges."""


def fitted(*pieces: Piece) -> Proof:
    """Return the proof of pieces that each have an allowance of 1 cm all round."""
    return only(pieces_fit(case(*pieces, cloth=NARROW)))


@pytest.mark.parametrize(("width", "holds"), [(980.0, True), (981.0, False)])
def test_a_piece_is_no_wider_than_what_is_left_between_the_selvedges(
    width: float, holds: bool
) -> None:
    """With its allowances; how long it is does not matter."""
    proof = fitted(oblong("back", width, 3000.0), oblong("sleeve", 300.0, 300.0))
    assert judged(proof) == (width / 10 + 2, 100.0, "cm", holds)
    assert (proof.id, proof.of) == (ProofId.CLOTH, "")


def test_of_two_pieces_as_wide_as_each_other_the_first_is_named() -> None:
    """What rounding alone makes wider is not."""
    says = in_cm(fitted(oblong("back", 480.0, 600.0), oblong("front", 480.0 + 1e-9, 600.0)))
    assert "the back," in says


def test_a_piece_on_the_fold_takes_twice_its_width() -> None:
    """It is opened out."""
    half = shape("front", ((0, 0), (500, 0), (500, 600), (0, 600)), folds=("left",))
    assert fitted(half).value == pytest.approx(102.0)
    assert not fitted(half).holds


def test_a_piece_lies_as_its_grain_says_unless_it_may_be_turned() -> None:
    """Across the paper the grain swaps both sizes; a band may lie either way."""
    band = oblong("neckband", 1500.0, 60.0)
    assert fitted(band).value == 152.0
    assert fitted(replace(band, grain=(Point(0, 30), Point(1500, 30)))).value == 8.0
    assert fitted(replace(band, turnable=True)).value == 8.0


def test_what_it_says() -> None:
    """How much is too little, and the cloth that would do, selvedges and all."""
    assert in_cm(fitted(oblong("back", 480.0, 600.0))) == (
        "The widest piece, the back, takes 50 cm of the 100 cm between the selvedges."
    )
    wide = fitted(oblong("back", 1100.0, 600.0))
    assert in_cm(wide) == (
        "The back takes 112 cm of the cloth's width and there are 100 cm between the selvedges, "
        "12 cm too little: take a cloth at least 115 cm wide."
    )
    assert "4 3/4 in too little" in in_inches(wide)
