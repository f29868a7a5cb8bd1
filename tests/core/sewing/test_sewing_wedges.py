"""Panels laid head to tail, checked against wedges whose sizes are plain."""

from __future__ import annotations

import pytest

from tapewise_core.drafting.piece import Edge, Piece, make_piece
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.sewing.wedges import SPACE, is_wedge, laid, pitch


def wedge(top: float, foot: float, high: float, count: int = 4, turnable: bool = True) -> Piece:
    """Return a panel upright about its middle, widths at top and foot [mm], no allowances."""
    corners = Point(-top / 2, 0), Point(top / 2, 0), Point(foot / 2, high), Point(-foot / 2, high)
    ends = zip(("waist", "side", "hem", "side_2"), corners, (*corners[1:], corners[0]), strict=True)
    edges = tuple(Edge(name, ruled(start, end), 0.0) for name, start, end in ends)
    grain = (Point(0, high), Point(0, 0))
    return make_piece("panel", edges, {}, grain, count=count, turnable=turnable)


def test_only_several_whole_panels_without_a_grain_are_wedges() -> None:
    """One alone, or one with a grain of its own, is not."""
    assert is_wedge(wedge(100, 300, 500))
    assert not is_wedge(wedge(100, 300, 500, count=1))
    assert not is_wedge(wedge(100, 300, 500, turnable=False))


def test_neighbours_upside_down_share_their_slant() -> None:
    """Their middles lie as far apart as a panel is wide in the middle, and the room kept."""
    assert pitch(wedge(100, 300, 500)) == pytest.approx(200 + SPACE, abs=0.1)
    assert pitch(wedge(200, 200, 500)) == pytest.approx(200 + SPACE, abs=0.1)


def test_as_many_lie_abreast_as_the_cloth_holds() -> None:
    """300 for the first and 210 for each further one: three on 720 mm, two on 719."""
    panel = wedge(100, 300, 500, count=3)
    assert laid(panel, 720.5) == pytest.approx(500 + SPACE)
    across = 300 + 2 * (200 + SPACE) + SPACE
    assert laid(panel, 719.0) == pytest.approx(min(2 * (500 + SPACE), across), abs=0.5)


def test_panels_lie_across_a_cloth_where_that_is_shorter() -> None:
    """Two abreast would take their height of cloth; across it they lie in their widths."""
    across = 300 + (200 + SPACE) + SPACE
    assert laid(wedge(100, 300, 900, count=2), 950) == pytest.approx(across, abs=0.1)
    assert laid(wedge(100, 300, 900, count=1), 950) == pytest.approx(300 + SPACE)


def test_panels_too_large_for_any_way_are_laid_one_by_one() -> None:
    """The amount is told all the same; that the cloth is too narrow is said elsewhere."""
    assert laid(wedge(100, 300, 500, count=2), 200) == pytest.approx(2 * (500 + SPACE))
