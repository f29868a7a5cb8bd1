"""What a set-in body is drawn from: the body's measures and the wearer's wishes in millimetres."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.blocks.set_in.ends import EndsOf, ended
from tapewise_core.blocks.set_in.shoulders import Shoulders, fit_of, narrowest, shoulder, shoulders
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body, Reference
from tapewise_core.parts.fitted_style import FittedStyle
from tapewise_core.parts.shape.bust_room import Room, fitted_room
from tapewise_core.parts.shape.bust_room import Wish as BustRoom
from tapewise_core.parts.shape.levels import Levels
from tapewise_core.parts.shape.set_in_drawn import Found, SetInWish
from tapewise_core.parts.shape.shares import ACROSS_ROOM, ORDINARY_CUP, Across, across
from tapewise_core.parts.shape.side_dart import apex_from_fold, stop_before
from tapewise_core.parts.shape.side_slopes import SideWish
from tapewise_core.parts.shape.underarm import BARE_IN
from tapewise_core.parts.shape.waist_darts import BACK_DOWN
from tapewise_core.parts.trunk_levels import levels_for, quarters

RULE_INSIDE = 12.7
"""Without a measured across back the armhole's middle lies half an inch inside the shoulder
point [mm] [baldt]."""

DART_ROOM = 150.0
"""A hem nearer to the bust line than this leaves no room for a side dart [mm] (our choice)."""

DART_ROOM_ABOVE_WAIST = 70.0
"""The same for a waist seam, which a dart may come nearer to [mm]: half of the widest mouth lies
below the bust line, and as much of the side is left below that (our choice)."""

BELOW_DART = 20.0
"""A waist dart ends at least so far above the hem [mm] (our choice)."""


class Planned(Frozen):
    """The wish, and what of it the drafter tells: the shoulder, the bust point, and whether the
    hem leaves room for a dart; ``ends`` cuts the sides off at the hem."""

    wish: SetInWish
    shoulder: Shoulders
    apex: float
    dart_fits: bool
    ends: EndsOf = ended

    @property
    def room(self) -> Room:
        """The room for the bust."""
        return self.wish.room


def planned(body: Body, style: SetInStyle, lower: float = 0.0) -> Planned:
    """Return what a body and a style ask for, on a side that is lower by so much [mm]."""
    at = _levels(body, style)
    room_below = DART_ROOM_ABOVE_WAIST if style.bodice else DART_ROOM
    fits = style.trunk.length.mm >= at.bust.depth + room_below
    cup = _cup(body, at) if fits else min(_cup(body, at), ORDINARY_CUP)
    room = _room(body, style, fits=fits)
    wide = _across(body, style, cup, room)
    narrow = narrowest(style, quarters(body, style.trunk).bust, at, cup)
    line = shoulders(body, style, room, wide, narrow, lower)
    apex = apex_from_fold(body["bust"].mm)
    ease, drop = style.armhole.ease, style.armhole.drop
    wish = SetInWish(
        at, quarters(body, style.trunk), _side(style, at), line.back, line.front, wide,
        body["upper_arm"].mm, fit_of(style), cup, room, style.trunk.stretch,
        apex + stop_before(at.bust.girth, at.armscye.girth),
        _hem(style, at),
        sleeve_ease=None if ease is None else ease.mm, drop=None if drop is None else drop.mm,
        lower=lower, shorter=style.armhole.shorter, found=found_of(style.fitted),
        sleeveless=style.bare is not None,
    )  # fmt: skip
    return Planned(wish, line, apex, fits)


def _levels(body: Body, style: SetInStyle) -> Levels:
    """The body's levels; a bodice's waist lies where it ends."""
    at = levels_for(body, style.trunk)
    if not style.bodice:
        return at
    return replace(at, waist=replace(at.waist, depth=style.trunk.length.mm))


def _hem(style: SetInStyle, at: Levels) -> float | None:
    """The hem's height on the fold [mm], that of the hip at the least; none on a bodice."""
    if style.bodice:
        return None
    return max(style.trunk.length.mm - min(style.fitted.sides_higher, 0.0), at.hip.depth)


def found_of(fitted: FittedStyle) -> Found:
    """Return what fittings found about armhole, sleeve and side."""
    return Found(
        fitted.underarm_lower, fitted.sleeve_wider, fitted.bust_forward, fitted.hip_forward
    )


def _cup(body: Body, at: Levels) -> float:
    """Bust less high bust [mm]; a man's chest has none."""
    if body.reference is Reference.MEN:
        return 0.0
    return max(at.bust.girth - at.armscye.girth, 0.0)


def _side(style: SetInStyle, at: Levels) -> SideWish:
    """A waist dart has to end above the hem; a bodice's opens into its seam."""
    if style.bodice:
        return SideWish(style.trunk.shaping, darts=style.trunk.darts)
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
    fitted, stretch = style.fitted, style.trunk.stretch
    found = fitted_room(longer(body, style), fitted.front_longer, stretch, asked)
    return replace(found, back_raised=found.back_raised + fitted.back_longer)


def _across(body: Body, style: SetInStyle, cup: float, room: Room) -> Across:
    """From the measures, and wider by what fittings found; further in without sleeves."""
    plain, fitted = _measured_across(body, style, cup, room), style.fitted
    inside = BARE_IN if style.bare else 0.0
    back, front = fitted.across_back - inside, fitted.across_front - inside
    return Across(plain.back + back, plain.front + front)


def _measured_across(body: Body, style: SetInStyle, cup: float, room: Room) -> Across:
    """From the measured widths, else by the rule from the shoulder."""
    front = body["across_front"].mm if "across_front" in body else None
    if "across_back" in body:
        return across(body["across_back"].mm, cup, front, room.surplus)
    rule = 2 * (shoulder(body, style).end.x - RULE_INSIDE - ACROSS_ROOM)
    return across(rule, cup, front, room.surplus)
