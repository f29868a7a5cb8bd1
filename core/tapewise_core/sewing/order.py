"""The sewing order: what the ways of a pattern's seams ask for, sorted by what must come before.

Each way adds its operations; their edges, their stages and the keys they name decide the order.
A new way of making a seam needs no change here.
"""

from __future__ import annotations

import heapq
from collections.abc import Iterator
from graphlib import TopologicalSorter
from itertools import pairwise

from tapewise_core.drafting.making import Making
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import Seam
from tapewise_core.sewing import darts
from tapewise_core.sewing.crossing import First, crossings, places
from tapewise_core.sewing.joining import plain
from tapewise_core.sewing.machines import Stitching
from tapewise_core.sewing.operation import Operation, Sort, Stage
from tapewise_core.sewing.trying_on import TRY_ON, tried
from tapewise_core.sewing.way import Way, Work
from tapewise_core.text.told import Told, joined

PLAIN = Way("plain seam", plain)
"""How a seam is sewn whose making says no more."""

Chain = tuple[Operation, ...]
"""The operations of one way, each after the one before."""


def sewing_order(pattern: Pattern, stitching: Stitching) -> tuple[Told, ...]:
    """Return the sentences of the sewing order, first to last."""
    return tuple(map(words, operations(pattern, stitching)))


def words(operation: Operation) -> Told:
    """Return an operation in sentences: what to do, how to press, what to look at."""
    return joined((operation.do, operation.press, operation.check, operation.other))


def operations(pattern: Pattern, stitching: Stitching) -> tuple[Operation, ...]:
    """Return everything to sew, finish and try, in the order of doing it.

    Raises graphlib.CycleError if two operations each ask to come first.
    """
    chains = _chains(pattern, stitching)
    every = tuple(operation for chain in chains for operation in chain)
    asked = (*_in_chains(chains), *_named(every), *_crossed(pattern, chains), *_around(every))
    return _sorted(every, (*asked, *_darts_first(pattern, every)))


def _chains(pattern: Pattern, stitching: Stitching) -> tuple[Chain, ...]:
    """The operations of each way, in the order in which the pattern first names them."""
    seams: dict[Making, list[Seam]] = {}
    for seam in pattern.seams:
        seams.setdefault(seam.making, []).append(seam)
    found = [darts.waist(pattern, stitching)]
    for making, sewn in seams.items():
        way = making if isinstance(making, Way) else PLAIN
        found.append(way.operations(Work(tuple(sewn), pattern, stitching, way.elastic)))
    hemmed = any(op.stage is Stage.HEM for chain in found for op in chain)
    return (*found, (tried(pattern),)) if hemmed else tuple(found)


def _in_chains(chains: tuple[Chain, ...]) -> Iterator[First]:
    for chain in chains:
        for one, other in pairwise(chain):
            yield First(one.key, other.key)


def _named(every: Chain) -> Iterator[First]:
    """What operations ask for by name, as far as the garment has it."""
    there = {operation.key for operation in every}
    for operation in every:
        yield from (First(key, operation.key) for key in operation.after if key in there)
        yield from (First(operation.key, key) for key in operation.before if key in there)


def _crossed(pattern: Pattern, chains: tuple[Chain, ...]) -> Iterator[First]:
    """What follows from the pieces; what prepares a seam waits for the same."""
    every = tuple(operation for chain in chains for operation in chain)
    prepares = {key: keys for chain in chains for key, keys in _prepared(chain).items()}
    for first, then in crossings(pattern, every):
        yield First(first, then)
        yield from (First(first, key) for key in prepares.get(then, ()))


def _prepared(chain: Chain) -> dict[str, tuple[str, ...]]:
    """For each operation that sews edges, what directly before it prepares it."""
    found: dict[str, tuple[str, ...]] = {}
    waiting: tuple[str, ...] = ()
    for operation in chain:
        if operation.sort is Sort.PREPARE:
            waiting = (*waiting, operation.key)
        else:
            found[operation.key], waiting = waiting, ()
    return found


def _around(every: Chain) -> Iterator[First]:
    """Trying on comes once everything is closed, and before what is hemmed."""
    if all(operation.key != TRY_ON for operation in every):
        return
    for operation in every:
        if operation.stage < Stage.HEM:
            yield First(operation.key, TRY_ON)
        elif operation.stage is Stage.HEM and operation.key != TRY_ON:
            yield First(TRY_ON, operation.key)


def _darts_first(pattern: Pattern, every: Chain) -> Iterator[First]:
    """Darts inside a piece go before every seam of it."""
    if all(operation.key != darts.WAIST_DARTS for operation in every):
        return
    pieces = {piece.name for piece in pattern.pieces if piece.darts}
    for operation in every:
        if any(place.piece in pieces for place in places(pattern, operation.finished)):
            yield First(darts.WAIST_DARTS, operation.key)


def _sorted(every: Chain, asked: tuple[First, ...]) -> Chain:
    """Sort by what must come before; of what is free the earliest stage goes first."""
    rank = {operation.key: (operation.stage, i) for i, operation in enumerate(every)}
    sorter = TopologicalSorter({key: [a for a, b in asked if b == key] for key in rank})
    sorter.prepare()
    waiting: list[tuple[tuple[int, int], str]] = []
    done: list[str] = []
    while sorter.is_active():
        for key in sorter.get_ready():
            heapq.heappush(waiting, (rank[key], key))
        done.append(heapq.heappop(waiting)[1])
        sorter.done(done[-1])
    by_key = {operation.key: operation for operation in every}
    return tuple(by_key[key] for key in done)
