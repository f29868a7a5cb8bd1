"""Parts of a circle as cubic curves."""

from __future__ import annotations

import math

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import DOWN, Point
from tapewise_core.geometry.segments import Cubic

WIDEST = 30.0
"""One cubic spans no more than this [degrees]; it is then off by less than 4e-7 radii."""


def arc(centre: Point, radius: float, first: float, last: float) -> Path:
    """Return part of a circle [mm], between two directions [degrees].

    Directions are counted from straight down on the paper, towards the right.
    Each cubic's handles are 4/3 tan(angle / 4) radii long, so that it meets the
    circle at both ends and in its middle (exact).
    """
    parts = max(1, math.ceil(abs(last - first) / WIDEST - 1e-9))
    step = (last - first) / parts
    grip = radius * 4 / 3 * math.tan(math.radians(step) / 4)
    return Path(tuple(_cubic(centre, radius, first + i * step, step, grip) for i in range(parts)))


def on_circle(centre: Point, radius: float, direction: float) -> Point:
    """Return the point of a circle in a direction [degrees] from straight down."""
    return centre + DOWN.turned(-direction) * radius


def _cubic(centre: Point, radius: float, first: float, step: float, grip: float) -> Cubic:
    start, end = (on_circle(centre, radius, angle) for angle in (first, first + step))
    leaving, arriving = (-DOWN.turned(-angle).square() for angle in (first, first + step))
    return Cubic(start, start + leaving * grip, end + arriving * -grip, end)
