"""The underarm's height, and the side seam at the waist."""

from __future__ import annotations

import pytest
from hand_made import case, in_cm, in_inches, judged, only, reason, shape, style

from tapewise_core.drafting.facts import Facts, Side, Underarm
from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.point import Point
from tapewise_core.proofs.case import Case
from tapewise_core.proofs.proof import ProofId
from tapewise_core.proofs.side import not_too_high, not_too_low, waist_limit
from tapewise_core.style.style import Style
from tapewise_core.units import mm


def under(level: float, chosen: Style | None = None) -> Case:
    """Return an underarm so far below the nape [mm]: armscye line at 200, waist at 400."""
    return case(facts=Facts(underarm=Underarm(level, 200.0, 400.0)), style=chosen)


@pytest.mark.parametrize(("level", "holds"), [(200.0, True), (260.0, True), (199.9, False)])
def test_the_underarm_is_not_above_the_armscye_line(level: float, holds: bool) -> None:
    """At it or below."""
    proof = only(not_too_high(under(level)))
    assert judged(proof) == (round(level / 10, 3), 20.0, "cm", holds)
    assert (proof.id, proof.of, proof.offer) == (ProofId.UNDERARM_TOP, "", None)


def test_what_it_says_of_a_high_underarm() -> None:
    """How far above the line."""
    good = only(not_too_high(under(215.0)))
    assert in_cm(good) == (
        "The underarm lies 21.5 cm below the nape, at or below the armscye line at 20 cm."
    )
    assert "lies 8 1/2 in below the nape, at or below the armscye line at 7 7/8 in" in in_inches(
        good
    )
    bad = only(not_too_high(under(180.0)))
    assert in_cm(bad) == ("The underarm lies 2 cm above the armscye line; too narrow to wear.")


@pytest.mark.parametrize(("level", "holds"), [(300.0, True), (100.0, True), (300.1, False)])
def test_the_underarm_is_not_below_halfway_to_the_waist(level: float, holds: bool) -> None:
    """Halfway from 20 to 40 is 30."""
    proof = only(not_too_low(under(level)))
    assert judged(proof) == (round(level / 10, 3), 30.0, "cm", holds)
    assert (proof.id, proof.of) == (ProofId.UNDERARM_FOOT, "")


def test_an_underarm_ten_centimetres_too_low_is_caught() -> None:
    """And told with what it does to the wearer."""
    bad = only(not_too_low(under(400.0)))
    assert judged(bad) == (40.0, 30.0, "cm", False)
    assert in_cm(bad) == (
        "The underarm lies 10 cm lower than halfway to the waist, so lifting an arm drags up the "
        "side; take less sleeve-ease."
    )
    assert in_inches(bad).startswith("The underarm lies 3 7/8 in lower than halfway")
    good = only(not_too_low(under(250.0)))
    assert in_cm(good) == "The underarm at 25 cm is no lower than halfway to the waist, 30 cm."
    assert in_inches(good).endswith("at 9 7/8 in is no lower than halfway to the waist, 11 3/4 in.")


@pytest.mark.parametrize(
    ("ease", "mend"),
    [
        (60.4, {"sleeve-ease": "3.8 cm"}),
        (22.52, {"sleeve-ease": "0.0 cm"}),
        (22.5, None),
    ],
)
def test_less_ease_round_the_arm_is_offered_while_there_is_some(
    ease: float, mend: dict[str, str] | None
) -> None:
    """Ten millimetres too low want 22 less, told to the millimetre below."""
    assert only(not_too_low(under(310.0, style(sleeve_ease=mm(ease))))).offered == mend


def test_no_mend_without_the_option_or_the_need() -> None:
    """A garment without sleeve-ease; an underarm that is high enough."""
    assert only(not_too_low(under(310.0))).offer is None
    assert only(not_too_low(under(290.0, style(sleeve_ease=mm(90.0))))).offer is None


def sided(limit: float = 170.0, **sides: tuple[float, ...]) -> Case:
    """Return pieces whose side seams pass the waist so far from the centre [mm]."""
    pieces = [_piece(name, xs) for name, xs in sides.items()]
    return case(*pieces, facts=Facts(side=Side(limit)))


def _piece(name: str, xs: tuple[float, ...]) -> Piece:
    points = {
        f"waist_side{suffix}": Point(x, 400.0) for suffix, x in zip(("", "_2"), xs, strict=False)
    }
    return shape(name, ((0, 0), (200, 0), (200, 400), (0, 400)), points=points)


@pytest.mark.parametrize(
    ("x", "holds"), [(170.0, True), (169.905, True), (169.89, False), (180.0, True)]
)
def test_the_side_seam_stays_outside_the_waist(x: float, holds: bool) -> None:
    """To a tenth of a millimetre."""
    proof = only(waist_limit(sided(back=(x,))))
    assert judged(proof) == (round(x / 10, 3), 17.0, "cm", holds)
    assert (proof.id, proof.of, proof.offer) == (ProofId.SIDE, "back", None)
    assert proof.name == "back side seam at the waist"


def test_of_two_sides_the_closer_counts() -> None:
    """On a body drafted on both sides, either may be the tight one."""
    assert only(waist_limit(sided(front=(190.0, -160.0)))).value == 16.0
    assert only(waist_limit(sided(front=(165.0, -190.0)))).value == 16.5


def test_what_it_says_of_the_side_seam() -> None:
    """Where it passes, the limit, and what to take less of."""
    good = only(waist_limit(sided(back=(200.0,))))
    assert in_cm(good) == (
        "The back's side seam passes the waist 20 cm from the centre, where 17 cm is the least."
    )
    assert in_inches(good).endswith("waist 7 7/8 in from the centre, where 6 3/4 in is the least.")
    bad = only(waist_limit(sided(back=(150.0,))))
    assert in_cm(bad).endswith(
        "17 cm is the least. It is 2 cm too far in; take less waist-shaping."
    )


def test_every_piece_with_a_side_is_judged() -> None:
    """Back and front; not a sleeve."""
    answer = waist_limit(sided(back=(180.0,), sleeve=(), front=(160.0,)))
    assert isinstance(answer, tuple)
    assert [(proof.of, proof.holds) for proof in answer] == [("back", True), ("front", False)]


def test_without_underarm_or_side_they_are_silent() -> None:
    """A skirt has neither; a bodice may end above the waist."""
    nothing = case()
    assert reason(not_too_high(nothing)) == "This garment has no underarm."
    assert reason(not_too_low(nothing)) == "This garment has no underarm."
    assert reason(waist_limit(nothing)) == ("This garment has no side seam that follows the waist.")
    assert reason(waist_limit(sided(back=()))) == "Every side seam ends above the waist."
