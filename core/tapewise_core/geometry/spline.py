"""A smooth curve through points, as a hand draws it: with the directions of its two ends."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.segments import Cubic


def smooth(points: Sequence[Point], leaving: Vector, arriving: Vector) -> Path:
    """Return the cubic spline through points, walked by the lengths of its chords.

    Both ends have the directions given. Exact: slopes that make the second derivative run on
    are the solution of a tridiagonal system (common practice in numerical work).
    """
    spans = [(b - a).length() for a, b in pairwise(points)]
    slopes = _slopes(points, spans, leaving.unit(), arriving.unit())
    return Path(
        tuple(
            Cubic(a, a + slopes[i] * (span / 3), b + slopes[i + 1] * (-span / 3), b)
            for i, (span, (a, b)) in enumerate(zip(spans, pairwise(points), strict=True))
        )
    )


def _slopes(
    points: Sequence[Point], spans: Sequence[float], first: Vector, last: Vector
) -> list[Vector]:
    """The derivative at every point, by elimination forwards and substitution backwards."""
    ratios, rests = [0.0], [first]
    for i in range(1, len(points) - 1):
        before, after = spans[i - 1], spans[i]
        rise = (points[i] - points[i - 1]) * (3 * after / before)
        wanted = rise + (points[i + 1] - points[i]) * (3 * before / after)
        pivot = 2 * (before + after) - after * ratios[-1]
        ratios.append(before / pivot)
        rests.append((wanted - rests[-1] * after) * (1 / pivot))
    slopes = [last]
    for ratio, rest in zip(reversed(ratios[1:]), reversed(rests[1:]), strict=True):
        slopes.append(rest - slopes[-1] * ratio)
    return [first, *reversed(slopes)]
