"""A grown-on cap: its hem runs straight down from the overarm and round into the side seam."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import LEFT, Point, Vector
from tapewise_core.parts.shape.grown_drawn import Arm, Trunk, overarm
from tapewise_core.parts.shape.grown_lines import arc

MOST_CAP_LIFT = 10.0
"""A cap's overarm is lifted by so much at the most [degrees] (our choice)."""

OUTSIDE = 20.0
"""A cap's hem stands so far outside the side seam on the underarm's level [mm] (our choice)."""

MOST_LONGER = 60.0
"""A cap is made longer by so much at the most; what asks for more is refused [mm] (our choice)."""


class Cap(Frozen):
    """A cap: ``hem`` from ``hem_top`` to ``underarm``, the start of an upright side seam.

    ``longer`` is what it must be longer than asked for its hem to stand outside the body;
    ``refused`` says that it would have to be longer still, or hang lower than halfway to the
    waist. ``opening`` is the armhole that back and front hems make together [mm].
    """

    lift: float
    longer: float
    refused: bool
    along: Vector
    square: Vector
    hem_top: Point
    knee: Point
    hem: Path
    underarm: Point
    radius: float

    @property
    def opening(self) -> float:
        """Both halves of the hem together [mm]."""
        return 2 * self.hem.length()


def grown_cap(arm: Arm, trunk: Trunk) -> Cap:
    """Return the cap with the least lift that stands outside the body, longer where it must be."""
    lift = _least_lift(arm, trunk)
    along, square = overarm(arm, lift)
    longer = max((OUTSIDE - _outside(arm, trunk, lift)) / along.x, 0.0)
    top = arm.shoulder + along * (arm.length + longer)
    level = max(trunk.highest, top.y + square.y * arm.hem / 2)
    refused = longer > MOST_LONGER or level > trunk.lowest
    level = min(level, trunk.lowest)
    knee = top + square * ((level - top.y) / square.y)
    underarm = Point(trunk.bust.x, level)
    hem, radius = _hem(top, square, knee, underarm)
    return Cap(lift, longer, refused, along, square, top, knee, hem, underarm, radius)


def _outside(arm: Arm, trunk: Trunk, lift: float) -> float:
    """How far outside the side seam the hem's line passes the underarm's level [mm]."""
    along, square = overarm(arm, lift)
    top = arm.shoulder + along * arm.length
    level = max(trunk.highest, top.y + square.y * arm.hem / 2)
    return top.x + square.x / square.y * (level - top.y) - trunk.bust.x


def _least_lift(arm: Arm, trunk: Trunk) -> float:
    """The least lift at which the hem stands outside the body, or the most there is."""
    low, high = 0.0, MOST_CAP_LIFT
    if _outside(arm, trunk, low) >= OUTSIDE:
        return low
    if _outside(arm, trunk, high) < OUTSIDE:
        return high
    while high - low > 0.01:
        middle = (low + high) / 2
        low, high = (low, middle) if _outside(arm, trunk, middle) >= OUTSIDE else (middle, high)
    return high


def _hem(top: Point, square: Vector, knee: Point, underarm: Point) -> tuple[Path, float]:
    """The hem straight down, rounded over its last part to meet the side seam squarely."""
    reach = min(knee.x - underarm.x, 0.6 * (knee - top).length())
    before, after = knee + square * -reach, knee + LEFT * reach
    angle = square.angle_to(LEFT)
    radius = reach / math.tan(math.radians(angle) / 2)
    first, last = arc(before, square, after, radius, angle)
    path = ruled(top, before).then(first).then(last)
    return (path.then(ruled(after, underarm)) if after.x - underarm.x > 0.01 else path), radius
