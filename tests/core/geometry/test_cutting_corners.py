"""What a cut line does at corners and beside folds."""

import math
from itertools import pairwise

import pytest

from tapewise_core.geometry.cut_check import allowances_off
from tapewise_core.geometry.cutting import cut_line
from tapewise_core.geometry.outline import Margin, area, box_of
from tapewise_core.geometry.path import curved, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.rows import points, rows
from tapewise_core.geometry.teeth import teeth


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
    cut = points(cut_line(margins))
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
    whole = area(points(cut_line(margins)))
    for first in range(1, 4):
        turned = [*margins[first:], *margins[:first]]
        assert area(points(cut_line(turned))) == pytest.approx(whole, abs=1e-3)


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
    cut = points(cut_line(margins))
    assert box_of(cut).left == pytest.approx(50, abs=1e-6)
    assert box_of(cut).right == pytest.approx(160, abs=1e-6)
    assert max(allowances_off([rows(cut)], [margins])[0]) < 1e-3


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
    cut = cut_line(wedge(ratio, (10, 10)))
    assert cut[:, 0].max() == pytest.approx(400 + reach, abs=0.01)


def test_the_wider_of_two_allowances_says_what_is_too_long() -> None:
    """A tip of about 20 mm between 5 and 10 mm is kept."""
    assert box_of(points(cut_line(wedge(2.5, (10, 5))))).right > 400 + 10


def test_an_edge_without_allowance_gets_no_corner() -> None:
    """Three strips and the two corners between them, no more."""
    a, b, c, d = Point(0, 0), Point(100, 0), Point(100, 100), Point(0, 100)
    pairs = ((a, b, 10), (b, c, 10), (c, d, 10), (d, a, 0))
    cut = points(cut_line([Margin(ruled(p, q), width) for p, q, width in pairs]))
    assert area(cut) == pytest.approx(100 * 100 + 3 * 1000 + 2 * 100, abs=1e-3)
    even = [Margin(ruled(p, q), 0.5) for p, q, _ in pairs]
    assert area(points(cut_line(even))) == pytest.approx(101 * 101, abs=1e-3)


def capped(hem: float, side: float) -> list[Margin]:
    """A piece whose bent hem runs level into a side that goes straight down: a cap's underarm."""
    start, end = Point(130, 0), Point(100, 60)
    bent = curved(start, Point(120, 40), Point(125, 60), end)
    a, low, left = Point(0, 0), Point(100, 300), Point(0, 300)
    return [
        Margin(ruled(a, start), side),
        Margin(bent, hem),
        Margin(ruled(end, low), side),
        Margin(ruled(low, left), 20, turned=True),
        Margin(ruled(left, a), 0, fold=True),
    ]


@pytest.mark.parametrize("side", [8.0, 15.0, 30.0])
@pytest.mark.parametrize("hem", [0.0, 4.0, 8.0])
def test_a_wide_allowance_beside_a_narrow_one_starts_at_a_slant(hem: float, side: float) -> None:
    """At a corner that points inwards: no slit lies between, and both are as wide as asked."""
    margins = capped(hem, side)
    cut = points(cut_line(margins))
    assert teeth(rows(cut)) == ()
    assert max(allowances_off([rows(cut)], [margins])[0]) < 0.05


def test_an_edge_two_corners_on_counts_where_the_next_is_short() -> None:
    """A seam of 20 mm beside an edge without allowance: that edge is near to the one beyond."""
    a, b, c, d, e = Point(0, 0), Point(200, 0), Point(200, 20), Point(180, 60), Point(0, 60)
    wide = [
        Margin(ruled(a, b), 0),
        Margin(ruled(b, c), 30),
        Margin(ruled(c, d), 30),
        Margin(ruled(d, e), 30),
        Margin(ruled(e, a), 0, fold=True),
    ]
    cut = points(cut_line(wide))
    assert max(allowances_off([rows(cut)], [wide])[0]) < 0.05
    shifted = [point + Vector(2.0, 0) if point.x > 150 else point for point in cut]
    assert max(allowances_off([rows(shifted)], [wide])[0]) > 1.0


@pytest.mark.parametrize("along", [240, 283, 285.9, 300])
@pytest.mark.parametrize(("degrees", "beyond"), [(30, 0), (15, 4)])
def test_in_a_sharp_corner_the_cut_line_may_be_nearer_across_the_piece(
    along: float, degrees: float, beyond: float
) -> None:
    """A seam of 10 mm runs into a sharp tip, beside an edge with a narrower allowance or none:
    within 20 mm of the tip that edge's cut line is nearer than the seam's own, at whatever steps
    it is measured; and no nearer than it is."""
    tip = math.radians(degrees)
    a, b = Point(0, 0), Point(along, 0)
    c = Point(along - 200 * math.cos(tip), 200 * math.sin(tip))
    margins = [Margin(ruled(a, b), 10), Margin(ruled(b, c), beyond), Margin(ruled(c, a), 0)]
    cut = points(cut_line(margins))
    assert max(allowances_off([rows(cut)], [margins])[0]) < 1e-3
    narrow = [Point(p.x, p.y + 0.2) if p.y < -5 else p for p in cut]
    assert allowances_off([rows(narrow)], [margins])[0][0] == pytest.approx(0.2, abs=1e-3)


def hollowed(first: Margin, second: float) -> list[Margin]:
    """An outline whose first edge, 100 mm to the right, ends at one that goes up at a right angle,
    and whose other edges have no allowance."""
    bend, top = Point(100, 0), Point(100, -100)
    walk = [top, Point(300, -100), Point(300, 200), Point(0, 200), Point(0, 0)]
    plain = [Margin(ruled(a, b), 0) for a, b in pairwise(walk)]
    return [first, Margin(ruled(bend, top), second), *plain]


@pytest.mark.parametrize(
    ("widths", "tips"),
    [((20, 5), [(82, -20), (95, -55 / 6)]), ((5, 20), [(80, -18), (545 / 6, -5)])],
)
def test_a_wide_allowance_gains_its_width_over_six_fifths_of_it(
    widths: tuple[float, float], tips: list[tuple[float, float]]
) -> None:
    """Beside a narrower one in a hollow, from where it is as wide as that one, whichever of the two
    comes first: the narrow one's line ends on the slant."""
    first = Margin(ruled(Point(0, 0), Point(100, 0)), widths[0])
    cut = [(p.x, p.y) for p in points(cut_line(hollowed(first, widths[1])))]
    for tip in tips:
        assert any(place == pytest.approx(tip, abs=1e-3) for place in cut)


def test_a_hem_in_a_hollow_is_mirrored_at_whatever_width() -> None:
    """It turns up on to what it is sewn to, and starts at no slant."""
    hem = Margin(ruled(Point(0, 0), Point(100, 0)), 25, turned=True)
    cut = [(p.x, p.y) for p in points(cut_line(hollowed(hem, 8)))]
    assert sorted(place for place in cut if place[1] < 0 and place[0] < 99) == [
        pytest.approx(place, abs=1e-3) for place in ((0, -25), (92, -100), (92, -25))
    ]
