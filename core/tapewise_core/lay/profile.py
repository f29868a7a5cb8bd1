"""A shape as the cloth's columns see it: where it begins and where it ends in each of them.

Exact on the safe side: within a column an outline is highest and lowest at a corner or where it
enters or leaves, so that shapes whose profiles do not overlap do not overlap.
"""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from tapewise_core.lay.lying import Floats

STEP = 5.0
"""A column's width [mm] (our choice)."""

GAP = 5.0
"""Room kept between pieces [mm]: what a pair of scissors needs (our choice)."""


class Profile(NamedTuple):
    """``low`` and ``high`` in every column [mm], ``high`` with the room that is kept behind it and
    both with that beside it; the shape is ``wide`` and ``tall`` and starts ``phase`` into the
    first column [mm]."""

    low: Floats
    high: Floats
    wide: float
    tall: float
    phase: float


def profile(points: Floats, phase: float = 0.0) -> Profile:
    """Return the profile of a closed outline, one row of x and y for each point [mm]."""
    points = points - points.min(0)
    wide, tall = map(float, points.max(0))
    points[:, 0] += phase
    columns, heights = _touched(points, np.roll(points, -1, 0))
    count = max(int(np.ceil((wide + phase) / STEP - 1e-9)), 1)
    columns = np.clip(columns, 0, count - 1)
    low, high = np.full(count, np.inf), np.full(count, -np.inf)
    np.minimum.at(low, columns, heights)
    np.maximum.at(high, columns, heights)
    return Profile(_beside(low, np.minimum), _beside(high, np.maximum) + GAP, wide, tall, phase)


def _touched(start: Floats, end: Floats) -> tuple[NDArray[np.int_], Floats]:
    """The columns that lines touch, each with a height at which one does: at the corners, and on
    both sides of every border between columns that is crossed."""
    left, right = np.minimum(start[:, 0], end[:, 0]), np.maximum(start[:, 0], end[:, 0])
    first = np.ceil(left / STEP).astype(int)
    many = np.floor(right / STEP).astype(int) - first + 1
    many = np.where(right - left > 1e-9, np.maximum(many, 0), 0)
    line = np.repeat(np.arange(len(start)), many)
    border = first[line] + np.arange(len(line)) - np.repeat(np.cumsum(many) - many, many)
    a, b = start[line], end[line]
    share = (border * STEP - a[:, 0]) / (b[:, 0] - a[:, 0])
    height = a[:, 1] + (b[:, 1] - a[:, 1]) * share
    corner = (start[:, 0] / STEP).astype(int)
    return (
        np.concatenate([corner, border, border - 1]),
        np.concatenate([start[:, 1], height, height]),
    )


def _beside(values: Floats, of: np.ufunc) -> Floats:
    """Widen a profile by a column on its right, the room that is kept beside a piece."""
    wider: Floats = of(np.append(values, values[-1]), np.append(values[0], values))
    return wider
