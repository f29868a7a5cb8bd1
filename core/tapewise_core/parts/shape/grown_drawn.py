"""A grown-on sleeve with an underarm seam of its own: what is asked of it, and its lines.

The overarm bends at the shoulder's end and lies flatter beyond it by the lift; the under-seam is
one straight line from the hem, a long sleeve's bent where the upper arm is measured; one arc
takes it into the side seam.
"""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point, Vector

FLATTEST = 5.0
"""No overarm is lifted flatter than this under level [degrees] (our choice)."""

WANTED = 50.0
"""The underarm's radius wanted [mm] (our choice)."""

BELOW_ARMSCYE = 10.0
"""The middle of the underarm's curve lies at least so far below the armscye line [mm] (practice:
it must not bite)."""

CORNER_DOWN = 0.3
"""On a sleeve that narrows to its hem the corner moves down by this share of the half hem times
the tangent of its taper, and up where it widens (our choice)."""

PLACE_ROOM = 30.0
"""A sleeve keeps its width so far beyond the place where the arm is measured [mm] (our choice)."""

LONG = 60.0
"""A sleeve that goes on further than this beyond the upper arm tapers [mm] (our choice)."""


class Arm(Frozen):
    """What is asked of the sleeve: lengths from the shoulder's end, whole girths with ease [mm].

    ``fall`` is how steeply the body's shoulder lies in the draft [degrees under level],
    ``place`` how far down the upper arm is measured, ``flatter`` how much nearer to level a
    fitting laid the sleeve [degrees].
    """

    neck: Point
    shoulder: Point
    fall: float
    length: float
    upper: float
    hem: float
    place: float
    flatter: float = 0.0

    @property
    def is_long(self) -> bool:
        """Say whether the sleeve goes on beyond the upper arm and tapers."""
        return self.length > self.place + LONG


class Trunk(Frozen):
    """The body the sleeve meets: heights and the side seam's straight line at the bust [mm].

    The line passes ``bust`` in the direction ``way`` (downwards) and is straight down to
    ``straight_to``; ``ease`` is that of the whole body.
    """

    armscye: float
    waist: float
    bust: Point
    way: Vector
    straight_to: float
    ease: float

    @property
    def lowest(self) -> float:
        """Halfway from the armscye line to the waist: no underarm lies lower (practice)."""
        return (self.armscye + self.waist) / 2

    @property
    def highest(self) -> float:
        """Where the middle of the underarm's curve lies at the highest [mm]."""
        return self.armscye + BELOW_ARMSCYE


class Sleeve(Frozen):
    """A sleeve tried: where its lines run, and what it cost.

    ``hem_top`` and ``corner`` are the ends of the hem, ``bend`` where a long sleeve's under-seam
    turns, ``line`` the way from there to the body, ``meeting`` where it would meet the side
    seam's line; the arc begins at ``begins``, ends at ``ends``, with ``middle`` half way.
    ``tried`` is the radius it was begun with.
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
    radius: float
    begins: Point
    ends: Point
    middle: Point
    tried: float
    cost: float = 0.0


def overarm(arm: Arm, lift: float) -> tuple[Vector, Vector]:
    """Return the direction of the overarm beyond the shoulder's end, and square to it, downward."""
    fall = math.radians(max(arm.fall - lift - arm.flatter, min(FLATTEST, arm.fall)))
    along = Vector(math.cos(fall), math.sin(fall))
    return along, along.square()
