"""Both sides of a seam, walked."""

from __future__ import annotations

import pytest
from hand_made import case, in_cm, in_inches, judged, only, reason, sewn, strip
from msgspec.structs import replace

from tapewise_core.drafting.seam import EdgeRun, Fullness, Seam, SeamKind
from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.proofs.seams import seams_meet

LIMITS = {
    SeamKind.SHOULDER: (5.0, "shoulder (overarm) seams"),
    SeamKind.SIDE: (2.0, "side and underarm seams"),
    SeamKind.WAIST: (3.0, "waist seam"),
    SeamKind.PANEL: (2.0, "panel seams"),
    SeamKind.BAND_JOIN: (0.5, "ends of the band"),
    SeamKind.SLEEVE: (5.0, "sleeve seams"),
    SeamKind.OVERARM: (1.0, "overarm seams"),
    SeamKind.RAGLAN: (1.0, "raglan seams"),
    SeamKind.WAISTBAND: (3.0, "waistband and waist"),
    SeamKind.DART: (0.5, "dart's legs"),
}
"""What each kind may differ by [mm], and its name."""


def met(kind: SeamKind, front: float, back: float, ratio: float = 1.0, where: str = "") -> Proof:
    """Judge a seam of two edges [mm]."""
    pieces = strip("front", "side", front), strip("back_yoke", "side", back)
    seam = sewn(kind, "front.side", "back_yoke.side", ratio, where)
    return only(seams_meet(case(*pieces, seams=(seam,))))


@pytest.mark.parametrize("kind", LIMITS)
@pytest.mark.parametrize("way", [1, -1])
def test_the_sides_differ_by_no_more_than_can_be_eased(kind: SeamKind, way: int) -> None:
    """Just inside and just outside, whichever side is the longer."""
    limit, name = LIMITS[kind]
    inside = met(kind, 400.0 + way * limit, 400.0)
    outside = met(kind, 400.0 + way * (limit + 0.1), 400.0)
    assert judged(inside) == (limit / 10, limit / 10, "cm", True)
    assert judged(outside) == (round(limit / 10 + 0.01, 3), limit / 10, "cm", False)
    assert (inside.id, inside.of, inside.name) == (ProofId.SEAM, name, name)
    assert outside.mend is None


def test_side_seams_six_centimetres_apart_are_caught() -> None:
    """And told with both pieces by their names, the longer first."""
    proof = met(SeamKind.SIDE, 400.0, 460.0)
    assert judged(proof) == (6.0, 0.2, "cm", False)
    assert in_cm(proof) == (
        "Side and underarm seams: the back yoke is 6 cm longer than the front; 0.2 cm is the "
        "most that can be eased in."
    )
    assert in_inches(proof) == (
        "Side and underarm seams: the back yoke is 2 3/8 in longer than the front; 1/16 in is the "
        "most that can be eased in."
    )
    assert "the front is 6 cm longer than the back yoke" in in_cm(met(SeamKind.SIDE, 460.0, 400.0))


def test_what_it_says_of_a_seam_that_meets() -> None:
    """Both lengths while the difference goes unnoticed, else what is eased in."""
    proof = met(SeamKind.SHOULDER, 403.0, 400.0)
    assert in_cm(proof) == "Shoulder (overarm) seams meet: 40.3 cm and 40 cm."
    assert in_inches(proof) == "Shoulder (overarm) seams meet: 15 7/8 in and 15 3/4 in."
    eased = met(SeamKind.SHOULDER, 404.0, 400.0)
    assert in_cm(eased) == "Shoulder (overarm) seams: the front is eased in by 0.4 cm."
    assert "the back yoke is eased in by 0.4 cm" in in_cm(met(SeamKind.SHOULDER, 400.0, 404.0))


def test_a_ratio_says_how_much_shorter_one_side_is_meant_to_be() -> None:
    """A cap of 0.99 of its armhole meets it."""
    assert met(SeamKind.SLEEVE, 396.0, 400.0, 0.99).value == 0.0
    assert met(SeamKind.SLEEVE, 400.0, 400.0, 0.98).value == 0.8


def test_a_side_of_several_runs_is_walked_whole() -> None:
    """Runs that occur on both halves count twice."""
    pieces = strip("skirt", "waist", 300.0), strip("front", "waist", 150.0)
    runs = (EdgeRun("front", ("waist",), 2),)
    seam = Seam(SeamKind.WAIST, (EdgeRun("skirt", ("waist",)),), runs)
    assert only(seams_meet(case(*pieces, seams=(seam,)))).value == 0.0


def test_left_and_right_are_told_apart() -> None:
    """In the subject, the name and the sentence."""
    proof = met(SeamKind.SIDE, 400.0, 400.0, where="left")
    assert proof.of == proof.name == "side and underarm seams, left"
    assert in_cm(proof) == "Side and underarm seams (left) meet: 40 cm and 40 cm."


def test_seams_sewn_stretched_are_not_compared() -> None:
    """A neckband is shorter than its neckline on purpose."""
    pieces = strip("band", "top", 400.0), strip("back", "neckline", 500.0)
    seam = sewn(SeamKind.NECKBAND, "band.top", "back.neckline")
    assert reason(seams_meet(case(*pieces, seams=(seam,)))) == (
        "No two edges are sewn to each other unstretched."
    )


@pytest.mark.parametrize(("gathered", "how"), [(False, "eased"), (True, "gathered")])
def test_fullness_counts_as_taken_in(gathered: bool, how: str) -> None:
    """A front longer by what is eased or gathered meets; without it, it would be caught."""
    pieces = strip("front", "side", 412.0), strip("back", "side", 400.0)
    full = Fullness(12.0, 50.0, 150.0, gathered=gathered)
    seam = replace(sewn(SeamKind.SIDE, "front.side", "back.side"), fullness=full)
    proof = only(seams_meet(case(*pieces, seams=(seam,))))
    assert proof.holds
    assert in_cm(proof) == (
        f"Side and underarm seams meet: 41.2 cm and 40 cm, the front's extra 1.2 cm {how} in "
        "between its notches."
    )
    assert not only(seams_meet(case(*pieces, seams=(replace(seam, fullness=None),)))).holds
