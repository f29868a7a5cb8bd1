"""Parts of a circle."""

import math

import pytest
from chance import POINTS, amount
from hypothesis import given

from tapewise_core.geometry.arc import WIDEST, arc, on_circle
from tapewise_core.geometry.point import Point


@given(POINTS, amount(20, 1500), amount(-360, 360), amount(1, 360))
def test_an_arc_keeps_its_radius_and_length(
    centre: Point, radius: float, first: float, opening: float
) -> None:
    """Off by less than 4e-7 radii anywhere, and as long as radius times angle."""
    part = arc(centre, radius, first, first + opening)
    assert opening / WIDEST <= len(part.segments) + 1e-9 < opening / WIDEST + 1
    assert part.length() == pytest.approx(radius * math.radians(opening), rel=1e-6)
    for segment in part.segments:
        for t in (0.0, 0.1, 0.2, 0.5, 0.7, 1.0):
            assert abs((segment.at(t) - centre).length() - radius) < 4e-7 * radius
    for at, direction in ((part.start, first), (part.end, first + opening)):
        assert (at - on_circle(centre, radius, direction)).length() < 1e-6


def test_an_arc_runs_from_straight_down_towards_the_right() -> None:
    """A quarter from 0 to 90 degrees starts below the centre and ends beside it."""
    part = arc(Point(10, 20), 100, 0, 90)
    assert (part.start.x, part.start.y) == pytest.approx((10, 120))
    assert (part.end.x, part.end.y) == pytest.approx((110, 20))
    assert part.leaving().x == pytest.approx(1)
    assert part.arriving().y == pytest.approx(-1)
    back = arc(Point(10, 20), 100, 90, 0)
    assert back.length() == pytest.approx(part.length())
    assert back.leaving().y == pytest.approx(1)


def test_a_cubic_spans_thirty_degrees_and_no_more() -> None:
    """A quarter takes three; a hair over thirty degrees takes two."""
    counts = [
        len(arc(Point(0, 0), 100, 10, 10 + opening).segments) for opening in (30, 30.00001, 90)
    ]
    assert counts == [1, 2, 3]
    assert len(arc(Point(0, 0), 100, 40, 40).segments) == 1
