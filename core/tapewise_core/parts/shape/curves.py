"""How a curve bends: radii, turns, and the same curve laid another way."""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import pairwise

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.segments import Cubic, Line, Segment

STRAIGHT = 1 / 4000
"""A bend wider than 4 m is none [1/mm] (our choice): nobody sees it."""

PLACES = 12
"""Along each cubic the bend is looked at in so many steps."""


def curvature(cubic: Cubic, t: float) -> float:
    """Return how a curve bends at ``t`` [1/mm], clockwise as seen counted positive (exact)."""
    u, p, q, r, s = 1 - t, cubic.start, cubic.leave, cubic.arrive, cubic.end
    ax, bx, cx = q.x - p.x, r.x - q.x, s.x - r.x
    ay, by, cy = q.y - p.y, r.y - q.y, s.y - r.y
    x = ax * u * u + bx * 2 * u * t + cx * t * t
    y = ay * u * u + by * 2 * u * t + cy * t * t
    speed = math.hypot(x, y)
    if speed < 1e-9:
        return 0.0
    across, down = (bx - ax) * u + (cx - bx) * t, (by - ay) * u + (cy - by) * t
    return 2 * (x * down - y * across) / (3 * speed**3)


def bends(path: Path) -> list[float]:
    """Return the bend of a path at thirteen places of each curve, straight lines left out."""
    return [
        curvature(segment, i / PLACES)
        for segment in path.segments
        if isinstance(segment, Cubic)
        for i in range(PLACES + 1)
    ]


def least_radii(path: Path) -> tuple[float, float]:
    """Return the least radius of the anticlockwise and of the clockwise bends [mm].

    On a side seam that is walked down on the wearer's left these are its inward and outward ones.
    """
    found = bends(path)
    left, right = -min([*found, 0.0]), max([*found, 0.0])
    return (1 / left if left > 1e-9 else math.inf, 1 / right if right > 1e-9 else math.inf)


def inflections(path: Path) -> int:
    """Return how often a path changes the way it bends."""
    signs = [math.copysign(1, bend) for bend in bends(path) if abs(bend) > STRAIGHT]
    return sum(a != b for a, b in pairwise(signs))


def warped(path: Path, to: Callable[[Point], Point], pieces: int = 1) -> Path:
    """Return a path laid another way: each point goes where ``to`` sends it.

    Ends and tangents are carried exactly, handles in proportion; ``pieces`` divides each segment
    beforehand. What is affine comes out exact.
    """
    found: list[Segment] = []
    for segment in path.segments:
        for part in _divided(_cubic(segment), pieces):
            found.append(_laid(part, to))
    return Path(tuple(found))


def _cubic(segment: Segment) -> Cubic:
    if isinstance(segment, Line):
        a, b = segment.start, segment.end
        return Cubic(a, a.toward(b, 1 / 3), a.toward(b, 2 / 3), b)
    return segment


def _divided(cubic: Cubic, pieces: int) -> list[Cubic]:
    found = []
    for left in range(pieces, 1, -1):
        head, cubic = cubic.split(1 / left)
        found.append(head)
    return [*found, cubic]


def _laid(cubic: Cubic, to: Callable[[Point], Point]) -> Cubic:
    start, end = to(cubic.start), to(cubic.end)
    leave = start + _carried(cubic.start, cubic.leave - cubic.start, to)
    arrive = end + _carried(cubic.end, cubic.arrive - cubic.end, to)
    return Cubic(start, leave, arrive, end)


def _carried(at: Point, handle: Vector, to: Callable[[Point], Point]) -> Vector:
    """What becomes of a handle: the change along it, from two places 0.02 mm apart."""
    length = handle.length()
    if length < 1e-12:
        return handle
    step = handle * (0.01 / length)
    return (to(at + step) - to(at + -step)) * (length / 0.02)
