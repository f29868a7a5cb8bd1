"""The sleeve of a set-in top, drafted to its armhole.

::

           O              O  crown            C  centre of the sleeve's width
         .   .            L  back underarm    R  front underarm
      L____C____R         Q  hem              l, r  ends of the hem
       \\       /
        l__Q__r

The cap is a quarter of the armhole high, as for a shirt's sleeve, which lies flat
and has no fullness to ease in [baldt]; its width follows, each half of the cap being
as long as its half of the armhole, less what jersey is stretched by (practice).
"""

from __future__ import annotations

from dataclasses import dataclass

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.passing import Passing
from tapewise_core.geometry.path import Path, curved
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.units import Length, mm

CAP_SHARE = 4
"""The cap's height is the armhole divided by this [baldt]."""

LEAST_CAP = 0.13
"""A cap is no lower than this share of the armhole (common practice)."""

MOST_TAPER = 0.28
"""How much a sleeve narrows on each side for each length of its seam, at the most (practice)."""

BACK_GRIPS, FRONT_GRIPS = (0.42, 0.55), (0.56, 0.5)
"""How far each half of the cap runs level at underarm and crown, as shares of its width: the
front is more hollow (common practice)."""

CAP_MANNER = (
    "Fuller at the back and more hollow at the front: leave each underarm square to its seam, and "
    "pass O level."
)


@dataclass(frozen=True, slots=True)
class Cap:
    """A cap solved for its armhole: height and the widths of its halves [mm]; ``lean`` as there."""

    height: float
    back: float
    front: float
    lean: float = 0.0

    @property
    def width(self) -> float:
        """The sleeve's width under the arm [mm]."""
        return self.back + self.front


def solve_cap(back: float, front: float, least: float, lean: float) -> Cap:
    """Return a cap whose halves are ``back`` and ``front`` long [mm].

    As high as the method has it, or lower where the sleeve would be narrower than
    ``least``, but never lower than practice allows. ``lean`` is how much the
    underarm seams slant inwards for each length downwards.
    """
    whole = back + front
    high, low = whole / CAP_SHARE, whole * LEAST_CAP
    cap = _at_height(high, back, front, lean)
    if cap.width >= least:
        return cap
    for _ in range(24):
        middle = (low + high) / 2
        wide = _at_height(middle, back, front, lean).width >= least
        low, high = (middle, high) if wide else (low, middle)
    return _at_height(low, back, front, lean)


def _at_height(height: float, back: float, front: float, lean: float) -> Cap:
    width = (_width(height, back, BACK_GRIPS, lean), _width(height, front, FRONT_GRIPS, lean))
    return Cap(height, *width, lean)


def _width(height: float, length: float, grips: tuple[float, float], lean: float) -> float:
    """The width at which half a cap is as long as it must be, by the secant rule [mm]."""

    def over(width: float) -> float:
        return half_cap(width, height, grips, lean).length() - length

    a, b = length * 0.6, length * 0.9
    fa, fb = over(a), over(b)
    while abs(fb) > CLOSE and abs(fb - fa) > CLOSE / 1000:
        a, fa, b = b, fb, b - fb * (b - a) / (fb - fa)
        fb = over(b)
    return b


CLOSE = 1e-6
"""A cap is as long as it must be within this [mm]."""


def half_cap(width: float, height: float, grips: tuple[float, float], lean: float) -> Path:
    """Return half a cap from its underarm, square to the seam there, to the crown."""
    start, end = Point(-width, 0), Point(0, -height)
    first = Vector(1, -lean).unit() * (width * grips[0])
    return curved(start, start + first, end + Vector(-width * grips[1], 0), end)


def taper_of(width: float, hem: float, seam: float) -> float:
    """Return how much a sleeve narrows on each side of its seam's length [mm]."""
    return min(max((width - hem) / 2, 0.0), MOST_TAPER * seam)


def draft_sleeve(cap: Cap, armhole: Length, length: Length, hem: float) -> Draft:
    """Return the sleeve as drawn by hand; ``hem`` is its girth at the hem [mm]."""
    height = armhole / CAP_SHARE
    lowered = height.mm - cap.height
    if lowered > 0.05:
        height = height - mm(lowered)
    draft = (
        Draft("Sleeve")
        .start("O", "the crown, in the middle of the paper near its top")
        .down("O", "C", height, "the line of the sleeve's width, below the crown by the cap")
        .down("O", "Q", length, "the hem in the middle")
        .inward("C", "L", mm(cap.back), "the back's underarm")
        .across("C", "R", mm(cap.front), "the front's underarm")
    )
    return _below(_cap_line(draft, cap), cap, hem)


def _cap_line(draft: Draft, cap: Cap) -> Draft:
    """The cap from the back's underarm over the crown to the front's."""
    at, axis = draft["C"] - Point(0, 0), (Point(0, 0), Point(0, 1))
    back = half_cap(cap.back, cap.height, BACK_GRIPS, cap.lean).moved(at)
    front = half_cap(cap.front, cap.height, FRONT_GRIPS, cap.lean).mirrored(*axis).moved(at)
    checks = tuple(_check(name, half) for name, half in (("m", back), ("n", front)))
    return draft.curve("cap", back.then(front.reversed()), ("L", "O", "R"), CAP_MANNER, checks)


def _check(name: str, half: Path) -> Passing:
    """A point halfway along one side of the cap, told from the crown."""
    point = half.at(half.length() / 2)[0]
    return Passing(name, point, "O", mm((point - Point(0, 0)).length()), "halfway down that side")


def _below(draft: Draft, cap: Cap, hem: float) -> Draft:
    """Both underarm seams, equally long and equally slanted, and the hem square to them."""
    seam = draft["Q"].y - draft["C"].y
    taper = taper_of(cap.width, hem, seam)
    run = 0.3 * (min(cap.back, cap.front) - taper)
    rise = run * taper / seam
    rise = run * taper / (seam + rise)
    draft = _corner(draft, "l", cap.back - taper, rise)
    draft = _corner(draft, "r", cap.front - taper, rise)
    draft = draft.rule("underarm", "R", "r").rule("underarm_2", "L", "l", remark="as long")
    left, right = (_half_hem(draft[name], draft["Q"], run, rise) for name in ("l", "r"))
    manner = "Level in the middle, bent only near its ends to meet both seams square."
    return draft.curve("sleeve_hem", left.then(right.reversed()), ("l", "Q", "r"), manner)


def _corner(draft: Draft, name: str, out: float, rise: float) -> Draft:
    """One end of the hem, a little below its middle where the seam slants inwards."""
    side = draft.inward if name == "l" else draft.across
    if rise <= 0.05:
        return side("Q", name, mm(out), "the end of the hem")
    beside = side("Q", f"{name}{name}", mm(out), "beside the end of the hem")
    return beside.down(f"{name}{name}", name, mm(rise), "the end of the hem")


def _half_hem(corner: Point, middle: Point, run: float, rise: float) -> Path:
    """From a corner, square to its seam, to the middle."""
    way = 1.0 if middle.x > corner.x else -1.0
    leave = corner + Vector(way * run, -rise)
    arrive = Point((corner.x + middle.x) / 2, middle.y)
    return curved(corner, leave, arrive, middle)
