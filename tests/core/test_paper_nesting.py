"""Pieces laid by their outlines into a strip: none touch, and long paper is not wasted."""

from __future__ import annotations

from itertools import combinations
from math import hypot

import pytest
from making import top
from paper_samples import pattern
from shapely.geometry import Polygon

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Layer, Stroke, TextLine
from tapewise_core.paper.nesting import nested, nested_pages
from tapewise_core.paper.packing import GAP, filled_strip, ink_box
from tapewise_core.paper.roll import rolled
from tapewise_core.paper.sizes import MARGIN, ROLL
from tapewise_core.paper.turning import ANGLES, rotated, ways
from tapewise_core.tasks.contents import pattern_set


def cut(*corners: tuple[float, float]) -> Drawing:
    """Return a piece that is nothing but its cut line."""
    points = [Point(x, y) for x, y in corners]
    line = Stroke(ruled(*points, points[0]), Layer.CUT, closed=True, part="piece")
    return Drawing("piece", "", Box(0, 0, 1, 1), (line,))


def outline(drawing: Drawing) -> Polygon:
    """Return what is inside a piece's cut line."""
    (line,) = (i for i in drawing.inks if isinstance(i, Stroke) and i.layer is Layer.CUT)
    return Polygon([(p.x, p.y) for p in line.path.flattened(0.1)])


@pytest.mark.parametrize("degrees", [*ANGLES, 20.0])
def test_a_turned_piece_is_the_same_piece(degrees: float) -> None:
    """Lengths and areas stay, and words turn along with the lines they name."""
    piece = pattern().pieces[0]
    other = rotated(piece, degrees)
    assert outline(other).area == pytest.approx(outline(piece).area)
    for before, after in zip(piece.inks, other.inks, strict=True):
        if isinstance(before, Stroke) and isinstance(after, Stroke):
            assert after.path.length() == pytest.approx(before.path.length())
        if isinstance(before, TextLine) and isinstance(after, TextLine):
            assert after.angle - before.angle == degrees
            assert hypot(after.at.x, after.at.y) == pytest.approx(hypot(before.at.x, before.at.y))


def test_two_halves_of_a_square_share_its_room() -> None:
    """By their boxes two such triangles would take twice as much."""
    lower = cut((0, 0), (0, 400), (400, 400))
    upper = cut((0, 0), (400, 0), (400, 400))
    laid = nested([[lower], [upper]], 460)
    assert max(ink_box(one).bottom for one in laid) < 450
    assert max(ink_box(one).bottom for one in filled_strip([lower, upper], 460)) > 800


def test_a_piece_lies_on_the_first_page_with_room() -> None:
    """Also where another of the set has begun a new page before it."""
    large, small = cut((0, 0), (700, 0), (700, 600), (0, 600)), cut((0, 0), (90, 0), (0, 90))
    first, second = nested_pages([[large], [large], [small]], 900, 800)
    assert [len(first), len(second)] == [2, 1]
    assert all(ink_box(one).bottom <= 797 for one in (*first, *second))


def test_no_two_pieces_come_near_each_other() -> None:
    """Scissors go between any two, and all lie on the paper."""
    pieces = pattern(times=2).pieces
    laid = nested([ways(piece) for piece in pieces], 900)
    for one, other in combinations(map(outline, laid), 2):
        assert one.distance(other) >= GAP - 0.01
    assert all(ink_box(one).left >= 2.9 and ink_box(one).right <= 897.1 for one in laid)


def test_a_piece_too_wide_both_ways_goes_over_the_corner() -> None:
    """A quarter of a ring of one metre lies at 45 degrees on a roll of 914 mm."""
    outer = ((1000, 0), (920, 380), (707, 707), (380, 920), (0, 1000))
    slice_ = cut((300, 0), *outer, (0, 300), (212, 212))
    assert min(ink_box(slice_).width, ink_box(slice_).height) > 900
    assert min(ink_box(way).width for way in ways(slice_)) < 800


def test_a_top_takes_less_of_the_roll_than_by_its_boxes() -> None:
    """And never more."""
    drawn = pattern_set(top())
    length = sum(sheet.height for sheet in rolled(drawn, ROLL, MARGIN).sheets)
    boxes = max(ink_box(one).bottom for one in filled_strip(drawn.pieces, ROLL - 2 * MARGIN))
    assert length < boxes + 150
