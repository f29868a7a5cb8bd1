"""A side that flares from the waist or the hip, without a knob, and the hem levelled under it.

The side seam below the hip line is as long as the fold below it. Numbers are ``our choice``
where no other source is named.
"""

from __future__ import annotations

import math
from collections.abc import Callable

from msgspec.structs import replace

from tapewise_core.blocks.top.foot import Foot, curve_end, too_short
from tapewise_core.blocks.top.plan import TopPlan, plan_of
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.errors import DraftError
from tapewise_core.garments.flared_dress.style import FlareFrom, FlareStyle
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Body
from tapewise_core.parts.grown_arm import Grown
from tapewise_core.parts.grown_body import lift_of, side_of
from tapewise_core.parts.shape.below_hip import Out
from tapewise_core.parts.shape.bends import bend
from tapewise_core.parts.shape.levels import Levels
from tapewise_core.parts.shape.side_hem import levelled
from tapewise_core.parts.shape.side_seam import SideSeam
from tapewise_core.parts.shape.side_slopes import SideQuarters, SideWish, unshaped
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import mm

SHORTEST = 100.0
"""The least length below the level that a side flares from [mm] (our choice)."""

MOST = 0.8
"""No flare is more than this share of the length below its level (our choice)."""

WIDEST = 250.0
"""A hip's quarter is drawn no further out by a flare from the waist [mm] (our choice)."""


def flared_plan(body: Body, style: TopStyle, flared: FlareStyle) -> TopPlan:
    """Return the plan of one half of a dress with sleeves; raises DraftError for too much flare."""
    side = side_of(body, style.trunk, style.figure)
    fold = style.trunk.length.mm + lift_of(body, style.figure).mm
    wide, wish = flared_side(
        side.levels, (side.wide, side.wish), flared, fold,
        lambda: side.seam(side.levels.armscye.depth),
    )  # fmt: skip
    return plan_of(body, style, side=replace(side, wide=wide, wish=wish), foot=_foot)


def flared_side(
    at: Levels,
    asked: tuple[SideQuarters, SideWish],
    flared: FlareStyle,
    fold: float,
    plain: Callable[[], SideSeam],
) -> tuple[SideQuarters, SideWish]:
    """Return what a side is drawn from with its flare; ``plain`` draws it without one.

    Raises DraftError for too much flare.
    """
    wide, wish = asked
    from_hip = flared.start is FlareFrom.HIP
    length = fold - (at.hip.depth if from_hip else at.waist.depth)
    slope = _slope(flared.amount.mm, length)
    if not from_hip:
        wide, wish = _from_waist(plain(), wide, wish, slope)
    return wide, replace(wish, flare=slope, out=Out(flared.amount.mm, length) if from_hip else None)


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


def _from_waist(
    plain: SideSeam, wide: SideQuarters, wish: SideWish, slope: float
) -> tuple[SideQuarters, SideWish]:
    """The hip let out to where a line of the flare's slope passes it from the waist's circle.

    The waist stays where it would be without the flare.
    """
    assert plain.at.hip is not None, "a dress has a hip"
    waist = plain.asked + plain.kept + plain.dart
    hip = _hip_for(waist, plain.at.hip - plain.at.waist, slope)
    if hip <= wide.hip:
        return wide, wish
    wide = replace(wide, hip=hip)
    loose = unshaped(plain.at, wide)
    gone = (loose - plain.asked) / max(loose - wide.waist, 1e-9)
    shaping = min(max(gone, 0.0), 1.0) if loose > wide.waist else wish.shaping
    return wide, replace(wish, shaping=shaping)


def _hip_for(waist: float, height: float, slope: float) -> float:
    """The hip's quarter at which the ruler's line from the waist's circle has a slope [mm]."""
    low, high = 0.1, WIDEST
    for _ in range(30):
        out = (low + high) / 2
        line = bend(Point(waist, 0), Point(waist + out, height), alone=1.0)
        low, high = (out, high) if line is not None and line.lean < slope else (low, out)
    return waist + low


def _foot(made: Grown, fold: float, style: TopStyle) -> Foot:
    """The side down to the hem."""
    hip = made.seam.path.end
    if fold <= hip.y + 1:
        raise too_short(fold, max(hip.y, curve_end(made)))
    return Foot(levelled(made.seam, fold)[0], fold)
