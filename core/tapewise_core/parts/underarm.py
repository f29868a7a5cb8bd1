"""How a sleeve's hem meets the body under the arm: in one line for a cap, round a corner else."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import DOWN, Point, Vector, crossing

SHORTEST_UNDERARM = 25.0
"""A sleeve's own underarm seam shorter than this is not worth sewing: the hem runs into
the side seam instead [mm] (common practice)."""

LONGEST_ROUNDING, SHORTEST_ROUNDING = 60.0, 20.0
"""How far the underarm is rounded before and after its corner, between these [mm] (common
practice)."""

STRAIGHT = 0.01
"""The sine of an angle that is no bend."""

LOW = 60.0
"""An underarm further below the armscye line is low: an arm's lift drags up the side
[conover, volume 2] [mm]; how low is common practice."""

HAIR = 0.05
"""What nobody can draw [mm]."""

BEND = 70.0
"""The underarm seam bends at the upper arm over so far on either side, at the most [mm]."""


@dataclass(frozen=True, slots=True)
class Underarm:
    """How a sleeve's hem meets the body: ``hem`` from the overarm's end, then to ``point``.

    ``seam`` is the sleeve's underarm seam up to ``point`` and ``rounding`` its
    continuation on the body, which ends at ``side`` in the direction of the side
    seam; both are None where the hem runs straight into the side seam.
    ``corner`` is where the seam would turn if it were not rounded, ``upper`` the
    point opposite the overarm at the fullest upper arm, where a longer sleeve bends.
    """

    hem: Path
    hem_end: Point
    point: Point
    side: Point
    corner: Point | None = None
    upper: Point | None = None
    seam: Path | None = None
    rounding: Path | None = None
    moved_out: bool = False

    def leaning(self, direction: Vector) -> Underarm:
        """Return the underarm rounded into a side seam that sets out in a direction."""
        if self.corner is None:
            return self
        reach = (self.side - self.corner).length()
        before = self.upper or self.hem_end
        first = self.corner + (before - self.corner).unit() * reach
        grip, along = reach * 0.55, (self.corner - before).unit()
        whole = curved(first, first + along * grip, self.side + -direction.unit() * grip, self.side)
        sleeve, body = whole.split(whole.length() / 2)
        straight = _down_the_sleeve(self.hem_end, self.upper, first)
        seam = straight.then(sleeve) if straight else sleeve
        return replace(self, point=sleeve.end, seam=seam, rounding=body)


def _down_the_sleeve(hem_end: Point, upper: Point | None, first: Point) -> Path | None:
    """The underarm seam up to its rounding: straight, or bent gently at the upper arm."""
    if (first - hem_end).length() <= 1e-6:
        return None
    if upper is None:
        return ruled(hem_end, first)
    start = upper + (hem_end - upper).unit() * min(BEND, 0.45 * (upper - hem_end).length())
    end = upper + (first - upper).unit() * min(BEND, 0.95 * (first - upper).length())
    turn = curved(start, start.toward(upper, 0.6), end.toward(upper, 0.6), end)
    return ruled(hem_end, start).then(turn).then(ruled(end, first))


def short_or_long(
    end: Point, hem_end: Point, upper: Point, quarter: float, armscye: float
) -> Point | None:
    """Return the corner under the arm of a longer sleeve, or None for a cap.

    ``end`` and ``hem_end`` are the ends of the sleeve's hem, ``upper`` the point
    opposite the overarm at the fullest upper arm, ``quarter`` the body's quarter
    width [mm], ``armscye`` the height below which the underarm must lie [mm].
    A tapering sleeve's seam runs on straight to the corner; where that would be
    low, it bends at the upper arm as much as is needed and keeps its width at the most.
    """
    level = -(end - hem_end).unit().square()
    taper = hem_end - upper if (hem_end - upper).length() > 1 else level
    straight, kept = (_meets(hem_end, way, quarter, armscye) for way in (taper, level))
    if upper != hem_end:
        kept = _meets(upper, level, quarter, armscye)
    corner = Point(quarter, min(straight.y, max(kept.y, armscye + LOW)))
    long = (hem_end - corner).length() >= SHORTEST_UNDERARM
    return corner if long and hem_end.x - quarter >= SHORTEST_UNDERARM else None


def _meets(start: Point, way: Vector, quarter: float, armscye: float) -> Point:
    """Where a line reaches the body's quarter, at the armscye line or below it."""
    met = crossing(start, way, Point(quarter, 0), DOWN)
    return Point(quarter, _below(armscye, met.y if met else armscye))


def cap(end: Point, hem_end: Point, quarter: float, armscye: float) -> Underarm:
    """Return a cap's underarm: the hem runs straight into the side seam.

    Where its square hem would end above the armscye line, or inside the body's
    quarter, the underarm goes down or out and the hem is drawn to there: as long
    as it was at least, leaving the overarm square.
    """
    down = (hem_end - end).unit()
    half = (hem_end - end).length()
    if hem_end.y < armscye:
        hem_end = end + down * ((armscye - end.y) / down.y)
    if hem_end.x >= quarter:
        return Underarm(ruled(end, hem_end), hem_end, hem_end, hem_end)
    reach = max(half, (hem_end - end).length())
    run = quarter - end.x
    drop = math.sqrt(max(reach * reach - run * run, 0.0))
    point = Point(quarter, _below(armscye, end.y + drop))
    return Underarm(_bent(end, down, point), point, point, point, moved_out=True)


def _below(armscye: float, height: float) -> float:
    """A height at or below the armscye line; a hair below it is on it."""
    return height if height > armscye + HAIR else armscye


def _bent(end: Point, down: Vector, point: Point) -> Path:
    """A hem that leaves the overarm square and arrives half turned towards the underarm."""
    third = (point - end).length() / 3
    return curved(end, end + down * third, point + (end - point).unit() * third, point)


def reach_of(before: Point, corner: Point, lowest: float) -> float:
    """Return how far before and after the corner the underarm is rounded [mm].

    The rounding lowers the underarm by about half of it: less than usual where
    that would be lower than ``lowest``.
    """
    usual = min(LONGEST_ROUNDING, 0.8 * (before - corner).length())
    return min(usual, max(2 * (lowest - corner.y), SHORTEST_ROUNDING))


def bends_at(hem_end: Point, upper: Point, corner: Point) -> bool:
    """Say whether a longer sleeve's underarm bends at the upper arm, and has room to."""
    room = (hem_end - upper).length() > BEND and upper.x - corner.x > LONGEST_ROUNDING / 2
    return room and abs((upper - hem_end).unit().cross((corner - upper).unit())) > STRAIGHT


def longer(
    end: Point, hem_end: Point, corner: Point, upper: Point | None, reach: float
) -> Underarm:
    """Return a longer sleeve's underarm, rounded into a side seam that goes straight down."""
    side = corner + DOWN * reach
    flat = Underarm(ruled(end, hem_end), hem_end, corner, side, corner, upper)
    return flat.leaning(DOWN)
