"""A raglan sleeve in two halves, solved to their lines: as wide as asked, each seam as long as its
body's.

Each half lies on its half of the body with the raglan line in common. From the shoulder point on
the overarm bends down and runs straight to the hem; the more it bends the nearer it lies to the
line's notch, and the slimmer is the sleeve. From the notch on the seam turns the other way than the
armhole does, as evenly as it can, and is as long. So for each level of the underarm either half
has one bend and one width; both widths fall as the level sinks, and one level makes them add up to
the width asked (exact).
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

STIFF = 65.0
"""Over this fall the arm does not lift freely [degrees] (our choice)."""

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
        return _upright(self.line, self.bend, point)


def _upright(line: RaglanLine, bend: float, point: Point) -> Point:
    along = (line.shoulder.end - line.shoulder.neck).unit()
    down = along.turned(bend)
    way = point - (line.shoulder.end + along * ROUND)
    return Point(way.dot(down.square()), way.dot(down))


@lru_cache(maxsize=512)
def over(bend: float) -> float:
    """Return how much longer an overarm is from the shoulder point than from where its straight
    parts would meet [mm]."""
    corner = Point(0, 0)
    start = corner + Vector(0, -1).turned(-bend) * ROUND
    return rounded(start, corner, Point(0, ROUND)).length() - ROUND


class RaglanSleeve(Frozen):
    """Both halves, and what of their width [mm] was asked and could be had."""

    back: HalfSleeve
    front: HalfSleeve
    asked: float
    least: float
    widest: float

    @property
    def width(self) -> float:
        """The sleeve's width at the underarm [mm]."""
        return self.back.width + self.front.width

    @property
    def level(self) -> float:
        """From the shoulder point along the overarm to the underarm's level [mm]."""
        return (self.back.level + self.front.level) / 2

    @property
    def stiff(self) -> bool:
        """Whether it hangs so steeply that the arm does not lift freely."""
        return (self.back.falls + self.front.falls) / 2 > STIFF


def raglan_sleeve(
    back: RaglanLine, front: RaglanLine, width: float, lean: float = 0.0
) -> RaglanSleeve:
    """Return the sleeve for both halves' lines and a width [mm].

    ``lean`` is how much the underarm seams slant inwards for each length downwards; the raglan
    seams meet them square. Out of reach it is as near as the lines allow.
    """
    lines = back, front
    high, low = _levels(lines, lean)
    widest, least = (_width(lines, level, lean) for level in (high, low))
    wanted = min(max(width, least), widest)

    def drawn(bend: float) -> tuple[HalfSleeve, HalfSleeve]:
        one = _half(back, bend, lean)
        return one, _half(front, _bend(front, one.level, lean), lean)

    def over(bend: float) -> float:
        one, other = drawn(bend)
        return one.width + other.width - wanted

    flat, steep = (_bend(back, level, lean) for level in (high, low))
    one, other = drawn(root(over, flat, steep, NEAR))
    return RaglanSleeve(one, other, width, least, widest)


def reach(back: RaglanLine, front: RaglanLine, lean: float = 0.0) -> tuple[float, float]:
    """Return the least and the greatest width that both halves' lines allow [mm]."""
    lines = back, front
    high, low = _levels(lines, lean)
    return _width(lines, low, lean), _width(lines, high, lean)


Lines = tuple[RaglanLine, RaglanLine]


def _levels(lines: Lines, lean: float) -> tuple[float, float]:
    """The highest and the lowest level of the underarm that both halves can have [mm]."""
    high = max(_half(line, FLATTEST, lean).level for line in lines)
    low = min(_half(line, _steepest(line), lean).level for line in lines)
    return high, max(low, high)


def _steepest(line: RaglanLine) -> float:
    """How far a half's overarm may bend [degrees]."""
    return STEEPEST - line.shoulder.slope


def _width(lines: Lines, level: float, lean: float) -> float:
    return sum(_half(line, _bend(line, level, lean), lean).width for line in lines)


def _bend(line: RaglanLine, level: float, lean: float) -> float:
    """The bend of a half whose underarm lies on a level [degrees]."""

    def over(bend: float) -> float:
        return _half(line, bend, lean).level - level

    return root(over, FLATTEST, _steepest(line), NEAR)


def _half(line: RaglanLine, bend: float, lean: float) -> HalfSleeve:
    """The half for a bend: its seam turns as evenly as it can, in a corner of equal sides.

    Below the least bend the overarm keeps that, and the corner's sides part instead: the one
    towards the underarm gets longer, and the sleeve wider.
    """
    uneven = max(LEAST_BEND - bend, 0.0) / 100
    bend = max(bend, LEAST_BEND)
    notch = _upright(line, bend, line.notch)
    ahead = _upright(line, bend, line.notch + line.ahead) - notch
    corner = notch + ahead * (1 - uneven)
    turn = rounded(notch, corner, corner + Vector(1.0, lean).unit() * (1 + uneven))
    times = line.turned / turn.length()
    return HalfSleeve(line, bend, turn.placed(lambda at: notch + (at - notch) * times))
