"""The side of a body whose shoulder hangs lower: shoulder end and underarm down by the same.

The armhole goes down with them, so that one sleeve goes into both. Its upper curve leaves the
steeper shoulder another way, and both shoulder seams of a side are brought to one length; so its
across points are moved until both halves are as long as the other side's.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property

from msgspec.structs import replace

from tapewise_core.geometry.point import DOWN, Point
from tapewise_core.geometry.roots import root
from tapewise_core.parts.shape.armhole import Armhole, armhole_through, with_bottom
from tapewise_core.parts.shape.set_in import SetIn, finished
from tapewise_core.parts.shape.set_in_drawn import Drawn, SetInWish, seam_at
from tapewise_core.parts.shape.shoulder_line import ShoulderLine
from tapewise_core.parts.shape.side_dart import Turn, turn_for
from tapewise_core.parts.shape.underarm import Narrowed

MOVED = 20.0
"""The across points are looked for so far beside the other side's [mm] (our choice)."""

INSIDE = 0.5
"""An across point lies so far inside the shoulder's end at the least [mm]: the curve stays
convex."""

NEAR = 0.01
"""Both sides' armholes are alike this closely [mm]."""


class Lower(Drawn):
    """The lower side drawn like the ``higher``; ``back_at`` and ``front_at`` are where its across
    points lie from the fold [mm]."""

    higher: SetIn
    back_at: float
    front_at: float

    @cached_property
    def narrower(self) -> Narrowed:
        """What the arm needs is in the higher side's armhole."""
        return Narrowed(0.0, 0.0, ())

    @cached_property
    def back(self) -> Armhole:
        """The back's armhole."""
        under = Point(self.seam.path.start.x - self.share.bust, self.underarm)
        at = self.higher.back_armhole.across
        return self._through(self.wish.back_shoulder, self.back_at, at, under)

    @property
    def turn(self) -> Turn | None:
        """The higher side's turn, so much lower."""
        if not self.swing:
            return None
        at = self.higher.front_armhole.across
        about = Point(self.front_at, at.y + self.wish.lower)
        return Turn(about, turn_for(self.swing, at, self.higher.seam.at.bust).degrees)

    @cached_property
    def front(self) -> Armhole:
        """The front's armhole, its bottom turned with the side."""
        at = self.higher.front_armhole.across
        drawn = self._through(self.wish.front_shoulder, self.front_at, at, self.inner)
        turn = self.turn
        return with_bottom(drawn, turn.of(self.inner), turn.degrees) if turn else drawn

    def _through(self, line: ShoulderLine, x: float, higher: Point, under: Point) -> Armhole:
        at = Point(x, higher.y) + DOWN * self.wish.lower
        return armhole_through(line.end, line.slope, at, under)


def lowered(higher: SetIn, wish: SetInWish) -> SetIn:
    """Return the lower side of a body: its ``wish`` says by how much it is lower."""
    back, front = higher.back_armhole, higher.front_armhole
    seam = seam_at(wish, higher.drop)
    drawn = Lower(wish, higher.drop, higher.swing, seam, higher, back.across.x, front.across.x)

    def off_back(at: float) -> float:
        return replace(drawn, back_at=at).back.length - back.length

    def off_front(at: float) -> float:
        return replace(drawn, front_at=at).front.length - front.length

    back_at = _at(off_back, back, wish.back_shoulder)
    front_at = _at(off_front, front, wish.front_shoulder)
    made = finished(replace(drawn, back_at=back_at, front_at=front_at))
    return replace(made, cap=higher.cap, marks=higher.marks)


def _at(off: Callable[[float], float], like: Armhole, line: ShoulderLine) -> float:
    """Where an across point lies so that its armhole is as long as the other side's."""
    at = min(like.across.x, line.end.x - INSIDE)
    return root(off, at - MOVED, min(at + MOVED, line.end.x - INSIDE), NEAR)
