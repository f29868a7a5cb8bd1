"""A set-in body drawn whole: seam, shares, armholes, bust room and cap in one search.

Depth first: the underarm goes down until the armhole is long enough for the arm, then up or down
until the sleeve asked for can be had. Then the front's swing is taken back as far as one dart
demands.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import cache

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.roots import most
from tapewise_core.parts.shape.armhole import Armhole, tight
from tapewise_core.parts.shape.bust_room import ONE_DART, easable, swing_told, swing_wanted
from tapewise_core.parts.shape.cap import Cap, cap, unasked_ease
from tapewise_core.parts.shape.set_in_drawn import Drawn, SetInWish, seam_at
from tapewise_core.parts.shape.shares import Share
from tapewise_core.parts.shape.side_dart import (
    BELOW_UNDERARM,
    FrontSide,
    darted_side,
    eased_side,
    plain_side,
)
from tapewise_core.parts.shape.side_seam import SideSeam
from tapewise_core.parts.shape.underarm import (
    SHALLOWEST,
    SLEEVE_EASE_RANGE,
    deepened,
)
from tapewise_core.text.told import Told


class SetIn(Frozen):
    """What came of it; ``told`` has everything that was moved or held back.

    ``marks`` is how far from the underarm the sleeve's notches lie on back and front [mm].
    """

    seam: SideSeam
    share: Share
    back_armhole: Armhole
    front_armhole: Armhole
    back_side: Path
    front_side: FrontSide
    drop: float
    swing: float
    cap: Cap | None
    marks: tuple[float, float]
    told: tuple[Told, ...]

    @property
    def armhole(self) -> float:
        """The whole armhole's length [mm]."""
        return self.back_armhole.length + self.front_armhole.length


def set_in(wish: SetInWish) -> SetIn:
    """Return the body drawn from a wish; nothing is refused, what gives way is told."""
    swing = swing_wanted(max(wish.cup - 40.0, 0.0) / 2, sleeveless=wish.sleeveless)
    drop = wish.fit.drop if wish.drop is None else wish.drop
    drawn = _one_dart(Drawn(wish, drop, swing, seam_at(wish, drop)))
    if wish.drop is None:
        for _ in range(PASSES):
            drawn = _settled(_deep_enough(drawn))
    if wish.found.underarm_lower:
        drawn = _settled(replace(drawn, drop=max(drawn.drop + wish.found.underarm_lower, 0.0)))
    return finished(drawn)


def finished(drawn: Drawn) -> SetIn:
    """Return the whole of a depth and a swing that were settled."""
    return _whole(drawn, *_sides(drawn))


PASSES = 2
"""A deeper underarm moves the bust line and the swing a little, so the depth is looked at twice."""

OUT, SPARE = 0.15, 2.0
"""A dart's mouth opens outwards too, by about 0.15 of the swing, and is up to 2 mm wider for the
back's length (our choice)."""


def _settled(drawn: Drawn) -> Drawn:
    """The depth's own seam, and the swing once more for it."""
    if drawn.underarm != drawn.seam.at.underarm:
        drawn = replace(drawn, seam=seam_at(drawn.wish, drawn.drop))
    return _one_dart(drawn)


def _one_dart(drawn: Drawn) -> Drawn:
    """Take the swing back until one dart takes up all."""
    lower = drawn.wish.room.dart + drawn.wish.room.eased

    def fits(swing: float) -> bool:
        lift = replace(drawn, swing=swing).lift
        return math.hypot(lift + lower, OUT * swing) <= ONE_DART - SPARE

    if not drawn.swing or fits(drawn.swing):
        return drawn
    return replace(drawn, swing=most(fits, 0.0, drawn.swing) if fits(0.0) else 0.0)


def _deep_enough(drawn: Drawn) -> Drawn:
    """The underarm lowered for the arm, then moved for the sleeve."""
    wish = drawn.wish

    @cache  # the search and what comes of it ask for the same depths
    def at(drop: float) -> Drawn:
        return drawn if drop == drawn.drop else replace(drawn, drop=drop)

    deepest = wish.fit.deepest
    least = wish.fit.ratio * wish.upper_arm
    drop = deepened(lambda drop: at(drop).length, drawn.drop, least, deepest)
    return at(drop) if wish.sleeveless else at(_for_sleeve(wish, at, drop))


def _for_sleeve(wish: SetInWish, at: Callable[[float], Drawn], drop: float) -> float:
    """Where the sleeve's width can not be had: deeper for a wider one, higher for a slimmer."""
    width = wish.upper_arm + wish.longer_ease
    least, widest = at(drop).reach
    if widest < width - 1:
        return deepened(lambda drop: at(drop).reach[1], drop, width, wish.fit.deepest)
    if least > width + 1 and wish.sleeve_ease is not None and drop > SHALLOWEST:
        return drop - deepened(lambda up: -at(drop - up).reach[0], 0.0, -width, drop - SHALLOWEST)
    return drop


def _cap(drawn: Drawn, width: float) -> Cap:
    return cap(drawn.front.length, drawn.back.length, width, drawn.wish.shorter)


def _sides(drawn: Drawn) -> tuple[Path, FrontSide]:
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


def _whole(drawn: Drawn, back: Path, front: FrontSide) -> SetIn:
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
        swing_told(drawn.share.cup, drawn.swing, sleeveless=wish.sleeveless),
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
        (drawn.back.lower_length, drawn.front.lower_length),
        tuple(words for words in told if words),
    )


def _sleeve(drawn: Drawn) -> Cap:
    """The cap for the ease asked, or for the least ease that keeps it calm."""
    wish = drawn.wish
    ease = wish.sleeve_ease
    if ease is None:
        low = wish.fit.sleeve_ease
        height = drawn.underarm - drawn.back.shoulder.y
        lengths = drawn.front.length, drawn.back.length
        ease = unasked_ease(*lengths, wish.upper_arm, height, low, low + SLEEVE_EASE_RANGE)
    return _cap(drawn, wish.upper_arm + ease + wish.found.sleeve_wider)
