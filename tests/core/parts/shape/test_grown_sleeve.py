"""Grown-on sleeves and caps: as wide as asked, square at their seams, gentle under the arm."""

import math
import random
from collections.abc import Iterator

import pytest
from msgspec.structs import replace

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import DOWN, Point, Vector
from tapewise_core.parts.shape.grown_cap import MOST_CAP_LIFT, OUTSIDE, grown_cap
from tapewise_core.parts.shape.grown_drawn import Arm, Sleeve, Trunk
from tapewise_core.parts.shape.grown_lines import lines
from tapewise_core.parts.shape.grown_sleeve import grown_sleeve


def arm(fall: float = 21.0, length: float = 180.0, upper: float = 350.0, **other: float) -> Arm:
    """An arm of average build; a long sleeve narrows to 200 mm at the wrist."""
    neck, shoulder = Point(90, -22), 130.0
    end = neck + Vector(math.cos(math.radians(fall)), math.sin(math.radians(fall))) * shoulder
    hem = other.get("hem", 200.0 if length > 400 else upper)
    return Arm(neck, end, fall, length, upper, hem, other.get("place", 145.0))


TRUNK = Trunk(190, 410, Point(240, 254), DOWN, 360, 40.0)
"""An average body with 4 cm of ease and an upright side."""


def many(count: int = 150) -> Iterator[tuple[Arm, Trunk]]:
    """Bodies from thin to very full with sleeves from short to long, seeded."""
    rng = random.Random(8)
    for _ in range(count):
        full = rng.random()
        armscye, waist = rng.uniform(165, 235), rng.uniform(370, 450)
        bust = Point(200 + 110 * full, armscye + rng.uniform(40, 80))
        lean = rng.choice([0.0, -rng.uniform(0, 0.25)])
        trunk = Trunk(
            armscye, waist, bust, Vector(lean, 1).unit(), waist - 40, rng.choice([0, 40, 80])
        )
        upper = 250 + 200 * full + rng.uniform(20, 80)
        yield arm(rng.uniform(8, 28), rng.choice([150, 180, 300, 580]), upper), trunk


def found(count: int = 150) -> list[tuple[Arm, Trunk, Sleeve]]:
    """Those of them that have a sleeve with an underarm seam."""
    tried = ((a, t, grown_sleeve(a, t)) for a, t in many(count))
    return [(a, t, sleeve) for a, t, sleeve in tried if sleeve]


def test_most_bodies_have_a_sleeve() -> None:
    """The form with an underarm seam is the rule; else the other tests would prove nothing."""
    assert len(found()) > 100


def test_a_sleeve_is_as_wide_as_asked_at_the_upper_arm_and_at_the_hem() -> None:
    """Twice the width square to the overarm; only a widened hem has more."""
    for asked, _, sleeve in found():
        drawn = lines(asked, sleeve)
        hem = 2 * (sleeve.corner - sleeve.hem_top).length() - 2 * sleeve.wider
        assert hem == pytest.approx(asked.hem, abs=1e-6)
        if not asked.is_long:
            assert drawn.upper == pytest.approx(asked.upper + 2 * sleeve.wider, abs=1e-6)
        assert drawn.upper >= asked.upper - 1e-6


def corner(first: Path, second: Path) -> float:
    """The angle between two lines where the first ends and the second begins [degrees]."""
    return 180 - first.arriving().angle_to(second.leaving())


def test_hems_meet_overarm_and_under_seam_square() -> None:
    """So that front and back, joined, make no notch: 90 ± 2.5 degrees at either end."""
    for asked, _, sleeve in found():
        drawn = lines(asked, sleeve)
        assert corner(drawn.overarm, drawn.hem) == pytest.approx(90, abs=0.01)
        assert corner(drawn.hem, drawn.under) == pytest.approx(90, abs=2.5)


def test_the_under_seam_runs_into_the_side_without_a_corner() -> None:
    """Every line leaves in the direction in which the one before arrives."""
    for asked, trunk, sleeve in found():
        drawn = lines(asked, sleeve)
        assert drawn.under.arriving().angle_to(drawn.rounding.leaving()) < 0.01
        assert drawn.rounding.arriving().angle_to(trunk.way) < 0.01
        for before, after in zip(drawn.under.segments, drawn.under.segments[1:], strict=False):
            assert before.direction(1).angle_to(after.direction(0)) < 0.05


def test_the_underarm_lies_where_an_arm_is_free() -> None:
    """Its middle at least 1 cm below the armscye line, no lower than halfway to the waist."""
    for _, trunk, sleeve in found():
        assert trunk.armscye + 10 - 0.1 <= sleeve.middle.y <= (trunk.armscye + trunk.waist) / 2
        assert sleeve.radius >= 35 - 1e-6
        assert min(sleeve.lift, sleeve.deeper) <= 4.0


def test_a_sleeve_that_has_room_is_left_as_it_is() -> None:
    """No lift, no depth, no more width than asked, the usual radius."""
    sleeve = grown_sleeve(arm(length=260), replace(TRUNK, bust=Point(240, 360)))
    assert sleeve is not None
    assert (sleeve.lift, sleeve.deeper, sleeve.wider, sleeve.radius) == (0, 0, 0, 80)


def test_a_centimetre_of_girth_moves_the_underarm_a_little() -> None:
    """10 mm on bust or arm, 2.5 mm a quarter or 5 a half, move no line by more than 6 mm."""
    for asked, trunk, sleeve in found(60):
        wider = replace(trunk, bust=trunk.bust + Vector(2.5, 0))
        other = grown_sleeve(asked, wider)
        if other is None or other.wider != sleeve.wider or (other.tried != sleeve.tried):
            continue
        assert (other.middle - sleeve.middle).length() < 6
        assert (other.hem_top - sleeve.hem_top).length() < 6


def test_a_cap_stands_outside_the_body_and_meets_its_side_squarely() -> None:
    """The hem leaves the overarm square and arrives level at an upright side seam."""
    for asked, trunk in many(80):
        cap = grown_cap(replace(asked, length=85, hem=asked.upper), trunk)
        assert cap.hem.leaving().angle_to(cap.square) < 0.01
        assert cap.hem.arriving().angle_to(Vector(-1, 0)) < 0.01
        assert 0 <= cap.lift <= MOST_CAP_LIFT
        if not cap.refused:
            assert cap.knee.x - trunk.bust.x >= OUTSIDE - 0.1
            assert cap.underarm.y >= trunk.armscye + 10 - 1e-6


def test_a_cap_is_made_longer_only_when_all_lift_is_used_up() -> None:
    """First the overarm is lifted, then the cap goes on further out."""
    longer = [grown_cap(replace(a, length=85, hem=a.upper), t) for a, t in many(80)]
    assert any(cap.longer > 1 for cap in longer)
    for cap in longer:
        assert cap.longer < 0.5 or cap.lift == pytest.approx(MOST_CAP_LIFT)


def test_a_cap_that_would_be_6_cm_longer_is_refused() -> None:
    """A very full body under a narrow shoulder needs another sleeve."""
    full = replace(TRUNK, bust=Point(360, 254))
    cap = grown_cap(arm(length=85), full)
    assert cap.refused
    assert cap.longer > 60
