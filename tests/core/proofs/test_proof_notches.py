"""Notches and their partners along a walked seam."""

from __future__ import annotations

import pytest
from hand_made import case, in_cm, in_inches, judged, only, sewn, strip
from msgspec.structs import replace

from tapewise_core.drafting.piece import Notch
from tapewise_core.drafting.seam import EdgeRun, Fullness, Seam, SeamKind
from tapewise_core.proofs.case import Case
from tapewise_core.proofs.notches import notches_pair
from tapewise_core.proofs.proof import ProofId

SIDE = sewn(SeamKind.SIDE, "front.side", "back.side")


def sides(first: float, second: float, seam: Seam = SIDE, second_length: float = 300.0) -> Case:
    """Return two edges of 300 mm, each notched at a distance from its start [mm]."""
    front = strip("front", "side", 300.0, Notch("side", first, "waist"))
    back = strip("back", "side", second_length, Notch("side", second, "waist"))
    return case(front, back, seams=(seam,))


@pytest.mark.parametrize(
    ("first", "second", "apart", "holds"),
    [
        (100.0, 100.0, 0.0, True),
        (100.0, 101.0, 0.1, True),
        (101.0, 100.0, 0.1, True),
        (100.0, 101.1, 0.11, False),
        (101.1, 100.0, 0.11, False),
    ],
)
def test_partners_are_no_more_than_a_millimetre_apart(
    first: float, second: float, apart: float, holds: bool
) -> None:
    """Walked from the seam's start on either side."""
    proof = only(notches_pair(sides(first, second)))
    assert judged(proof) == (apart, 0.1, "cm", holds)
    assert (proof.id, proof.of, proof.offer) == (ProofId.NOTCHES, "", None)


def test_a_side_walked_backwards_is_measured_from_its_end() -> None:
    """The edge's own distance runs the other way."""
    turned = replace(SIDE, second=(EdgeRun("back", ("side",), backwards=True),))
    assert only(notches_pair(sides(100.0, 200.0, turned))).holds
    assert judged(only(notches_pair(sides(100.0, 100.0, turned))))[0] == 10.0


def test_a_side_walked_forwards_is_measured_from_its_start() -> None:
    """However much longer the other side runs on behind the notch."""
    assert only(notches_pair(sides(100.0, 100.0, second_length=400.0))).holds


def test_a_side_that_is_stretched_is_measured_as_if_it_were() -> None:
    """A band of 0.75 of its neckline: its quarter meets the neckline's quarter."""
    band = replace(SIDE, ratio=0.75)
    assert only(notches_pair(sides(75.0, 100.0, band, 400.0))).holds
    assert judged(only(notches_pair(sides(75.0, 75.0, band, 400.0))))[0] == 2.5


def test_edges_walked_one_after_another_add_up() -> None:
    """A notch on the second edge lies beyond the whole first one; edges not there are skipped."""
    front = strip("front", "upper", 120.0, Notch("end", 40.0, "waist"))
    back = strip("back", "side", 300.0, Notch("side", 160.0, "waist"))
    runs = (EdgeRun("front", ("upper", "gone", "end")),)
    assert only(notches_pair(case(front, back, seams=(replace(SIDE, first=runs),)))).holds
    two = (EdgeRun("front", ("upper",)), EdgeRun("front", ("end",)))
    assert only(notches_pair(case(front, back, seams=(replace(SIDE, first=two),)))).holds


def test_of_two_marks_for_one_pair_the_first_walked_counts() -> None:
    """A mark where two runs touch is made on both and met once."""
    front = strip("front", "side", 300.0, Notch("side", 100.0, "a"), Notch("side", 250.0, "a"))
    back = strip("back", "side", 300.0, Notch("side", 100.0, "a"))
    assert only(notches_pair(case(front, back, seams=(SIDE,)))).holds


def test_the_worst_of_all_seams_is_told() -> None:
    """Not the last one walked."""
    bad, good = sides(100.0, 130.0), sides(50.0, 52.0)
    both = (
        *bad.pattern.pieces,
        *(replace(p, name=f"low_{p.name}") for p in good.pattern.pieces),
    )
    seams = (SIDE, sewn(SeamKind.SIDE, "low_front.side", "low_back.side"))
    proof = only(notches_pair(case(*both, seams=seams)))
    assert judged(proof)[0] == 3.0
    assert in_cm(proof) == "Two notches that should meet are 3 cm apart."
    assert in_inches(proof) == "Two notches that should meet are 1 1/8 in apart."


@pytest.mark.parametrize("lonely", ["front", "back"])
def test_a_notch_without_its_partner_fails(lonely: str) -> None:
    """Whichever side it is on; it is named."""
    pieces = [
        strip(name, "side", 300.0, *([Notch("side", 50.0, "hip")] if name == lonely else []))
        for name in ("front", "back")
    ]
    proof = only(notches_pair(case(*pieces, seams=(SIDE,))))
    assert judged(proof) == (0.0, 0.1, "cm", False)
    assert in_cm(proof) == "A notch has no partner: hip."


def test_what_it_says_where_all_meet() -> None:
    """One sentence."""
    assert in_cm(only(notches_pair(sides(9.0, 9.0)))) == "Every notch meets its partner."


@pytest.mark.parametrize(("first", "second"), [(40.0, 40.0), (106.0, 100.0), (212.0, 200.0)])
def test_fullness_moves_the_first_sides_notches(first: float, second: float) -> None:
    """Before it nothing, within it in proportion, after it by all of it; else they are apart."""
    full = replace(SIDE, fullness=Fullness(12.0, 50.0, 150.0))
    assert judged(only(notches_pair(sides(first, second, full)))) == (0.0, 0.1, "cm", True)
    assert not only(notches_pair(sides(first + 2, second, full))).holds
