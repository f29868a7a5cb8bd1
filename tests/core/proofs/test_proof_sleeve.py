"""A hand through a sleeve, armholes inside the shoulder, caps neither flat nor steep."""

from __future__ import annotations

import math

import pytest
from hand_made import CLOTH, case, in_cm, judged, only, reason, sewn, shape, strip, style

from tapewise_core.drafting.facts import Facts
from tapewise_core.drafting.pattern import Girth
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Body, Origin, Reference, Value
from tapewise_core.parts.hand import hand_of
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.proof import LACKS, ProofId
from tapewise_core.proofs.sleeve import armholes_inside, cap_height, hand_passes
from tapewise_core.units import mm


def sleeved(hem: float, hand: float | None = 208.0) -> Case:
    """Return a garment whose sleeve's hem is so wide, for a hand [mm]; the cloth gives 50 %."""
    girth = Girth("sleeve hem", hem, 155.0)
    return case(girths=(girth,), facts=Facts(hand=hand), style=style(sleeve_hem_ease=mm(10.0)))


@pytest.mark.parametrize(("hem", "holds"), [(161.0, True), (160.0, True), (159.9, False)])
def test_a_hand_passes_a_hem_that_stretches_to_it(hem: float, holds: bool) -> None:
    """By six tenths of what the cloth gives, 208 / 1.3; the mend is the ease that is missing."""
    proof = only(hand_passes(sleeved(hem)))
    assert judged(proof) == (hem / 10, 16.0, "cm", holds)
    assert proof.id is ProofId.HAND
    assert proof.offered == (None if holds else {"sleeve-hem-ease": "1.1 cm"})


def test_what_it_says_of_a_hand() -> None:
    """Both girths, and what is missing."""
    assert in_cm(only(hand_passes(sleeved(200)))) == (
        "A hand of 20.8 cm goes through the sleeve's hem of 20 cm."
    )
    assert in_cm(only(hand_passes(sleeved(155)))) == (
        "A hand of 20.8 cm does not go through the sleeve's hem of 15.5 cm, which is 0.5 "
        "cm too narrow."
    )


def test_no_hand_where_no_sleeve_reaches_it() -> None:
    """A short sleeve is a reason; no sleeve at all is none of the garment's."""
    short = reason(hand_passes(sleeved(300, None)))
    assert short == "The sleeves end above the elbow, or the wrist is not known."
    assert reason(hand_passes(case())).startswith(LACKS)


def wearer(reference: Reference = Reference.NOT_SAID, **measures: float) -> Body:
    """Return somebody of whom these measures are taken [cm]."""
    values = {key: Value(cm, Origin.MEASURED) for key, cm in measures.items()}
    return Body(values, {key: key for key in values}, reference)


def test_a_hand_is_asked_for_below_the_elbow_only() -> None:
    """By the wrist, the wider of women and men where it is not said; thumb laid in."""
    both = wearer(wrist=15.5, arm_length=58.0)
    assert hand_of(both, mm(0.57 * 580)) == pytest.approx(55 + 0.91 * 155 + 20)
    woman = wearer(Reference.WOMEN, wrist=15.5, arm_length=58.0)
    assert hand_of(woman, mm(580)) == pytest.approx(47 + 0.92 * 155 + 20)
    assert hand_of(both, mm(0.55 * 580)) is None
    assert hand_of(wearer(arm_length=58.0), mm(580)) is None


def half(inside: float, out: float = 1.0) -> Piece:
    """Return half a back with a shoulder of 20 degrees whose armhole goes in so far, 100 below
    the shoulder's end [mm]; ``out`` is -1 for one drawn to the left."""
    x, y = 200.0, 120 * math.tan(math.radians(20))
    corners = [(80.0, 0.0), (x, y), (x - inside, y + 100), (x + 40, y + 180), (0.0, y + 180)]
    names = ("shoulder", "armhole", "armhole_lower", "hem", "left")
    if out < 0:
        corners = [(-cx, cy) for cx, cy in reversed(corners)]
        names = ("hem", "armhole_lower", "armhole", "shoulder", "left")
    points = {"shoulder_point": Point(out * x, y), "side_neck": Point(out * 80, 0)}
    return shape("back", tuple(corners), names, points=points)


def judged_armhole(inside: float, out: float = 1.0) -> Answer:
    """Judge the armhole of such a half."""
    return armholes_inside(case(half(inside, out)))


MOST = 100 * math.tan(math.radians(24))
"""What a line four degrees inside of square to a shoulder of 20 degrees reaches [mm]."""


@pytest.mark.parametrize("out", [1.0, -1.0])
@pytest.mark.parametrize(
    ("inside", "holds"), [(0.0, True), (MOST - 0.01, True), (MOST + 0.01, False)]
)
def test_an_armhole_goes_in_no_further_than_square_to_the_shoulder(
    inside: float, holds: bool, out: float
) -> None:
    """On either half; beyond it is a keyhole."""
    proof = only(judged_armhole(inside, out))
    assert (proof.id, proof.of, proof.holds) == (ProofId.ARMHOLE, "back", holds)
    assert proof.value == pytest.approx(inside / 10, abs=0.001)


def test_what_it_says_of_an_armhole() -> None:
    """How far in, and what is too much."""
    assert in_cm(only(judged_armhole(10))) == (
        "The back's armhole lies up to 1 cm inside the shoulder's end."
    )
    assert "More than 4.5 cm is a keyhole" in in_cm(only(judged_armhole(50)))
    assert reason(armholes_inside(case(strip("back", "hem", 100)))).startswith(LACKS)


def capped(high: float) -> Case:
    """Return a sleeve with a cap so high, sewn to an armhole of 500 [mm]."""
    corners = ((0.0, 100.0), (150.0, 100.0 - high), (300.0, 100.0), (300.0, 300.0), (0.0, 300.0))
    cap = shape("sleeve", corners, ("cap_front", "cap", "under", "hem", "under_2"))
    seam = sewn(SeamKind.SLEEVE, "sleeve.cap", "back.armhole")
    return case(cap, strip("back", "armhole", 500), seams=(seam,))


@pytest.mark.parametrize(
    ("high", "limit", "holds"),
    [(79.0, 0.16, False), (80.5, 0.36, True), (179.5, 0.36, True), (181.0, 0.36, False)],
)
def test_a_cap_is_neither_flat_nor_steep(high: float, limit: float, holds: bool) -> None:
    """From 16 to 36 in a hundred of its armhole."""
    proof = only(cap_height(capped(high)))
    assert judged(proof) == (high / 500, limit, "1", holds)
    assert proof.id is ProofId.CAP_HEIGHT


def test_what_it_says_of_a_cap() -> None:
    """Its height and its share; a tent, or an arm that does not lift."""
    plain = "The sleeve's cap is 12.5 cm high, 25 % of the armhole."
    assert in_cm(only(cap_height(capped(125)))) == plain
    assert "like a tent: take less sleeve-ease" in in_cm(only(cap_height(capped(50))))
    assert "does not lift: take more sleeve-ease" in in_cm(only(cap_height(capped(200))))
    assert reason(cap_height(case())).startswith(LACKS)


def test_the_cloth_of_these_tests_gives_half() -> None:
    """What the limits above are worked out from."""
    assert CLOTH.stretch == 0.5
