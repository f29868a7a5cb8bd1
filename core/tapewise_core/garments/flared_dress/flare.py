"""A side that flares from the waist or the hip, without a knob, and the hem levelled under it.

The side seam below the hip line is as long as the fold below it. Numbers are ``our choice``
where no other source is named.
"""

from __future__ import annotations

import math
from dataclasses import replace

from tapewise_core.blocks.top.foot import Foot, curve_end, too_short
from tapewise_core.blocks.top.plan import TopPlan, plan_of
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.errors import DraftError
from tapewise_core.garments.flared_dress.style import FlareFrom, FlareStyle
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Body
from tapewise_core.parts.grown_arm import Grown
from tapewise_core.parts.grown_body import SideOf, lift_of, side_of
from tapewise_core.parts.shape.below_hip import BEND_BELOW
from tapewise_core.parts.shape.bends import bend
from tapewise_core.parts.shape.side_hem import levelled
from tapewise_core.parts.shape.side_slopes import unshaped
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import mm

SHORTEST = 100.0
"""The least length below the level that a side flares from [mm] (our choice)."""

MOST = 0.8
"""No flare is more than this share of the length below its level (our choice)."""

WIDEST = 250.0
"""A hip's quarter is drawn no further out by a flare from the waist [mm] (our choice)."""


def flared_plan(body: Body, style: TopStyle, flared: FlareStyle) -> TopPlan:
    """Return the plan of one half of a flared dress; raises DraftError for too much flare."""
    side = side_of(body, style.trunk, style.figure)
    fold = style.trunk.length.mm + lift_of(body, style.figure).mm
    at = side.levels
    start = at.hip.depth if flared.start is FlareFrom.HIP else at.waist.depth
    slope = _slope(flared.amount.mm, fold - start)
    if flared.start is FlareFrom.WAIST:
        side = _from_waist(side, slope)
    side = replace(side, wish=replace(side.wish, flare=slope))

    def foot(made: Grown, fold: float, style: TopStyle) -> Foot:
        return _foot(made, fold, None if flared.start is FlareFrom.WAIST else flared.amount.mm)

    return plan_of(body, style, side=side, foot=foot)


def _slope(flare: float, length: float) -> float:
    """How far the side goes out per step down, for a flare over a length along the side [mm]."""
    if length < SHORTEST or flare > MOST * length:
        raise DraftError(
            said(
                "A flare of {} needs more than the {} that are left below the level it begins at; "
                "choose a longer {} or less flare.",
                mm(flare),
                mm(length),
                OptionKey("body-length"),
            )
        )
    return flare / math.sqrt(length * length - flare * flare)


def _from_waist(side: SideOf, slope: float) -> SideOf:
    """The hip let out to where a line of the flare's slope passes it from the waist's circle.

    The waist stays where it would be without the flare.
    """
    plain = side.seam(side.levels.armscye.depth)
    waist = plain.asked + plain.kept + plain.dart
    hip = _hip_for(waist, side.levels.hip.depth - side.levels.waist.depth, slope)
    if hip <= side.wide.hip:
        return side
    wide = replace(side.wide, hip=hip)
    loose = unshaped(plain.at, wide)
    gone = (loose - plain.asked) / max(loose - wide.waist, 1e-9)
    shaping = min(max(gone, 0.0), 1.0) if loose > wide.waist else side.wish.shaping
    return replace(side, wide=wide, wish=replace(side.wish, shaping=shaping))


def _hip_for(waist: float, height: float, slope: float) -> float:
    """The hip's quarter at which the ruler's line from the waist's circle has a slope [mm]."""
    low, high = 0.1, WIDEST
    for _ in range(30):
        out = (low + high) / 2
        line = bend(Point(waist, 0), Point(waist + out, height), alone=1.0)
        low, high = (out, high) if line is not None and line.lean < slope else (low, out)
    return waist + low


def _foot(made: Grown, fold: float, flare: float | None) -> Foot:
    """The side down to the hem, the flare below the hip as wide as asked."""
    hip = made.seam.path.end
    if fold <= hip.y + 1:
        raise too_short(fold, max(hip.y, curve_end(made)))
    seam = made.seam
    if flare is not None and seam.flare > seam.trial.slope:
        seam = replace(seam, flare=_below(seam.trial.slope, flare, fold - hip.y))
    return Foot(levelled(seam, fold)[0], fold)


def _below(slope: float, flare: float, length: float) -> float:
    """The slope below its bend with which a side goes out by a flare in all [mm]."""
    height = math.sqrt(length * length - flare * flare)
    if height <= BEND_BELOW:
        return max(slope, flare / height)
    return max(slope, (flare - slope * BEND_BELOW / 2) / (height - BEND_BELOW / 2))
