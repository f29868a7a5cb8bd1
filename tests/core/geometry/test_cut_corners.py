"""Corners of an outline: their tips, and the lines outside the edges between them."""

import math

import pytest

from tapewise_core.geometry.cut_corners import Corner, corners, outer_lines
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import RIGHT, Point

BEND = Point(100, 0)


def corner(degrees: float, first: float, second: float, *turned: bool) -> Corner:
    """A corner that turns by an angle, outwards where it is above 0, between two allowances."""
    onward = BEND + RIGHT.turned(degrees) * 100
    hem, back = turned or (False, False)
    edges = [
        Margin(ruled(Point(0, 0), BEND), first, turned=hem),
        Margin(ruled(BEND, onward), second, turned=back),
        Margin(ruled(onward, Point(0, 0)), 0),
    ]
    return corners(edges)[0]


def test_every_edge_ends_in_a_corner_with_the_next() -> None:
    """The last with the first."""
    edges = [Margin(ruled(Point(0, 0), BEND), 1), Margin(ruled(BEND, Point(100, 100)), 2)]
    edges.append(Margin(ruled(Point(100, 100), Point(0, 0)), 3))
    found = corners(edges)
    assert [(one.edge.width, one.after.width) for one in found] == [(1, 2), (2, 3), (3, 1)]
    assert [one.at for one in found] == [BEND, Point(100, 100), Point(0, 0)]


@pytest.mark.parametrize(("ratio", "kept"), [(2.99, True), (3.01, False)])
def test_a_tip_up_to_three_allowances_away_is_kept(ratio: float, kept: bool) -> None:
    """Beyond that the corner is blunted."""
    tip = corner(2 * math.degrees(math.acos(1 / ratio)), 10, 10).tip
    assert (tip is not None) == kept
    assert tip is None or (tip - BEND).length() == pytest.approx(10 * ratio)


@pytest.mark.parametrize("widths", [(10, 9.5), (9.5, 10)])
def test_the_wider_of_two_allowances_counts(widths: tuple[float, float]) -> None:
    """A tip 2.96 of the wider away is 3.1 of the narrower."""
    assert corner(2 * math.degrees(math.acos(1 / 3.04)), *widths).tip is not None


@pytest.mark.parametrize("widths", [(10, 10), (10, 14), (14, 10)])
def test_a_tip_is_as_far_from_both_edges_as_their_allowances(
    widths: tuple[float, float],
) -> None:
    """At 70 degrees both lines run on up to it."""
    one = corner(70, *widths)
    assert one.tip is not None
    off = [way.cross(one.tip - BEND) for way in (one.coming, one.going)]
    assert off == pytest.approx([-widths[0], -widths[1]])


@pytest.mark.parametrize("widths", [(20, 5), (5, 20), (10, 0), (0, 10)])
def test_a_wide_allowance_steps_down_to_a_narrow_one_without_a_tip(
    widths: tuple[float, float],
) -> None:
    """At 30 degrees the narrow one's line would meet it before its end."""
    assert corner(30, *widths).tip is None


def test_lines_that_run_straight_on_meet_nowhere() -> None:
    """There is no corner between them."""
    assert corner(0, 10, 10).tip is None


@pytest.mark.parametrize(
    ("degrees", "turned", "mirrored"),
    [
        (90, (True, False), True),
        (90, (False, True), True),
        (90, (True, True), False),
        (90, (False, False), False),
        (30, (True, False), False),
    ],
)
def test_a_hem_is_mirrored_where_it_meets_its_neighbour_steeply(
    degrees: float, turned: tuple[bool, bool], mirrored: bool
) -> None:
    """One of the two turns up."""
    assert corner(degrees, 10, 10, *turned).mirrored == mirrored


def test_the_turn_tells_outwards_from_inwards() -> None:
    """Its sine."""
    turns = [corner(degrees, 10, 10).turn for degrees in (30, 0, -30)]
    assert turns == pytest.approx([0.5, 0, -0.5], abs=1e-9)


def test_a_hem_is_trimmed_at_both_ends_and_walked_on() -> None:
    """Out along its neighbours' cut lines, along, and back in; its neighbours end where they
    meet it. An edge without allowance is its own line, beside a hem too."""
    a, b, c, d = Point(0, 0), Point(200, 0), Point(200, 150), Point(0, 150)
    middle = Point(120, 150)
    edges = [
        Margin(ruled(a, b), 0),
        Margin(ruled(b, c), 8),
        Margin(ruled(c, middle, d), 25, turned=True),
        Margin(ruled(d, a), 0),
    ]
    top, right, hem, left = [
        [(round(p.x, 9), round(p.y, 9)) for p in line] for line in outer_lines(corners(edges))
    ]
    assert top == [(0, 0), (200, 0)]
    assert left == [(0, 150), (0, 0)]
    assert right == [(208, 0), (208, 150), (208, 150)]
    assert hem == [(208, 150), (208, 175), (200, 175), (120, 175), (120, 175), (0, 175), (0, 150)]
