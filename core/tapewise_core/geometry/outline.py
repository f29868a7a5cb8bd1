"""Closed outlines: their area and their extent.

Outlines run clockwise as seen on the paper, so that outside lies to the left
of the walker.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import TYPE_CHECKING

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.rows import rows

if TYPE_CHECKING:
    import numpy as np
    from shapely.geometry import Polygon


class Margin(Frozen):
    """One edge of an outline with what is added outside it.

    ``turned`` edges are folded up along the stitch line, so their corners are
    mirrored; a ``fold`` edge lies on the fold of the cloth and gets nothing.
    """

    path: Path
    width: float
    turned: bool = False
    fold: bool = False


class Box(Frozen):
    """An upright rectangle [mm]."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def width(self) -> float:
        """Across [mm]."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """Down [mm]."""
        return self.bottom - self.top

    def grown(self, by: float) -> Box:
        """Return the box with a border added all round [mm]."""
        return Box(self.left - by, self.top - by, self.right + by, self.bottom + by)

    def moved(self, by: Vector) -> Box:
        """Return the box shifted."""
        return Box(self.left + by.x, self.top + by.y, self.right + by.x, self.bottom + by.y)


def box_of(points: Iterable[Point]) -> Box:
    """Return the smallest box round at least one point."""
    known = list(points)
    xs, ys = [p.x for p in known], [p.y for p in known]
    return Box(min(xs), min(ys), max(xs), max(ys))


def area(points: Sequence[Point]) -> float:
    """Return the area inside a closed list of points [mm²], positive if clockwise as seen."""
    closed = [*points, points[0]]
    return sum(a.x * b.y - b.x * a.y for a, b in pairwise(closed)) / 2


def is_simple(line: np.ndarray) -> bool:
    """Say whether a closed line, a row of x and y for each point, encloses one area and never
    crosses itself."""
    return len(line) > 2 and filled(line).is_valid


def polygon(points: Sequence[Point]) -> Polygon:
    """Return a closed list of points as a shapely polygon, valid or not."""
    return filled(rows(points))


def filled(line: np.ndarray) -> Polygon:
    """Return a closed line, a row of x and y for each point, as a shapely polygon, valid or not."""
    from shapely import polygons

    polygon: Polygon = polygons(line)  # type: ignore[assignment]  # of one line it is one
    return polygon
