"""What a set-in body is drawn from, and one depth of its underarm drawn."""

from __future__ import annotations

from functools import cached_property

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point
from tapewise_core.parts.shape.across_point import across_point
from tapewise_core.parts.shape.armhole import Armhole, armhole, with_bottom
from tapewise_core.parts.shape.bust_room import Room
from tapewise_core.parts.shape.cap import SHORTER, reach
from tapewise_core.parts.shape.levels import Levels, kept_between
from tapewise_core.parts.shape.shares import Across, Share, share
from tapewise_core.parts.shape.shoulder_line import ShoulderLine
from tapewise_core.parts.shape.side_dart import (
    Turn,
    turn_for,
)
from tapewise_core.parts.shape.side_seam import SideSeam, side_seam
from tapewise_core.parts.shape.side_slopes import SideLevels, SideQuarters, SideWish
from tapewise_core.parts.shape.underarm import (
    ByFit,
    Narrowed,
    narrowed,
)


class Found(Frozen):
    """What fittings found [mm]: ``underarm_lower`` and ``sleeve_wider`` move what was searched
    for; ``bust_forward`` and ``hip_forward`` are width that a half back gives a half front."""

    underarm_lower: float = 0.0
    sleeve_wider: float = 0.0
    bust_forward: float = 0.0
    hip_forward: float = 0.0

    def shared(self, share: Share) -> Share:
        """Return the shares with what the back gives the front."""
        bust, hip = share.bust + self.bust_forward, share.hip + self.hip_forward
        return replace(share, bust=bust, hip=hip)


NOTHING_FOUND = Found()
"""Where there was no fitting."""


class SetInWish(Frozen):
    """All that a set-in body is drawn from [mm].

    ``quarters`` have their ease; ``cup`` is bust less high bust (0 for men); ``tip`` the side
    dart's distance from the fold; ``stretch`` in per cent; ``sleeve_ease`` None where none is
    asked; ``drop`` None where the fit decides; ``hem`` the fold's height at the hem, None on a
    bodice; ``lower`` how far shoulder end and underarm are lowered; ``shorter`` the fraction by
    which the cap is shorter than its armhole.
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
    shorter: float = SHORTER
    found: Found = NOTHING_FOUND

    @property
    def longer_ease(self) -> float:
        """The sleeve's ease that is asked, or the fit's own, and what fittings found [mm]."""
        ease = self.fit.sleeve_ease if self.sleeve_ease is None else self.sleeve_ease
        return ease + self.found.sleeve_wider


def seam_at(wish: SetInWish, drop: float) -> SideSeam:
    """Return the side seam for a depth of the underarm below the armscye line [mm]."""
    at = wish.levels
    underarm = at.armscye.depth + drop + wish.lower
    bust = kept_between(at.bust.depth, underarm, at.waist.depth)
    hip = None if wish.hem is None else at.hip.depth
    return side_seam(SideLevels(underarm, bust, at.waist.depth, hip), wish.quarters, wish.side)


class Drawn(Frozen, dict=True):
    """One depth and one swing drawn. While a depth is searched for the first seam stands in."""

    wish: SetInWish
    drop: float
    swing: float
    seam: SideSeam

    @property
    def underarm(self) -> float:
        """The underarm's depth below the nape [mm]."""
        return self.wish.levels.armscye.depth + self.drop + self.wish.lower

    @cached_property
    def share(self) -> Share:
        """The front's and the back's shares of the seam."""
        at, cup = self.seam.at, self.wish.cup
        hip = self.wish.levels.hip.depth
        return self.wish.found.shared(share(cup, 0.0, at.bust, hip, cupped=cup > 0))

    @cached_property
    def narrower(self) -> Narrowed:
        """What across front and back give for the arm."""
        if self.wish.sleeveless:
            return Narrowed(0.0, 0.0, ())
        wide, f = self.seam.path.start.x, self.share.bust
        front = wide + f - self.swing - self.wish.across.front
        return narrowed(self.wish.upper_arm, front, wide - f - self.wish.across.back)

    @cached_property
    def back(self) -> Armhole:
        """The back's armhole."""
        line, x = self.wish.back_shoulder, self.seam.path.start.x - self.share.bust
        half = self.wish.across.back - self.narrower.back
        return armhole(line.end, line.slope, half, Point(x, self.underarm), front=False)

    @property
    def inner(self) -> Point:
        """The front's underarm before the turn."""
        return Point(self.seam.path.start.x + self.share.bust - self.swing, self.underarm)

    @property
    def turn(self) -> Turn | None:
        """The swing's turn about the front's across point."""
        if not self.swing:
            return None
        line, half = self.wish.front_shoulder, self.wish.across.front - self.narrower.front
        q, _ = across_point(line.end, line.slope, half, self.inner, front=True)
        return turn_for(self.swing, q, self.seam.at.bust)

    @cached_property
    def front(self) -> Armhole:
        """The front's armhole, its bottom turned with the side."""
        line, half = self.wish.front_shoulder, self.wish.across.front - self.narrower.front
        drawn = armhole(line.end, line.slope, half, self.inner, front=True)
        turn = self.turn
        return with_bottom(drawn, turn.of(self.inner), turn.degrees) if turn else drawn

    @property
    def length(self) -> float:
        """The whole armhole [mm]."""
        return self.back.length + self.front.length

    @property
    def reach(self) -> tuple[float, float]:
        """The least and the greatest width of a sleeve in it [mm]."""
        return reach(self.front.length, self.back.length, self.wish.shorter)

    @property
    def lift(self) -> float:
        """How far the turn lifts the front's side [mm]."""
        turn = self.turn
        return self.underarm - turn.of(self.inner).y if turn else 0.0
