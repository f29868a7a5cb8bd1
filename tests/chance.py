"""Lengths, curves and outlines drawn by chance, for properties that hold for all of them."""

from __future__ import annotations

import math

from hypothesis import strategies as st

from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.segments import Cubic, Line, Segment

SHARE = st.floats(0, 1)


def amount(low: float, high: float) -> st.SearchStrategy[float]:
    """A number of thousandths, as a draft's measures are at their finest."""
    return st.integers(round(low * 1000), round(high * 1000)).map(lambda number: number / 1000)


POINTS = st.builds(Point, amount(-500, 500), amount(-500, 500))
VECTORS = st.builds(Vector, amount(-500, 500), amount(-500, 500))
DIRECTIONS = amount(0, 360).map(lambda angle: Vector(1, 0).turned(angle))


@st.composite
def segments(draw: st.DrawFn, start: Point = Point(0, 0)) -> Segment:  # noqa: B008
    """A line or a curve without a cusp: each handle leads on, none longer than 4 times another."""
    heading, turn = draw(amount(0, 360)), amount(-50, 50)
    at, corners = start, [start]
    for _ in range(3):
        at = at + Vector(draw(amount(30, 120)), 0).turned(heading)
        corners.append(at)
        heading += draw(turn)
    return Cubic(*corners) if draw(st.booleans()) else Line(corners[0], corners[3])


@st.composite
def paths(draw: st.DrawFn) -> Path:
    """One to four segments, each starting where the one before ends."""
    found = [draw(segments())]
    for _ in range(draw(st.integers(0, 3))):
        found.append(draw(segments(found[-1].end)))
    return Path(tuple(found))


@st.composite
def outlines(draw: st.DrawFn) -> list[Margin]:
    """A convex piece of three to six straight edges, clockwise, each with its own allowance.

    None, or one that a pencil could draw.
    """
    count = draw(st.integers(3, 6))
    turns = [draw(amount(0.7, 1.3)) for _ in range(count)]
    angles = [2 * math.pi * sum(turns[:i]) / sum(turns) for i in range(count)]
    corners = [Point(300 * math.cos(a), 200 * math.sin(a)) for a in angles]
    edges = zip(corners, [*corners[1:], corners[0]], strict=True)
    return [Margin(ruled(a, b), draw(st.just(0.0) | amount(0.1, 25))) for a, b in edges]
