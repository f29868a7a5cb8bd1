"""Half a sleeve's cap: a curve that is as long as its half of the armhole at a height.

It is a cubic from the corner, level there (or square to a slanting underarm seam) and level at
the crown. For a height there is one width at which it is so long, which falls as the height rises.
"""

from __future__ import annotations

import math

from tapewise_core.geometry.point import Point
from tapewise_core.geometry.roots import root
from tapewise_core.geometry.segments import Cubic

FRONT_HANDLES, BACK_HANDLES = (0.50, 0.42), (0.42, 0.48)
"""How full the halves are at the underarm and at the crown, handles over the width (our choice)."""

NEAR = 1e-6
"""Half caps are met this closely [mm]."""


def widths(height: float, front: float, back: float, lean: float = 0.0) -> tuple[float, float]:
    """Return the widths of the front and the back half at a height, each as long as said [mm]."""
    return (
        _width(height, front, FRONT_HANDLES, lean),
        _width(height, back, BACK_HANDLES, lean),
    )


def _width(height: float, length: float, handles: tuple[float, float], lean: float) -> float:
    """The width at which a half cap of a height is so long; secants from a near guess."""
    most = math.sqrt(max(length * length - height * height, 1e-9))

    def over(width: float) -> float:
        return _half(width, height, handles, lean).length() - length

    last, width = 0.85 * most, 0.95 * most
    at_last, at = over(last), over(width)
    for _ in range(8):
        if abs(at) < NEAR:
            return width
        last, width, at_last = width, width - at * (width - last) / (at - at_last), at
        if not 0 < width <= most:
            break
        at = over(width)
    return root(over, 0.25 * most, most, NEAR)


def _half(width: float, height: float, handles: tuple[float, float], lean: float = 0.0) -> Cubic:
    """Half a cap from its corner (0, height) up to the crown (width, 0)."""
    a, b = handles
    corner, crown = Point(0, height), Point(width, 0)
    return Cubic(
        corner, Point(a * width, height - a * width * lean), Point(width - b * width, 0), crown
    )


def back_half(width: float, height: float, lean: float) -> Cubic:
    """Return the back half, from its corner on x = 0 to the crown."""
    return _half(width, height, BACK_HANDLES, lean)


def front_half(width: float, height: float, lean: float, whole: float) -> Cubic:
    """Return the front half, from the crown to its corner on x = ``whole``, the cap's width."""
    half = _half(width, height, FRONT_HANDLES, lean)
    return Cubic(
        *(Point(whole - p.x, p.y) for p in (half.end, half.arrive, half.leave, half.start))
    )
