"""Spots along stitch lines: where they lie, and how far they are from the cut lines round them."""

import numpy as np
import pytest
import shapely

from tapewise_core.geometry.chords import chords
from tapewise_core.geometry.cut_spots import Spots, measured
from tapewise_core.geometry.path import Path, curved, joined, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.rows import rows

OBLONG = [
    ruled(Point(0, 0), Point(25, 0)),
    ruled(Point(25, 0), Point(25, 10)),
    ruled(Point(25, 10), Point(0, 10)),
    ruled(Point(0, 10), Point(0, 0)),
]
"""An oblong of 25 by 10 mm."""

ROUND = [
    curved(Point(100, 0), Point(240, 0), Point(300, 90), Point(300, 200)),
    curved(Point(300, 200), Point(300, 330), Point(200, 400), Point(100, 400)),
    ruled(Point(100, 400), Point(100, 0)),
]
"""Half of something round, with a straight edge of 400 mm."""


def grown(paths: list[Path], by: float) -> np.ndarray:
    """A line some way outside an outline, with many points, one of them twice."""
    line = [point for path in paths for point in path.beside(by, 0.001)]
    return rows([*line[:3], *line[2:]])


def of(paths: list[Path], cut: np.ndarray) -> Spots:
    """One outline's spots."""
    (found,) = measured([cut], [len(paths)], chords(paths, 0.01))
    return found


def test_they_lie_at_even_steps_of_ten_millimetres_at_the_most() -> None:
    """With both ends of every edge: where one ends the next begins."""
    found = of(OBLONG, grown(OBLONG, 5))
    first, next_one, third, last = zip(found.firsts[:-1], found.firsts[1:], strict=True)
    assert found.at[slice(*first)].tolist() == [
        pytest.approx([x, 0]) for x in (0, 25 / 3, 50 / 3, 25)
    ]
    assert found.at[slice(*next_one)].tolist() == [[25, 0], [25, 10]]
    assert [x for x, _ in found.at[slice(*third)].tolist()] == pytest.approx(
        [25, 50 / 3, 25 / 3, 0]
    )
    assert found.at[slice(*last)].tolist() == [[0, 10], [0, 0]]
    assert len(found.at) == found.firsts[-1] == 12


def test_an_edge_hardly_longer_than_ten_millimetres_has_a_spot_in_its_middle() -> None:
    """Ten would be too far apart."""
    paths = [ruled(Point(0, 0), Point(10.5, 0)), ruled(Point(10.5, 0), Point(0, 9), Point(0, 0))]
    found = of(paths, grown(paths, 5))
    assert found.at[:4].tolist() == [[0, 0], [5.25, 0], [10.5, 0], [10.5, 0]]


def test_each_is_as_far_as_the_nearest_place_of_its_own_cut_line() -> None:
    """Within it, on it and outside it; more of them than are reckoned at once."""
    moved = [joined(ROUND).moved(Vector(40, 7))]
    outlines, cuts = [[joined(ROUND)], OBLONG, moved], [grown(ROUND, 9), grown(OBLONG, 3)]
    cuts.append(cuts[0])
    stitched = chords([path for paths in outlines for path in paths], 0.01)
    many = list(measured(cuts, [1, 4, 1], stitched))
    assert len(many[0].far) * len(cuts[0]) > 30000
    for found, cut, paths in zip(many, cuts, outlines, strict=True):
        wanted = shapely.distance(shapely.points(found.at), shapely.linearrings(cut))
        assert found.far == pytest.approx(wanted, abs=1e-9)
        alone = of(paths, cut)
        assert found.at.tolist() == alone.at.tolist()
        assert found.firsts == alone.firsts
    assert many[0].far.min() > 6
    assert many[2].far.min() < 1


def test_the_worst_comes_first_with_how_far_it_is_from_both_ends() -> None:
    """Of its own edge alone."""
    cut = rows([Point(-8, -8), Point(45, -8), Point(45, 21), Point(-8, 17)])
    found = of(OBLONG, cut)
    worst = list(found.worst_first(2, 8.0))
    off = [one for one, _ in worst]
    assert len(off) == 4
    assert off == sorted(off, reverse=True)
    assert [(spot.x, spot.y) for _, spot in worst] == [
        pytest.approx((x, 10)) for x in (25, 50 / 3, 0, 25 / 3)
    ]
    for one, spot in worst:
        assert one == pytest.approx(abs(spot.far - 8))
        assert (spot.from_start, spot.from_end) == pytest.approx((25 - spot.x, spot.x))


def test_an_edge_is_as_long_as_its_walk() -> None:
    """Whatever lies before it; a bent one as long as its chords."""
    found = of([*OBLONG, *ROUND], grown(OBLONG, 5))
    lengths = [found.length(edge) for edge in range(7)]
    assert lengths == pytest.approx([path.length() for path in (*OBLONG, *ROUND)], abs=0.05)
    assert lengths[:4] == pytest.approx([25, 10, 25, 10])


def test_how_far_a_spot_is_from_another_edge() -> None:
    """Straight across, or to its nearer end."""
    found = of(OBLONG, grown(OBLONG, 5))
    _, spot = max(found.worst_first(0, 5.0), key=lambda row: row[1].x)
    assert (spot.x, spot.y) == (25, 0)
    assert [found.across(spot, edge) for edge in range(4)] == pytest.approx([0, 0, 10, 25])
