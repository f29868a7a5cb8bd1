"""What a set-in body is drawn from: the body's measures and the wearer's wishes in millimetres."""

from __future__ import annotations

import math
from dataclasses import dataclass

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.geometry.point import DOWN, Point, Vector
from tapewise_core.measures.body import Body, Reference
from tapewise_core.parts.neck_options import BEYOND_NECK, own_half_width
from tapewise_core.parts.shape.across_point import (
    BACK_AT,
    FROM_SQUARE,
    INSIDE_SIDE,
    MOST_IN,
    carried_out,
)
from tapewise_core.parts.shape.bust_room import Room, bust_room, swing_wanted
from tapewise_core.parts.shape.bust_room import Wish as BustRoom
from tapewise_core.parts.shape.levels import Levels
from tapewise_core.parts.shape.set_in_drawn import SetInWish
from tapewise_core.parts.shape.shares import ACROSS_ROOM, ORDINARY_CUP, Across, across, share
from tapewise_core.parts.shape.shoulder_line import ShoulderLine, shoulder_lines
from tapewise_core.parts.shape.side_dart import apex_from_fold, stop_before
from tapewise_core.parts.shape.side_slopes import SideWish
from tapewise_core.parts.shape.underarm import by_fit
from tapewise_core.parts.shape.waist_darts import BACK_DOWN
from tapewise_core.parts.trunk_levels import levels_for, quarters
from tapewise_core.units import Length, mm

RULE_INSIDE = 12.7
"""Without a measured across back the armhole's middle lies half an inch inside the shoulder
point [mm] [baldt]."""

LEAST_SLOPE = 9.0
"""A very square shoulder still falls this much [degrees] (common practice)."""

STEEPEST = 0.95
"""A shoulder drop counts up to this share of the shoulder's length (our choice)."""

SURE = 0.9
"""What counts of the way in that an armhole can bend, where the underarm is not known yet (our
choice)."""

DART_ROOM = 150.0
"""A hem nearer to the bust line than this leaves no room for a side dart [mm] (our choice)."""

BELOW_DART = 20.0
"""A waist dart ends at least so far above the hem [mm] (our choice)."""


@dataclass(frozen=True, slots=True)
class Planned:
    """The wish, and what of it the drafter tells: the plain shoulder line and its slope, how far
    it is carried out [mm], how steeply it falls in the end, the bust point, and whether the hem
    leaves room for a dart."""

    wish: SetInWish
    shoulder: ShoulderLine
    slope: float
    out: float
    fall: float
    apex: float
    dart_fits: bool

    @property
    def room(self) -> Room:
        """The room for the bust."""
        return self.wish.room


def planned(body: Body, style: SetInStyle, lower: float = 0.0) -> Planned:
    """Return what a body and a style ask for, on a side that is lower by so much [mm]."""
    at = levels_for(body, style.trunk)
    fits = style.trunk.length.mm >= at.bust.depth + DART_ROOM
    cup = _cup(body, at) if fits else min(_cup(body, at), ORDINARY_CUP)
    room = _room(body, style, fits=fits)
    wide, plain = _across(body, style, cup, room), shoulder(body, style)
    out = carried_out(max(wide.back, wide.front), plain.end.x)
    turned = math.degrees(math.atan2(style.figure.forward_shoulder.mm, plain.length))
    steep = max(slope(body, style) - turned, 0.0)
    out = out or -_too_long(plain, steep, _narrowest(body, style, at, cup))
    carried = ShoulderLine(plain.neck, plain.end + (plain.end - plain.neck).unit() * out)
    back, front = shoulder_lines(
        carried.neck, carried.end, front_raised=room.raised, back_raised=room.back_raised,
        forward=style.figure.forward_shoulder.mm, lower=lower,
    )  # fmt: skip
    falls = ShoulderLine(carried.neck, carried.end + DOWN * lower).slope
    apex = apex_from_fold(body["bust"].mm)
    ease, drop = style.armhole.ease, style.armhole.drop
    wish = SetInWish(
        at, quarters(body, style.trunk), _side(style, at), back, front, wide,
        body["upper_arm"].mm, by_fit(style.trunk.ease.mm), cup, room, style.trunk.stretch,
        apex + stop_before(at.bust.girth, at.armscye.girth),
        max(style.trunk.length.mm, at.hip.depth),
        sleeve_ease=None if ease is None else ease.mm, drop=None if drop is None else drop.mm,
        lower=lower, shorter=style.armhole.shorter,
    )  # fmt: skip
    return Planned(wish, plain, slope(body, style), out, falls, apex, fits)


