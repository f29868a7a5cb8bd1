"""Finding places: each piece in turn as near to the beginning of the cloth as it goes.

In which order, and which way each lies, is searched: from a few orders that cutters use (common
practice: the longest, the largest, the widest first; head to tail) by small changes, keeping the
best. The same pieces always lie the same.
"""

from __future__ import annotations

import math
import random
from collections.abc import Sequence
from typing import NamedTuple

from tapewise_core.lay.laying import Place, Plan, Tried
from tapewise_core.lay.lying import Lying
from tapewise_core.lay.profile import STEP
from tapewise_core.lay.sorts import Sort


class Effort(NamedTuple):
    """How many lays are tried for each piece, and after how many in vain the search ends (our
    choice)."""

    tries: int
    patience: int


SHORT, USUAL, LONG = Effort(6, 6), Effort(200, 60), Effort(600, 250)
"""For a proof that is asked again and again, for a draft, and where somebody asks for the cloth."""

SEED = 1
"""Every search begins alike."""


class Found(NamedTuple):
    """Where pieces lie, from the corner of the room they have, and the length they take [mm]."""

    pieces: tuple[Lying, ...]
    length: float


class _Laid(NamedTuple):
    """A plan with its places, and the length they take [mm]."""

    plan: Plan | None = None
    places: tuple[Place, ...] = ()
    length: float = math.inf


def packed(sorts: Sequence[Sort], wide: float, repeat: float, effort: Effort) -> Found:
    """Return pieces on cloth so wide [mm]; every sort must have a choice that is no wider."""
    if not sorts:
        return Found((), 0.0)
    chance, least = random.Random(SEED), max(sort.tall for sort in sorts)
    tries, patience = (many * len(sorts) for many in effort)
    starts, best, vain, cloth = _starts(sorts), _Laid(), 0, Tried(sorts, wide, repeat)
    for number in range(max(tries, len(starts))):
        begun = number < len(starts)
        plan = starts[number] if begun else _changed(best.plan or starts[0], sorts, chance)
        places = cloth.laid(plan, best.length)
        vain += 1
        if places is not None:
            end = max(place.end for place in places)
            vain = 0 if end < best.length - 1e-6 else vain
            best = _Laid(plan, places, end)
        if best.plan and (vain > patience or best.length <= least + 1e-6):
            break
    order = best.plan.order if best.plan else ()
    placed = zip(order, best.places, strict=True)
    return Found(tuple(_lying(sorts[i], place) for i, place in placed), best.length)


def _lying(sort: Sort, place: Place) -> Lying:
    across = place.column * STEP + place.choice.profile.phase
    return Lying(sort.piece, across, place.along, place.choice.way, sort.half)


def _starts(sorts: Sequence[Sort]) -> list[Plan]:
    """The lays that are tried first."""
    count = range(len(sorts))
    orders = (
        sorted(count, key=lambda i: -sorts[i].tall),
        sorted(count, key=lambda i: -sorts[i].tall * sorts[i].wide),
        sorted(count, key=lambda i: -sorts[i].wide),
    )
    found = [
        Plan(tuple(order), tuple(min(turn, len(sorts[i].turns) - 1) for i in count), choices)
        for turn in (0, 1)
        for order in orders
        for choices in _head_to_tail(order)
    ]
    return list(dict.fromkeys((*found, _pinwheel(orders[0], sorts))))


WHEEL = ((0, 1), (1, 1), (1, 0), (0, 0))
"""How four pieces lie about their middle: each one's turn, and which of its choices."""


def _pinwheel(order: Sequence[int], sorts: Sequence[Sort]) -> Plan:
    """Four and four about a middle, as far as they may be turned: quarters of a circle lie well
    so."""
    wheel = {i: WHEEL[n % len(WHEEL)] for n, i in enumerate(order)}
    count = range(len(order))
    turns = tuple(min(wheel[i][0], len(sorts[i].turns) - 1) for i in count)
    return Plan(tuple(order), turns, tuple(wheel[i][1] for i in count))


def _head_to_tail(order: Sequence[int]) -> tuple[tuple[int | None, ...], ...]:
    """Each as it lies best; every other one upside down; the first one upside down."""
    place = {i: n for n, i in enumerate(order)}
    count = range(len(order))
    return (
        (None,) * len(order),
        tuple(1 - place[i] % 2 for i in count),
        tuple(1 if place[i] == 0 else None for i in count),
    )


def _changed(plan: Plan, sorts: Sequence[Sort], chance: random.Random) -> Plan:
    """The same with a piece or two laid sooner or later, or otherwise."""
    order, turns, choices = list(plan.order), list(plan.turns), list(plan.choices)
    for _ in range(chance.choice((1, 1, 2, 3))):
        what, i = chance.random(), chance.randrange(len(sorts))
        if what < 0.6:
            order.insert(chance.randrange(len(order)), order.pop(i))
        elif what < 0.9:
            choices[i] = chance.choice((None, 0, 1))
        else:
            turns[i] = chance.randrange(len(sorts[i].turns))
    return Plan(tuple(order), tuple(turns), tuple(choices))
