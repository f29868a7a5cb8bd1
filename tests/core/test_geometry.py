"""Lines, curves and paths."""

import math
import random

import pytest

from tapewise_core.geometry.crossings import distance_at_height, point_at_height
from tapewise_core.geometry.path import Path, curved, joined, ruled
from tapewise_core.geometry.point import DOWN, RIGHT, Point, Vector, crossing
from tapewise_core.geometry.segments import Cubic


def wild_cubic(rng: random.Random) -> Cubic:
    """A curve with handles anywhere in half a metre."""
    return Cubic(*(Point(rng.uniform(0, 500), rng.uniform(0, 500)) for _ in range(4)))


def test_a_square_turns_clockwise_as_seen() -> None:
    """Square to rightwards is down the paper."""
    assert RIGHT.square() == DOWN
    assert RIGHT.turned(90).y == pytest.approx(1)


def test_a_point_mirrored_twice_is_itself() -> None:
    """Mirroring is its own inverse."""
    a, b, p = Point(3, 4), Point(10, -2), Point(7, 7)
    again = p.mirrored(a, b).mirrored(a, b)
    assert (again - p).length() < 1e-9


def test_parallel_lines_do_not_meet() -> None:
    """There is no crossing, rather than one far away."""
    assert crossing(Point(0, 0), RIGHT, Point(0, 5), RIGHT) is None
    assert crossing(Point(0, 0), RIGHT, Point(5, 5), DOWN) == Point(5, 0)


def test_the_length_of_a_quarter_circle() -> None:
    """The usual four-handle quarter circle is within 0.03 % of the true arc."""
    k = 4 * (math.sqrt(2) - 1) / 3 * 100
    arc = Cubic(Point(100, 0), Point(100, k), Point(k, 100), Point(0, 100))
    assert arc.length() == pytest.approx(50 * math.pi, rel=3e-4)


def test_split_parts_add_up_and_meet() -> None:
    """Cutting a curve loses nothing."""
    rng = random.Random(1)
    for _ in range(50):
        curve, t = wild_cubic(rng), rng.random()
        head, tail = curve.split(t)
        assert head.end == tail.start
        assert (head.end - curve.at(t)).length() < 1e-9


def test_a_walked_distance_is_found_on_smooth_curves() -> None:
    """The part before it is as long as the walk."""
    path = curved(Point(0, 0), Point(80, 0), Point(150, 60), Point(160, 200))
    for share in (0.1, 0.35, 0.5, 0.9):
        before, after = path.split(path.length() * share)
        assert before.length() == pytest.approx(path.length() * share, abs=1e-6)
        assert before.length() + after.length() == pytest.approx(path.length(), abs=1e-6)


def test_flattening_keeps_its_tolerance() -> None:
    """No point of the curve is farther from the chords than promised."""
    from shapely.geometry import LineString
    from shapely.geometry import Point as Spot

    rng = random.Random(2)
    for _ in range(20):
        curve = wild_cubic(rng)
        chords = LineString([(p.x, p.y) for p in Path((curve,)).flattened(0.05)])
        far = max(chords.distance(Spot(p.x, p.y)) for p in (curve.at(i / 997) for i in range(998)))
        assert far <= 0.05


def test_a_path_walked_backwards_is_as_long_and_ends_where_it_began() -> None:
    """Reversal changes direction only."""
    path = joined(
        (
            ruled(Point(0, 0), Point(50, 0)),
            curved(Point(50, 0), Point(80, 0), Point(90, 20), Point(90, 60)),
        )
    )
    back = path.reversed()
    assert back.start == path.end
    assert back.length() == pytest.approx(path.length())
    assert back.leaving() == Vector(-path.arriving().x, -path.arriving().y)


def test_a_height_that_a_path_never_reaches_is_none() -> None:
    """No answer is made up."""
    path = ruled(Point(0, 0), Point(10, 100))
    assert point_at_height(path, 120) is None
    assert distance_at_height(path, 50) == pytest.approx(path.length() / 2)
