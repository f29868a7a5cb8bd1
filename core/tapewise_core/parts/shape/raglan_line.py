"""The raglan line of one half of a body: from the neckline to the armhole, and on along it.

What lies above the line is cut off the body and goes to the sleeve, shoulder and all (common
practice). The line bends outwards a little and runs into the armhole's lower curve without a
corner, so that body and sleeve share it down to the notch.
"""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path, curved
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.roots import root
from tapewise_core.geometry.segments import Segment
from tapewise_core.parts.shape.shoulder_line import ShoulderLine

FROM_SHOULDER = 1 / 3
"""The line leaves the neckline at this share of the half's own curve from the shoulder (common
practice)."""

LEAST_NECK, MOST_NECK = 20.0, 45.0
"""It leaves so much neckline to the sleeve, on each half, at the least and, where no corner would
be sharp, at the most [mm] (our choice): less is hard to sew, and more takes a deep neckline's own
shape into the sleeve."""

OPEN = 60.0
"""The line and the neckline's end meet at no sharper angle on the sleeve [degrees] (our choice): of
a neckline that is nearly level there, less is left to the sleeve."""

WIDEST = 132.0
"""Nor at a wider one, which leaves the body a point as sharp as what is missing to 180 degrees (our
choice): of a deep neckline that is nearly upright there, more is left to the sleeve."""

LEAN, FLATTER = 14.0, 0.5
"""Where the line meets the armhole it is so much steeper than its chord [degrees], and flatter by
half of that where it leaves the neckline (our choice): it bends out by 6 to 10 mm, as is common
practice."""

HIGHEST_NOTCH, LOWEST_NOTCH = 0.06, 0.6
"""Between these parameters of the armhole's lower curve, from its middle down, the line meets it
(our choice)."""

LONG = 0.36
"""The line's handles over its chord (our choice): about a circle's."""


class RaglanLine(Frozen):
    """One half's neckline, parted; its line down to the notch, and the armhole from there on.

    ``kept`` runs from the centre to the line, ``given`` from there to the side neck; ``turned`` is
    the armhole's length below the notch, where body and sleeve turn apart [mm], and
    ``ahead`` the line's direction there.
    """

    kept: Path
    given: Path
    upper: Path
    lower: Path
    shoulder: ShoulderLine
    turned: float
    ahead: Vector

    @property
    def whole(self) -> Path:
        """The body's raglan seam, from the neckline to the underarm."""
        return self.upper.then(self.lower)

    @property
    def opening(self) -> float:
        """The angle between the line and what it leaves of the neckline to the sleeve [degrees]."""
        return self.given.leaving().angle_to(self.upper.leaving())

    @property
    def neck(self) -> Point:
        """Where the line leaves the neckline."""
        return self.upper.start

    @property
    def notch(self) -> Point:
        """Where the line runs into the armhole."""
        return self.upper.end


def raglan_line(neckline: Path, shoulder: ShoulderLine, armhole: Path) -> RaglanLine:
    """Return the raglan line of a half: its neckline from the centre to the shoulder, its armhole
    of two curves from the shoulder's end to the underarm."""
    whole = neckline.length()
    off = min(max(whole * FROM_SHOULDER, LEAST_NECK), MOST_NECK, whole / 2)

    def drawn(off: float) -> RaglanLine:
        return _parted(*neckline.split(whole - off), shoulder, armhole.segments[1])

    found = drawn(off)
    if OPEN <= found.opening <= WIDEST:
        return found
    if found.opening > WIDEST:
        return drawn(root(lambda off: drawn(off).opening - WIDEST, off, whole / 2, 0.1))
    return drawn(root(lambda off: drawn(off).opening - OPEN, min(LEAST_NECK, off), off, 0.1))


def _parted(kept: Path, given: Path, shoulder: ShoulderLine, bottom: Segment) -> RaglanLine:
    """The line that leaves a neckline where it is parted."""
    lower = Path((bottom.split(_meeting(given.start, bottom))[1],))
    upper = _upper(given.start, lower)
    return RaglanLine(kept, given, upper, lower, shoulder, lower.length(), lower.leaving())


def _meeting(neck: Point, bottom: Segment) -> float:
    """The parameter at which the line meets the armhole's lower curve."""

    def over(t: float) -> float:
        chord, along = bottom.at(t) - neck, bottom.direction(t)
        return math.degrees(math.atan2(chord.cross(along), chord.dot(along))) - LEAN

    return root(over, HIGHEST_NOTCH, LOWEST_NOTCH, 1e-3)


def _upper(neck: Point, lower: Path) -> Path:
    """From the neckline to the notch: flatter than its chord at its start, steeper at its end."""
    notch, along = lower.start, lower.leaving()
    chord = notch - neck
    turn = math.degrees(math.atan2(chord.cross(along), chord.dot(along)))
    reach = LONG * chord.length()
    leave = neck + chord.unit().turned(-turn * FLATTER) * reach
    return curved(neck, leave, notch + along * -reach, notch)
