"""The grown-on sleeve that lifts, deepens and widens least of all that are as wide as asked.

Lift the sleeve, do not dig the underarm: each has its price.
"""

from __future__ import annotations

from dataclasses import replace

from tapewise_core.parts.shape.grown_drawn import WANTED, Arm, Sleeve, Trunk, drawn

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


def grown_sleeve(arm: Arm, trunk: Trunk) -> Sleeve | None:
    """Return the sleeve that lifts, deepens and widens least, or None where a cap must do.

    A long sleeve is wanted whatever it costs; None then means that none can be drawn.
    """
    wider = (0.0,) if arm.is_long else _steps(0.0, MOST_WIDER, STEP_WIDER)
    for wanted in (WANTED, LEAST):
        for more in wider:
            best = _best(arm, trunk, wanted, more)
            if best and (arm.is_long or _form(best) <= TOO_DEAR):
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
    sleeve = drawn(arm, trunk, lift, 0.0, wider, radius)
    if sleeve and sleeve.middle.y < trunk.highest:
        most = MOST_DEEPER if lift <= BOTH else BOTH
        sleeve = _deepened(sleeve, arm, trunk, radius, most)
    if sleeve is None or sleeve.radius < wanted - 1e-6 or sleeve.middle.y > trunk.lowest:
        return None
    return replace(sleeve, cost=_cost(sleeve, trunk, radius))


def _deepened(first: Sleeve, arm: Arm, trunk: Trunk, radius: float, most: float) -> Sleeve | None:
    """The sleeve deepened until the middle of its underarm lies low enough, by closing in."""
    lift, wider = first.lift, first.wider
    low, high = 0.0, most
    found = drawn(arm, trunk, lift, high, wider, radius)
    if found is None or found.middle.y < trunk.highest:
        return None
    above, below = first.middle.y - trunk.highest, found.middle.y - trunk.highest
    for _ in range(12):
        if high - low < 0.01 or below < 0.05:
            break
        share = min(max(above / (above - below), 0.02), 0.98)
        tried = drawn(arm, trunk, lift, low + (high - low) * share, wider, radius)
        if tried is None:
            return found
        level = tried.middle.y - trunk.highest
        if level >= 0:
            high, below, above, found = tried.deeper, level, above / 2, tried
        else:
            low, above, below = tried.deeper, level, below / 2
    return found


def _form(sleeve: Sleeve) -> float:
    """What lift, depth and a wider hem cost together."""
    return LIFT_PRICE * sleeve.lift + sleeve.deeper + WIDER_PRICE / 2 * sleeve.wider


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
