"""The side seam below the hip line."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point, Vector

BEND_BELOW = 120.0
"""Below the hip the seam passes over to its flare within so much [mm] (our choice)."""


class Out(Frozen):
    """How far a side goes out below the hip in all, over a length along the side [mm]."""

    amount: float
    length: float

    def slope_from(self, slope: float) -> float:
        """Return the slope below the bend with which a side that leans by ``slope`` at the hip
        goes out so far (exact)."""
        height = math.sqrt(self.length * self.length - self.amount * self.amount)
        if height <= BEND_BELOW:
            return max(slope, self.amount / height)
        return max(slope, (self.amount - slope * BEND_BELOW / 2) / (height - BEND_BELOW / 2))


def below_hip(hip: Point, slope: float, flare: float, height: float) -> Path | None:
    """From the hip line down: a parabola from one slope to the other, straight after it."""
    if height <= 0:
        return None
    bent = min(height, BEND_BELOW) if flare != slope else 0.0
    last = slope + (flare - slope) * bent / BEND_BELOW
    end = hip
    path: Path | None = None
    if bent:
        third = Vector(slope, 1) * (bent / 3)
        end = hip + Vector((slope + last) / 2, 1) * bent
        path = curved(hip, hip + third, end + Vector(last, 1) * (-bent / 3), end)
    if height > bent:
        rest = ruled(end, end + Vector(last, 1) * (height - bent))
        path = path.then(rest) if path else rest
    return path
