"""A cut line drawn from corner to corner is the one round the piece and its allowances."""

import math

import pytest
from chance import amount
from cut_lines_compared import apart, between, pieces
from hypothesis import given
from hypothesis import strategies as st

from tapewise_core.garments.shelf import PAGES, garment
from tapewise_core.geometry.arc import arc
from tapewise_core.geometry.cut_check import allowances_off
from tapewise_core.geometry.cut_shapes import joined_round
from tapewise_core.geometry.cutting import cut_line, drawn
from tapewise_core.geometry.outline import Margin, area, is_simple
from tapewise_core.geometry.path import curved, ruled
from tapewise_core.geometry.point import RIGHT, Point, Vector
from tapewise_core.geometry.rows import points, rows


@pytest.mark.parametrize("name", PAGES)
def test_the_pieces_of_a_garment_are_cut_alike(name: str) -> None:
    """For bodies and styles far past the usual; few lines need shapes to be joined."""
    found = [[edge.margin() for edge in piece.edges] for piece in pieces(garment(name), 8, 11)]
    lines = [(drawn(margins), margins) for margins in found]
    off = [apart(line, margins) for line, margins in lines if line is not None]
    assert len(off) > max(0.9 * len(found), 5)
    assert max(off) < 1e-3


@st.composite
def dented(draw: st.DrawFn) -> list[Margin]:
    """A piece of three to eight edges round a middle, some bent, corners pointing out and in."""
    count = draw(st.integers(3, 8))
    reach = [draw(amount(150, 300)) for _ in range(count)]
    ways = [Vector(1, 0).turned(360 * at / count) for at in range(count)]
    corners = [Point(0, 0) + way * far for way, far in zip(ways, reach, strict=True)]
    edges = []
    for a, b in zip(corners, [*corners[1:], corners[0]], strict=True):
        bend = (b - a).square() * draw(st.just(0.0) | amount(-0.15, 0.15))
        path = curved(a, a.toward(b, 0.3) + bend, a.toward(b, 0.7) + bend, b)
        width = draw(st.just(0.0) | amount(0.1, 25))
        edges.append(Margin(path if bend.length() else ruled(a, b), width))
    return edges


@given(dented())
def test_a_piece_of_any_shape_is_cut_alike(margins: list[Margin]) -> None:
    """Where a hand would draw the line at all; but for the slits that joining leaves."""
    line = drawn(margins)
    assert line is None or between(line, margins) < 0.05


def test_a_fold_cuts_off_what_would_lie_beyond_it() -> None:
    """A V's allowance, square to its slanting line, reaches over the fold; drawn, it does not."""
    a, b, c, d = Point(0, 80), Point(100, 0), Point(150, 300), Point(0, 300)
    margins = [
        Margin(ruled(a, b), 10),
        Margin(ruled(b, c), 8),
        Margin(ruled(c, d), 25, turned=True),
        Margin(ruled(d, a), 0, fold=True),
    ]
    line = drawn(margins)
    assert line is not None
    assert line[:, 0].min() == pytest.approx(0, abs=1e-9)
    assert apart(line, margins) < 1e-6


def tight(radius: float) -> list[Margin]:
    """A square with a round bay in its upper edge [mm], allowances of 15 mm."""
    grip = radius * 4 / 3 * math.tan(math.pi / 8)
    left, low, right = Point(100 - radius, 0), Point(100, radius), Point(100 + radius, 0)
    first = curved(left, left + Vector(0, grip), low + Vector(-grip, 0), low)
    bay = first.then(curved(low, low + Vector(grip, 0), right + Vector(0, grip), right))
    rest = (Point(0, 0), left), (right, Point(200, 0)), (Point(200, 0), Point(200, 200))
    sides = [Margin(ruled(a, b), 15) for a, b in (*rest, (Point(200, 200), Point(0, 200)))]
    return [sides[0], Margin(bay, 15), *sides[1:], Margin(ruled(Point(0, 200), Point(0, 0)), 15)]


def test_a_bay_too_narrow_for_its_allowance_is_joined_as_shapes() -> None:
    """Drawn along, its line would cross itself; what is cut runs over the bay, in one line."""
    margins = tight(8)
    assert drawn(margins) is None
    cut = points(cut_line(margins))
    assert is_simple(rows(cut))
    assert area(cut) == pytest.approx(230 * 230, rel=1e-3)
    wide = tight(60)
    assert drawn(wide) is not None
    assert apart(cut_line(wide), wide) < 1e-3


