"""The roundest cubic inside a corner."""

from __future__ import annotations

import math
from functools import cache

from tapewise_core.geometry.point import Point
from tapewise_core.geometry.segments import Cubic

LEAST, MOST, STEPS = 0.40, 0.85, 18
"""Handles reach 40 to 85 % of the way to the corner (our choice), tried in steps of 2.5 %."""

PLACES = 12

_Moves = tuple[tuple[float, float, float], ...]


def roundest(start: Point, corner: Point, end: Point) -> tuple[Cubic, float]:
    """Return the curve inside a corner with the largest least radius, and that radius [mm].

    Its handles end before the corner, so it is convex (exact). The search climbs from the
    middle in steps that get finer, over a table that knows the bends for every pair of handles.
    """
    first, last = corner - start, end - corner
    sizes = (first.dot(first), 2 * first.dot(last), last.dot(last), abs(first.cross(last)))
    best, at, stride = 0.0, (STEPS // 2, STEPS // 2), 6
    best = _least_radius(sizes, *at, 0.0)
    while stride:
        moved = False
        for i, j in _around(at, stride):
            radius = _least_radius(sizes, i, j, best)
            if radius > best + 1e-9:
                best, at, moved = radius, (i, j), True
        if not moved:
            stride //= 2
    a, b = (_handle(i) for i in at)
    return Cubic(start, start + first * a, end + last * -b, end), best


def _around(at: tuple[int, int], stride: int) -> list[tuple[int, int]]:
    i, j = at
    steps = (-stride, 0, stride)
    near = [(i + a, j + b) for a in steps for b in steps if a or b]
    return [(a, b) for a, b in near if 0 <= a <= STEPS and 0 <= b <= STEPS]


def _handle(index: int) -> float:
    return LEAST + (MOST - LEAST) * index / STEPS


def _least_radius(sizes: tuple[float, float, float, float], i: int, j: int, enough: float) -> float:
    """The least radius for a pair of handles, or something below ``enough`` as soon as it is."""
    aa, ab, bb, spanned = sizes
    least = math.inf
    for a, b, turn in _moves(i, j):
        speed = a * a * aa + a * b * ab + b * b * bb
        radius = speed * math.sqrt(speed) / max(turn * spanned, 1e-12)
        if radius < least:
            least = radius
            if least <= enough:
                break
    return least


@cache
def _moves(i: int, j: int) -> _Moves:
    """Along the curve: its speed along both tangents, and its turn, free of the corner's size.

    In the corner's own two directions u and v the curve is x(t) u + y(t) v with the handles
    alone in x and y; so its bend is (x' y'' − x'' y') · |u × v| / |x' u + y' v|³ (exact).
    """
    a, b = _handle(i), _handle(j)
    xs, ys = (a, 1 - a, 0.0), (0.0, 1 - b, b)
    found = []
    for k in sorted(range(PLACES + 1), key=lambda k: min(k, PLACES - k)):
        t = k / PLACES
        u = 1 - t
        x, y = (3 * (p * u * u + q * 2 * u * t + r * t * t) for p, q, r in (xs, ys))
        xx, yy = (6 * ((q - p) * u + (r - q) * t) for p, q, r in (xs, ys))
        found.append((x, y, x * yy - xx * y))
    return tuple(found)
