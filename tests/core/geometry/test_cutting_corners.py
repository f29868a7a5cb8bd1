"""What a cut line does at corners and beside folds, and how its allowance is measured."""

import math

import pytest

from tapewise_core.geometry.cutting import allowance_kept, cut_line
from tapewise_core.geometry.outline import Margin, area, box_of
from tapewise_core.geometry.path import joined, ruled
from tapewise_core.geometry.point import Point


def leaning(degrees: float, side: float = 0.0, hem: float = 20.0) -> list[Margin]:
    """A half piece of 200 by 100 mm whose side leans outwards, its hem turned up."""
    out = 100 * math.tan(math.radians(degrees))
    a, b, c, d = Point(0, 0), Point(200, 0), Point(200 + out, 100), Point(0, 100)
    return [
        Margin(ruled(a, b), 10),
        Margin(ruled(b, c), side),
        Margin(ruled(c, d), hem, turned=True),
        Margin(ruled(d, a), 0, fold=True),
    ]


def lowest_corner(margins: list[Margin]) -> float:
    """How far out the lower edge of the hem reaches [mm]."""
    cut = cut_line(margins)
    lowest = max(point.y for point in cut)
    return max(point.x for point in cut if point.y > lowest - 0.01)


@pytest.mark.parametrize("degrees", [10, -10, 30, -30])
@pytest.mark.parametrize("side", [0.0, 8.0])
def test_a_hem_turned_up_lies_on_what_it_is_sewn_to(degrees: float, side: float) -> None:
    """20 mm below the fold line it is as wide as the piece and its allowance 20 mm above."""
    slope = math.radians(degrees)
    wanted = 200 + 80 * math.tan(slope) + side / math.cos(slope)
    assert lowest_corner(leaning(degrees, side)) == pytest.approx(wanted, abs=1e-3)


@pytest.mark.parametrize("side", [49.9, -49.9])
def test_a_hem_is_mirrored_down_to_forty_degrees(side: float) -> None:
    """So much and no less is turned between a hem and its neighbour."""
    slope = math.radians(side)
    assert lowest_corner(leaning(side)) == pytest.approx(200 + 80 * math.tan(slope), abs=1e-3)


@pytest.mark.parametrize("side", [50.1, -50.1])
def test_a_flatter_corner_stays_square(side: float) -> None:
    """Its mirror image would reach far past the hem."""
    corner = 200 + 100 * math.tan(math.radians(side))
    assert lowest_corner(leaning(side)) == pytest.approx(corner, abs=1e-3)


@pytest.mark.parametrize("degrees", [10, -20])
def test_it_is_no_matter_which_edge_is_named_first(degrees: float) -> None:
    """Every edge has its own neighbours, the first and the last too."""
    margins = leaning(degrees, 8)
    whole = area(cut_line(margins))
    for first in range(1, 4):
        turned = [*margins[first:], *margins[:first]]
        assert area(cut_line(turned)) == pytest.approx(whole, abs=1e-3)


@pytest.mark.parametrize(("top", "bottom"), [(-30, 0), (0, 30), (-30, 30), (30, -30)])
def test_an_allowance_at_a_slant_ends_at_the_fold(top: float, bottom: float) -> None:
    """The fold lies where it lies, away from the paper's zero; nothing reaches beyond it."""
    a, b, c, d = Point(50, 40), Point(150, 40 + top), Point(150, 140 + bottom), Point(50, 140)
    margins = [
        Margin(ruled(a, b), 10),
        Margin(ruled(b, c), 10),
        Margin(ruled(c, d), 10),
        Margin(ruled(d, a), 0, fold=True),
    ]
    cut = cut_line(margins)
    assert box_of(cut).left == pytest.approx(50, abs=1e-6)
    assert box_of(cut).right == pytest.approx(160, abs=1e-6)
    for margin in margins[:3]:
        assert allowance_kept(cut, margin) == pytest.approx((10, 10), abs=1e-3)


def wedge(ratio: float, widths: tuple[float, float]) -> list[Margin]:
    """A long wedge whose tip, mitred, lies so many allowances away from its corner."""
    half = math.asin(1 / ratio)
    tip, back = Point(400, 0), 400 * math.tan(half)
    top, low = Point(0, -back), Point(0, back)
    first, second = widths
    return [
        Margin(ruled(top, tip), first),
        Margin(ruled(tip, low), second),
        Margin(ruled(low, top), 10),
    ]


