"""The part of a straight line that lies inside an upright rectangle."""

from __future__ import annotations

from tapewise_core.geometry.outline import Box

Place = tuple[float, float]


def inside(a: Place, b: Place, box: Box) -> tuple[float, float] | None:
    """Return the shares of the way from a to b between which it is in the box, None if never
    (Liang-Barsky).

    >>> inside((-1.0, 1.0), (3.0, 1.0), Box(0.0, 0.0, 2.0, 2.0))
    (0.25, 0.75)
    """
    x, y = b[0] - a[0], b[1] - a[1]
    sides = (
        (-x, a[0] - box.left),
        (x, box.right - a[0]),
        (-y, a[1] - box.top),
        (y, box.bottom - a[1]),
    )
    low, high = 0.0, 1.0
    for gap, room in sides:
        if gap == 0:
            if room < 0:
                return None
        elif gap < 0:
            low = max(low, room / gap)
        else:
            high = min(high, room / gap)
    return (low, high) if low <= high else None
