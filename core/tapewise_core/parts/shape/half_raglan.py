"""Half a raglan sleeve, solved to its line: its seam is as long as its body's.

It lies on its half of the body with the raglan line in common. From the shoulder point on the
overarm bends down and runs straight to the hem; the more it bends the nearer it lies to the line's
notch, and the slimmer is the sleeve. From the notch on the seam turns the other way than the
armhole does, as evenly as it can, and is as long. So for each level of the underarm there is one
bend and one width, which falls as the level sinks.
"""

from __future__ import annotations

from functools import lru_cache

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.roots import root
from tapewise_core.geometry.segments import Cubic
from tapewise_core.parts.shape.raglan_line import RaglanLine
from tapewise_core.parts.shape.rounded import rounded

ROUND = 40.0
"""The overarm begins to bend at the shoulder point and is straight so far beyond where its two
straight parts would meet [mm] (our choice): the roundness of an upper arm."""

LEAST_BEND, STEEPEST = 3.0, 80.0
"""The overarm bends by so much at the least, and falls no more steeply than that below the level
[degrees] (our choice); 45 is usual for jersey (common practice)."""

FLATTEST = LEAST_BEND - 50.0
"""Below the least bend each degree lengthens one side of the corner by a hundredth and shortens the
other, up to a half (our choice)."""

NEAR = 1e-4
"""Levels and widths are met this closely [mm]."""


class HalfSleeve(Frozen):
    """Half a sleeve down to its underarm, upright: x in from the overarm, y down from where its
    two straight parts would meet. ``bend`` is the overarm's [degrees], ``turn`` the seam's curve
    from the notch to the underarm's corner."""

    line: RaglanLine
    bend: float
    turn: Cubic

    @property
    def width(self) -> float:
        """From the overarm to the underarm's corner [mm]."""
        return self.turn.end.x

    @property
    def level(self) -> float:
        """From the shoulder point along the overarm to the underarm's level [mm]."""
        return self.turn.end.y + over(self.bend)

    @property
    def falls(self) -> float:
        """How steeply the overarm falls below the level [degrees]."""
        return self.line.shoulder.slope + self.bend

    @property
    def seam(self) -> Path:
        """The raglan seam from the neckline to the underarm's corner."""
        return self.line.upper.placed(self.upright).then(Path((self.turn,)))

    @property
    def neckline(self) -> Path:
        """The neckline from the raglan seam to the overarm."""
        return self.line.given.placed(self.upright)

    def overarm(self, length: float) -> Path:
        """Return the overarm from the side neck to the hem, so long from the shoulder point."""
        neck, end = (self.upright(p) for p in (self.line.shoulder.neck, self.line.shoulder.end))
        curve = rounded(end, Point(0, 0), Point(0, ROUND))
        hem = Point(0, length - over(self.bend))
        return ruled(neck, end).then(Path((curve,))).then(ruled(curve.end, hem))

    def upright(self, point: Point) -> Point:
        """Return a point of the body as it lies on the sleeve."""
        return _placed(self.line, _along(self.line).turned(self.bend), point)


def _along(line: RaglanLine) -> Vector:
    """The way of the shoulder from the neck."""
    return (line.shoulder.end - line.shoulder.neck).unit()


def _placed(line: RaglanLine, down: Vector, point: Point) -> Point:
    """A point of the body on a sleeve whose overarm runs so."""
    way = point - (line.shoulder.end + _along(line) * ROUND)
    return Point(way.dot(down.square()), way.dot(down))


@lru_cache(maxsize=512)
def over(bend: float) -> float:
    """Return how much longer an overarm is from the shoulder point than from where its straight
    parts would meet [mm]."""
    corner = Point(0, 0)
    start = corner + Vector(0, -1).turned(-bend) * ROUND
    return rounded(start, corner, Point(0, ROUND)).length() - ROUND


def half_sleeve(line: RaglanLine, bend: float, lean: float) -> HalfSleeve:
    """Return the half for a bend: its seam turns as evenly as it can, in a corner of equal sides.

    Below the least bend the overarm keeps that, and the corner's sides part instead: the one
    towards the underarm gets longer, and the sleeve wider.
    """
    turn, times = _turn(line, bend, lean)
    notch = turn.start
    whole = turn.placed(lambda at: notch + (at - notch) * times)
    return HalfSleeve(line, max(bend, LEAST_BEND), whole)


def _turn(line: RaglanLine, bend: float, lean: float) -> tuple[Cubic, float]:
    """The seam's turn in a corner of unit sides, and how many times as long it has to be."""
    uneven = max(LEAST_BEND - bend, 0.0) / 100
    down = _along(line).turned(max(bend, LEAST_BEND))
    notch = _placed(line, down, line.notch)
    ahead = Vector(line.ahead.dot(down.square()), line.ahead.dot(down))
    corner = notch + ahead * (1 - uneven)
    turn = rounded(notch, corner, corner + Vector(1.0, lean).unit() * (1 + uneven))
    return turn, line.turned / turn.length()


def bend_at(line: RaglanLine, level: float, lean: float) -> float:
    """Return the bend of a half whose underarm lies on a level [degrees]."""

    def too_low(bend: float) -> float:
        turn, times = _turn(line, bend, lean)
        under = turn.start.y + (turn.end.y - turn.start.y) * times
        return under + over(max(bend, LEAST_BEND)) - level

    return root(too_low, FLATTEST, steepest(line), NEAR)


def steepest(line: RaglanLine) -> float:
    """Return how far a half's overarm may bend [degrees]."""
    return STEEPEST - line.shoulder.slope
