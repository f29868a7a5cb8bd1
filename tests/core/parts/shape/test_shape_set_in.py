"""A set-in body drawn whole: armholes, caps, shares and darts measured again from their lines."""

from __future__ import annotations

import math
from functools import cache

import numpy as np
import pytest
from shape_people import AVERAGE, BUSTY, Person, bends_of, line, people, turns, width_at, wish
from shapely.geometry import Polygon

from tapewise_core.geometry.point import Point
from tapewise_core.parts.shape.set_in import SetIn, SetInWish, set_in
from tapewise_core.parts.shape.side_slopes import SideWish
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

KINDS: tuple[dict[str, object], ...] = (
    {"ease": 0.0},
    {"ease": 40.0, "side": SideWish(0.0)},
    {"ease": 80.0},
    {"ease": 0.0, "side": SideWish(1.0)},
    {"ease": 0.0, "sleeveless": True},
    {"ease": 20.0, "bodice": True},
    {"ease": 0.0, "forward": 8.0, "lower": 8.0},
)


def made(person: Person, kind: dict[str, object]) -> tuple[SetInWish, SetIn]:
    """A wish and what comes of it."""
    return _made(person, tuple(kind.items()))


@cache
def _made(person: Person, kind: tuple[tuple[str, object], ...]) -> tuple[SetInWish, SetIn]:
    asked = wish(person, **dict(kind))  # type: ignore[arg-type]
    return asked, set_in(asked)


@pytest.mark.parametrize("kind", KINDS)
def test_both_halves_have_the_girth_asked(kind: dict[str, object]) -> None:
    """Back and front traced from one seam add up at bust, waist and hip, to 0.01 mm."""
    for person in people(40):
        asked, body = made(person, kind)
        seam, at = body.seam, body.seam.at
        back = body.back_side
        front = body.share.front(seam.path if asked.hem is None else seam.down_to(asked.hem))
        for y in (at.bust, (at.bust + at.waist) / 2, at.waist - 1e-6):
            both = width_at(back, y) + width_at(front, y)
            assert both == pytest.approx(2 * width_at(seam.path, y), abs=0.01)


@pytest.mark.parametrize("kind", KINDS)
def test_armholes_are_convex_and_square(kind: dict[str, object]) -> None:
    """One way of bending, upright at the across point, square to the side seam."""
    for person in people(40):
        _, body = made(person, kind)
        for hole in (body.back_armhole, body.front_armhole):
            assert turns(hole.path) == 0
            bends, _ = bends_of(hole.path)
            assert np.abs(bends).max() < 1 / 5
            upper, lower = hole.path.segments
            assert abs(upper.direction(1).x) < 1e-6
            assert abs(lower.direction(0).x) < 1e-6
        side = body.front_side.upper.leaving()
        corner = body.front_armhole.path.arriving().angle_to(side)
        assert corner == pytest.approx(90, abs=1.5)


@pytest.mark.parametrize("kind", KINDS)
def test_caps_fit_and_are_as_wide_as_asked(kind: dict[str, object]) -> None:
    """Each half is 0.995 of its armhole, the two add up to the width, else it is said."""
    for person in people(40):
        asked, body = made(person, kind)
        if body.cap is None:
            assert asked.sleeveless
            continue
        cap = body.cap
        assert line(cap.path).length == pytest.approx(0.995 * body.armhole, abs=0.01)
        assert cap.back.length() == pytest.approx(0.995 * body.back_armhole.length, abs=1e-5)
        assert cap.front.length() == pytest.approx(0.995 * body.front_armhole.length, abs=1e-5)
        off = abs(cap.width - cap.asked)
        assert (off < 1) == (cap.held_back(asked.upper_arm) == ())
        ends = cap.path.segments[0].direction(1), cap.path.segments[1].direction(0)
        assert ends[0].y == pytest.approx(0)
        assert ends[1].y == pytest.approx(0)


@pytest.mark.parametrize("kind", KINDS)
def test_darts_are_true(kind: dict[str, object]) -> None:
    """Equal legs, about 7 of intake at most, the closed side as long as the back's."""
    found = 0
    for person in people(60):
        _, body = made(person, kind)
        dart = body.front_side.dart
        if dart is None:
            continue
        found += 1
        legs = (dart.upper - dart.tip).length(), (dart.lower - dart.tip).length()
        assert legs[0] == pytest.approx(legs[1], abs=1e-9)
        assert dart.intake <= 72
        assert dart.tip.x < dart.upper.x - 30
        assert body.front_side.upper.length() >= 28
        assert body.front_side.length == pytest.approx(body.back_side.length(), abs=1e-6)
        alpha = math.asin(dart.intake / 2 / dart.leg)
        assert dart.peak_height == pytest.approx(dart.intake / 2 * math.tan(2 * alpha))
    assert found > 5


