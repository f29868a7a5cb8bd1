"""Which reading of a body fits the others least."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from tapewise_core.statistics.given import Given, given
from tapewise_core.statistics.population import Population

HINT, WARNING = 2.6, 3.3
"""From how many spreads on a value is remarked on quietly, and from how many it is warned of.

On honest forms of open data about one in five has a value beyond the first, one in fifty a
value beyond the second (``proving`` prints both).
"""


@dataclass(frozen=True)
class Doubt:
    """A reading of ``body`` that lies ``z`` spreads from what all others suggest.

    ``rest`` is the body without it, ``wider`` how much the rest's size widens its spreads.
    """

    key: str
    z: float
    wider: float
    body: Given
    rest: Given


def worst(body: Given, limit: float) -> Doubt | None:
    """Return the reading that fits the others least, or None if none is beyond a limit.

    The largest distance is nearly always the wrong value's own: set it aside and ask again,
    so that it no longer accuses the rest.
    """
    if not body.keys:
        return None
    key = max(body.keys, key=lambda name: abs(body.z(name)))
    raw = body.z(key)
    if abs(raw) < limit:
        return None
    rest = body.without(key)
    wider = rest.widening()
    return Doubt(key, raw / wider, wider, body, rest) if abs(raw) >= limit * wider else None


def again(key: str, known: Mapping[str, float], rest: Given) -> Doubt:
    """Return how one reading [cm] lies to the readings that agree with each other."""
    kept = {name: known[name] for name in (*rest.keys, key)}
    body, wider = given(kept, rest.population), rest.widening()
    return Doubt(key, body.z(key) / wider, wider, body, rest)


def trusted(
    known: Mapping[str, float], confirmed: frozenset[str], people: Population
) -> dict[str, float]:
    """Return the readings [cm] that fit each other, so that estimates lean on no wild value."""
    body, wild = given(known, people), set()
    while doubt := worst(body, WARNING):
        wild.add(doubt.key)
        body = doubt.rest
    return {key: cm for key, cm in known.items() if key not in wild - confirmed}
