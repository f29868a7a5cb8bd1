"""Armhole limits, caps, sleeve hems and waist darts, one by one."""

from __future__ import annotations

import math

import pytest
from msgspec.structs import replace

from tapewise_core.geometry.point import Point
from tapewise_core.parts.shape.across_point import carried_out
from tapewise_core.parts.shape.armhole import armhole, tight
from tapewise_core.parts.shape.cap import cap, unasked_ease
from tapewise_core.parts.shape.rounded import least_radius, rounded
from tapewise_core.parts.shape.sleeve import sleeve
from tapewise_core.parts.shape.underarm import narrowed
from tapewise_core.parts.shape.waist_darts import DartLevels, back_dart, front_dart
from tapewise_core.text.told import Reader, Told
from tapewise_core.units import Unit


def spelt(told: Told) -> str:
    """A sentence in centimetres."""
    return Reader(Unit.CM).spell(told)


def test_every_move_of_the_across_point_is_told() -> None:
    """Too wide for the shoulder, too far in for it, too wide for the side."""
    end, under = Point(185, 30), Point(235, 196)
    assert armhole(end, 25, 170, under, front=False).told == ()
    wide = armhole(end, 25, 190, under, front=False)
    assert wide.across.x == 180
    assert "1 cm narrower than measured" in spelt(wide.told[0])
    deep = armhole(end, 5, 120, under, front=False)
    assert deep.across.x == pytest.approx(185 - 0.9 * 83 * math.tan(math.radians(9)))
    assert "wider than measured" in spelt(deep.told[0])
    slim = armhole(end, 25, 175, Point(195, 196), front=True)
    assert slim.across.x == 167
    assert "across front" in spelt(slim.told[0])
    assert tight(slim)
    assert carried_out(190, 185) == 10
    assert carried_out(300, 185) == 15


def test_a_pencils_diagonal_lies_on_the_curve() -> None:
    """The distance told from the corner is where the curve crosses the diagonal."""
    hole = armhole(Point(185, 30), 25, 170, Point(235, 196), front=False)
    reach = hole.diagonal / math.sqrt(2)
    on = Point(hole.corner.x + reach, hole.corner.y - reach)
    assert min((on - p).length() for p in hole.path.flattened(0.001)) < 0.2


def test_the_rounding_is_about_as_round_as_can_be() -> None:
    """Within 8 % of a search over all handles, in steep and flat corners."""
    for long in (20, 35, 50, 70, 100):
        for turn in (25, 70, 90, 105):
            a, c = Point(0, 0), Point(0, long)
            b = c + (c - a).unit().turned(-turn) * 100
            tries = [
                least_radius(replace(rounded(a, c, b), leave=a.toward(c, i), arrive=b.toward(c, j)))
                for i in (0.4, 0.5, 0.6, 0.7, 0.85)
                for j in (0.4, 0.5, 0.6, 0.7, 0.85)
            ]
            assert least_radius(rounded(a, c, b)) >= 0.92 * max(tries)


def test_a_cap_out_of_reach_says_what_can_be_had() -> None:
    """As near as the armhole allows, with both limits."""
    far = cap(210, 200, 600)
    assert far.width == pytest.approx(far.widest, abs=1e-3)
    assert "takes a sleeve with" in spelt(far.held_back(290))
    assert cap(210, 200, 320).held_back(290) == ()
    assert unasked_ease(210, 200, 290, 180, 20, 60) % 5 == 0


def test_sleeves_are_trued() -> None:
    """Under-seams equal, the hem square to both, its corners 180° together."""
    made = sleeve(cap(210, 200, 330), 560, 200)
    assert made.back_seam.length() == pytest.approx(made.front_seam.length())
    assert abs(made.hem.leaving().dot(made.back_seam.arriving())) < 1e-9
    assert abs(made.hem.arriving().dot(made.front_seam.arriving())) < 1e-9
    assert made.hem.start == made.back_seam.end
    straight = sleeve(cap(210, 200, 330), 300, 330)
    assert straight.hem.start.y == straight.hem.end.y == 300
    assert cap(210, 200, 330).stiff(100)
    assert not cap(210, 200, 330).stiff(200)


def test_waist_darts_take_up_their_intake_on_the_waist() -> None:
    """The outline is as wide as the intake there, pointed at both ends or open below."""
    at = DartLevels(250, 410, 610)
    back = back_dart(24, at, 200)
    assert (back.middle, back.top, back.bottom) == (100, 240, 540)
    front = front_dart(24, at, 200, 95, 30)
    assert (front.middle, front.top, front.waist, front.bottom) == (95, 305, 440, 530)
    assert front_dart(24, at, 120, 95, 0).middle == 66
    xs = [p.x for p in back.path().flattened()]
    assert max(xs) - min(xs) == 24
    assert back_dart(24, DartLevels(250, 410, None), 200).bottom == 410


def test_a_hem_drops_as_its_sleeve_narrows() -> None:
    """The corner moves down the seam by 0.3 of the half hem times the taper."""
    solved = cap(210, 200, 330)
    made = sleeve(solved, 560, 200)
    taper = 65 / (560 - solved.height)
    assert made.hem.start.y - 560 == pytest.approx(0.3 * 100 * taper, rel=0.02)


def test_a_thick_arm_takes_from_front_and_back() -> None:
    """Of what is short 70 % comes off the front, 30 % off the back, 10 and 5 at most."""
    some = narrowed(310, 45, 45)
    short = 310 / math.pi + 5 - 90
    assert (some.front, some.back) == pytest.approx((0.7 * short, 0.3 * short))
    most = narrowed(400, 40, 40)
    assert (most.front, most.back) == (10, 5)
    assert narrowed(250, 60, 60).told == ()
