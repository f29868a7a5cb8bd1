"""Where a path reaches a height, and what of it lies nearest."""

from itertools import product

import pytest
from chance import POINTS, SHARE, paths
from hypothesis import given

from tapewise_core.geometry.crossings import distance_at_height, nearest, point_at_height
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point


@given(paths(), SHARE)
def test_a_height_between_the_ends_is_reached(path: Path, share: float) -> None:
    """The point found is at that height, on the path, and none before it is past the height."""
    height = path.start.y + (path.end.y - path.start.y) * share
    distance = distance_at_height(path, height)
    assert distance is not None
    at = point_at_height(path, height)
    assert at is not None
    assert at.y == pytest.approx(height, abs=1e-6)
    assert (path.at(distance)[0] - at).length() < 1e-6  # as near as both keep the height
    assert 0 <= distance <= path.length() + 1e-9


@given(paths())
def test_a_height_beyond_the_path_is_never_reached(path: Path) -> None:
    """Neither above all of it nor below."""
    heights = [point.y for point in path.flattened()]
    for height in (min(heights) - 1, max(heights) + 1):
        assert distance_at_height(path, height) is None
        assert point_at_height(path, height) is None


@given(paths(), POINTS)
def test_no_point_of_a_path_lies_nearer_than_the_nearest(path: Path, origin: Point) -> None:
    """Compared with a walk along it in small steps."""
    found = nearest(path, origin)[1]
    steps = [path.at(path.length() * i / 200)[0] for i in range(201)]
    assert min((at - found).length() for at in steps) <= path.length() / 200
    assert (found - origin).length() <= min((at - origin).length() for at in steps) + 1e-3


def test_the_first_of_two_heights_counts() -> None:
    """A path that comes back to a height is found where it is there first."""
    path = ruled(Point(0, 0), Point(30, 40), Point(60, 0))
    assert distance_at_height(path, 20) == pytest.approx(25)
    assert distance_at_height(path, 0) == 0
    assert distance_at_height(path, 40) == pytest.approx(50)
    assert distance_at_height(path.reversed(), 40) == pytest.approx(50)


def test_the_end_of_a_path_counts() -> None:
    """A hem that stops at the height reaches it."""
    assert distance_at_height(ruled(Point(0, 0), Point(0, 30)), 30) == pytest.approx(30)


def test_a_path_that_starts_at_the_height_is_there_at_once() -> None:
    """However it goes on; so does one whose second line starts there."""
    assert distance_at_height(ruled(Point(0, 5), Point(10, 5), Point(10, 50)), 5) == 0
    assert distance_at_height(ruled(Point(0, 5), Point(10, 0), Point(20, 0)), 0) is not None


def test_the_nearest_point_of_a_wave_is_on_its_nearer_crest() -> None:
    """Two places are nearly as near; the walk in 25 steps tells them apart."""
    wave = curved(Point(0, 0), Point(0, 200), Point(100, -200), Point(100, 10))
    found = nearest(wave, Point(20, 300))[1]
    steps = [wave.at(wave.length() * i / 4000)[0] for i in range(4001)]
    assert (found - min(steps, key=lambda p: (p - Point(20, 300)).length())).length() < 0.1


def test_the_way_to_the_nearest_place_is_walked() -> None:
    """Along a line and round its corner, from the path's start."""
    path = ruled(Point(0, 0), Point(100, 0), Point(100, 100))
    for origin, walked, place in ((Point(40, -3), 40, Point(40, 0)), (Point(105, 50), 150, None)):
        at, there = nearest(path, origin)
        assert at == pytest.approx(walked, abs=1e-3)
        assert place is None or (there - place).length() < 1e-3


def test_the_nearest_of_several_segments_counts() -> None:
    """From places all round a path of lines and curves, it is that of the segments looked at one
    by one."""
    line = ruled(Point(0, 0), Point(3, 8), Point(6, 1), Point(14, 2))
    path = line.then(curved(line.end, Point(20, 14), Point(6, 16), Point(9, 9)))
    for x, y in product(range(-2, 20), range(-2, 16)):
        origin = Point(x, y)
        alone = [nearest(Path((segment,)), origin)[1] for segment in path.segments]
        least = min((found - origin).length() for found in alone)
        distance, found = nearest(path, origin)
        assert (found - origin).length() == pytest.approx(least, abs=1e-9)
        assert (path.at(distance)[0] - found).length() < 1e-6
