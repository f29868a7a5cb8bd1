"""The figure in the build of the person: heights and widths of the drawing moved to hers.

The drawing is one body (see :mod:`.croquis_parts`). Its own girths [cm], at 170 cm, are those of
the ellipses that front and side view make together at each level; whoever measures a tenth more
there, height for height, is drawn a tenth wider. That is a likeness, no measurement.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Mapping
from enum import StrEnum

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.measures.croquis_parts import FLOOR, Croquis
from tapewise_core.measures.measure import View
from tapewise_core.measures.tape import Tape

Knots = tuple[tuple[float, float], ...]
"""Pairs of a height on the drawing [cm] and what holds there, from the crown down."""


class Kind(StrEnum):
    """Whose outline is drawn."""

    WOMAN = "woman"
    MAN = "man"
    CHILD = "child"
    ANYBODY = "anybody"


OWN = {
    "neck": 36.0, "shoulder_length": 12.5, "bust": 88.0, "under_bust": 78.0, "waist": 70.0,
    "hip": 93.0, "upper_arm": 27.0,
}  # fmt: skip
"""What the drawing itself measures [cm]."""

CHIN, NAPE, WAIST, HIP, KNEE = 22.7, 25.6, 65.0, 85.0, 124.4
"""Heights on the drawing, from the crown down [cm]."""

_SIDE: Knots = (
    (0, 7.6), (22, 5.2), (26.3, 6.8), (31.5, 18.2), (38, 16.6), (43.5, 16.2), (48, 15.7),
    (54, 14.5), (61, 13.0), (65, 12.8), (71, 14.0), (78, 16.3), (85, 17.5), (92, 17.5),
    (104, 16.2), (123.5, 12.9), (139, 12.9), (161, 10.0), (170, 10.8),
)  # fmt: skip
"""How far the drawing's side lies from its middle [cm]; what is farther out is an arm."""

_ARM = 0.8
"""What lies so far beyond the side still belongs to the body, such as a tape's edge [cm]."""

_HEADS: Knots = ((0, 4.0), (75, 4.2), (95, 5.0), (128, 6.2), (150, 7.0), (165, FLOOR / CHIN))
"""A child's height [cm], and how often its head goes into it (common practice in drawing)."""

_CHEST = 1.8
"""How far the drawing's breast stands out from a chest without one [cm]."""


class Build(Frozen):
    """Whose figure it is: heights on the drawing with her own [cm], and widths with factors."""

    kind: Kind = Kind.WOMAN
    down: Knots = ((0.0, 0.0), (FLOOR, FLOOR))
    wide: Knots = ((0.0, 1.0),)
    arm: float = 1.0

    def y(self, y: float) -> float:
        """Return where a height of the drawing lies on her [cm]."""
        return _between(self.down, y)

    def factor(self, y: float) -> float:
        """Return how much wider she is at a height of the drawing."""
        return _between(self.wide, y)

    def place(self, point: Point, view: View) -> Point:
        """Return where a point of the drawing [mm] lies on her."""
        x, y = point.x / 10, point.y / 10
        across = self._side_x(x, y) if view is View.SIDE else self._front_x(x, y)
        return Point(across * 10, self.y(y) * 10)

    def _front_x(self, x: float, y: float) -> float:
        side, out = _between(_SIDE, y), abs(x)
        if out <= side + _ARM or y < 31.5:
            return x * self.factor(y)
        beyond = side + self._shift(y) + (out - side) * self.arm
        return beyond if x > 0 else -beyond

    def _shift(self, y: float) -> float:
        """How far arms hang farther out: by the shoulders' width above, the widest below [cm]."""
        top = 18.2 * (self.factor(34) - 1)
        low = max(top, *(_between(_SIDE, at) * (self.factor(at) - 1) for at in (46, WAIST, HIP)))
        return _between(((34.0, top), (60.0, low)), y)

    def _side_x(self, x: float, y: float) -> float:
        if self.kind is not Kind.WOMAN and x > 6:
            x -= _CHEST * max(0.0, 1 - abs(y - 46) / 10)
        inner = max(-13.0, min(x, 13.0))
        return inner * self.factor(y) + (x - inner)


