"""A grown-on sleeve drawn: its straight lines, then the arc that takes them into the side seam."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.parts.shape.grown_drawn import (
    CORNER_DOWN,
    PLACE_ROOM,
    WANTED,
    Arm,
    Sleeve,
    Trunk,
    overarm,
)


class Straight(Frozen):
    """A sleeve's straight lines as far as their meeting, before its underarm is rounded.

    The names are those of :class:`Sleeve`; ``angle`` is in radians. ``inward`` is the way from the
    meeting to an arc's middle; an arc begins and ends ``reach`` radii from the meeting; ``most``
    is the largest radius that the under-seam has room for [mm], ``slant`` the cosine of half the
    angle.
    """

    lift: float
    deeper: float
    wider: float
    along: Vector
    square: Vector
    hem_top: Point
    corner: Point
    bend: Point
    line: Vector
    meeting: Point
    angle: float
    inward: Vector
    reach: float
    most: float
    slant: float

    def bow(self, radius: float) -> float:
        """Return how far from the meeting an arc's middle lies [mm]."""
        return radius / self.slant - radius

    def level(self, radius: float) -> float:
        """Return how low an arc's middle lies [mm]."""
        return self.meeting.y + self.inward.y * self.bow(radius)


def _moved_up(half: float, inwards: float) -> float:
    """How far the hem's corner moves up the under-seam of a sleeve that widens to its hem [mm].

    ``inwards`` is how much the seam goes inwards for each length towards the body, less than nought
    there.
    """
    return CORNER_DOWN * half * max(-inwards, 0.0) / max(1 - inwards * inwards, 0.04)


def straight(arm: Arm, trunk: Trunk, lift: float, deeper: float, wider: float) -> Straight | None:
    """Draw a sleeve's straight lines, or None where its under-seam has no room."""
    along, square = overarm(arm, lift)
    top = arm.shoulder + along * arm.length
    corner = top + square * (arm.hem / 2 + wider)
    bend, toward = corner, -along
    if arm.is_long:
        at = arm.place + PLACE_ROOM
        bend = arm.shoulder + along * at + square * (arm.upper / 2)
        toward = (bend - corner).unit()
    line, way = toward.turned(-deeper), trunk.way
    spanned = line.cross(way)
    if abs(spanned) < 1e-9:
        return None
    room = (trunk.bust - bend).cross(way) / spanned
    meeting = bend + line * room
    angle = math.acos(min(max(line.dot(way), -1.0), 1.0))
    reach = math.tan(angle / 2)
    if arm.is_long:
        up = _moved_up(arm.hem / 2, square.dot(toward))
        room = (meeting - corner).dot(line) - PLACE_ROOM - up
    if room <= 0 or reach <= 0:
        return None
    inward = (way - line).unit()
    return Straight(
        lift, deeper, wider, along, square, top, corner, bend, line, meeting, angle,
        inward, reach, room / reach, math.cos(angle / 2),
    )  # fmt: skip


def fitting(lines: Straight, trunk: Trunk, wanted: float) -> float:
    """Return the radius an underarm gets of one wanted [mm]; nought or less if it has no room."""
    down, level = trunk.way.y * lines.reach, lines.meeting.y
    radius = min(wanted, lines.most, (trunk.straight_to - level) / down)
    to_bust = (trunk.bust.y - level) / down
    return min(radius, to_bust) if to_bust >= WANTED else radius


def rounded(lines: Straight, trunk: Trunk, tried: float, radius: float, cost: float) -> Sleeve:
    """Return a sleeve with its underarm rounded, begun with a radius that was ``tried`` [mm]."""
    way = radius * lines.reach
    return Sleeve(
        lines.lift, lines.deeper, lines.wider, lines.along, lines.square, lines.hem_top,
        lines.corner, lines.bend, lines.line, lines.meeting, math.degrees(lines.angle), radius,
        lines.meeting + lines.line * -way, lines.meeting + trunk.way * way,
        lines.meeting + lines.inward * lines.bow(radius), tried, cost,
    )  # fmt: skip
