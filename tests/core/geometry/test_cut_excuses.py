"""What corners excuse: how far, how near, how far along, and beside which folds."""

import math

import pytest

from tapewise_core.geometry.cut_excuses import Excuse, Turn, excuse, turn
from tapewise_core.geometry.cut_spots import Spot
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import RIGHT, Point, Vector

CORNER = Point(0, 0)
PLAIN = Turn(1.0, 1.0, sharp=False)


def going(*stretches: tuple[float, float], to: Point | None = None) -> Path:
    """Straight stretches from the corner, or up to it: each a direction [degrees] and a length."""
    points = [CORNER]
    for degrees, length in stretches:
        points.append(points[-1] + RIGHT.turned(degrees) * length)
    back = CORNER - points[-1] if to else Vector(0, 0)
    return ruled(*(point + back for point in points))


def cornered(degrees: float) -> Turn:
    """A corner of two straight edges that turns by an angle, outwards where that is above 0."""
    after = Margin(ruled(CORNER, CORNER + RIGHT.turned(degrees) * 100), 10)
    return turn(Margin(ruled(Point(-100, 0), CORNER), 10), after)


@pytest.mark.parametrize(
    ("degrees", "longer", "left", "sharp"),
    [
        (0, 1, 1, False),
        (60, 1, 1, False),
        (120, 1, 1, True),
        (138, 1, 1, True),
        (150, 1, math.cos(math.radians(75)), True),
        (-90, math.sqrt(2), 1, False),
        (-150, 1 / math.cos(math.radians(75)), math.cos(math.radians(75)), False),
        (-178, 10, math.cos(math.radians(89)), False),
    ],
)
def test_a_corner_of_straight_edges(
    degrees: float, longer: float, left: float, sharp: bool
) -> None:
    """Inwards the cut line is farther by the mitre, no more than ten allowances; a tip that is
    blunted is nearer; and one of less than a right angle is sharp."""
    assert cornered(degrees) == Turn(pytest.approx(longer), pytest.approx(left), sharp)


def test_a_right_angle_is_not_sharp_and_a_needle_is() -> None:
    """A right angle is the last that is not; two edges on each other are as sharp as can be."""
    coming = Margin(ruled(Point(-100, 0), CORNER), 10)
    assert not turn(coming, Margin(ruled(CORNER, Point(0, 100)), 10)).sharp
    assert turn(coming, Margin(ruled(CORNER, Point(-100, 0)), 10)).sharp


@pytest.mark.parametrize(
    ("degrees", "opened"),
    [(39, 1), (41, 1 / math.sin(math.radians(41))), (60, 2 / math.sqrt(3)), (90, 1), (-60, 1)],
)
@pytest.mark.parametrize("turned", [(True, False), (False, True)])
def test_beside_a_hem_an_obtuse_corner_is_cut_off(
    degrees: float, opened: float, turned: tuple[bool, bool]
) -> None:
    """On the hem's own line, unless it turns too little to be mirrored; never one that points
    inwards, nor where both turn up, or neither."""
    paths = ruled(Point(-100, 0), CORNER), ruled(CORNER, CORNER + RIGHT.turned(degrees) * 100)
    one, other = (Margin(path, 10, turned=up) for path, up in zip(paths, turned, strict=True))
    assert turn(one, other).opened == pytest.approx(opened)
    both = (Margin(path, 10, turned=turned[0]) for path in paths)
    assert turn(*both).opened == 1


def test_where_edges_bend_a_hollow_is_as_deep_as_they_turn_further_on() -> None:
    """At 10 mm, the wider allowance, from the corner on either side; neither nearer nor farther."""
    before = going((40, 50), (20, 45), (0, 5), to=CORNER)
    after = going((-60, 5), (-90, 45), (-110, 50))
    for widths in ((10, 4), (4, 10)):
        found = turn(Margin(before, widths[0]), Margin(after, widths[1]))
        assert found.longer == pytest.approx(1 / math.cos(math.radians(110 / 2)))


def test_an_edge_shorter_than_its_allowance_bends_at_its_far_end() -> None:
    """Its turn at the very end counts, half a millimetre long as it is."""
    before = going((20, 0.5), (0, 7.5), to=CORNER)
    found = turn(Margin(before, 10), Margin(going((-60, 7.5), (-80, 0.5)), 10))
    assert found.longer == pytest.approx(1 / math.cos(math.radians(100 / 2)))


