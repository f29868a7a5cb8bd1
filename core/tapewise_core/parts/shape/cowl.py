"""A cowl's geometry: the line a fold hangs in, and the shoulder turned to make room for it."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.arc import arc, on_circle
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point, Vector

LEAST_BEND = 15.0
"""A shoulder bends over at least so much of its length [mm] (our choice)."""

UPRIGHT = 90.0
"""The turned shoulder leaves its level neck edge square, as at any neckline [degrees]."""


def half_edge(half_width: float, drape: float) -> float:
    """Return half the length of an edge that hangs ``drape`` below a straight line, in a parabola,
    the shape of a cloth that carries its own weight across [mm] (exact)."""
    if drape <= 0:
        return half_width
    steep = math.hypot(half_width, 2 * drape)
    bow = half_width * half_width / (4 * drape)
    return steep / 2 + bow * math.asinh(2 * drape / half_width)


def drape_of(half_width: float, half: float) -> float:
    """Return how deep an edge of a half length hangs [mm], to a hundredth."""
    low, high = 0.0, half
    while high - low > 0.01:
        middle = (low + high) / 2
        low, high = (middle, high) if half_edge(half_width, middle) < half else (low, middle)
    return low


class Turned(Frozen):
    """A shoulder that stands upright at its neck edge: ``path`` runs from there, as long as before;
    the rest is as it was from ``pivot`` on, ``bend`` of it is bent [mm], ``opened`` is by how much
    it turned [degrees]."""

    path: Path
    pivot: float
    bend: float
    opened: float


def widths(shoulder: Path) -> tuple[float, float]:
    """Return the shortest and the longest half edge that a shoulder can be turned for [mm]."""
    share, first = _share(shoulder), shoulder.segments[0]
    least = shoulder.start.x + LEAST_BEND * (shoulder.leaving().x - share)
    return least, first.end.x - LEAST_BEND * share


def turned(shoulder: Path, half: float) -> Turned | None:
    """Return a shoulder turned so that its end lies ``half`` from the fold [mm], None where it
    cannot be.

    Its first, straight part turns, in part of a circle: beside the neck while that is enough, or
    at its other end, and upright above.
    """
    before, share = shoulder.segments[0].length(), _share(shoulder)
    bend = (half - shoulder.start.x) / (shoulder.leaving().x - share)
    pivot = min(bend, before)
    if bend > before:
        bend = (shoulder.segments[0].end.x - half) / share
    if bend < LEAST_BEND - 1e-6:
        return None
    path = _bent(shoulder, pivot, bend)
    if pivot < shoulder.length() - 1e-6:
        path = path.then(shoulder.split(pivot)[1])
    return Turned(path, pivot, bend, UPRIGHT - _falls(shoulder))


def _bent(shoulder: Path, pivot: float, bend: float) -> Path:
    """What is turned: part of a circle, and the upright line above it."""
    falls = _falls(shoulder)
    radius = bend / math.radians(UPRIGHT - falls)
    origin = Point(0, 0)
    centre = shoulder.at(pivot)[0] + (origin - on_circle(origin, radius, -falls))
    path = arc(centre, radius, -UPRIGHT, -falls)
    if pivot - bend < 1e-6:
        return path
    return ruled(path.start + Vector(0, bend - pivot), path.start).then(path)


def _falls(shoulder: Path) -> float:
    """How steeply a shoulder falls [degrees]."""
    way = shoulder.leaving()
    return math.degrees(math.atan2(way.y, way.x))


def _share(shoulder: Path) -> float:
    """How far out a bend reaches, as a share of its length."""
    falls = math.radians(_falls(shoulder))
    return (1 - math.sin(falls)) / (math.radians(UPRIGHT) - falls)
