"""The curves of a neckline, as geometry."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.parts.neckline import ASKEW, back_neckline, front_neckline


def drawn(half: float, rise: float, slope: float, depth: float) -> Path:
    """A back neckline for half a neck, its rise and depth [mm] and the shoulder's slope."""
    overarm = Vector(math.cos(math.radians(slope)), math.sin(math.radians(slope)))
    return back_neckline(Point(0, depth), Point(half, -rise), overarm)


@pytest.mark.parametrize("half", [55.0, 86.0, 130.0])
@pytest.mark.parametrize("slope", [5.0, 20.0, 35.0])
@pytest.mark.parametrize("depth", range(0, 230, 10))
def test_a_neckline_never_turns_back_to_the_fold(half: float, slope: float, depth: float) -> None:
    """However deep: it leaves the fold level and goes outwards all the way."""
    path = drawn(half, 21.0, slope, depth)
    across = [point.x for point in path.flattened(0.1)]
    assert all(after >= before - 1e-6 for before, after in pairwise(across))
    assert path.leaving().angle_to(Vector(1, 0)) < 1e-6


def test_a_little_more_depth_changes_a_neckline_a_little() -> None:
    """Where a shallow shape passes over to a round one too."""
    lengths = [drawn(86.0, 21.0, 20.0, float(depth)).length() for depth in range(5, 180)]
    assert max(abs(after - before) for before, after in pairwise(lengths)) < 1.5


def test_necklines_meet_the_shoulder_as_told() -> None:
    """The back's corner four degrees over a right angle, the front's as much under."""
    overarm = Vector(math.cos(0.35), math.sin(0.35))
    neck = Point(86, -21)
    back = back_neckline(Point(0, 15), neck, overarm).arriving()
    front = front_neckline(Point(0, 90), neck, overarm).arriving()
    assert (-back).angle_to(overarm) == pytest.approx(90 + ASKEW)
    assert (-front).angle_to(overarm) == pytest.approx(90 - ASKEW)
