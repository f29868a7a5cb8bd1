"""How far it is from a point to a path, in one direction."""

from __future__ import annotations

from itertools import pairwise

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point, Vector


def reach(start: Point, way: Vector, path: Path) -> float | None:
    """Return how far from a point in a direction a path is met [mm], or None if it is not."""
    points = path.flattened()
    for a, b in pairwise(points):
        before, after = way.cross(a - start), way.cross(b - start)
        if before * after <= 0 and before != after:
            along = (a.toward(b, before / (before - after)) - start).dot(way)
            if along > 0:
                return along
    return None
