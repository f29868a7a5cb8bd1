"""The place where a falling or rising amount is nought."""

from __future__ import annotations

from collections.abc import Callable


def root(over: Callable[[float], float], low: float, high: float, near: float = 1e-6) -> float:
    """Return where a continuous function that changes sign between two places is nought.

    False position that halves the weight of an end that stays (the Illinois rule): as safe as
    bisection, in a tenth of its steps. Where the sign does not change, the end nearer to nought.
    """
    at_low, at_high = over(low), over(high)
    if at_low * at_high > 0:
        return low if abs(at_low) < abs(at_high) else high
    for _ in range(60):
        if at_low == at_high:
            break
        middle = (low * at_high - high * at_low) / (at_high - at_low)
        at_middle = over(middle)
        if abs(at_middle) <= near:
            return middle
        if at_middle * at_high < 0:
            low, at_low = high, at_high
        else:
            at_low /= 2
        high, at_high = middle, at_middle
    return high


def most(holds: Callable[[float], bool], low: float, high: float) -> float:
    """Return the greatest amount for which something still holds, by halving 20 times.

    It holds at ``low``; where it holds at ``high`` too, that is the answer.
    """
    if holds(high):
        return high
    for _ in range(20):
        middle = (low + high) / 2
        low, high = (middle, high) if holds(middle) else (low, middle)
    return low
