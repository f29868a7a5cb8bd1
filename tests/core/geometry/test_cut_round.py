"""Cut lines drawn from corner to corner: which are, and that they are the ones shapes join to."""

from collections.abc import Sequence

import pytest
from cut_lines_compared import between

from tapewise_core.geometry.cut_round import drawn_round
from tapewise_core.geometry.outline import Margin, is_simple
from tapewise_core.geometry.path import curved, ruled
from tapewise_core.geometry.point import RIGHT, Point
from tapewise_core.geometry.rows import rows

HAIR = 1e-4
"""What shapes, which are joined on a grid, are off by [mm²]."""


def around(corners: Sequence[Point], widths: Sequence[float]) -> list[Margin]:
    """Straight edges from each corner to the next, with their allowances."""
    ends = [*corners[1:], corners[0]]
    return [Margin(ruled(a, b), w) for a, b, w in zip(corners, ends, widths, strict=True)]


def hollow(degrees: float, first: float, second: float, long: float = 100) -> list[Margin]:
    """An outline that turns inwards by an angle from its first edge, 100 mm long, to its second."""
    bend = Point(100, 0)
    top = bend + RIGHT.turned(-degrees) * long
    corners = [Point(0, 0), bend, top, Point(400, top.y), Point(400, 200), Point(0, 200)]
    return around(corners, [first, second, 10, 10, 10, 10])


def off(margins: list[Margin]) -> float:
    """The area between the line as it is drawn, which crosses itself nowhere, and as shapes are
    joined [mm²]."""
    line = drawn_round(margins)
    assert line is not None
    assert is_simple(rows(line))
    return between(rows(line), margins)


@pytest.mark.parametrize("degrees", [30, 60, 90, 120])
@pytest.mark.parametrize(
    "widths", [(10, 10), (10, 30), (30, 10), (0.5, 0.5), (0.5, 30), (30, 0.5), (0, 0)]
)
def test_a_hollow_corner(degrees: float, widths: tuple[float, float]) -> None:
    """Its lines run up to where they cross, on what an allowance ends with too; where no edge has
    any they meet in the corner."""
    assert off(hollow(degrees, *widths)) < HAIR


@pytest.mark.parametrize("widths", [(0, 10), (10, 0), (0, 0.5), (0.5, 0)])
def test_a_hollow_corner_beside_an_edge_without_allowance(widths: tuple[float, float]) -> None:
    """That edge is crossed where it leans far over the allowance; where it leans away, or the
    allowance starts at a slant, they only touch, and nothing is drawn."""
    margins = hollow(150, *widths)
    margins[0] = Margin(ruled(Point(0, 0), Point(40, -3), Point(100, 0)), widths[0])
    assert off(margins) < HAIR
    assert [drawn_round(hollow(degrees, *widths)) for degrees in (30, 60, 120)] == [None] * 3


@pytest.mark.parametrize("degrees", [0, 30, 60, 90])
@pytest.mark.parametrize("widths", [(10, 10), (10, 20), (20, 10), (10, 0), (0, 10), (0, 0)])
def test_a_corner_that_runs_on_or_points_outwards(
    degrees: float, widths: tuple[float, float]
) -> None:
    """A mitre, a step, or nothing beside an edge without allowance."""
    bend = Point(100, 0)
    low = bend + RIGHT.turned(degrees) * 80
    corners = [Point(0, 0), bend, low, Point(low.x, 300), Point(0, 300)]
    assert off(around(corners, [*widths, 10, 10, 10])) < HAIR


@pytest.mark.parametrize("lean", [-60, 0, 60])
def test_a_hem_turns_up_with_mirrored_corners(lean: float) -> None:
    """On both sides; in a hollow there is no drawing rule for it."""
    corners = [Point(0, 0), Point(200, 0), Point(200 + lean, 150), Point(-lean, 150)]
    top, right, hem, left = around(corners, [8, 8, 25, 8])
    assert off([top, right, Margin(hem.path, 25, turned=True), left]) < HAIR
    inner = hollow(90, 10, 10)
    assert drawn_round([inner[0], Margin(inner[1].path, 10, turned=True), *inner[2:]]) is None


@pytest.mark.parametrize(("long", "drawn"), [(59, False), (60, True), (62, True)])
def test_an_edge_shorter_than_twice_its_wider_neighbours_square_end(
    long: float, drawn: bool
) -> None:
    """That might come out again beyond it, however narrow its own allowance is."""
    top = Point(100, -long)
    corners = [Point(0, 0), Point(100, 0), top, Point(400, -long), Point(400, 200), Point(0, 200)]
    for widths in ([30, 10, 10, 10, 10, 10], [30, 30, 10, 10, 10, 10]):
        line = drawn_round(around(corners, widths))
        assert (line is not None) == drawn
    assert drawn_round(hollow(60, 30, 10, long=56)) is not None


@pytest.mark.parametrize(("long", "drawn"), [(19, False), (20, True), (21, True)])
def test_an_edge_shorter_than_its_allowance_is_not_drawn_round(long: float, drawn: bool) -> None:
    """One is enough."""
    corners = [Point(0, 0), Point(100, 0), Point(100, long), Point(0, long)]
    line = drawn_round(around(corners, [5, 20, 5, 5]))
    assert (line is not None) == drawn


def test_two_edges_are_drawn_round_and_one_is_not() -> None:
    """Half a disc; a drop that meets itself has no corner between two edges."""
    a, b = Point(0, 0), Point(200, 0)
    bow = curved(a, Point(20, -150), Point(180, -150), b)
    assert off([Margin(bow, 10), Margin(ruled(b, a), 10)]) < 0.05
    drop = curved(a, Point(200, -150), Point(200, 150), a)
    assert drawn_round([Margin(drop, 10)]) is None


@pytest.mark.parametrize("degrees", [0, 30, 100, 215])
def test_what_lies_beyond_a_fold_is_left_out_however_the_fold_lies(degrees: float) -> None:
    """A V's allowance reaches over it, away from the paper's zero."""
    corners = [Point(0, 80), Point(100, 0), Point(150, 300), Point(0, 300)]
    turned = [Point(70, 40) + (p - Point(0, 0)).turned(degrees) for p in corners]
    *cut, fold = around(turned, [8, 8, 25, 0])
    assert off([*cut, Margin(fold.path, 0, fold=True)]) < 1e-3
