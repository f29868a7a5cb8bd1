"""Raglan lines and sleeves as plain shapes, on bodies far wider than people are."""

from __future__ import annotations

from functools import cache
from itertools import pairwise

import pytest
from shape_people import AVERAGE, Person, line, people, turns, wish

from tapewise_core.geometry.path import Path, curved
from tapewise_core.geometry.point import Point
from tapewise_core.parts.neckline import back_neckline, front_neckline
from tapewise_core.parts.shape.raglan_line import (
    LEAST_NECK,
    MOST_NECK,
    WIDEST,
    RaglanLine,
    raglan_line,
)
from tapewise_core.parts.shape.raglan_sleeve import RaglanSleeve, raglan_sleeve, reach
from tapewise_core.parts.shape.set_in import set_in

COUNT = 25


@cache
def lines(person: Person) -> tuple[RaglanLine, RaglanLine]:
    """The back's line and the front's, with a plain round neckline."""
    asked = wish(person, 20)
    drawn = set_in(asked)
    backs, fronts = asked.back_shoulder, asked.front_shoulder
    back = back_neckline(Point(0, 0), backs.neck, backs.end - backs.neck)
    front = front_neckline(Point(0, 80), fronts.neck, fronts.end - fronts.neck)
    return (
        raglan_line(back, backs, drawn.back_armhole.path),
        raglan_line(front, fronts, drawn.front_armhole.path),
    )


def sleeve(person: Person, ease: float, lean: float = 0.0) -> RaglanSleeve:
    """The sleeve for an ease round the arm [mm]."""
    return raglan_sleeve(*lines(person), person.arm + ease, lean)


def test_a_line_runs_from_the_neckline_into_the_armhole_without_a_corner() -> None:
    """It leaves 20 to 45 mm of neckline to the sleeve and bends one way, then the armhole's."""
    for person in people(COUNT):
        for one in lines(person):
            assert LEAST_NECK - 1e-3 <= one.given.length() <= MOST_NECK + 1e-3
            assert one.kept.end == one.given.start == one.upper.start
            assert one.upper.arriving().angle_to(one.lower.leaving()) < 1e-6
            assert turns(one.upper) == 0
            assert turns(one.whole) == 1


def test_no_corner_at_the_neckline_is_a_needle() -> None:
    """Where the neckline is nearly upright more of it goes to the sleeve, where it is nearly level
    less: neither the body nor the sleeve ends in a sharp point."""
    asked = wish(AVERAGE, 20)
    shoulder, armhole = asked.front_shoulder, set_in(asked).front_armhole.path
    end = shoulder.neck
    upright = curved(Point(0, 200), Point(90, 190), end + Point(10, 80), end)
    level = curved(Point(0, end.y), Point(30, end.y), end + Point(-20, 12), end)
    sharp, blunt = (raglan_line(neck, shoulder, armhole) for neck in (level, upright))
    assert sharp.given.length() == pytest.approx(LEAST_NECK)
    assert blunt.opening == pytest.approx(WIDEST, abs=0.2)
    assert blunt.given.length() > MOST_NECK


@pytest.mark.parametrize("lean", [0.0, 0.15])
def test_a_sleeve_is_as_wide_as_asked_and_sewn_without_easing(lean: float) -> None:
    """Both halves on one level, each seam as long as its body's, and square at the underarm."""
    for person in people(COUNT):
        made = sleeve(person, 40, lean)
        if made.least < made.asked < made.widest:
            assert made.width == pytest.approx(made.asked, abs=0.01)
        for half, own in zip((made.back, made.front), lines(person), strict=True):
            assert line(half.seam).length == pytest.approx(line(own.whole).length, abs=0.02)
            assert half.level == pytest.approx(made.level, abs=0.01)
            end = half.turn.direction(1)
            assert end.y / end.x == pytest.approx(lean, abs=1e-6)
            assert half.seam.segments[0].direction(1).angle_to(half.turn.direction(0)) < 1e-6


def test_what_lies_over_the_shoulder_keeps_its_shape() -> None:
    """Neckline, shoulder and line are the body's own, laid down otherwise: lengths and angles."""
    for half, own in zip(
        (sleeve(AVERAGE, 40).back, sleeve(AVERAGE, 40).front), lines(AVERAGE), strict=True
    ):
        overarm = half.overarm(300)
        assert half.neckline.length() == pytest.approx(own.given.length())
        assert overarm.segments[0].length() == pytest.approx(own.shoulder.length)
        assert overarm.start == half.neckline.end
        corner = half.neckline.arriving().angle_to(overarm.leaving())
        own_shoulder = own.shoulder.end - own.shoulder.neck
        assert corner == pytest.approx(own.given.arriving().angle_to(own_shoulder))


def test_an_overarm_ends_smoothly_and_is_as_long_as_asked() -> None:
    """From the shoulder point to the hem, alike on both halves, without a corner on the way."""
    made = sleeve(AVERAGE, 40)
    for half in (made.back, made.front):
        parts = half.overarm(300).segments
        assert Path(parts[1:]).length() == pytest.approx(300)
        for one, other in pairwise(parts):
            assert one.direction(1).angle_to(other.direction(0)) < 1e-6


def test_widths_that_cannot_be_had_are_as_near_as_can_be() -> None:
    """Least and widest are told; wider sleeves lie flatter."""
    least, widest = reach(*lines(AVERAGE))
    for asked, given in ((least - 40, least), (widest + 40, widest)):
        assert raglan_sleeve(*lines(AVERAGE), asked).width == pytest.approx(given, abs=0.01)
    falls = [sleeve(AVERAGE, ease).back.falls for ease in (10, 30, 50, 70)]
    assert falls == sorted(falls, reverse=True)
    assert falls[0] > falls[-1] + 5


def test_a_centimetre_of_arm_moves_the_sleeve_a_little() -> None:
    """Its width by a centimetre, its underarm's level by less than two."""
    had = 0
    for person in people(COUNT, 5):
        one, other = (raglan_sleeve(*lines(person), person.arm + by) for by in (30.0, 40.0))
        if one.least < one.asked and other.asked < other.widest:
            had += 1
            assert other.width - one.width == pytest.approx(10, abs=0.02)
            assert abs(other.level - one.level) < 20
    assert had > COUNT / 2
