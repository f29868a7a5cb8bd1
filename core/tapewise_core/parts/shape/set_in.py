"""A set-in body drawn whole: seam, shares, armholes, bust room and cap in one search.

Depth first: the underarm goes down until the armhole is long enough for the arm, then up or down
until the sleeve asked for can be had. Then the front's swing is taken back as far as one dart
demands.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.parts.shape.armhole import Armhole, across_point, armhole, tight, with_bottom
from tapewise_core.parts.shape.bust_room import ONE_DART, Room, easable, swing_told, swing_wanted
from tapewise_core.parts.shape.cap import Cap, cap, reach, unasked_ease
from tapewise_core.parts.shape.levels import Levels, kept_between
from tapewise_core.parts.shape.roots import most
from tapewise_core.parts.shape.shares import Across, Share, share
from tapewise_core.parts.shape.shoulder_line import ShoulderLine
from tapewise_core.parts.shape.side_dart import (
    BELOW_UNDERARM,
    FrontSide,
    Turn,
    darted_side,
    eased_side,
    plain_side,
    turn_for,
)
from tapewise_core.parts.shape.side_seam import SideSeam, SideWish, side_seam
from tapewise_core.parts.shape.side_trial import SideLevels, SideQuarters
from tapewise_core.parts.shape.underarm import (
    SHALLOWEST,
    SLEEVE_EASE_RANGE,
    ByFit,
    Narrowed,
    deepened,
    narrowed,
)
from tapewise_core.text.told import Told


@dataclass(frozen=True, slots=True)
class SetInWish:
    """All that a set-in body is drawn from [mm].

    ``quarters`` have their ease; ``cup`` is bust less high bust (0 for men); ``tip`` the side
    dart's distance from the fold; ``stretch`` in per cent; ``sleeve_ease`` None where none is
    asked; ``drop`` None where the fit decides; ``hem`` the fold's height at the hem, None on a
    bodice; ``lower`` how far both shoulder end and underarm are lowered.
    """

    levels: Levels
    quarters: SideQuarters
    side: SideWish
    back_shoulder: ShoulderLine
    front_shoulder: ShoulderLine
    across: Across
    upper_arm: float
    fit: ByFit
    cup: float
    room: Room
    stretch: float
    tip: float
    hem: float | None
    sleeveless: bool = False
    sleeve_ease: float | None = None
    drop: float | None = None
    lower: float = 0.0


@dataclass(frozen=True, slots=True)
class SetIn:
    """What came of it; ``told`` has everything that was moved or held back."""

    seam: SideSeam
    share: Share
    back_armhole: Armhole
    front_armhole: Armhole
    back_side: Path
    front_side: FrontSide
    drop: float
    swing: float
    cap: Cap | None
    told: tuple[Told, ...]

    @property
    def armhole(self) -> float:
        """The whole armhole's length [mm]."""
        return self.back_armhole.length + self.front_armhole.length


def _seam(wish: SetInWish, drop: float) -> SideSeam:
    at = wish.levels
    underarm = at.armscye.depth + drop + wish.lower
    bust = kept_between(at.bust.depth, underarm, at.waist.depth)
    hip = None if wish.hem is None else at.hip.depth
    return side_seam(SideLevels(underarm, bust, at.waist.depth, hip), wish.quarters, wish.side)


@dataclass(frozen=True)
class _Drawn:
    """One depth and one swing drawn. While a depth is searched for the first seam stands in."""

    wish: SetInWish
    drop: float
    swing: float
    seam: SideSeam

    @property
    def underarm(self) -> float:
        return self.wish.levels.armscye.depth + self.drop + self.wish.lower

    @cached_property
    def share(self) -> Share:
        at, cup = self.seam.at, self.wish.cup
        hip = self.wish.levels.hip.depth
        return share(cup, 0.0, at.bust, hip, cupped=cup > 0)

    @cached_property
    def narrower(self) -> Narrowed:
        if self.wish.sleeveless:
            return Narrowed(0.0, 0.0, ())
        wide, f = self.seam.path.start.x, self.share.bust
        front = wide + f - self.swing - self.wish.across.front
        return narrowed(self.wish.upper_arm, front, wide - f - self.wish.across.back)

    @cached_property
    def back(self) -> Armhole:
        line, x = self.wish.back_shoulder, self.seam.path.start.x - self.share.bust
        half = self.wish.across.back - self.narrower.back
        return armhole(line.end, line.slope, half, Point(x, self.underarm), front=False)

    @property
    def inner(self) -> Point:
        """The front's underarm before the turn."""
        return Point(self.seam.path.start.x + self.share.bust - self.swing, self.underarm)

    @property
    def turn(self) -> Turn | None:
        if not self.swing:
            return None
        line, half = self.wish.front_shoulder, self.wish.across.front - self.narrower.front
        q, _ = across_point(line.end, line.slope, half, self.inner, front=True)
        return turn_for(self.swing, q, self.seam.at.bust)

    @cached_property
    def front(self) -> Armhole:
        line, half = self.wish.front_shoulder, self.wish.across.front - self.narrower.front
        drawn = armhole(line.end, line.slope, half, self.inner, front=True)
        turn = self.turn
        return with_bottom(drawn, turn.of(self.inner), turn.degrees) if turn else drawn

    @property
    def length(self) -> float:
        return self.back.length + self.front.length

    @property
    def reach(self) -> tuple[float, float]:
        return reach(self.front.length, self.back.length)

    @property
    def lift(self) -> float:
        """How far the turn lifts the front's side [mm]."""
        turn = self.turn
        return self.underarm - turn.of(self.inner).y if turn else 0.0


