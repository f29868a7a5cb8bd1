"""The grown-on sleeve that lifts, deepens and widens least of all that are as wide as asked.

Lift the sleeve, do not dig the underarm: each has its price.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache, partial
from typing import NamedTuple

from tapewise_core.parts.shape.grown_drawn import WANTED, Arm, Sleeve, Trunk
from tapewise_core.parts.shape.grown_straight import Straight, fitting, rounded, straight

MOST_LIFT, MOST_DEEPER, BOTH = 8.0, 20.0, 4.0
"""The most a sleeve is lifted and deepened towards the body, and the most of both [degrees]
(our choice)."""

MOST_WIDER, STEP_WIDER = 30.0, 5.0
"""A half hem is widened by so much at the most, in steps [mm] (our choice)."""

LEAST = 35.0
"""The least radius of the underarm [mm] (our choice)."""

LIFT_PRICE, WIDER_PRICE, RADIUS_PRICE = 1.2, 0.8, 0.05
"""What a degree of lift, a mm of half hem and a mm of radius cost, a degree of depth costing 1
(our choice)."""

COARSE = 2.0
"""Lifts are tried this far apart first [degrees]."""

TOO_DEAR = 20.0
"""Lift, depth and 0.4 for each mm of half hem may cost so much together; then a cap is better."""


class _Tried(NamedTuple):
    """A sleeve tried: its straight lines, the radius it was begun with and the one it got [mm],
    and its price."""

    lines: Straight
    begun: float
    radius: float
    cost: float


class _Search(NamedTuple):
    """What a sleeve is looked for on; ``lines`` draws its straight lines for a lift, a depth and a
    wider hem, each once."""

    trunk: Trunk
    lines: Callable[[float, float, float], Straight | None]


def grown_sleeve(arm: Arm, trunk: Trunk) -> Sleeve | None:
    """Return the sleeve that lifts, deepens and widens least, or None where a cap must do.

    A long sleeve is wanted whatever it costs; None then means that none can be drawn.
    """
    wider = (0.0,) if arm.is_long else _steps(0.0, MOST_WIDER, STEP_WIDER)
    search = _Search(trunk, cache(partial(straight, arm, trunk)))
    for wanted in (WANTED, LEAST):
        for more in wider:
            best = _best(search, wanted, more)
            if best and (arm.is_long or _form(best.lines) <= TOO_DEAR):
                return rounded(best.lines, trunk, best.begun, best.radius, best.cost)
    return None


def usual_radius(trunk: Trunk) -> float:
    """Return the underarm's usual radius: 6 cm on a close body, 8 on an easy one (our choice)."""
    return 60.0 if trunk.ease <= 20.0 else 80.0


def _best(search: _Search, wanted: float, wider: float) -> _Tried | None:
    """The cheapest sleeve with one hem: among some lifts first, then closer and closer."""
    best: _Tried | None = None
    radii = _radii(search.trunk)
    for lift in _steps(0.0, MOST_LIFT, COARSE):
        if best and LIFT_PRICE * lift + WIDER_PRICE * wider >= best.cost:
            break
        for radius in radii:
            best = _cheaper(best, _fitted(search, wanted, lift, wider, radius))
            if best and best.cost <= WIDER_PRICE * wider:
                return best
    return _closer(best, search, wanted) if best else None


def _closer(best: _Tried, search: _Search, wanted: float) -> _Tried:
    """The cheapest sleeve near one that was found, its lift moved by less and less."""
    step = COARSE / 2
    while step > 0.02:
        lift, wider = best.lines.lift, best.lines.wider
        for near in (lift - step, lift + step):
            other = _fitted(search, wanted, near, wider, best.begun)
            best = other if other and other.cost < best.cost else best
        step /= 2
    return best


def _cheaper(best: _Tried | None, other: _Tried | None) -> _Tried | None:
    return other if other and (best is None or other.cost < best.cost) else best


def _radii(trunk: Trunk) -> tuple[float, ...]:
    """The radii tried, the usual one first."""
    usual = usual_radius(trunk)
    return (usual, WANTED, usual + 20, usual + 40)


def _steps(first: float, last: float, step: float) -> tuple[float, ...]:
    return tuple(first + step * i for i in range(round((last - first) / step) + 1))


def _fitted(
    search: _Search, wanted: float, lift: float, wider: float, begun: float
) -> _Tried | None:
    """The sleeve at one lift that deepens only as far as its underarm must, with its cost."""
    if not 0 <= lift <= MOST_LIFT:
        return None
    trunk, lines = search.trunk, search.lines(lift, 0.0, wider)
    radius = fitting(lines, trunk, begun) if lines else 0.0
    if lines is None or radius <= 0:
        return None
    if lines.level(radius) < trunk.highest:
        most = MOST_DEEPER if lift <= BOTH else BOTH
        lines = _deepened(lines, radius, search, begun, most)
        radius = fitting(lines, trunk, begun) if lines else 0.0
    if lines is None or radius < wanted - 1e-6 or lines.level(radius) > trunk.lowest:
        return None
    return _Tried(lines, begun, radius, _cost(lines, trunk, begun, radius))


def _deepened(
    first: Straight, radius: float, search: _Search, begun: float, most: float
) -> Straight | None:
    """The sleeve deepened until the middle of its underarm lies low enough, by closing in."""
    trunk, lift, wider = search.trunk, first.lift, first.wider

    def lower(deeper: float) -> tuple[Straight | None, float]:
        """The lines, and how far below the highest its underarm has its middle."""
        lines = search.lines(lift, deeper, wider)
        radius = fitting(lines, trunk, begun) if lines else 0.0
        if lines is None or radius <= 0:
            return None, 0.0
        return lines, lines.level(radius) - trunk.highest

    low, high = 0.0, most
    found, below = lower(high)
    if found is None or below < 0:
        return None
    above = first.level(radius) - trunk.highest
    for _ in range(12):
        if high - low < 0.01 or below < 0.05:
            break
        share = min(max(above / (above - below), 0.02), 0.98)
        tried, level = lower(low + (high - low) * share)
        if tried is None:
            return found
        if level >= 0:
            high, below, above, found = tried.deeper, level, above / 2, tried
        else:
            low, above, below = tried.deeper, level, below / 2
    return found


def _form(lines: Straight) -> float:
    """What lift, depth and a wider hem cost together."""
    return LIFT_PRICE * lines.lift + lines.deeper + WIDER_PRICE / 2 * lines.wider


def _cost(lines: Straight, trunk: Trunk, begun: float, radius: float) -> float:
    """The price of a sleeve; a curve that ends below the bust line makes that line wider."""
    ends = lines.meeting.y + trunk.way.y * (radius * lines.reach)
    below = max(ends - trunk.bust.y, 0.0)
    price = 0.15 if trunk.ease <= 40.0 else 0.05
    return (
        LIFT_PRICE * lines.lift
        + lines.deeper
        + WIDER_PRICE * lines.wider
        + RADIUS_PRICE * abs(begun - usual_radius(trunk))
        + price * below
    )
