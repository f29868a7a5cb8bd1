"""Points as a table of numbers, a row of x and y for each, and back."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from tapewise_core.geometry.point import Point

if TYPE_CHECKING:
    import numpy as np


def rows(points: Sequence[Point]) -> np.ndarray:
    """Return points as rows of x and y [mm]."""
    import numpy as np

    return np.array([[p.x for p in points], [p.y for p in points]]).T


def points(rows: np.ndarray) -> list[Point]:
    """Return the points that rows of x and y stand for."""
    return list(map(Point, *rows.T.tolist()))
