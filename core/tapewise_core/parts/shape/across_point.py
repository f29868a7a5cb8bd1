"""Where an armhole's two curves join: the across point, moved no further than it must."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

INSIDE_SHOULDER = 5.0
"""The across point lies at least this far inside the shoulder end [mm] (our choice)."""

CARRIED_MOST = 15.0
"""A shoulder is carried out by no more than this to get there [mm] (our choice)."""

FROM_SQUARE = 4.0
"""The armhole leaves the shoulder within this of square [degrees] (our choice)."""

MOST_IN = 0.9
"""How far in the across point may lie, as a share of the way the tangent allows (our choice)."""

INSIDE_SIDE = 28.0
"""The across point lies at least this far inside the side seam [mm] (our choice)."""

FRONT_AT, BACK_AT = 0.52, 0.50
"""The across point's height, as a share of the way from shoulder end to underarm (practice)."""

MOVED = 2.0
"""Moves of less are not worth a word [mm] (our choice): they lie within a tape's own error."""


class Placed(Frozen):
    """Where the across point lies after all limits."""

    x: float
    told: tuple[Told, ...]


def carried_out(across: float, shoulder_end: float) -> float:
    """Return how far a shoulder is carried out so that the across point lies inside it [mm]."""
    return min(max(across + INSIDE_SHOULDER - shoulder_end, 0.0), CARRIED_MOST)


def placed(
    shoulder: Point, slope: float, across: float, height: float, side: float, name: str
) -> Placed:
    """Return the across point's distance from the fold [mm], moved no further than it must.

    ``slope`` is the shoulder's [degrees], ``height`` how far the point lies below its end,
    ``side`` the distance of the underarm; ``name`` is what the width is called. Each limit
    that moves the point is told.
    """
    x, told = across, []
    if x > shoulder.x - INSIDE_SHOULDER:
        x = shoulder.x - INSIDE_SHOULDER
        told.append(_moved(name, across - x, "narrower", "the shoulder ends there"))
    deepest = MOST_IN * height * math.tan(math.radians(slope + FROM_SQUARE))
    if shoulder.x - x > deepest:
        before, x = x, shoulder.x - deepest
        told.append(_moved(name, x - before, "wider", "the shoulder reaches far beyond it"))
    if side - x < INSIDE_SIDE:
        before, x = x, side - INSIDE_SIDE
        told.append(_moved(name, before - x, "narrower", "the side seam leaves no room"))
    return Placed(x, tuple(words for words in told if words))


def _moved(name: str, by: float, how: str, why: str) -> Told:
    if by < MOVED:
        return ()
    return said("Half the {} is drawn {} {} than measured: {}.", name, mm(by), how, why)


def across_point(
    shoulder: Point, slope: float, across: float, underarm: Point, *, front: bool
) -> tuple[Point, tuple[Told, ...]]:
    """Return where the two curves join, and what was moved to get there."""
    height = (FRONT_AT if front else BACK_AT) * (underarm.y - shoulder.y)
    name = "across front" if front else "across back"
    point = placed(shoulder, slope, across, height, underarm.x, name)
    return Point(point.x, shoulder.y + height), point.told
