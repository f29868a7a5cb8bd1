"""Cut lines round an outline."""

import math

import pytest

from tapewise_core.geometry.cut_check import allowances_off
from tapewise_core.geometry.cutting import cut_line
from tapewise_core.geometry.outline import Margin, area, box_of, is_simple
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.rows import points, rows


def square(width: float) -> list[Margin]:
    """A square of 100 mm with the same allowance all round, clockwise as seen."""
    a, b, c, d = Point(0, 0), Point(100, 0), Point(100, 100), Point(0, 100)
    return [Margin(ruled(p, q), width) for p, q in ((a, b), (b, c), (c, d), (d, a))]


def leaning(hem: float, degrees: float, fold: bool = True) -> list[Margin]:
    """A half piece whose side leans outwards by an angle, with a turned hem."""
    out = 100 * math.tan(math.radians(degrees))
    a, b, c, d = Point(0, 0), Point(200, 0), Point(200 + out, 100), Point(0, 100)
    return [
        Margin(ruled(a, b), 10),
        Margin(ruled(b, c), 0),
        Margin(ruled(c, d), hem, turned=True),
        Margin(ruled(d, a), 0, fold=fold),
    ]


def test_corners_are_mitred() -> None:
    """A square grows to a larger square."""
    cut = points(cut_line(square(10)))
    assert area(cut) == pytest.approx(120 * 120)
    assert len(cut) <= 5


def test_a_fold_gets_no_allowance() -> None:
    """Cloth ends at the fold."""
    margins = square(10)
    margins[3] = Margin(margins[3].path, 0, fold=True)
    assert box_of(points(cut_line(margins))).left == 0


def test_a_turned_hem_is_mirrored_at_a_leaning_side() -> None:
    """2 cm of hem at 10 degrees ends 0.35 cm farther in on either side of the fold line."""
    cut = points(cut_line(leaning(20, 10)))
    lowest = [p.x for p in cut if p.y == pytest.approx(120)]
    corner = 200 + 100 * math.tan(math.radians(10))
    assert max(lowest) == pytest.approx(corner - 20 * math.tan(math.radians(10)), abs=1e-6)


def test_a_turned_hem_never_crosses_the_fold() -> None:
    """Beside the fold the hem ends on the fold."""
    assert box_of(points(cut_line(leaning(20, 10)))).left == pytest.approx(0)


def test_every_allowance_is_kept() -> None:
    """What is measured square from an edge is what was asked for."""
    margins = leaning(25, 8)
    assert max(allowances_off([cut_line(margins)], [margins])[0]) < 1e-6


def test_a_hem_that_runs_on_into_its_neighbour_is_not_mirrored() -> None:
    """A corner of 20 degrees would send its mirror image far past the hem."""
    a, b, c, d = Point(0, 0), Point(80, 0), Point(60, 80), Point(58, 200)
    margins = [
        Margin(ruled(a, b), 8),
        Margin(ruled(b, c), 25, turned=True),
        Margin(ruled(c, d), 8),
        Margin(ruled(d, Point(0, 200)), 25, turned=True),
        Margin(ruled(Point(0, 200), a), 0, fold=True),
    ]
    cut = points(cut_line(margins))
    assert is_simple(rows(cut))
    assert allowances_off([rows(cut)], [margins])[0][1] < 1e-6


def test_a_crossed_outline_is_not_simple() -> None:
    """A bow tie encloses no one area."""
    assert not is_simple(rows([Point(0, 0), Point(10, 10), Point(10, 0), Point(0, 10)]))
    assert is_simple(rows([Point(0, 0), Point(10, 0), Point(10, 10), Point(0, 10)]))


def test_three_corners_enclose_an_area_and_two_do_not() -> None:
    """A godet is a triangle; a line there and back is no piece."""
    assert is_simple(rows([Point(0, 0), Point(10, 0), Point(5, 20)]))
    assert not is_simple(rows([Point(0, 0), Point(10, 0)]))
    assert not is_simple(rows([Point(0, 0), Point(10, 0), Point(5, 0)]))
