"""How much likelier a body becomes when two of its readings change places."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from itertools import combinations

from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.statistics.given import Given

NEIGHBOURS = 0.7
"""The share of exchanges that happen between neighbours on the form (our choice)."""


def gain(body: Given, meant: Mapping[str, float], fits: float, wider: float = 1.0) -> float:
    """Return the logarithm of how much likelier a body is with other values [cm] in it.

    For each cm of every value, so that scales compare; spreads are taken so much ``wider``.
    Minus infinity where one of the values would lie more than ``fits`` spreads from the rest.
    """
    people = body.population
    places = [body.keys.index(key) for key in meant]
    moves = [
        people.scaled(key, cm) - people.mean[key] - body.off[i]
        for i, (key, cm) in zip(places, meant.items(), strict=True)
    ]
    pulls = [
        sum(body.precision[i][j] * move for j, move in zip(places, moves, strict=True))
        for i in places
    ]
    for i, pull in zip(places, pulls, strict=True):
        if abs(body.pull[i] + pull) / math.sqrt(body.precision[i][i]) > fits * wider:
            return -math.inf
    change = sum(
        move * (2 * body.pull[i] + pull) for i, move, pull in zip(places, moves, pulls, strict=True)
    )
    return -change / 2 / wider**2 + sum(_slopes(body, key, cm) for key, cm in meant.items())


def best_exchange(
    body: Given, fixed: frozenset[str], fits: float
) -> tuple[float, tuple[str, str] | None]:
    """Return the two readings that make the body likeliest in each other's place, and the gain.

    The gain is a logarithm, the price of all partners that they might have had taken off.
    """
    best: tuple[float, tuple[str, str] | None] = (0.0, None)
    wider = body.widening()
    for one, two in combinations([key for key in body.keys if key not in fixed], 2):
        exchanged = {one: body.read(two), two: body.read(one)}
        if all(BY_KEY[key].low <= cm <= BY_KEY[key].high for key, cm in exchanged.items()):
            price = math.log(share_of(body.keys, one, two, fixed))
            found = gain(body, exchanged, fits, wider) + price
            best = max(best, (found, (one, two)), key=lambda pair: pair[0])
    return best


def share_of(keys: tuple[str, ...], key: str, other: str, fixed: frozenset[str]) -> float:
    """Return the part of a reading's exchanges that falls to another; neighbours have more."""
    partners = [name for name in keys if name != key and name not in fixed]
    near = [name for name in partners if abs(keys.index(name) - keys.index(key)) == 1]
    if not near or len(near) == len(partners):
        return 1 / len(partners)
    if other in near:
        return NEIGHBOURS / len(near)
    return (1 - NEIGHBOURS) / (len(partners) - len(near))


def alike(keys: Iterable[str], key: str) -> tuple[str, ...]:
    """Return the readings that are girths where this one is, or lengths."""
    girth = BY_KEY[key].is_girth
    return tuple(name for name in keys if BY_KEY[name].is_girth is girth)


def _slopes(body: Given, key: str, cm: float) -> float:
    scale = body.population.scale(key)
    return math.log(scale.slope(cm) / scale.slope(body.read(key)))
