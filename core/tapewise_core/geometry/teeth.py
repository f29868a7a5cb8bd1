"""A cut line looked through for teeth."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from tapewise_core.geometry.point import Point

SHARP = 135.0
"""A cut line that turns by more at one point has a tooth [degrees] (our choice)."""

SHORTEST = 0.2
"""Turns are taken between points at least so far apart [mm]; rounding makes nearer ones wild."""


def teeth(cut: Sequence[Point]) -> tuple[Point, ...]:
    """Return every point of a closed cut line at which it turns back on itself."""
    points = list(_apart(cut))
    ring = [points[-1], *points, points[0]]
    found, back = [], math.cos(math.radians(SHARP))
    for a, b, c in zip(ring[:-2], ring[1:-1], ring[2:], strict=True):
        x, y, u, v = b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y
        if x * u + y * v < back * math.hypot(x, y) * math.hypot(u, v):
            found.append(b)
    return tuple(found)


def _apart(cut: Sequence[Point]) -> Iterable[Point]:
    """The points of a closed line that are not all but on the one before."""
    last = cut[-1]
    for point in cut:
        if math.hypot(point.x - last.x, point.y - last.y) > SHORTEST:
            yield point
            last = point
