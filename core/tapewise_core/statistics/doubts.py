"""Which reading of a body fits the others least."""

from __future__ import annotations

import math
from collections.abc import Mapping

from tapewise_core.frozen import Frozen
from tapewise_core.statistics.given import Given, given

HINT, WARNING = 2.6, 3.3
"""From how many spreads on a value is remarked on quietly, and from how many it is warned of.

Of honest forms of all measures about one in six has a value beyond the first, one in fifty a
value beyond the second (``proving`` prints both).
"""


TAIL = 60
"""Degrees of freedom of the Student's t whose tails bodies have.

From the kurtosis of each measure's distance from all others in ANSUR I: about 30 for women,
above 70 for men.
"""


class Doubt(Frozen):
    """A reading of ``body`` that lies ``far`` spreads from what all others suggest.

    ``rest`` is the body without it, ``wider`` how much the rest's size widens its spreads.
    """

    key: str
    far: float
    wider: float
    body: Given
    rest: Given

    @property
    def z(self) -> float:
        """How far that is as a normal distribution counts: equally unlikely, tails allowed for."""
        return normal(self.far)


def worst(body: Given, limit: float) -> Doubt | None:
    """Return the reading that fits the others least, or None if none is beyond a limit.

    The largest distance is nearly always the wrong value's own: set it aside and ask again,
    so that it no longer accuses the rest.
    """
    if not body.keys:
        return None
    key = max(body.keys, key=lambda name: abs(body.z(name)))
    if abs(body.z(key)) < limit:
        return None
    doubt = doubt_of(body, key)
    return doubt if abs(doubt.z) >= limit else None


def again(key: str, known: Mapping[str, float], rest: Given) -> Doubt:
    """Return how one reading [cm] lies to the readings that agree with each other."""
    kept = {name: known[name] for name in (*rest.keys, key)}
    return doubt_of(given(kept, rest.population), key)


def normal(far: float) -> float:
    """Return the normal distance as unlikely as a distance under the tails of bodies.

    Student's t with the spread of a normal distribution, turned into one by Wallace's
    approximation of 1959 [memory]; within 0.01 up to 4.

    >>> round(normal(3.5), 2), round(normal(-3.5), 2), normal(0.0)
    (3.38, -3.38, 0.0)
    """
    t2 = far * far * TAIL / (TAIL - 2)
    size = (8 * TAIL + 1) / (8 * TAIL + 3) * math.sqrt(TAIL * math.log1p(t2 / TAIL))
    return math.copysign(size, far) if far else 0.0


def doubt_of(body: Given, key: str) -> Doubt:
    """Return how one reading of a body lies to all its others."""
    rest = body.without(key)
    wider = rest.widening()
    return Doubt(key, body.z(key) / wider, wider, body, rest)
