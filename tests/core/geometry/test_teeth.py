"""Teeth: where a cut line turns back on itself, and what is too small to be one."""

import pytest

from tapewise_core.geometry.point import RIGHT, Point
from tapewise_core.geometry.rows import rows
from tapewise_core.geometry.teeth import teeth

SQUARE = [Point(0, 0), Point(100, 0), Point(100, 100), Point(0, 100)]


@pytest.mark.parametrize(("degrees", "found"), [(130, 0), (134, 0), (136, 1), (146, 1), (180, 1)])
def test_a_turn_by_more_than_135_degrees_is_a_tooth(degrees: float, found: int) -> None:
    """At its own point, whichever way it turns."""
    for way in (1, -1):
        tip = Point(50, -40)
        after = tip + RIGHT.turned(way * degrees) * 30
        line = [Point(0, 0), Point(-20, -40), tip, after, Point(150, -20 * way)]
        assert teeth(rows(line)).count(tip) == found


@pytest.mark.parametrize(("size", "found"), [(0.05, 0), (0.2, 0), (0.21, 1), (0.5, 1)])
def test_points_nearer_than_a_fifth_of_a_millimetre_make_none(size: float, found: int) -> None:
    """Rounding alone makes such turns wild; one of exactly a fifth is not looked at either."""
    line = [Point(-50, 0), Point(0, 0), Point(size, 0), Point(0, 0), *SQUARE[1:]]
    assert bool(teeth(rows(line))) == bool(found)


def test_a_line_that_ends_all_but_where_it_began_has_none_there() -> None:
    """The last point and the first are next to each other, as any two are."""
    assert teeth(rows([*SQUARE, Point(0, -0.1)])) == ()
    assert teeth(rows([*SQUARE, Point(0, -0.5)])) == (Point(0, -0.5),)


def test_points_all_but_on_each_other_hide_no_tooth() -> None:
    """The turn is taken between those that are far enough apart."""
    tip = [Point(50, -30), Point(50.05, -30.05), Point(50.1, -30)]
    line = [SQUARE[0], Point(49, 0), *tip, Point(51, 0), *SQUARE[1:]]
    assert teeth(rows(line)) == (tip[0],)
