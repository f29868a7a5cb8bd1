"""Points, vectors and crossings of straight lines."""

import pytest
from chance import DIRECTIONS, POINTS, SHARE, VECTORS, amount
from hypothesis import assume, given

from tapewise_core.geometry.point import DOWN, LEFT, RIGHT, UP, Point, Vector, crossing

ANGLES = amount(-360, 360)


@given(POINTS, DIRECTIONS, POINTS, DIRECTIONS)
def test_two_lines_cross_on_both(a: Point, along: Vector, b: Point, other: Vector) -> None:
    """The point lies on either line; only lines that never meet have none."""
    at = crossing(a, along, b, other)
    if at is None:
        assert abs(along.cross(other)) < 1e-8
    elif abs(along.cross(other)) > 1e-3:
        assert abs((at - a).cross(along)) < 1e-6
        assert abs((at - b).cross(other)) < 1e-6


@given(VECTORS, ANGLES)
def test_turning_keeps_the_length_and_adds_the_angle(vector: Vector, angle: float) -> None:
    """A quarter is a square turn, and turning back gives the vector back."""
    turned = vector.turned(angle)
    assert turned.length() == pytest.approx(vector.length(), abs=1e-9)
    assert (turned.turned(-angle) - vector).length() < 1e-9
    assert (vector.turned(90) - vector.square()).length() < 1e-9
    assert vector.dot(vector.square()) == 0
    assert vector.cross(vector.square()) == pytest.approx(vector.length() ** 2)


@given(DIRECTIONS, amount(0, 180))
def test_the_angle_between_two_directions(along: Vector, angle: float) -> None:
    """Either way round it is the same, from 0 to 180 degrees."""
    other = along.turned(angle) * 7
    assert along.angle_to(other) == pytest.approx(angle, abs=1e-6)
    assert other.angle_to(along) == pytest.approx(angle, abs=1e-6)


@given(POINTS, POINTS, POINTS)
def test_a_mirrored_point_is_as_far_from_every_point_of_the_mirror(
    point: Point, a: Point, b: Point
) -> None:
    """And on the other side, at a right angle."""
    assume((a - b).length() > 1)
    image = point.mirrored(a, b)
    for at in (a, b, a.toward(b, 0.3)):
        assert (image - at).length() == pytest.approx((point - at).length(), abs=1e-6)
    assert abs((image - point).dot((b - a).unit())) < 1e-6


@given(POINTS, POINTS, SHARE)
def test_part_of_the_way(a: Point, b: Point, share: float) -> None:
    """So far from one end, the rest from the other."""
    at = a.toward(b, share)
    whole = (b - a).length()
    assert (at - a).length() == pytest.approx(share * whole, abs=1e-9)
    assert (b - at).length() == pytest.approx((1 - share) * whole, abs=1e-9)


def test_the_null_vector_has_no_direction() -> None:
    """It stays what it is."""
    assert Vector(0, 0).unit() == Vector(0, 0)
    assert Vector(3, -4).unit() == Vector(0.6, -0.8)


def test_the_four_ways_on_the_paper() -> None:
    """A millimetre each, in pairs that undo each other, a quarter turn apart."""
    assert (UP, LEFT) == (-DOWN, -RIGHT)
    assert (RIGHT.square(), DOWN.square()) == (DOWN, LEFT)
    assert RIGHT.length() == 1


def test_lines_that_hardly_turn_still_cross_far_away() -> None:
    """A ten-millionth of a right angle is a crossing; less than rounding leaves is none."""
    origin, below = Point(0, 0), Point(0, 1)
    found = crossing(origin, RIGHT, below, Vector(1, -1e-7))
    assert found is not None
    assert found.x == pytest.approx(1e7)
    assert crossing(origin, RIGHT, below, Vector(1, -1e-10)) is None
    assert crossing(origin, RIGHT * 1000, below, Vector(1000, -5e-7)) is None