def excused(one: Excuse, far: float, walked: float, x: float = 500.0, y: float = 0.0) -> float:
    """How wrong 10 mm of allowance are that are really so wide, so far along from the corner."""
    ends = (walked, 400.0) if one.at_start else (400.0, walked)
    return one.excused(Spot(x, y, far, *ends), abs(far - 10))


def beside(width: float, corner: Turn = PLAIN, **more: float) -> Excuse:
    """A corner at the start of an edge of 10 mm, with one of another width beyond it."""
    path = ruled(Point(0, 100), CORNER)
    return excuse(Margin(path, 10), Margin(path, width), corner, 3, True, more.get("away", 0.0))


@pytest.mark.parametrize("at_start", [True, False])
def test_beside_a_corner_it_may_be_as_narrow_as_its_neighbour(at_start: bool) -> None:
    """And no wider than itself; up to 1.6 allowances and 3 mm from the corner."""
    path = ruled(Point(0, 100), CORNER)
    one = excuse(Margin(path, 10), Margin(path, 6), PLAIN, 3, at_start, 0.0)
    assert [excused(one, far, 18.9) for far in (5, 6, 7, 10, 12)] == [1, 0, 0, 0, 2]
    assert [excused(one, 7, walked) for walked in (0, 18.99, 19, 19.1)] == [0, 0, 3, 3]


def test_a_wider_neighbour_lets_it_be_wider() -> None:
    """As wide as that one, and as far along as its corner reaches."""
    one = beside(20)
    assert [excused(one, far, 34.9) for far in (9, 15, 21)] == [1, 0, 1]
    assert excused(one, 15, 35.1) == 5


def test_beside_a_hem_the_other_edge_may_be_wider() -> None:
    """By the share of its own that its corner is cut off by, not by the hem's; the hem may not."""
    opened, path = Turn(1.0, 1.0, sharp=False, opened=1.25), ruled(Point(0, 100), CORNER)
    seam, hem = Margin(path, 10), Margin(path, 11, turned=True)
    one = excuse(seam, hem, opened, 3, True, 0.0)
    assert [excused(one, far, 5) for far in (11, 12.5, 13)] == [0, 0, 0.5]
    one = excuse(hem, seam, opened, 3, True, 0.0)
    assert [excused(one, far, 5) for far in (11, 12.5)] == [0, 1.5]


def test_a_corner_beyond_a_short_neighbour_reaches_less_far() -> None:
    """By as much as that neighbour is long."""
    one = beside(6, away=7.0)
    assert [excused(one, 7, walked) for walked in (11.9, 12.1)] == [0, 3]


def test_a_hollow_reaches_as_far_as_its_allowances_meet() -> None:
    """Three allowances away, so √8 of them along, and 3 mm more."""
    one = beside(10, Turn(3.0, 1.0, sharp=False))
    assert [excused(one, far, 31.2) for far in (9, 29, 31)] == [1, 0, 1]
    assert excused(one, 29, 31.4) == 19


def test_a_blunted_tip_may_be_nearer() -> None:
    """By the share that is left of the narrower allowance."""
    one = beside(6, Turn(1.0, 0.25, sharp=True))
    assert [excused(one, far, 5) for far in (1, 1.5, 2)] == [0.5, 0, 0]


def test_a_fold_cuts_an_allowance_off_wherever_it_is_near() -> None:
    """Down to nothing; within the allowance's own width of the fold's line and a pencil's more,
    however far from the corner, on a fold that lies at a slant too."""
    start, along = Point(3, 4), Vector(0.6, 0.8)
    fold = Margin(ruled(start, start + along * 50), 0, fold=True)
    one = excuse(Margin(ruled(CORNER, Point(100, 0)), 10), fold, PLAIN, 3, True, 0.0)
    assert excused(one, 0, 5) == 0
    for side in (1, -1):
        for off, wrong in ((9.99, 0), (10.04, 0), (10.052, 8), (30, 8)):
            spot = start + along * 20 + along.square() * off * side
            assert excused(one, 2, 200, spot.x, spot.y) == wrong
    assert excused(beside(6), 2, 200, 5, 0) == 8


@pytest.mark.parametrize(
    ("width", "sharp", "across"),
    [(6, True, True), (10, True, False), (12, True, False), (6, False, False)],
)
def test_only_a_narrower_neighbour_round_a_sharp_corner_is_near_across_the_piece(
    width: float, sharp: bool, across: bool
) -> None:
    """One that stands off as far never is; the excuse tells which edge that is."""
    one = beside(width, Turn(1.0, 1.0, sharp))
    assert (one.across, one.at, one.beyond) == (across, 3, width)