def around(*edges: tuple[float, float, float]) -> list[Margin]:
    """An outline of straight edges, each from a place on with its allowance [mm]."""
    corners = [Point(x, y) for x, y, _ in edges]
    sides = zip(edges, corners, [*corners[1:], corners[0]], strict=True)
    return [Margin(ruled(a, b), width) for (_, _, width), a, b in sides]


def test_an_outline_of_one_edge_is_cut_and_measured() -> None:
    """A round patch has no corner at all."""
    margins = [Margin(arc(Point(0, 0), 60, 360, 0), 10)]
    cut = points(cut_line(margins))
    assert area(cut) == pytest.approx(math.pi * 70 * 70, rel=1e-3)
    assert max(allowances_off([rows(cut)], [margins])[0]) < 0.05


@pytest.mark.parametrize("short", [15, 30])
def test_beside_a_short_edge_in_a_hollow_nothing_is_drawn(short: float) -> None:
    """Shorter than its allowance of 20 mm, or than two: what its neighbour's has beyond the corner
    may come out again, which only shapes show."""
    margins = around(
        (0, 0, 20), (100, 0, 20), (100, short, 20), (200, short, 20), (200, 200, 20), (0, 200, 20)
    )
    assert drawn(margins) is None
    assert apart(cut_line(margins), margins) < 1e-3


def test_a_hem_that_turns_in_a_hollow_is_joined_as_shapes() -> None:
    """There is no drawing rule for it."""
    margins = around(
        (0, 0, 8), (200, 0, 8), (200, 100, 20), (120, 100, 8), (120, 200, 20), (0, 200, 8)
    )
    assert drawn(margins) is not None
    margins[2] = Margin(margins[2].path, 20, turned=True)
    assert drawn(margins) is None
    assert is_simple(cut_line(margins))


def test_an_outline_walked_the_other_way_is_not_drawn_inside_itself() -> None:
    """Its left is within; joined, its line is clockwise all the same."""
    margins = around((0, 0, 10), (0, 100, 10), (100, 100, 10), (100, 0, 10))
    assert drawn(margins) is None
    assert area(points(cut_line(margins))) > 0


@pytest.mark.parametrize("lean", [0, 33, 200])
@pytest.mark.parametrize("second", [10, 20])
def test_edges_that_all_but_run_straight_on_are_joined_without_a_slit(
    lean: float, second: float
) -> None:
    """Their square ends lie apart by the millionth part of what they are long, which would open
    all the way to the corner; nothing else is added."""
    along, onward = RIGHT.turned(lean), RIGHT.turned(lean + math.degrees(9e-7))
    start, corner = Point(0, 0), Point(0, 0) + along * 100
    end, down = corner + onward * 100, along.square() * 100
    walk = [start, corner, end, end + down, start + down]
    margins = [
        Margin(ruled(a, b), width)
        for a, b, width in zip(walk, [*walk[1:], start], (10, second, 10, 10, 10), strict=True)
    ]
    whole = joined_round(margins)
    assert min((point - corner).length() for point in whole) > 10 - 1e-3
    assert area(whole) == pytest.approx(200 * 100 + 6000 + 400 + (second - 10) * 110, abs=0.02)


def test_a_line_that_goes_back_on_itself_is_none() -> None:
    """Two edges there and back; three are a line round something."""
    a, b, c = Point(0, 0), Point(100, 0), Point(50, 80)
    assert drawn([Margin(ruled(a, b), 0), Margin(ruled(b, a), 0)]) is None
    line = drawn([Margin(ruled(a, b), 0), Margin(ruled(b, c), 0), Margin(ruled(c, a), 0)])
    assert line is not None
    assert sorted(map(tuple, line.tolist())) == [(0, 0), (50, 80), (100, 0)]


def test_points_all_but_on_the_one_before_are_left_out() -> None:
    """Less than a thousandth of a millimetre away, wherever on the line; farther ones stay."""
    for step, count in ((0.0005, 5), (0.002, 6)):
        spur = Point(100 + step, step)
        walk = [Point(0, 0), Point(100, 0), spur, Point(100, 100), Point(50, 120), Point(0, 100)]
        edges = zip(walk, [*walk[1:], walk[0]], strict=True)
        line = cut_line([Margin(ruled(a, b), 0) for a, b in edges])
        assert len(line) == count
        assert ([spur.x, spur.y] in line.tolist()) == (count == 6)
