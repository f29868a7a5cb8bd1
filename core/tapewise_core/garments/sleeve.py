"""The arm of a grown-on sleeve: how thick it is along its length, and where the underarm lies."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import DOWN, Point, Vector, crossing
from tapewise_core.measures.body import Body
from tapewise_core.units import Length

UPPER_ARM_AT, FOREARM_AT = 0.3, 0.65
"""Where along the arm, shoulder point to wrist, it is as thick as measured and at its forearm.

The standard's upper arm lies midway between shoulder and elbow [iso8559-1]; the
forearm is thickest just below the elbow (common practice).
"""

FOREARM_OF_UPPER_ARM, FOREARM_OF_WRIST = 0.31, 1.07
"""Fullest forearm = 0.31 upper arm + 1.07 wrist; 2,208 women, residual 0.8 cm [ansur1]."""

SHORTEST_UNDERARM = 15.0
"""A sleeve's own underarm seam shorter than this is not worth sewing: the hem runs into
the side seam instead [mm] (common practice)."""

LONGEST_ROUNDING = 60.0
"""How far before and after the corner the underarm is rounded, at the most [mm] (common practice)."""


GENTLER = 5.0
"""The overarm falls this much less than the shoulder, so that the arm can lift [degrees]."""

LEAST_FALL = 4.0
"""A very square shoulder still falls this much [degrees]."""


def overarm_fall(body: Body) -> float:
    """Return how steeply the overarm falls [degrees]: the shoulder's own slope, less 5."""
    shoulder, drop = body["shoulder_length"].mm, body["shoulder_drop"].mm
    slope = math.degrees(math.asin(min(drop / shoulder, 0.95)))
    return max(slope - GENTLER, LEAST_FALL)


def arm_at(body: Body, distance: float) -> Length:
    """Return the arm's girth at a distance [mm] below the shoulder point, on straight lines between."""
    upper = body["upper_arm"]
    if "wrist" not in body or "arm_length" not in body:
        return upper
    wrist, whole = body["wrist"], body["arm_length"].mm
    forearm = FOREARM_OF_UPPER_ARM * upper.mm + FOREARM_OF_WRIST * wrist.mm
    share = distance / whole
    if share <= UPPER_ARM_AT:
        return upper
    if share >= 1:
        return wrist
    if share <= FOREARM_AT:
        girth = _between(upper.mm, forearm, (share - UPPER_ARM_AT) / (FOREARM_AT - UPPER_ARM_AT))
    else:
        girth = _between(forearm, wrist.mm, (share - FOREARM_AT) / (1 - FOREARM_AT))
    return Length(girth, ("arm at the sleeve's hem",))


def _between(a: float, b: float, share: float) -> float:
    return a + (b - a) * share


@dataclass(frozen=True, slots=True)
class Underarm:
    """How a sleeve's hem meets the body: ``hem`` from the overarm's end, then to ``point``.

    ``seam`` is the sleeve's underarm seam up to ``point`` and ``rounding`` its
    continuation on the body, which ends at ``side`` in the direction of the side
    seam; both are None where the hem runs straight into the side seam.
    ``corner`` is where the seam would turn if it were not rounded.
    """

    hem: Path
    hem_end: Point
    point: Point
    side: Point
    corner: Point | None = None
    seam: Path | None = None
    rounding: Path | None = None
    moved_out: bool = False

    def leaning(self, direction: Vector) -> Underarm:
        """Return the underarm rounded into a side seam that sets out in a direction."""
        if self.corner is None:
            return self
        reach = (self.side - self.corner).length()
        along = (self.corner - self.hem_end).unit()
        first = self.corner + along * -reach
        grip = reach * 0.55
        whole = curved(first, first + along * grip, self.side + -direction.unit() * grip, self.side)
        before, after = whole.split(whole.length() / 2)
        straight = (first - self.hem_end).length() > 1e-6
        seam = ruled(self.hem_end, first).then(before) if straight else before
        return replace(self, point=before.end, seam=seam, rounding=after)


def short_or_long(
    end: Point, hem_end: Point, upper: Point, quarter: float, armscye: float
) -> Point | None:
    """Return the corner under the arm of a longer sleeve, or None for a cap.

    ``end`` and ``hem_end`` are the ends of the sleeve's hem, ``upper`` the point
    opposite the overarm at the fullest upper arm, ``quarter`` the body's quarter
    width [mm], ``armscye`` the height below which the underarm must lie [mm].
    """
    line = (hem_end - upper) if (hem_end - upper).length() > 1 else -(end - hem_end).square()
    met = crossing(hem_end, line, Point(quarter, 0), DOWN)
    corner = Point(quarter, max(armscye, met.y if met else armscye))
    far = hem_end.x - quarter > 0 and (hem_end - corner).length() >= SHORTEST_UNDERARM
    return corner if far and hem_end.x - quarter >= SHORTEST_UNDERARM else None


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
    point = Point(quarter, max(armscye, end.y + drop))
    return Underarm(_bent(end, down, point), point, point, point, moved_out=True)


def _bent(end: Point, down: Vector, point: Point) -> Path:
    """A hem that leaves the overarm square and arrives half turned towards the underarm."""
    third = (point - end).length() / 3
    return curved(end, end + down * third, point + (end - point).unit() * third, point)


def reach_of(hem_end: Point, corner: Point) -> float:
    """Return how far before and after the corner the underarm is rounded [mm]."""
    return min(LONGEST_ROUNDING, 0.8 * (hem_end - corner).length())


def longer(end: Point, hem_end: Point, corner: Point) -> Underarm:
    """Return a longer sleeve's underarm, its corner rounded into a side seam that goes straight down."""
    side = corner + DOWN * reach_of(hem_end, corner)
    flat = Underarm(ruled(end, hem_end), hem_end, corner, side, corner)
    return flat.leaning(DOWN)
