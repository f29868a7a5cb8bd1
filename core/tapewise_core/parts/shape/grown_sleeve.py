"""A grown-on sleeve with an underarm seam of its own: lift the sleeve, do not dig the underarm.

The overarm bends at the shoulder's end and lies flatter beyond it by the lift; the under-seam is
one straight line from the hem, a long sleeve's bent where the upper arm is measured; one arc
takes it into the side seam. Of all sleeves as wide as asked the one that lifts, deepens and
widens least is taken, each at its price.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from tapewise_core.geometry.point import Point, Vector

FLATTEST = 5.0
"""No overarm is lifted flatter than this under level [degrees] (our choice)."""

MOST_LIFT, MOST_DEEPER, BOTH = 8.0, 20.0, 4.0
"""The most a sleeve is lifted and deepened towards the body, and the most of both [degrees]
(our choice)."""

MOST_WIDER, STEP_WIDER = 30.0, 5.0
"""A half hem is widened by so much at the most, in steps [mm] (our choice)."""

WANTED, LEAST = 50.0, 35.0
"""The underarm's radius wanted, and the least [mm] (our choice)."""

BELOW_ARMSCYE = 10.0
"""The middle of the underarm's curve lies at least so far below the armscye line [mm] (practice:
it must not bite)."""

LIFT_PRICE, WIDER_PRICE, RADIUS_PRICE = 1.2, 0.8, 0.05
"""What a degree of lift, a mm of half hem and a mm of radius cost, a degree of depth costing 1
(our choice)."""

COARSE = 2.0
"""Lifts are tried this far apart first [degrees]."""

TOO_DEAR = 20.0
"""Lift, depth and 0.4 for each mm of half hem may cost so much together; then a cap is better."""

CORNER_DOWN = 0.3
"""On a sleeve that narrows to its hem the corner moves down by this share of the half hem times
the tangent of its taper, and up where it widens (our choice)."""

PLACE_ROOM = 30.0
"""A sleeve keeps its width so far beyond the place where the arm is measured [mm] (our choice)."""

LONG = 60.0
"""A sleeve that goes on further than this beyond the upper arm tapers [mm] (our choice)."""


@dataclass(frozen=True, slots=True)
class Arm:
    """What is asked of the sleeve: lengths from the shoulder's end, whole girths with ease [mm].

    ``fall`` is how steeply the body's shoulder lies in the draft [degrees under level],
    ``place`` how far down the upper arm is measured.
    """

    neck: Point
    shoulder: Point
    fall: float
    length: float
    upper: float
    hem: float
    place: float

    @property
    def is_long(self) -> bool:
        """Say whether the sleeve goes on beyond the upper arm and tapers."""
        return self.length > self.place + LONG


@dataclass(frozen=True, slots=True)
class Trunk:
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


@dataclass(frozen=True, slots=True)
class Sleeve:
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

    @property
    def form(self) -> float:
        """What lift, depth and a wider hem cost together."""
        return LIFT_PRICE * self.lift + self.deeper + WIDER_PRICE / 2 * self.wider


def grown_sleeve(arm: Arm, trunk: Trunk) -> Sleeve | None:
    """Return the sleeve that lifts, deepens and widens least, or None where a cap must do.

    A long sleeve is wanted whatever it costs; None then means that none can be drawn.
    """
    wider = (0.0,) if arm.is_long else _steps(0.0, MOST_WIDER, STEP_WIDER)
    for wanted in (WANTED, LEAST):
        for more in wider:
            best = _best(arm, trunk, wanted, more)
            if best and (arm.is_long or best.form <= TOO_DEAR):
                return best
    return None


def usual_radius(trunk: Trunk) -> float:
    """Return the underarm's usual radius: 6 cm on a close body, 8 on an easy one (our choice)."""
    return 60.0 if trunk.ease <= 20.0 else 80.0


def _best(arm: Arm, trunk: Trunk, wanted: float, wider: float) -> Sleeve | None:
    """The cheapest sleeve with one hem: among some lifts first, then closer and closer."""
    best: Sleeve | None = None
    for lift in _steps(0.0, MOST_LIFT, COARSE):
        if best and LIFT_PRICE * lift + WIDER_PRICE * wider >= best.cost:
            break
        for radius in _radii(trunk):
            best = _cheaper(best, _fitted(arm, trunk, wanted, lift, wider, radius))
            if best and best.cost <= WIDER_PRICE * wider:
                return best
    return _closer(best, arm, trunk, wanted) if best else None


def _closer(best: Sleeve, arm: Arm, trunk: Trunk, wanted: float) -> Sleeve:
    """The cheapest sleeve near one that was found, its lift moved by less and less."""
    step = COARSE / 2
    while step > 0.02:
        for lift in (best.lift - step, best.lift + step):
            other = _fitted(arm, trunk, wanted, lift, best.wider, best.tried)
            best = other if other and other.cost < best.cost else best
        step /= 2
    return best


def _cheaper(best: Sleeve | None, other: Sleeve | None) -> Sleeve | None:
    return other if other and (best is None or other.cost < best.cost) else best


