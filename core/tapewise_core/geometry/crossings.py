"""Where a path reaches a height or a width on the paper."""

from __future__ import annotations

import math
from collections.abc import Callable

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.roots import root
from tapewise_core.geometry.segments import Line, Segment


def distance_at_height(path: Path, y: float) -> float | None:
    """Return the walked distance [mm] at which a path first reaches height ``y``, or None."""
    return _walked(path, lambda point: point.y - y)


def distance_at_width(path: Path, x: float) -> float | None:
    """Return the walked distance [mm] at which a path first reaches width ``x``, or None."""
    return _walked(path, lambda point: point.x - x)


def point_at_height(path: Path, y: float) -> Point | None:
    """Return the first point of a path at height ``y`` [mm], or None if it never gets there."""
    found = _reached(path, lambda point: point.y - y)
    return None if found is None else path.segments[found[0]].at(found[1])


def _walked(path: Path, over: Callable[[Point], float]) -> float | None:
    """The walked distance to where ``over`` first changes sign [mm]."""
    found = _reached(path, over)
    if found is None:
        return None
    index, t = found
    before = sum(segment.length() for segment in path.segments[:index])
    return before + (path.segments[index].length_to(t) if t else 0.0)


def _reached(path: Path, over: Callable[[Point], float]) -> tuple[int, float] | None:
    """The first segment along which ``over`` changes sign, and the parameter there."""
    for index, segment in enumerate(path.segments):
        before = over(segment.start)
        if abs(before) < 1e-9:
            return index, 0.0
        after = over(segment.end)
        if before * after <= 0:
            return index, _nought(segment, over)
    return None


def _nought(segment: Segment, over: Callable[[Point], float]) -> float:
    """The parameter where an amount that changes sign along a segment is nought, to 1e-10 mm."""
    return root(lambda t: over(segment.at(t)), 0.0, 1.0, near=1e-10)


def nearest(path: Path, origin: Point) -> tuple[float, Point]:
    """Return the walked distance [mm] at which a path comes nearest to a point, and that place.

    Found among 25 points of each segment, then closed in on by thirds.
    """
    walked, best, found = 0.0, math.inf, (0.0, path.start)
    for segment in path.segments:
        if _least_off(segment, origin) < best:
            t = _nearest_on(segment, origin)
            off = (segment.at(t) - origin).length()
            if off < best - 1e-9:
                best, found = off, (walked + segment.length_to(t), segment.at(t))
        walked += segment.length()
    return found


def _least_off(segment: Segment, origin: Point) -> float:
    """No point of a segment is nearer than this [mm]: it lies in the box round its ends and
    handles."""
    points = [segment.start, segment.end]
    if not isinstance(segment, Line):
        points += [segment.leave, segment.arrive]
    xs, ys = [point.x for point in points], [point.y for point in points]
    x = max(min(xs) - origin.x, origin.x - max(xs), 0.0)
    y = max(min(ys) - origin.y, origin.y - max(ys), 0.0)
    return math.hypot(x, y)


def _nearest_on(segment: Segment, origin: Point) -> float:
    """The parameter of a segment's nearest point."""
    steps = 24
    closest = min(range(steps + 1), key=lambda i: (segment.at(i / steps) - origin).length())
    low, high = max(closest - 1, 0) / steps, min(closest + 1, steps) / steps
    while high - low > 1e-6:
        a, b = low + (high - low) / 3, high - (high - low) / 3
        if (segment.at(a) - origin).length() < (segment.at(b) - origin).length():
            high = b
        else:
            low = a
    return (low + high) / 2
