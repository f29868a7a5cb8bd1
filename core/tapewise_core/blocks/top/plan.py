"""Everything about a grown-on top that is settled before the pencil touches the paper."""

from __future__ import annotations

from collections.abc import Callable

from msgspec.structs import replace

from tapewise_core.blocks.top.foot import Foot, foot_of, taken_up
from tapewise_core.blocks.top.front_side import FrontPlan, front_plan
from tapewise_core.blocks.top.refusing import check_sleeve
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Vector
from tapewise_core.measures.body import Body
from tapewise_core.parts.grown_arm import Grown, SleeveWish, arm_of, grown
from tapewise_core.parts.grown_body import BodyShoulder, SideOf, body_shoulder, lift_of, side_of
from tapewise_core.parts.grown_overarm import Overarm, overarm_of
from tapewise_core.parts.hem import HEM
from tapewise_core.parts.shape.bust_room import Room, fitted_room
from tapewise_core.parts.shape.grown_drawn import Arm
from tapewise_core.parts.shape.shoulder_line import ShoulderLine, shoulder_lines
from tapewise_core.parts.shape.side_dart import apex_from_fold
from tapewise_core.parts.shape.waist_darts import DartLevels, WaistDart, back_dart, front_dart

FootOf = Callable[[Grown, float, TopStyle], Foot]
"""Draws a side seam down to the hem, whose height on the fold is given [mm], and the hem."""


class TopPlan(Frozen):
    """The shapes of one half: shoulder lines, sleeve, side, hem and the room for the bust."""

    body: Body
    style: TopStyle
    lower: str
    shoulder: BodyShoulder
    side: SideOf
    grown: Grown
    room: Room
    shoulders: tuple[ShoulderLine, ShoulderLine]
    overarms: tuple[Overarm, Overarm]
    foot: Foot
    front: FrontPlan

    @property
    def along(self) -> Vector:
        """The way of the overarm beyond the shoulder's end."""
        drawn = self.grown.sleeve or self.grown.cap
        assert drawn is not None, "a grown-on sleeve is either a sleeve or a cap"
        return drawn.along

    @property
    def back_hem_fold(self) -> float:
        """The hem's height on the centre back [mm]: lower for a seat, higher after a fitting."""
        lower = self.style.fullness.full_seat.mm - self.style.fitted.back_shorter
        return self.foot.fold + lower

    @property
    def back_dart(self) -> WaistDart | None:
        """The back's waist dart, where one is drawn."""
        intake = self.grown.line.dart
        if not intake:
            return None
        return back_dart(intake, self._dart_levels, self._waist_side)

    @property
    def front_dart(self) -> WaistDart | None:
        """The front's waist dart, under the bust point."""
        if not self.back_dart:
            return None
        apex = apex_from_fold(self.body["bust"].mm)
        lower = self.front.room.lower
        return front_dart(self.grown.line.dart, self._dart_levels, self._waist_side, apex, lower)

    @property
    def _dart_levels(self) -> DartLevels:
        at = self.side.levels
        hip = None if self.side.bodice else at.hip.depth
        return DartLevels(at.bust.depth, at.waist.depth, hip)

    @property
    def _waist_side(self) -> float:
        return self.grown.line.width(self.side.levels.waist.depth)

    def hem(self, *, front: bool) -> Path:
        """Return half a sleeve's hem on the back or on the front."""
        return self.overarms[front].hem(self.grown.hem, self.along)


def plan_of(
    body: Body, style: TopStyle, *, lower: str = HEM, side: SideOf | None = None,
    foot: FootOf = foot_of,
) -> TopPlan:  # fmt: skip
    """Return the plan of one half; raises DraftError where no such sleeve can be had."""
    rise = style.neck.rise
    shoulder = body_shoulder(body, style.figure, style.neck.half_width, rise)
    side = side or side_of(body, style.trunk, style.figure, bodice=lower != HEM)
    sleeve = style.sleeve

    def arm_for(length: float) -> Arm:
        wish = SleeveWish(length, sleeve.ease.mm, sleeve.hem_ease.mm)
        return arm_of(body, style.figure, shoulder, wish, style.fitted.flatter)

    arm = arm_for(sleeve.length.mm)
    ease = style.trunk.bust_ease.mm
    made = grown(arm, side, ease)
    check_sleeve(made, arm_for, side, ease, bodice=lower != HEM)
    room = room_of(body, style, shoulder)
    lines = shoulder_lines(
        shoulder.neck, shoulder.end, front_raised=room.raised, back_raised=room.back_raised,
        forward=style.figure.forward_shoulder.mm,
    )  # fmt: skip
    drawn = made.sleeve or made.cap
    assert drawn is not None, "a grown-on sleeve is either a sleeve or a cap"
    back, front = (overarm_of(line, arm, drawn.along, drawn.hem_top) for line in lines)
    fold = style.trunk.length.mm + lift_of(body, style.figure).mm
    found = taken_up(foot(made, fold, style), style.fitted.sides_higher)
    return TopPlan(
        body, style, lower, shoulder, side, made, room, lines, (back, front), found,
        front_plan(body, style, side, made, room, found),
    )  # fmt: skip


def room_of(body: Body, style: TopStyle, shoulder: BodyShoulder) -> Room:
    """Return the room for the bust, from both waist lengths where they were measured."""
    longer = None
    if body.has("front_waist_length") and body.has("back_waist_length"):
        drawn = body["back_waist_length"].mm - shoulder.neck.y
        longer = body["front_waist_length"].mm - drawn
    trunk, fitted = style.trunk, style.fitted
    found = fitted_room(longer, fitted.front_longer, trunk.stretch, trunk.bust_room)
    return replace(found, back_raised=found.back_raised + fitted.back_longer)
