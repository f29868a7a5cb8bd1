"""Where words may stand about a point and beside a line, best first."""

from __future__ import annotations

import math
from collections.abc import Iterator
from functools import lru_cache

from tapewise_core.drafting.picturing.ground import Place
from tapewise_core.drafting.picturing.words import Words

GAPS = (1.7, 2.4, 3.4, 4.8, 6.5, 8.5, 11.0, 14.0, 18.0, 23.0, 29.0)
"""How far from its point a letter may stand, nearest first [mm]; nearer than the first, a letter
would lie on the dot or share its cells."""

WAYS = (-45, 45, -135, 135, -90, 90, 0, 180, -20, 20, -160, 160, -68, 68, -112, 112)
"""Which way from its point a letter may stand, best first [degrees, clockwise from the right]."""

OFFS = (1.2, 2.2, 4.0, 6.0)
"""How far from its line a length may stand, nearest first [mm]; nearer than the first, slanting
words would share cells with the line."""

SHARES = (0.5, 0.38, 0.62, 0.26, 0.74, 0.14, 0.86)
"""How far along its line a length may stand, best first."""


def beside_line(words: Words, a: Place, b: Place, way: Place, out: Place | None) -> Iterator[Place]:
    """Yield where the middles of words beside a straight line may be; where it is shorter
    than half of them, only beside its middle."""
    shares = SHARES if math.dist(a, b) > words.across else SHARES[:1]
    for off, side in _sides(way, out):
        away = side * (off + words.up)
        for share in shares:
            x, y = a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share
            yield x - way[1] * away, y + way[0] * away


def _sides(way: Place, out: Place | None) -> Iterator[tuple[float, int]]:
    """How far off and on which side, above first; or all of one side first."""
    if out is None:
        yield from ((off, side) for off in OFFS for side in (-1, 1))
        return
    first = 1 if out[1] * way[0] - out[0] * way[1] > 0 else -1
    yield from ((off, side) for side in (first, -first) for off in OFFS)


def readable(a: Place, b: Place) -> Place:
    """Return the direction of a line, the way words on it are read: to the right, or upwards."""
    x, y = b[0] - a[0], b[1] - a[1]
    length = math.hypot(x, y)
    if length < 1e-6:
        return 1.0, 0.0
    x, y = x / length, y / length
    return (-x, -y) if x < -1e-6 or (abs(x) <= 1e-6 and y > 0) else (x, y)


def reach(across: float, up: float, x: float, y: float) -> float:
    """Return how far the room of words reaches from its middle in a direction [mm]."""
    wide = across / abs(x) if abs(x) > 1e-6 else math.inf
    return min(wide, up / abs(y) if abs(y) > 1e-6 else math.inf)


_DIRECTIONS = tuple((math.cos(math.radians(way)), math.sin(math.radians(way))) for way in WAYS)


@lru_cache(maxsize=4096)
def ring(gap: float, across: float, up: float) -> tuple[Place, ...]:
    """Return the middles of words so far off their point, told from it; letters come again and
    again."""
    off = ((x, y, gap + reach(across, up, x, y)) for x, y in _DIRECTIONS)
    return tuple((x * far, y * far) for x, y, far in off)
