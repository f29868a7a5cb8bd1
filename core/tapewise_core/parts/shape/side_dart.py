"""The front's side seam with its dart, its eased length or its gathers; the swung armhole.

The front is cut across at the bust point and its lower part let down; what lies between armhole
and cut may be turned out about the across point, which is the armhole's own dart turned into
the side. The dart's tip lies on the perpendicular bisector of its mouth, so that its legs are
equal however the seam leans (exact).
"""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import distance_at_height
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import DOWN, Point, Vector
from tapewise_core.parts.shape.curves import warped

BELOW_UNDERARM = 30.0
"""The dart's upper end lies at least this far below the underarm [mm] (our choice)."""

STOP, STOP_MOST, STOP_CUP = 20.0, 40.0, 1 / 16
"""The dart stops 20 before the bust point and 1/16 of bust less high bust more, 40 at the most
[mm] (common practice)."""

ABOVE_WAIST = 70.0
"""At least so much is left between a dart and the waist [mm] (our choice)."""

LEAST_DART = 1.0
"""A mouth narrower than this is no dart [mm]."""


def apex_from_fold(bust: float) -> float:
    """Return the bust point's distance from the fold: 31 + 0.068 bust, sd 7 [ansur1] [mm]."""
    return 31.0 + 0.068 * bust


def stop_before(bust: float, high_bust: float) -> float:
    """Return how far before the bust point a dart ends [mm]."""
    return min(max(STOP + (bust - high_bust) * STOP_CUP, STOP), STOP_MOST)


class SideDart(Frozen):
    """A side dart: its mouth's ends on the seam, its tip, its legs' length and its intake.

    ``peak`` is the corner that the folded dart makes at its mouth, ``peak_height`` how far it
    stands out from the mouth's straight line [mm].
    """

    upper: Point
    lower: Point
    tip: Point
    peak: Point

    @property
    def intake(self) -> float:
        """The mouth's width [mm]."""
        return (self.lower - self.upper).length()

    @property
    def leg(self) -> float:
        """The length of each leg [mm]."""
        return (self.upper - self.tip).length()

    @property
    def peak_height(self) -> float:
        """How far the folded peak stands out [mm]."""
        return (self.peak - self.upper.toward(self.lower, 0.5)).length()


class Turn(Frozen):
    """What lies beside the armhole turned out about the across point by an angle [degrees]."""

    about: Point
    degrees: float

    def of(self, point: Point) -> Point:
        """Return where a point comes to lie: below the across point outwards, and up."""
        return self.about + (point - self.about).turned(-self.degrees)


def turn_for(swing: float, about: Point, bust_level: float) -> Turn:
    """Return the turn that opens a half front by ``swing`` on the bust line [mm].

    The bust line is taken at least 60 below the across point (our choice).
    """
    return Turn(about, math.degrees(math.atan2(swing, max(bust_level - about.y, 60.0))))


class FrontSide(Frozen):
    """The front's side: one path, or two with a dart between; what is eased or gathered in [mm]."""

    upper: Path
    lower: Path | None
    dart: SideDart | None
    eased: float

    @property
    def length(self) -> float:
        """The sewn length, the dart closed [mm]."""
        return self.upper.length() + (self.lower.length() if self.lower else 0.0)


def plain_side(seam: Path, back: float) -> FrontSide:
    """Return a front side without room; ``back`` is the back's length, for what is eased."""
    return FrontSide(seam, None, None, seam.length() - back)


def eased_side(
    seam: Path, lower: float, back: float, waist: float, turn: Turn | None, swing: float
) -> FrontSide:
    """Return a front side let down by ``lower`` [mm], smoothly from the underarm to the waist.

    With a turn its upper end is the turned one, and it runs back to the front's own at the waist.
    """
    top, end = seam.start.y, waist

    def laid(point: Point) -> Point:
        t = min(max((point.y - top) / (end - top), 0.0), 1.0)
        k = t * t * (3 - 2 * t)
        let_down = point + DOWN * lower
        if turn is None:
            return point.toward(let_down, k)
        return turn.of(point + Vector(-swing, 0)).toward(let_down, k)

    path = warped(seam, laid, 3)
    return FrontSide(path, None, None, path.length() - back)


def darted_side(
    seam: Path,
    back: Path,
    level: float,
    lower: float,
    tip_x: float,
    turn: Turn | None = None,
    swing: float = 0.0,
) -> FrontSide | None:
    """Return a front side with a dart, or None where no dart fits.

    ``seam`` is the front's own tracing and ``back`` the back's, from underarm to hem; ``level``
    is the height of the mouth's upper end before the turn, ``lower`` how far the lower front is
    let down, ``tip_x`` the tip's distance from the fold [mm]. The front is cut off below
    the dart so that, the dart closed, it is as long as the back (exact).
    """
    cut = distance_at_height(seam, level)
    if cut is None or cut <= 0:
        return None
    above, _ = seam.split(cut)
    if turn is not None:
        above = warped(above, lambda point: turn.of(point + Vector(-swing, 0)))
    below = seam.moved(DOWN * lower)
    spare = below.length() + above.length() - back.length()
    if spare <= 0:
        return None
    _, below = below.split(spare)
    dart = _dart(above.end, below.start, tip_x)
    return None if dart is None else FrontSide(above, below, dart, 0.0)


def _dart(upper: Point, lower: Point, tip_x: float) -> SideDart | None:
    """The tip on the mouth's perpendicular bisector, and the folded mouth's true peak."""
    mouth = lower - upper
    middle = upper.toward(lower, 0.5)
    inward = mouth.unit().square()
    if mouth.length() < LEAST_DART or inward.x > -0.5 or middle.x - tip_x < 30:
        return None
    tip = middle + inward * ((tip_x - middle.x) / inward.x)
    deep = (middle - tip).length()
    alpha = math.atan2(mouth.length() / 2, deep)
    peak = middle + inward * (-mouth.length() / 2 * math.tan(2 * alpha))
    return SideDart(upper, lower, tip, peak)
