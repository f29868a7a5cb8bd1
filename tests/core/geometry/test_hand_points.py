"""Which points of a curve a hand needs, and the smooth line it draws through them."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from scipy.interpolate import CubicSpline

from tapewise_core.geometry.crossings import nearest
from tapewise_core.geometry.hand_points import CLOSEST, WITHIN, bent_points, runs
from tapewise_core.geometry.path import curved, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.spline import smooth

POINTS = (Point(0, 0), Point(30, 10), Point(50, 40), Point(45, 80), Point(60, 120))
BEND = curved(Point(0, 0), Point(90, 0), Point(120, 60), Point(120, 150))


def test_the_smooth_line_is_the_spline_of_another_library() -> None:
    """Through the same points, by the lengths of their chords, with the same directions."""
    leaving, arriving = Vector(1, 0), Vector(0.2, 1).unit()
    at = np.cumsum([0.0, *((b - a).length() for a, b in pairwise(POINTS))])
    ends = ((1, (leaving.x, leaving.y)), (1, (arriving.x, arriving.y)))
    other = CubicSpline(at, [(p.x, p.y) for p in POINTS], bc_type=ends)
    for i, segment in enumerate(smooth(POINTS, leaving, arriving).segments):
        for t in (0.0, 0.3, 0.7, 1.0):
            x, y = other(at[i] + t * (at[i + 1] - at[i]))
            assert (segment.at(t).x, segment.at(t).y) == pytest.approx((x, y), abs=1e-9)


def test_points_are_added_until_the_smooth_line_is_near() -> None:
    """Both ends always, more only where they are needed, and no two too close."""
    at = bent_points(BEND, ())
    drawn = smooth([BEND.at(one)[0] for one in at], BEND.leaving(), BEND.arriving())
    off = [(nearest(BEND, point)[1] - point).length() for point in drawn.flattened(0.1)]
    assert max(off) <= WITHIN + 0.05
    assert len(at) > 2
    assert min(b - a for a, b in pairwise(at)) >= CLOSEST
    assert bent_points(ruled(Point(0, 0), Point(100, 0)), ()) == [0.0, 100.0]


def test_points_that_are_known_are_kept() -> None:
    """They count for the smooth line as much as those that are added."""
    assert 70.0 in bent_points(BEND, (70.0,))


def test_a_path_falls_into_what_is_ruled_and_what_is_bent() -> None:
    """A short straight piece belongs to the bend beside it, a long one is ruled."""
    short, long = ruled(Point(-12, 0), Point(0, 0)), ruled(Point(120, 150), Point(120, 300))
    found = runs(short.then(BEND).then(long))
    assert [run.straight for run in found] == [False, True]
    assert found[0].path.length() == pytest.approx(12 + BEND.length())