def _radii(trunk: Trunk) -> tuple[float, ...]:
    """The radii tried, the usual one first."""
    usual = usual_radius(trunk)
    return (usual, WANTED, usual + 20, usual + 40)


def _steps(first: float, last: float, step: float) -> tuple[float, ...]:
    return tuple(first + step * i for i in range(round((last - first) / step) + 1))


def _fitted(
    arm: Arm, trunk: Trunk, wanted: float, lift: float, wider: float, radius: float
) -> Sleeve | None:
    """The sleeve at one lift that deepens only as far as its underarm must, with its cost."""
    if not 0 <= lift <= MOST_LIFT:
        return None
    sleeve = _drawn(arm, trunk, lift, 0.0, wider, radius)
    if sleeve and sleeve.middle.y < trunk.highest:
        most = MOST_DEEPER if lift <= BOTH else BOTH
        sleeve = _deepened(arm, trunk, lift, wider, radius, most)
    if sleeve is None or sleeve.radius < wanted - 1e-6 or sleeve.middle.y > trunk.lowest:
        return None
    return replace(sleeve, cost=_cost(sleeve, trunk, radius))


def _deepened(
    arm: Arm, trunk: Trunk, lift: float, wider: float, radius: float, most: float
) -> Sleeve | None:
    """The sleeve deepened until the middle of its underarm lies low enough, by closing in."""
    low, high = 0.0, most
    found = _drawn(arm, trunk, lift, high, wider, radius)
    first = _drawn(arm, trunk, lift, low, wider, radius)
    if first is None or found is None or found.middle.y < trunk.highest:
        return None
    above, below = first.middle.y - trunk.highest, found.middle.y - trunk.highest
    for _ in range(12):
        if high - low < 0.01 or below < 0.05:
            break
        share = min(max(above / (above - below), 0.02), 0.98)
        tried = _drawn(arm, trunk, lift, low + (high - low) * share, wider, radius)
        if tried is None:
            return found
        level = tried.middle.y - trunk.highest
        if level >= 0:
            high, below, above, found = tried.deeper, level, above / 2, tried
        else:
            low, above, below = tried.deeper, level, below / 2
    return found


def _cost(sleeve: Sleeve, trunk: Trunk, radius: float) -> float:
    """The price of a sleeve; a curve that ends below the bust line makes that line wider."""
    below = max(sleeve.ends.y - trunk.bust.y, 0.0)
    price = 0.15 if trunk.ease <= 40.0 else 0.05
    return (
        LIFT_PRICE * sleeve.lift
        + sleeve.deeper
        + WIDER_PRICE * sleeve.wider
        + RADIUS_PRICE * abs(radius - usual_radius(trunk))
        + price * below
    )


def overarm(arm: Arm, lift: float) -> tuple[Vector, Vector]:
    """Return the direction of the overarm beyond the shoulder's end, and square to it, downward."""
    fall = math.radians(max(arm.fall - lift, min(FLATTEST, arm.fall)))
    along = Vector(math.cos(fall), math.sin(fall))
    return along, along.square()


def _moved_up(half: float, inwards: float) -> float:
    """How far the hem's corner moves up the under-seam of a sleeve that widens to its hem [mm].

    ``inwards`` is how much the seam goes inwards for each length towards the body, less than nought
    there.
    """
    return CORNER_DOWN * half * max(-inwards, 0.0) / max(1 - inwards * inwards, 0.04)


def _drawn(
    arm: Arm, trunk: Trunk, lift: float, deeper: float, wider: float, radius: float
) -> Sleeve | None:
    """Draw one sleeve, or None where its under-seam has no room."""
    along, square = overarm(arm, lift)
    top = arm.shoulder + along * arm.length
    corner = top + square * (arm.hem / 2 + wider)
    bend = corner
    if arm.is_long:
        at = arm.place + PLACE_ROOM
        bend = arm.shoulder + along * at + square * (arm.upper / 2)
    toward = (bend - corner).unit() if arm.is_long else -along
    line = toward.turned(-deeper)
    spanned = line.cross(trunk.way)
    if abs(spanned) < 1e-9:
        return None
    way = (trunk.bust - bend).cross(trunk.way) / spanned
    meeting = bend + line * way
    angle = math.acos(min(max(line.dot(trunk.way), -1.0), 1.0))
    reach = math.tan(angle / 2)
    room = way
    if arm.is_long:
        room = (
            (meeting - corner).dot(line) - PLACE_ROOM - _moved_up(arm.hem / 2, square.dot(toward))
        )
    if room <= 0 or reach <= 0:
        return None
    down, tried = trunk.way.y * reach, radius
    radius = min(radius, room / reach, (trunk.straight_to - meeting.y) / down)
    to_bust = (trunk.bust.y - meeting.y) / down
    if to_bust >= WANTED:
        radius = min(radius, to_bust)
    if radius <= 0:
        return None
    inward = (trunk.way - line).unit()
    middle = meeting + inward * (radius / math.cos(angle / 2) - radius)
    begins, ends = meeting + line * -(radius * reach), meeting + trunk.way * (radius * reach)
    return Sleeve(
        lift, deeper, wider, along, square, top, corner, bend, line, meeting,
        math.degrees(angle), radius, begins, ends, middle, tried,
    )  # fmt: skip
