"""The shoulder of a set-in body: its own line, as far out as its armholes can bend in from it."""

from __future__ import annotations

import math

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import DOWN, Point, Vector
from tapewise_core.measures.body import Body
from tapewise_core.parts.neck_options import BEYOND_NECK, own_half_width
from tapewise_core.parts.shape.across_point import (
    BACK_AT,
    FROM_SQUARE,
    FRONT_AT,
    INSIDE_SIDE,
    MOST_IN,
    carried_out,
)
from tapewise_core.parts.shape.bust_room import Room, swing_wanted
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.parts.shape.levels import Levels
from tapewise_core.parts.shape.shares import Across, share
from tapewise_core.parts.shape.shoulder_line import ShoulderLine, shoulder_lines
from tapewise_core.parts.shape.underarm import BARE_IN, ByFit, by_fit
from tapewise_core.units import Length, mm

LEAST_SLOPE = 9.0
"""A very square shoulder still falls this much [degrees] (common practice)."""

STEEPEST = 0.95
"""A shoulder drop counts up to this share of the shoulder's length (our choice)."""

SURE = 0.9
"""What counts of the way in that an armhole can bend, where the underarm is not known yet (our
choice)."""

ROUNDS = 4
"""A shorter shoulder lies higher, so how much shorter it has to be is looked at so often."""


class Shoulders(Frozen):
    """The plain line and its ``slope`` [degrees]; how far ``out`` it is carried beyond the shoulder
    point [mm], less than nought where it is shorter; how steeply it ``falls`` in the end; and the
    back's and the front's own line."""

    plain: ShoulderLine
    slope: float
    out: float
    falls: float
    back: ShoulderLine
    front: ShoulderLine


def shoulders(
    body: Body, style: SetInStyle, room: Room, wide: Across, under: tuple[Point, Point],
    lower: float,
) -> Shoulders:  # fmt: skip
    """Return the shoulder, carried out to the width across, or shorter on a body that is narrow
    under the arm; ``under`` are the back's and the front's underarm, about."""
    plain, forward = shoulder(body, style), style.figure.forward_shoulder.mm

    def lines(out: float, lower: float = 0.0) -> tuple[ShoulderLine, ShoulderLine]:
        return shoulder_lines(
            plain.neck, _carried(plain, out).end, front_raised=room.raised,
            back_raised=room.back_raised, forward=forward, lower=lower,
        )  # fmt: skip

    halves = zip((wide.back, wide.front), under, strict=True)
    across = max(min(half, to.x - INSIDE_SIDE) for half, to in halves)
    out = -BARE_IN if style.bare else carried_out(across, plain.end.x)
    if out < HAIR:
        out = min(out, 0.0)
        for _ in range(ROUNDS):
            out -= _too_long(lines(out), under)
    out = out if abs(out) > HAIR else 0.0
    end = _carried(plain, out).end + DOWN * lower
    falls = ShoulderLine(plain.neck, end).slope
    return Shoulders(plain, slope(body, style), out, falls, *lines(out, lower))


def _carried(line: ShoulderLine, out: float) -> ShoulderLine:
    return ShoulderLine(line.neck, line.end + (line.end - line.neck).unit() * out)


def fit_of(style: SetInStyle) -> ByFit:
    """Return what the fit decides of an armhole with a sleeve, or without one."""
    return by_fit(style.trunk.ease.mm, sleeveless=style.bare is not None)


def narrowest(style: SetInStyle, quarter: float, at: Levels, cup: float) -> tuple[Point, Point]:
    """Return the back's and the front's underarm, about, for a bust's quarter [mm]."""
    f = share(cup, 0.0, at.bust.depth, at.hip.depth, cupped=cup > 0)
    level = at.armscye.depth + fit_of(style).drop
    front = quarter + f.bust - swing_wanted(f.cup, sleeveless=style.bare is not None)
    return Point(quarter - f.bust, level), Point(front, level)


def _too_long(lines: tuple[ShoulderLine, ShoulderLine], under: tuple[Point, Point]) -> float:
    """How much too long a shoulder is for a body so narrow under the arm [mm]: an armhole that
    keeps square to it could not bend in far enough to leave room before the side seam."""
    return max(
        _over(line, way, to)
        for line, way, to in zip(lines, (BACK_AT, FRONT_AT), under, strict=True)
    )


def _over(line: ShoulderLine, way: float, under: Point) -> float:
    height = way * (under.y - line.end.y)
    most = MOST_IN * height * math.tan(math.radians(line.slope + FROM_SQUARE))
    over = line.end.x - (under.x - INSIDE_SIDE) - SURE * most
    return max(over, 0.0) / math.cos(math.radians(line.slope))


def slope(body: Body, style: SetInStyle) -> float:
    """Return the shoulder's own slope [degrees]."""
    drop, whole = style.figure.shoulder_drop.mm, body["shoulder_length"].mm
    return max(math.degrees(math.asin(min(drop / whole, STEEPEST))), LEAST_SLOPE)


def base(body: Body, style: SetInStyle) -> Length:
    """How far from the centre the shoulder's line begins."""
    own, width = own_half_width(body, style.figure), style.neck.half_width
    return own if width.mm > own.mm else width


def shoulder_length(body: Body, style: SetInStyle) -> Length:
    """The shoulder's own length, less what the neckline lies outside the neck's base; a narrower
    neckline takes less."""
    narrower = max((own_half_width(body, style.figure) - style.neck.half_width).mm, 0.0)
    outside = (BEYOND_NECK.mm if "neck" in body else 0.0) - narrower
    taken = round(outside / math.cos(math.radians(slope(body, style))), 1)
    whole = body["shoulder_length"]
    return whole - mm(taken) if taken >= 0 else whole + mm(-taken)


def shoulder(body: Body, style: SetInStyle) -> ShoulderLine:
    """Return the shoulder's plain line, from the neck's base to the shoulder point."""
    neck = Point(base(body, style).mm, -(style.neck.rise - style.figure.round_back).mm)
    angle = math.radians(slope(body, style))
    along = Vector(math.cos(angle), math.sin(angle))
    return ShoulderLine(neck, neck + along * shoulder_length(body, style).mm)