def _narrowest(body: Body, style: SetInStyle, at: Levels, cup: float) -> Point:
    """The underarm of the half that is narrower there, about."""
    f = share(cup, 0.0, at.bust.depth, at.hip.depth, cupped=cup > 0)
    front = f.bust - swing_wanted(f.cup)
    drop = by_fit(style.trunk.ease.mm).drop
    side = quarters(body, style.trunk).bust + min(front, -f.bust)
    return Point(side, at.armscye.depth + drop)


def _too_long(line: ShoulderLine, slope: float, under: Point) -> float:
    """How much too long a shoulder is for a body so narrow under the arm [mm]: an armhole that
    keeps square to it could not bend in far enough to leave room before the side seam."""
    height = BACK_AT * (under.y - line.end.y)
    most = MOST_IN * height * math.tan(math.radians(slope + FROM_SQUARE))
    over = line.end.x - (under.x - INSIDE_SIDE) - SURE * most
    return max(over, 0.0) / math.cos(math.radians(slope))


def _cup(body: Body, at: Levels) -> float:
    """Bust less high bust [mm]; a man's chest has none."""
    if body.reference is Reference.MEN:
        return 0.0
    return max(at.bust.girth - at.armscye.girth, 0.0)


def _side(style: SetInStyle, at: Levels) -> SideWish:
    """A waist dart has to end above the hem."""
    end = at.waist.depth + BACK_DOWN * (at.hip.depth - at.waist.depth) + BELOW_DART
    return SideWish(style.trunk.shaping, darts=style.trunk.darts and end < style.trunk.length.mm)


def longer(body: Body, style: SetInStyle) -> float | None:
    """How much longer the front is than the back as drafted [mm], where both were measured."""
    if not (body.has("front_waist_length") and body.has("back_waist_length")):
        return None
    more = 1 + style.trunk.lengthened
    front, back = body["front_waist_length"].mm * more, body["back_waist_length"].mm * more
    return front - back - (style.neck.rise.mm - style.figure.round_back.mm)


def _room(body: Body, style: SetInStyle, *, fits: bool) -> Room:
    """Room for the bust; a man gets no dart, and nor does a top that ends under the bust."""
    asked = style.trunk.bust_room
    plain = body.reference is Reference.MEN and asked is BustRoom.AUTO
    if (plain or not fits) and asked is not BustRoom.NONE:
        asked = BustRoom.RAISE
    return bust_room(longer(body, style), style.trunk.stretch, asked)


def _across(body: Body, style: SetInStyle, cup: float, room: Room) -> Across:
    """From the measured widths, else by the rule from the shoulder."""
    front = body["across_front"].mm if "across_front" in body else None
    if "across_back" in body:
        return across(body["across_back"].mm, cup, front, room.surplus)
    rule = 2 * (shoulder(body, style).end.x - RULE_INSIDE - ACROSS_ROOM)
    return across(rule, cup, front, room.surplus)


def slope(body: Body, style: SetInStyle) -> float:
    """Return the shoulder's own slope [degrees]."""
    drop, whole = style.figure.shoulder_drop.mm, body["shoulder_length"].mm
    return max(math.degrees(math.asin(min(drop / whole, STEEPEST))), LEAST_SLOPE)


def base(body: Body, style: SetInStyle) -> Length:
    """How far from the centre the shoulder's line begins."""
    own, width = own_half_width(body, style.figure), style.neck.half_width
    return own if width.mm > own.mm else width


def shoulder_length(body: Body, style: SetInStyle) -> Length:
    """The shoulder's own length, less what the neckline lies outside the neck's base."""
    taken = BEYOND_NECK.mm / math.cos(math.radians(slope(body, style))) if "neck" in body else 0.0
    return body["shoulder_length"] - mm(round(taken, 1))


def shoulder(body: Body, style: SetInStyle) -> ShoulderLine:
    """Return the shoulder's plain line, from the neck's base to the shoulder point."""
    neck = Point(base(body, style).mm, -(style.neck.rise - style.figure.round_back).mm)
    angle = math.radians(slope(body, style))
    along = Vector(math.cos(angle), math.sin(angle))
    return ShoulderLine(neck, neck + along * shoulder_length(body, style).mm)
