"""The side of a straight skirt in quarters: waist, high hip, hip and hem, alike on back and front.

All lengths in mm, y down from the waist line. Numbers are common practice in the trade where none
other is named.
"""

from __future__ import annotations

import math

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.roots import root

RISE_SHARE, MOST_RISE = 0.25, 15.0
"""The side rises above the waist line by a quarter of what the hip's quarter is wider than the
waist's, up to this: 1 to 1.5 cm on a usual figure."""

BENT_AT, HANDLE = 1 / 3, 0.4
"""The hip's curve has its upper handle so far down to the hip line, and comes to that line along
its tangent over this share of its depth (our choice)."""

USUAL_BULGE, MOST_BULGE = 0.45, 1.0
"""How far out that handle stands between the waist's quarter and the hip's: usually, and where the
belly is full (our choice)."""

REACHED = 0.85
"""A curve of the most bulge has this share of the hip's surplus halfway down (our geometry)."""

EDGE, PEGGED = 0.35, 0.2
"""A hem or a waist leaves the side square over this share of its width at the most, a hem under a
side that goes in over less, or it would rise to a point (our choice)."""


class SkirtWish(Frozen):
    """What is asked for: quarters of waist and hip with their ease, depths from the waist line.

    ``flare`` is how far the hem's quarter is wider than the hip's, ``belly`` what the quarter must
    have halfway from waist to hip, nothing if that is not known; ``dip`` lowers the waist at the
    centre back and ``raised`` lifts it at the centre front.
    """

    waist: float
    hip: float
    hip_depth: float
    length: float
    flare: float
    belly: float = 0.0
    dip: float = 0.0
    raised: float = 0.0

    @property
    def halfway(self) -> float:
        """How far down the high hip lies."""
        return self.hip_depth / 2

    @property
    def widened(self) -> float:
        """The hip's quarter, let out where the waist or the belly above it is wider."""
        over_belly = self.waist + max(self.belly - self.waist, 0.0) / REACHED
        return max(self.hip, self.waist, over_belly if self.belly > self.waist else 0.0)


class SkirtSide(Frozen):
    """The lines of a quarter: ``side`` runs down, the others out from the fold;
    ``hip`` is where the side passes the hip line."""

    wish: SkirtWish
    side: Path
    hip: Point
    back_waist: Path
    front_waist: Path
    hem: Path

    @property
    def corner(self) -> Point:
        """The side at the waist."""
        return self.side.start

    def width(self, depth: float) -> float:
        """Return the quarter's width at a depth, at the side's own end beyond it."""
        at = point_at_height(self.side, depth)
        return self.side.end.x if at is None else at.x

    def moved(self, out: float) -> SkirtSide:
        """Return it with the whole side so far further out."""
        by = Vector(out, 0)
        return _lined(self.wish, self.side.moved(by), self.hip + by) if out else self


def skirt_side(wish: SkirtWish) -> SkirtSide:
    """Return the quarter whose waist and hem, walked along their curves, are as asked."""
    wide = replace(wish, hip=wish.widened)
    lower = _lower(wide)
    x = wide.waist
    drawn = _drawn(wide, x, lower)
    for _ in range(6):
        x -= (drawn.back_waist.length() + drawn.front_waist.length()) / 2 - wide.waist
        drawn = _drawn(wide, x, lower)
    return drawn


def _drawn(wish: SkirtWish, x: float, lower: Path) -> SkirtSide:
    """The quarter with its waist's corner so far out."""
    over = max(wish.hip - x, 0.0)
    corner = Point(x, -min(RISE_SHARE * over, MOST_RISE))
    return _lined(wish, _upper(wish, corner, lower).then(lower), lower.start)


def _lined(wish: SkirtWish, side: Path, hip: Point) -> SkirtSide:
    """A side with waist and hem drawn to it."""
    back, front = (
        _squared(side.start, side.leaving().square(), Point(0, fold))
        for fold in (wish.dip, -wish.raised)
    )
    return SkirtSide(wish, side, hip, back, front, _hem(side, wish.length))


def _upper(wish: SkirtWish, corner: Point, lower: Path) -> Path:
    """The hip's curve, with just enough bulge for the belly."""

    def bulging(share: float) -> Path:
        out = (wish.hip - corner.x) * share
        handle = Point(corner.x + out, corner.y + (wish.hip_depth - corner.y) * BENT_AT)
        arriving = lower.start + lower.leaving() * (-wish.hip_depth * HANDLE)
        return curved(corner, handle, arriving, lower.start)

    def short(share: float) -> float:
        at = point_at_height(bulging(share), wish.halfway)
        return (at.x if at else wish.hip) - wish.belly

    if short(USUAL_BULGE) >= 0:
        return bulging(USUAL_BULGE)
    if short(MOST_BULGE) <= 0:
        return bulging(MOST_BULGE)
    return bulging(root(short, USUAL_BULGE, MOST_BULGE, near=1e-6))


def _lower(wish: SkirtWish) -> Path:
    """The side from the hip line to the hem, whose curve is as wide as asked."""
    start, wide = Point(wish.hip, wish.hip_depth), wish.hip + wish.flare

    def off(out: float) -> float:
        return _hem(_down(start, out, wish), wish.length).length() - wide

    slack = 0.3 * abs(wish.flare) + 10.0
    return _down(start, root(off, wish.flare - slack, wish.flare + 1.0, near=1e-6), wish)


def _down(start: Point, out: float, wish: SkirtWish) -> Path:
    """The side below the hip going out, or in, by so much: ruled where the hip's curve can run on
    into it, else bent out of the direction in which that comes to the hip."""
    long = wish.length - wish.hip_depth
    slope = out / long
    lean = min(max(slope, 0.0), max(wish.hip - wish.waist, 0.0) / wish.hip_depth)
    if out >= 0 and slope - lean < STRAIGHT_ON:
        return ruled(start, start + _level(out, long))
    end = start + _level(out, long) if out >= 0 else Point(start.x + out, wish.length)
    first = Vector(lean, 1.0).unit()
    leaning = (end - (start + first * (long * BENT))).unit()
    if out < 0:
        end = end + Vector(0, -leaning.x * PEGGED * end.x)
    return curved(start, start + first * (long / 3), end + leaning * (-long / 3), end)


def _level(out: float, long: float) -> Vector:
    """How far a side as long as the fold goes out and down."""
    return Vector(out, math.sqrt(max(long * long - out * out, 1.0)))


STRAIGHT_ON, BENT = 0.02, 1 / 6
"""Slopes that differ by less go on in one line; else the side bends over a third of its length
below the hip (our choice)."""


def _hem(side: Path, fold: float) -> Path:
    """The hem from the fold, square to it and to the side."""
    share = EDGE if side.arriving().x >= 0 else PEGGED
    return _squared(side.end, side.arriving().square(), Point(0, fold), share)


def _squared(corner: Point, inward: Vector, fold: Point, share: float = EDGE) -> Path:
    """A line from the fold that comes to a corner against ``inward``, without a wave before it."""
    along, drop = corner.x * share, fold.y - corner.y
    if abs(inward.y) > 1e-9:
        along = min(along, max(drop / inward.y, NEXT_TO))
    return curved(fold, Point(corner.x * 0.4, fold.y), corner + inward * along, corner)


SHORTEST = 100.0
"""The least length below the hip line [mm] (our choice)."""

NEXT_TO = 20.0
"""A line is square to the side at least over this [mm], even where it then bends back."""
