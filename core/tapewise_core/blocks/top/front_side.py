"""The front's side: the back's own, or let down for the bust with a dart, eased or gathered."""

from __future__ import annotations

import math

from msgspec.structs import replace

from tapewise_core.blocks.top.foot import Foot, curve_end
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.grown_arm import Grown
from tapewise_core.parts.grown_body import SideOf
from tapewise_core.parts.shape.bust_room import GATHERED_MOST, GATHERED_ON, Room
from tapewise_core.parts.shape.side_dart import (
    ABOVE_WAIST,
    FrontSide,
    apex_from_fold,
    darted_side,
    eased_side,
    plain_side,
    stop_before,
)
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

BELOW_CURVE = 30.0
"""A side dart's mouth begins so far below the end of the underarm's curve [mm] (our choice)."""

MOST_SLANT = math.tan(math.radians(15))
"""A side dart points up to the bust by no more than this (common practice)."""


class FrontPlan(Frozen):
    """``side`` from the underarm to the hem, ``room`` as it was drawn, ``levels`` the heights of
    bust, waist and hip on the front, ``told`` what is worth a word, ``fold`` the hem's height."""

    side: FrontSide
    room: Room
    levels: dict[str, float]
    fold: float
    told: tuple[Told, ...] = ()


def front_plan(
    body: Body, style: TopStyle, side: SideOf, made: Grown, room: Room, foot: Foot
) -> FrontPlan:
    """Return the front of a plan."""
    drawn, told = _drawn(body, side, made, room, foot)
    lower = drawn[1].lower
    at = side.levels
    top, waist = foot.side.start.y, at.waist.depth
    share = min(max((at.bust.depth - top) / (waist - top), 0.0), 1.0)
    bust = at.bust.depth
    if drawn[0].dart is None:
        bust += lower * share * share * (3 - 2 * share)
    levels = {
        "armscye": at.armscye.depth, "bust": bust, "waist": waist + lower,
        "hip": at.hip.depth + lower,
    }  # fmt: skip
    fold = foot.fold + lower + style.fullness.front_hem_drop.mm
    return FrontPlan(drawn[0], drawn[1], levels, fold, told)


def _drawn(
    body: Body, side: SideOf, made: Grown, room: Room, foot: Foot
) -> tuple[tuple[FrontSide, Room], tuple[Told, ...]]:
    """The front's side and the room as it could be drawn."""
    back = foot.side
    waist = side.levels.waist.depth
    if room.lower < 1e-6:
        return (plain_side(back, back.length()), room), room.told
    if back.end.y < waist - 1:
        none = replace(room, eased=0.0, dart=0.0, gathered=0.0, left=room.left + room.lower)
        words = "The top ends above the waist, so the front stays {} shorter than measured."
        return (plain_side(back, back.length()), none), (said(words, mm(none.left)),)
    told = room.told
    if room.dart:
        dart = _dart(body, side, made, room.lower, foot)
        if dart:
            return (dart, room), told
        room, told = _gathered(room)
    return (eased_side(back, room.lower, back.length(), waist, None, 0.0), room), told


def _dart(body: Body, side: SideOf, made: Grown, lower: float, foot: Foot) -> FrontSide | None:
    """The dart, where it finds room between the underarm's curve and the waist."""
    at = side.levels
    high = body["high_bust"].mm if body.has("high_bust") else body["bust"].mm
    tip = apex_from_fold(body["bust"].mm) + stop_before(body["bust"].mm, high)
    level = max(at.bust.depth + lower / 2, curve_end(made) + BELOW_CURVE)
    low = level - at.bust.depth - lower / 2
    if level > at.waist.depth - ABOVE_WAIST or low > MOST_SLANT * (side.wide.bust - tip):
        return None
    return darted_side(foot.side, foot.side, level, lower, tip)


def _gathered(room: Room) -> tuple[Room, tuple[Told, ...]]:
    """Where no dart finds room the length is gathered, as far as gathers go."""
    held = min(room.dart, (GATHERED_MOST - 1) * GATHERED_ON)
    left = room.left + room.dart - held
    words = said(
        "A side dart finds no room below the underarm's curve, so {} are gathered there.", mm(held)
    )
    more: tuple[Told, ...] = ()
    if left > 0.5:
        more = (said("The front stays {} shorter than measured.", mm(left)),)
    return replace(room, dart=0.0, gathered=held, left=left), (words, *more)
