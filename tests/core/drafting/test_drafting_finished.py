"""What the pictures of a piece's last steps are made from: notches, sizes, the mirrored corner."""

from __future__ import annotations

import pytest
from seams_made_up import rectangle

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.finished import SHARE, finished
from tapewise_core.drafting.piece import Edge, Notch, make_piece
from tapewise_core.geometry.crossings import nearest
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point, Vector


def test_notches_are_marked_where_they_lie_and_point_outwards() -> None:
    """Across the stitching line, from the edge's own start."""
    marks = (Notch("right", 50.0, "waist", 2), Notch("top", 0.0, "centre front"))
    piece = rectangle("back", 300, 400, notches=marks)
    done = with_allowances(Draft("Back").start("A", "here"), piece)
    waist, front = done.paper.marks
    assert (waist.at, waist.strokes, waist.name) == (Point(300, 50), 2, "waist")
    assert (waist.out - Vector(1, 0)).length() < 1e-9
    assert (front.out - Vector(0, -1)).length() < 1e-9


def test_a_piece_is_measured_all_round_and_at_its_levels() -> None:
    """Height, width, and the length of every edge but the fold."""
    shown = finished(rectangle("back", 300, 400, {"left": 0.0}, on_fold=True))
    assert [size.by.mm for size in shown.sizes] == [400, 300]
    assert sorted(edge.by.mm for edge in shown.edges) == [300, 300, 400]


@pytest.mark.parametrize("lean", [-20.0, 0.0, 20.0])
def test_a_mirrored_corner_is_as_far_below_the_fold_line_as_above(lean: float) -> None:
    """Square across the hem's fold line, both on the line to cut along."""
    a, b, c, d = Point(0, 0), Point(200, 0), Point(200 + lean, 100), Point(0, 100)
    edges = (
        Edge("top", ruled(a, b), 8),
        Edge("side", ruled(b, c), 10),
        Edge("hem", ruled(c, d), 25, turned=True),
        Edge("centre", ruled(d, a), 0, fold=True),
    )
    piece = make_piece("back", edges, {}, (a, d), on_fold=True)
    corner = finished(piece).corner
    assert corner is not None
    assert corner.corner == c
    assert 100 - corner.above.y == pytest.approx(SHARE * 25)
    assert corner.below.y - 100 == pytest.approx(100 - corner.above.y)
    assert corner.below.x == pytest.approx(corner.above.x)
    outline = ruled(*piece.cut, piece.cut[0])
    for spot in (corner.above, corner.below):
        assert (nearest(outline, spot)[1] - spot).length() < 1e-3


def test_without_a_hem_there_is_no_corner() -> None:
    """A fold takes nothing, and a strip has no hem."""
    assert finished(rectangle("strip", 300, 40)).corner is None
