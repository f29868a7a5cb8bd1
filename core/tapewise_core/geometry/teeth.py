"""A cut line looked through for teeth."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from tapewise_core.geometry.point import Point
from tapewise_core.geometry.rows import points

if TYPE_CHECKING:
    import numpy as np

SHARP = 135.0
"""A cut line that turns by more at one point has a tooth [degrees] (our choice)."""

SHORTEST = 0.2
"""Turns are taken between points at least so far apart [mm]; rounding makes nearer ones wild."""


def teeth(cut: np.ndarray) -> tuple[Point, ...]:
    """Return every point at which a closed cut line, a row of x and y for each of its points, turns
    back on itself."""
    sides, long = _sides(cut)
    if long.min() <= SHORTEST:
        cut = cut[list(_apart(cut.tolist()))]
        sides, long = _sides(cut)
    turned = (sides[:-1] * sides[1:]).sum(axis=1)
    return tuple(points(cut[turned < math.cos(math.radians(SHARP)) * long[:-1] * long[1:]]))


def _sides(line: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The sides of a closed line that come to and go from each of its points, and how long each
    is."""
    import numpy as np

    ring = np.concatenate([line[-1:], line, line[:1]])
    sides = ring[1:] - ring[:-1]
    return sides, np.hypot(sides[:, 0], sides[:, 1])


def _apart(places: Sequence[Sequence[float]]) -> Iterator[int]:
    """Which places of a closed line are not all but on the one before."""
    last = places[-1]
    for at, place in enumerate(places):
        if math.dist(place, last) > SHORTEST:
            yield at
            last = place