def set_in(wish: SetInWish) -> SetIn:
    """Return the body drawn from a wish; nothing is refused, what gives way is told."""
    swing = swing_wanted(max(wish.cup - 40.0, 0.0) / 2)
    drop = wish.fit.drop if wish.drop is None else wish.drop
    drawn = _one_dart(_Drawn(wish, drop, swing, _seam(wish, drop)))
    if wish.drop is None:
        for _ in range(PASSES):
            drawn = _settled(_deep_enough(drawn))
    sides = _sides(drawn)
    return _whole(drawn, *sides)


PASSES = 2
"""A deeper underarm moves the bust line and the swing a little, so the depth is looked at twice."""

OUT, SPARE = 0.15, 2.0
"""A dart's mouth opens outwards too, by about 0.15 of the swing, and is up to 2 mm wider for the
back's length (our choice)."""


def _settled(drawn: _Drawn) -> _Drawn:
    """The depth's own seam, and the swing once more for it."""
    seam = drawn.seam
    if drawn.underarm != seam.at.underarm:
        seam = _seam(drawn.wish, drawn.drop)
    return _one_dart(replace(drawn, seam=seam))


def _one_dart(drawn: _Drawn) -> _Drawn:
    """Take the swing back until one dart takes up all."""
    lower = drawn.wish.room.dart + drawn.wish.room.eased

    def fits(swing: float) -> bool:
        lift = replace(drawn, swing=swing).lift
        return math.hypot(lift + lower, OUT * swing) <= ONE_DART - SPARE

    if not drawn.swing or fits(drawn.swing):
        return drawn
    return replace(drawn, swing=most(fits, 0.0, drawn.swing) if fits(0.0) else 0.0)


def _deep_enough(drawn: _Drawn) -> _Drawn:
    """The underarm lowered for the arm, then moved for the sleeve."""
    wish = drawn.wish

    def at(drop: float) -> _Drawn:
        return drawn if drop == drawn.drop else replace(drawn, drop=drop)

    deepest = wish.fit.deepest
    least = wish.fit.ratio * wish.upper_arm
    drop = deepened(lambda drop: at(drop).length, drawn.drop, least, deepest)
    return at(drop) if wish.sleeveless else at(_for_sleeve(wish, at, drop))


def _for_sleeve(wish: SetInWish, at: Callable[[float], _Drawn], drop: float) -> float:
    """Where the sleeve's width can not be had: deeper for a wider one, higher for a slimmer."""
    ease = wish.fit.sleeve_ease if wish.sleeve_ease is None else wish.sleeve_ease
    width = wish.upper_arm + ease
    least, widest = at(drop).reach
    if widest < width - 1:
        return deepened(lambda drop: at(drop).reach[1], drop, width, wish.fit.deepest)
    if least > width + 1 and wish.sleeve_ease is not None and drop > SHALLOWEST:
        return drop - deepened(lambda up: -at(drop - up).reach[0], 0.0, -width, drop - SHALLOWEST)
    return drop


def _cap(drawn: _Drawn, width: float) -> Cap:
    return cap(drawn.front.length, drawn.back.length, width)


def _sides(drawn: _Drawn) -> tuple[Path, FrontSide]:
    """Both tracings of the seam, the front's with its dart or its eased length."""
    wish, seam = drawn.wish, drawn.seam
    line = seam.path if wish.hem is None else seam.down_to(wish.hem)
    back, front = drawn.share.back(line), drawn.share.front(line)
    lower, turn = wish.room.lower, drawn.turn
    intake = lower + drawn.lift
    if intake < 1e-6:
        return back, plain_side(front, back.length())
    if wish.room.dart or (intake > easable(wish.stretch) and not wish.room.gathered):
        level = max(seam.at.bust + intake / 2, drawn.underarm + BELOW_UNDERARM)
        found = darted_side(front, back, level, lower, wish.tip, turn, drawn.swing)
        if found:
            return back, found
    return back, eased_side(front, lower, back.length(), seam.at.waist, turn, drawn.swing)


def _whole(drawn: _Drawn, back: Path, front: FrontSide) -> SetIn:
    wish = drawn.wish
    solved = None if wish.sleeveless else _sleeve(drawn)
    height = drawn.underarm - drawn.back.shoulder.y
    told = [
        drawn.narrower.told,
        *drawn.back.told,
        *drawn.front.told,
        tight(drawn.front),
        drawn.seam.held_back,
        drawn.seam.hip_held_back,
        swing_told(drawn.share.cup, drawn.swing),
        *wish.room.told,
    ]
    if solved:
        told += [solved.held_back(wish.upper_arm), solved.stiff(height)]
    return SetIn(
        drawn.seam,
        drawn.share,
        drawn.back,
        drawn.front,
        back,
        front,
        drawn.drop,
        drawn.swing,
        solved,
        tuple(words for words in told if words),
    )


def _sleeve(drawn: _Drawn) -> Cap:
    """The cap for the ease asked, or for the least ease that keeps it calm."""
    wish = drawn.wish
    ease = wish.sleeve_ease
    if ease is None:
        low = wish.fit.sleeve_ease
        height = drawn.underarm - drawn.back.shoulder.y
        lengths = drawn.front.length, drawn.back.length
        ease = unasked_ease(*lengths, wish.upper_arm, height, low, low + SLEEVE_EASE_RANGE)
    return _cap(drawn, wish.upper_arm + ease)
