"""Cut lines round pieces of any convex shape, and their areas."""

import math

import pytest
from chance import VECTORS, amount, outlines
from hypothesis import given, settings
from shapely.geometry import LinearRing, Polygon
from shapely.geometry import Point as Spot

from tapewise_core.geometry.cut_check import allowances_off
from tapewise_core.geometry.cut_corners import MITRE
from tapewise_core.geometry.cutting import cut_line
from tapewise_core.geometry.outline import Margin, area, box_of, is_simple
from tapewise_core.geometry.path import curved, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.rows import points, rows


def corners(margins: list[Margin]) -> list[Point]:
    """Where the edges meet."""
    return [margin.path.start for margin in margins]


def ring(points: list[Point]) -> LinearRing:
    """A closed line that another library measures."""
    return LinearRing([(point.x, point.y) for point in points])


@given(outlines())
def test_the_cut_line_is_an_allowance_away_from_every_edge(margins: list[Margin]) -> None:
    """Square out from the stitch line, clear of the corners; and nowhere nearer. Points of a cut
    line within a thousandth of a millimetre are one, so that two of them may be missing."""
    cut = ring(points(cut_line(margins)))
    assert max(allowances_off([cut_line(margins)], [margins])[0]) < 5e-3
    for margin in margins:
        for share in (0.35, 0.5, 0.65):
            at = margin.path.start.toward(margin.path.end, share)
            out = at + -margin.path.leaving().square() * margin.width
            assert cut.distance(Spot(out.x, out.y)) < 1e-3


@given(outlines())
def test_the_piece_lies_inside_its_cut_line(margins: list[Margin]) -> None:
    """One simple line round all of it, walked clockwise, its first point not repeated."""
    cut = points(cut_line(margins))
    assert is_simple(rows(cut))
    assert area(cut) >= area(corners(margins)) - 1e-6
    assert cut[0] != cut[-1]
    grown = Polygon([(p.x, p.y) for p in cut]).buffer(1e-3)
    assert grown.covers(Polygon([(p.x, p.y) for p in corners(margins)]))


@given(outlines(), amount(4, 25))
def test_an_even_allowance_adds_what_a_drafter_reckons(margins: list[Margin], width: float) -> None:
    """Edge times allowance, and a kite at every corner that is not blunted."""
    even = [Margin(margin.path, width) for margin in margins]
    wanted = area(corners(margins))
    for before, after in zip(even, [*even[1:], even[0]], strict=True):
        turn = math.radians(before.path.arriving().angle_to(after.path.leaving()))
        kite = width * width * math.tan(turn / 2)
        blunt = 1 / math.cos(turn / 2) > MITRE
        wanted += before.path.length() * width
        wanted += width * width * math.sin(turn) / 2 if blunt else kite
    assert area(points(cut_line(even))) == pytest.approx(wanted, rel=1e-5)


@settings(max_examples=30)
@given(amount(5, 60), amount(5, 20), amount(5, 20))
def test_a_bent_edge_keeps_its_allowance(bulge: float, side: float, hem: float) -> None:
    """Outwards or inwards, the cut line follows the curve's own normals."""
    a, b, c, d = Point(0, 0), Point(300, 0), Point(300, 400), Point(0, 400)
    for bend in (bulge, -bulge):
        bent = curved(b, Point(300 + bend, 120), Point(300 + bend, 280), c)
        margins = [
            Margin(ruled(a, b), 10),
            Margin(bent, side),
            Margin(ruled(c, d), hem),
            Margin(ruled(d, a), 0, fold=True),
        ]
        cut = points(cut_line(margins))
        found = allowances_off([rows(cut)], [margins])[0]
        assert found[1] < 0.05
        assert found[2] < 5e-3
        assert box_of(cut).left == pytest.approx(0, abs=1e-6)


@given(outlines(), VECTORS)
def test_area_and_extent_move_with_the_piece(margins: list[Margin], by: Vector) -> None:
    """A shift changes neither; walked backwards, the area changes its sign."""
    points = corners(margins)
    moved = [point + by for point in points]
    assert area(moved) == pytest.approx(area(points), abs=1e-3)
    assert area(points[::-1]) == pytest.approx(-area(points))
    assert area(points) == pytest.approx(Polygon([(p.x, p.y) for p in points]).area)
    box = box_of(points)
    shifted, wanted = box.moved(by), box_of(moved)
    assert (shifted.left, shifted.top) == pytest.approx((wanted.left, wanted.top))
    assert (shifted.right, shifted.bottom) == pytest.approx((wanted.right, wanted.bottom))
    assert wanted.left == pytest.approx(box.left + by.x)
    assert box.grown(5).width == pytest.approx(box.width + 10)
    assert box.grown(5).height == pytest.approx(box.height + 10)
    assert all(box.left <= p.x <= box.right and box.top <= p.y <= box.bottom for p in points)