@pytest.mark.parametrize(("ratio", "reach"), [(2.95, 29.5), (3.1, 10 / 3.1)])
def test_a_corner_longer_than_three_allowances_is_blunted(ratio: float, reach: float) -> None:
    """A needle of cloth is no use; up to three allowances the mitre stays."""
    assert box_of(cut_line(wedge(ratio, (10, 10)))).right == pytest.approx(400 + reach, abs=0.01)


def test_the_wider_of_two_allowances_says_what_is_too_long() -> None:
    """A tip of about 20 mm between 5 and 10 mm is kept."""
    assert box_of(cut_line(wedge(2.5, (10, 5)))).right > 400 + 10


def test_an_edge_without_allowance_gets_no_corner() -> None:
    """Three strips and the two corners between them, no more."""
    a, b, c, d = Point(0, 0), Point(100, 0), Point(100, 100), Point(0, 100)
    pairs = ((a, b, 10), (b, c, 10), (c, d, 10), (d, a, 0))
    cut = cut_line([Margin(ruled(p, q), width) for p, q, width in pairs])
    assert area(cut) == pytest.approx(100 * 100 + 3 * 1000 + 2 * 100, abs=1e-3)
    even = [Margin(ruled(p, q), 0.5) for p, q, _ in pairs]
    assert area(cut_line(even)) == pytest.approx(101 * 101, abs=1e-3)


def slanting(first: float, last: float) -> list[Point]:
    """A cut line above a level edge of 200 mm, further away at its end than at its start."""
    return [Point(0, -first), Point(200, -last), Point(200, 50), Point(0, 50)]


LEVEL = ruled(Point(0, 0), Point(200, 0))
IN_TWO = ruled(Point(0, 0), Point(100, 0), Point(200, 0))


@pytest.mark.parametrize("path", [LEVEL, IN_TWO], ids=["one line", "two lines"])
@pytest.mark.parametrize(
    ("width", "first", "last", "wanted"),
    [
        (10.0, 10.0, 30.0, (13.0, 27.0)),  # three allowances from either end
        (1.0, 1.0, 5.0, (1.2, 4.8)),  # a twentieth of the edge
        (60.0, 60.0, 80.0, (68.0, 72.0)),  # two fifths, where three allowances are too many
    ],
)
def test_the_allowance_is_measured_clear_of_the_corners(
    path: object, width: float, first: float, last: float, wanted: tuple[float, float]
) -> None:
    """The least and the greatest that is found between there and there."""
    margin = Margin(IN_TWO if path is IN_TWO else LEVEL, width)
    assert allowance_kept(slanting(first, last), margin) == pytest.approx(wanted, abs=1e-6)


@pytest.mark.parametrize(("away", "found"), [(39.5, 39.5), (40.5, 0.0)])
def test_a_cut_line_too_far_away_is_no_allowance(away: float, found: float) -> None:
    """Further than three allowances and 10 mm there is another edge, not this one's."""
    assert allowance_kept(slanting(away, away), Margin(LEVEL, 10)) == (found, found)


def test_a_nick_in_the_middle_is_found() -> None:
    """One of the eleven places is the middle, on an edge of two lines their corner."""
    nicked = [Point(0, -10), Point(99, -10), Point(100, -4), Point(101, -10), *slanting(9, 10)[1:]]
    for path in (LEVEL, IN_TWO):
        assert allowance_kept(nicked, Margin(path, 10)) == pytest.approx((4, 10))


def test_a_bent_edge_is_measured_square_to_its_own_lines() -> None:
    """Each line of it where it lies, not where it would run on to."""
    bent = joined((ruled(Point(0, 0), Point(90, 0)), ruled(Point(90, 0), Point(170, -60))))
    cut = [Point(0, -10), Point(90 - 10 / 3, -10), Point(164, -68), Point(170, 50), Point(0, 50)]
    assert allowance_kept(cut, Margin(bent, 10)) == pytest.approx((10, 10), abs=1e-6)


def test_no_allowance_at_all_is_found_as_none() -> None:
    """An edge cut along its stitch line has nothing outside it; cut inside, it is off by that."""
    assert allowance_kept(slanting(0, 0), Margin(LEVEL, 0)) == (0.0, 0.0)
    assert allowance_kept(slanting(-2, -2), Margin(LEVEL, 0)) == (0.0, 2.0)