@pytest.mark.parametrize("kind", KINDS)
def test_outlines_never_cross_themselves(kind: dict[str, object]) -> None:
    """Fold, shoulder, armhole and side close to one simple area."""
    for person in people(40):
        asked, body = made(person, kind)
        halves = (
            (asked.back_shoulder.neck, body.back_armhole.path, [body.back_side]),
            (
                asked.front_shoulder.neck,
                body.front_armhole.path,
                [part for part in (body.front_side.upper, body.front_side.lower) if part],
            ),
        )
        for neck, hole, sides in halves:
            points = [neck, *hole.flattened()]
            for side in sides:
                points += side.flattened()
            points += [Point(0, points[-1].y), Point(0, 90)]
            assert Polygon([(p.x, p.y) for p in points]).is_valid


def test_a_full_bust_is_swung_out_of_the_armhole() -> None:
    """The busty front's armhole gets narrower and shorter than without, its underarm higher."""
    asked, body = made(BUSTY, {"ease": 0.0})
    assert body.swing > 20
    assert body.front_side.dart is not None
    assert body.front_armhole.underarm.y < body.back_armhole.underarm.y
    assert body.front_armhole.underarm.x > body.seam.path.start.x - 5
    lift = body.back_armhole.underarm.y - body.front_armhole.underarm.y
    assert body.front_side.dart.intake == pytest.approx(asked.room.dart + lift, abs=5)


def test_what_the_swing_leaves_is_said() -> None:
    """A cup that one dart cannot take stays in the armhole's width, in words."""
    spell = Reader(Unit.CM).spell
    for person in people(60):
        _, body = made(person, {"ease": 0.0})
        words = " ".join(spell(told) for told in body.told)
        assert ("second dart, gathers or a looser" in words) == (
            body.share.cup >= 5 and body.share.cup - body.swing > 5
        )


def test_the_underarm_goes_down_for_a_full_arm() -> None:
    """The armhole is at least 1.33 of the arm, unless it lies 4 cm below the armscye already."""
    deeper = 0
    for person in people(60):
        asked, body = made(person, {"ease": 0.0})
        if body.drop < 40 - 1e-6:
            assert body.armhole >= 1.33 * person.arm - 0.1
        deeper += body.drop > 10.01
        assert 5 <= body.drop <= 40
        assert asked.fit.drop == 10
    assert deeper > 5


def test_the_armhole_is_as_wide_as_the_arm_is_thick() -> None:
    """Slim bodies with wide backs give a little across, and it is said."""
    gave = 0
    for person in people(60):
        _, body = made(person, {"ease": 0.0})
        words = " ".join(Reader(Unit.CM).spell(told) for told in body.told)
        gave += "so that the arm has room" in words
        width = body.back_armhole.width + body.front_armhole.width
        short = person.arm / math.pi + 5 - width
        assert short <= 0.1 or "than measured" in words or "has room" in words
    assert gave > 2


def test_an_ease_that_is_asked_is_given() -> None:
    """Sleeve ease 3 and 8 on the average woman: 29 + 3 and 29 + 8, the cap the lower the wider."""
    caps = [set_in(wish(AVERAGE, 40, sleeve_ease=e)).cap for e in (30.0, 80.0)]
    assert caps[0]
    assert caps[1]
    assert caps[0].width == pytest.approx(320, abs=1e-4)
    assert caps[1].width == pytest.approx(370, abs=1e-4)
    assert caps[0].height > caps[1].height + 10


def test_both_shoulders_are_equally_long() -> None:
    """Raised, turned forward and lowered; and forward turns the sleeve's notch to the front."""
    for person in people(20):
        asked = wish(person, 0, forward=8, lower=8)
        assert asked.back_shoulder.length == pytest.approx(asked.front_shoulder.length)
    plain, turned = (set_in(wish(AVERAGE, 0, forward=f)).cap for f in (0.0, 8.0))
    assert plain
    assert turned
    assert turned.pitch > plain.pitch + 2
