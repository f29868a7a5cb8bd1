"""One way to draw the side seam: a waist's width tried, and what the cloth would have to bend."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path, curved, joined, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.shape.bends import HAIR, INWARD, OUTWARD, Bend, bend
from tapewise_core.parts.shape.curves import least_radii
from tapewise_core.parts.shape.side_slopes import SideLevels, SideQuarters, hip_slope, waist_slope

LEAN = 0.8
"""The greatest lean, outwards per downwards: tan 38.7° (our choice)."""

DART_LEAN = math.tan(math.radians(30))
"""Over this lean a waist dart is drawn rather than a slanting seam (common practice)."""


class Trial(Frozen):
    """A seam drawn for one waist: its parts, its tightest bends [mm] and its greatest lean.

    Between bust and waist, and waist and hip, it is two circles and a line, or one cubic.
    """

    top: Path
    upper: Bend | Path
    lower: Bend | Path | None
    slope: float
    inward: float
    outward: float
    lean: float

    def keeps(self, lean: float) -> bool:
        """Say whether the cloth can take it, up to a lean."""
        bends = self.inward >= INWARD - 1e-6 and self.outward >= OUTWARD - 1e-6
        return bends and self.lean <= lean + 1e-9


def tried(
    at: SideLevels,
    wide: SideQuarters,
    waist: float,
    *,
    tilt: float = 0.0,
    flare: float | None = None,
    grown_on: bool = False,
) -> Trial:
    """Return the seam for a waist's quarter [mm]; ``wide.waist`` is not looked at.

    ``tilt`` is how far the seam may lean at the bust line [tan], ``flare`` its slope far below
    the hip, ``grown_on`` lets it leave the bust line in a straight line.
    """
    bust, w = Point(wide.bust, at.bust), Point(waist, at.waist)
    hip = None if at.hip is None else Point(wide.hip, at.hip)
    slope = 0.0 if hip is None else hip_slope(bust, w, hip, flare)
    lean = 0.0 if hip is None else waist_slope(bust, w, hip, slope)
    up = _upper(bust, w, lean, tilt, grown_on=grown_on)
    down = _lower(w, hip, lean, slope, flare)
    if isinstance(down, Bend) and down.outer == 0.0:
        slope = down.lean
    top = _top(at.underarm, bust, up, tilt)
    parts = [part for part in (top, up, down) if part is not None]
    radii = [_radii(part) for part in parts]
    return Trial(
        top,
        up,
        down,
        slope,
        min(inward for inward, _ in radii),
        min(outward for _, outward in radii),
        max(part.lean if isinstance(part, Bend) else _steepest(part) for part in parts[1:]),
    )


def _upper(bust: Point, waist: Point, lean: float, tilt: float, *, grown_on: bool) -> Bend | Path:
    """From bust to waist."""
    if lean == 0.0 and abs(bust.x - waist.x) > HAIR:
        inner = waist.x < bust.x
        alone = 1.0 if grown_on and inner else None
        found = bend(waist, bust, tilt if inner else 0.0, alone)
        if found:
            return found
    return hermite(bust, 0.0, waist, lean)


def _lower(
    waist: Point, hip: Point | None, lean: float, slope: float, flare: float | None
) -> Bend | Path | None:
    """From waist to hip, if there is one."""
    if hip is None:
        return None
    if lean >= 0.0 and hip.x - waist.x > HAIR:
        if flare is None:
            found = bend(waist, hip, slope, leaving=lean)
        else:
            found = _flared(waist, hip, flare, lean)
        if found:
            return found
    return hermite(waist, lean, hip, slope)


def _flared(waist: Point, hip: Point, flare: float, lean: float) -> Bend | None:
    """Without a knob at the hip: a flare wider than the ruler's own line needs no second circle.

    Towards a narrower flare the second circle comes in gradually, so that no step shows.
    """
    straight = bend(waist, hip, alone=1.0, leaving=lean)
    if straight is None or straight.lean <= flare:
        return straight
    single = (flare / straight.lean) * (1 - 1e-9)
    return bend(waist, hip, flare, alone=single, leaving=lean)


def hermite(start: Point, leaving: float, end: Point, arriving: float) -> Path:
    """Return the cubic between two heights with two slopes, outwards per downwards (exact)."""
    third = (end.y - start.y) / 3
    leave = Point(start.x + leaving * third, start.y + third)
    arrive = Point(end.x - arriving * third, end.y - third)
    return curved(start, leave, arrive, end)


def _top(underarm: float, bust: Point, up: Bend | Path, tilt: float) -> Path:
    """From the underarm to the bust: upright, or upright first and leaning in at the bust.

    A seam that leaves the bust line in its ruler's line runs on in it.
    """
    height = bust.y - underarm
    if not isinstance(up, Bend) or up.end.x < up.waist.x:
        return ruled(Point(bust.x, underarm), bust)
    if up.outer == 0.0:
        return ruled(Point(bust.x + up.lean * height, underarm), bust)
    if tilt == 0.0:
        return ruled(Point(bust.x, underarm), bust)
    return hermite(Point(bust.x + tilt * height / 2, underarm), 0.0, bust, -tilt)


def _steepest(path: Path) -> float:
    """The greatest lean of a curve, among thirteen places."""
    found = [segment.direction(i / 12) for segment in path.segments for i in range(13)]
    return max(abs(along.x / along.y) for along in found)


def _radii(part: Bend | Path) -> tuple[float, float]:
    """The least radii of the inward and of the outward bends [mm]."""
    if isinstance(part, Path):
        return least_radii(part)
    outer = part.outer if part.outer and part.angle > part.end_angle + 1e-9 else math.inf
    return (part.inner, outer) if part.end.x > part.waist.x else (outer, part.inner)


def whole(trial: Trial) -> Path:
    """Return the seam in one, from the underarm down."""
    up = trial.upper.path().reversed() if isinstance(trial.upper, Bend) else trial.upper
    down = trial.lower.path() if isinstance(trial.lower, Bend) else trial.lower
    return joined(part for part in (trial.top, up, down) if part)