def _between(knots: Knots, at: float) -> float:
    """Return what holds at a place, straight from knot to knot and even beyond the last."""
    place = bisect_right([knot for knot, _ in knots], at)
    if place in (0, len(knots)):
        return knots[min(place, len(knots) - 1)][1]
    (x0, y0), (x1, y1) = knots[place - 1], knots[place]
    return y0 + (y1 - y0) * (at - x0) / (x1 - x0)


def build_of(kind: Kind, cm: Mapping[str, float]) -> Build:
    """Return the build that measures [cm] make; what is not there is as on the drawing.

    Values beyond all bodies, slips of the hand, are drawn as the farthest that bodies go.
    """
    times = FLOOR / min(max(cm.get("height", FLOOR), 60.0), 230.0)
    return Build(kind, _down(kind, cm, times), *_wide(kind, cm, times))


def _down(kind: Kind, cm: Mapping[str, float], times: float) -> Knots:
    chin = FLOOR / _between(_HEADS, FLOOR / times) if kind is Kind.CHILD else CHIN
    nape = chin + NAPE - CHIN
    usual = WAIST if kind is not Kind.CHILD else nape + (WAIST - NAPE) * 0.95
    waist = _held(FLOOR - cm["waist_to_floor"] * times if "waist_to_floor" in cm else usual, 56, 78)
    hip = waist + _held(cm.get("hip_depth", (HIP - WAIST) / times) * times, 12, 28)
    knee = waist + _held(cm.get("waist_to_knee", (KNEE - WAIST) / times) * times, 45, 75)
    return ((0.0, 0.0), (CHIN, chin), (NAPE, nape), (WAIST, waist), (HIP, hip), (KNEE, knee),
            (FLOOR, FLOOR))  # fmt: skip


def _wide(kind: Kind, cm: Mapping[str, float], times: float) -> tuple[Knots, float]:
    def more(key: str) -> float:
        return _held(cm[key] * times / OWN[key], 0.7, 2.0) if key in cm else 1.0

    head = FLOOR / _between(_HEADS, FLOOR / times) / CHIN if kind is Kind.CHILD else 1.0
    neck, hip, bust, waist = (more(key) for key in ("neck", "hip", "bust", "waist"))
    shoulder = (6.8 * neck + 11.4 * more("shoulder_length")) / 18.2
    under = more("under_bust") if "under_bust" in cm else (bust + waist) / 2
    leg = 1 + (hip - 1) * 0.45
    knots = ((20.0, head), (25.0, neck), (31.5, shoulder), (37.0, shoulder), (46.0, bust),
             (54.0, under), (WAIST, waist), (HIP, hip), (93.0, hip), (KNEE, leg),
             (162.0, 1 + (leg - 1) / 2))  # fmt: skip
    return knots, more("upper_arm")


def _held(value: float, low: float, high: float) -> float:
    return min(max(value, low), high)


def shaped(path: Path, view: View, build: Build) -> Path:
    """Return a path of the drawing as it runs on her."""
    return path.placed(lambda point: build.place(point, view))


def shaped_croquis(seen: Croquis, view: View, build: Build) -> Croquis:
    """Return the figure in her build."""
    parts = (seen.outline, seen.details, seen.fine)
    return Croquis(*(tuple(shaped(path, view, build) for path in part) for part in parts))


def shaped_tape(tape: Tape, build: Build) -> Tape:
    """Return a measure's tape as it lies on her, in a frame that holds her."""
    view = tape.view
    return replace(
        tape,
        frame=_frame(tape.frame, view, build),
        seen=shaped(tape.seen, view, build),
        hidden=None if tape.hidden is None else shaped(tape.hidden, view, build),
        guides=tuple(shaped(path, view, build) for path in tape.guides),
        landmarks=tuple(replace(one, at=build.place(one.at, view)) for one in tape.landmarks),
    )


def _frame(box: Box, view: View, build: Build) -> Box:
    """The frame with as much more on each side as she is wider than the drawing."""
    heights = [y for y in (10.0, 34.0, 46.0, WAIST, HIP) if box.top <= y * 10 <= box.bottom]
    wider = [_between(_SIDE, y) * (build.factor(y) - 1) for y in heights]
    more = max(0.0, *wider) * 10 if wider else 0.0
    more += max(0.0, build.arm - 1) * 60 if view is not View.SIDE else 0.0
    top, low = (build.y(y / 10) * 10 if 0 <= y <= FLOOR * 10 else y for y in (box.top, box.bottom))
    return Box(box.left - more, top, box.right + more, low)
