"""A garment as it is cut, worn by other bodies."""

from __future__ import annotations

import numpy as np
import pytest
from hand_made import case

from tapewise_core.drafting.facts import Facts, Hem, Level, Neck, Passage, Underarm, Waist
from tapewise_core.drafting.pattern import Girth
from tapewise_core.proofs.case import Case
from tapewise_core.proofs.proof import ProofId
from tapewise_core.proofs.worn import body_side, rooms


def left(made: Case, about: ProofId, of: str = "", **changed: list[float]) -> list[float]:
    """Return what is left of a proof for bodies that differ in some numbers [mm]."""
    own = body_side(made.pattern)
    many = len(next(iter(changed.values())))
    assert {name.replace("_", " ") for name in changed} <= {one.replace("_", " ") for one in own}
    bodies = {name: np.full(many, value) for name, value in own.items()}
    for name, values in changed.items():
        key = next(one for one in own if one.replace("_", " ") == name.replace("_", " "))
        bodies[key] = np.array(values)
    return [float(one) for one in rooms(made, bodies)[about, of]]


def test_a_head_needs_its_girth_and_a_little_more() -> None:
    """The opening stretches as far as cloth and seam give, here 40 %."""
    made = case(facts=Facts(head=560.0, neck=Neck(opening=420.0)))
    assert left(made, ProofId.HEAD, head=[578.0, 579.0]) == pytest.approx([0.0, -1.0])


def test_a_waist_is_passed_by_the_body_as_it_is() -> None:
    """The garment's waist stays, the way in is the body's."""
    waist = Waist(Passage.JOINED, 700.0, 950.0, 700.0)
    made = case(facts=Facts(waist=waist))
    found = left(made, ProofId.WAIST, "joined waist", way_in=[980.0, 990.0])
    assert found == pytest.approx([0.0, -10.0])


def test_an_underarm_lies_between_the_armscye_line_and_halfway_to_the_waist() -> None:
    """Both lines are the body's, the underarm is cut."""
    made = case(facts=Facts(underarm=Underarm(220.0, 200.0, 400.0)))
    assert left(made, ProofId.UNDERARM_TOP, armscye=[210.0, 230.0]) == pytest.approx([10.0, -10.0])
    lower = left(made, ProofId.UNDERARM_FOOT, armscye=[20.0, 80.0], waist=[400.0, 400.0])
    assert lower == pytest.approx([-10.0, 20.0])


def test_a_girth_may_be_closer_by_what_the_cloth_gives() -> None:
    """Half of the stretch round a body, a quarter round an arm."""
    made = case(girths=(Girth("bust", 900.0, 900.0), Girth("upper arm", 320.0, 300.0)))
    assert left(made, ProofId.GIRTH, "bust", bust_round=[1125.0, 1000.0]) == pytest.approx([0, 100])
    arm = left(made, ProofId.GIRTH, "upper arm", upper_arm_round=[360.0, 369.0])
    assert arm == pytest.approx([0.0, -8.0])


def test_a_hand_is_the_bodys_own() -> None:
    """Six tenths of the stretch let it through."""
    made = case(girths=(Girth("sleeve hem", 200.0, 160.0),), facts=Facts(hand=220.0))
    assert left(made, ProofId.HAND, hand=[260.0, 273.0]) == pytest.approx([0.0, -10.0])


def test_a_hem_that_hangs_from_the_shoulders_lies_lower_below_a_higher_waist() -> None:
    """At the knee it needs 110 cm, at the ankle 140; above the knee the leg is free."""
    hem = Hem(1250.0, below_waist=800.0, below_nape=1200.0, knee=600.0, ankle=1000.0)
    made = case(facts=Facts(hem=hem))
    assert left(made, ProofId.STRIDE, nape_to_waist=[400.0, 200.0]) == pytest.approx([0.0, -150.0])
    assert left(made, ProofId.STRIDE, knee=[801.0, 800.0]) == [np.inf, 150.0]
    assert body_side(made.pattern)["nape to waist"] == 400.0
    slit = case(facts=Facts(hem=Hem(900.0, 800.0, knee=600.0, ankle=1000.0, slit=200.0)))
    assert left(slit, ProofId.STRIDE, knee=[600.0]) == [np.inf]


def level(name: str, height: float | None, body: float, given: float) -> Level:
    """Return a level that is aimed at [mm]."""
    return Level(name, height, body, given - body, given, given)


TRUNK = (
    level("bust", 250.0, 900.0, 940.0),
    level("waist", 400.0, 700.0, 800.0),
    level("hip", 600.0, 960.0, 1000.0),
)


def test_another_fit_than_the_one_asked_for_begins_two_centimetres_away() -> None:
    """Either way, wherever the level lies."""
    sleeve = (level("upper_arm", None, 300.0, 340.0),)
    made = case(facts=Facts(levels=(*TRUNK, *sleeve)))
    assert left(made, ProofId.BUST, bust_girth=[880, 920, 930]) == pytest.approx([0, 0, -10])
    assert left(made, ProofId.UPPER_ARM, upper_arm_girth=[300, 321]) == pytest.approx([20, -1])


def test_a_waist_that_lies_elsewhere_meets_another_girth_of_the_garment() -> None:
    """Straight from level to level, and no narrower nor wider beyond the last."""
    made = case(facts=Facts(levels=TRUNK), girths=(Girth("waist", 800.0, 700.0),))
    found = left(made, ProofId.WAIST_LEVEL, waist_height=[410.0, 430.0, 385.0])
    assert found == pytest.approx([10.0, -10.0, 6.0])
    deep = left(made, ProofId.HIP, hip_height=[700.0])
    assert deep == pytest.approx([20.0])
    girth = left(made, ProofId.GIRTH, "waist", waist_height=[400.0, 430.0])
    assert girth == pytest.approx([240.0, 270.0])


def test_a_level_below_the_hem_has_all_the_room_there_is() -> None:
    """The garment does not reach it."""
    hem = Hem(1000.0, below_waist=220.0, below_nape=620.0)
    made = case(facts=Facts(levels=TRUNK, hem=hem), girths=(Girth("hip", 1000.0, 960.0),))
    found = left(made, ProofId.HIP, hip_height=[620.0, 621.0], hip_girth=[960.0, 1200.0])
    assert found == pytest.approx([20.0, np.inf])
    girth = left(made, ProofId.GIRTH, "hip", hip_height=[621.0], hip_round=[9000.0])
    assert girth == [np.inf]


def test_proofs_of_lines_alone_are_left_out() -> None:
    """They know no body."""
    assert rooms(case(facts=Facts(neck=Neck(opening=420.0))), {}) == {}
