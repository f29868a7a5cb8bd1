"""The side seam of a close top: one gentle curve that respects the waist.

The curve is a cubic whose control points stand at equal heights, so that its
distance from the centre is a cubic polynomial in the height; it bends one way
only when its two second differences have one sign.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from tapewise_core.geometry.path import Path, curved
from tapewise_core.geometry.point import Point

MOST_LEAN = math.tan(math.radians(8))
"""How far the seam leans outwards at the hip, at the most (common practice: a gentle flare).

Where a straight seam leans more, from a small bust to a full hip, that is the most.
"""


@dataclass(frozen=True, slots=True)
class SideSeam:
    """The seam from the underarm to the hip line, and its lean there (outwards per downwards)."""

    path: Path
    hip: Point
    lean: float


def side_seam(top: Point, waist: Point, hip: Point, shaping: float) -> SideSeam:
    """Return the seam from ``top`` to the hip's height.

    ``waist`` and ``hip`` are the quarter widths on their lines: the waist's is a
    limit that the seam never passes, the hip's is met, or followed outwards where
    the waist decides. ``shaping`` is the share, 0 to 1, of the way from the
    straight line to the limit that the seam goes in.
    """
    height = hip.y - top.y
    share = (waist.y - top.y) / height
    hip_x = max(hip.x, _hip_for(waist.x, top.x, share))
    chord = top.x + (hip_x - top.x) * share
    aim = max(waist.x, chord - shaping * max(0.0, chord - waist.x))
    x1, x2 = _handles(top.x, hip_x, height, share, aim)
    end = Point(hip_x, hip.y)
    third = height / 3
    path = curved(top, Point(x1, top.y + third), Point(x2, top.y + 2 * third), end)
    return SideSeam(path, end, (hip_x - x2) / third)


def _hip_for(limit: float, top: float, share: float) -> float:
    """The hip's width at which a seam that is upright there just keeps outside the waist."""
    rest = (1 - share) ** 2
    return (limit - top * rest) / (1 - rest)


def _handles(
    top: float, hip: float, height: float, share: float, aim: float
) -> tuple[float, float]:
    """The inner control points' distances from the centre."""
    wanted = _parabola_lean(top, hip, height, share, aim)
    most = max(MOST_LEAN, (hip - top) / height)
    lean = min(max(wanted, 0.0), most)
    x2 = hip - height / 3 * lean
    if lean == wanted:
        return _parabola_leave(top, hip, height, lean), x2
    b0, b1, b2, b3 = _weights(share)
    x1 = (aim - b0 * top - b2 * x2 - b3 * hip) / b1
    straight_below = 2 * x2 - hip
    if lean == most:
        return min(max(x1, straight_below), (top + x2) / 2), x2
    return _parabola_leave(top, hip, height, lean), x2


def _parabola_lean(top: float, hip: float, height: float, share: float, aim: float) -> float:
    """The lean at the hip of the parabola through the top, the aim at the waist, and the hip."""
    rest = 1 - share
    bend = (aim - hip - (top - hip) * rest) / (rest * rest - rest)
    return -(top - hip - bend) / height


def _parabola_leave(top: float, hip: float, height: float, lean: float) -> float:
    """The first inner control point of the parabola with a given lean at the hip."""
    middle = hip - lean * height / 2
    return top + (middle - top) * 2 / 3


def _weights(t: float) -> tuple[float, float, float, float]:
    u = 1 - t
    return u**3, 3 * u * u * t, 3 * u * t * t, t**3
