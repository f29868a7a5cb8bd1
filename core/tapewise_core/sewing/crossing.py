"""What must come before what, by the pieces themselves: which edges share a corner.

A seam in the round runs across the seams that end at its edges, so those are sewn first. What
is sewn flat goes before what closes the tube beside it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import NamedTuple

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import EdgeRun
from tapewise_core.sewing.operation import Lies, Operation, Sort


class Place(NamedTuple):
    """An edge of a piece, by their names."""

    piece: str
    edge: str


class First(NamedTuple):
    """An operation that comes before another, by their keys."""

    first: str
    then: str


def places(pattern: Pattern, runs: Iterable[EdgeRun]) -> Iterator[Place]:
    """Return the edges that runs walk; a run may name edges that a piece does not have."""
    for run in runs:
        piece = pattern.piece(run.piece)
        yield from (Place(run.piece, name) for name in run.edges if piece.has_edge(name))


def owners(pattern: Pattern, operations: Iterable[Operation]) -> dict[Place, Operation]:
    """Return which operation finishes each edge."""
    return {
        place: operation
        for operation in operations
        for place in places(pattern, operation.finished)
    }


def beside(pattern: Pattern, place: Place) -> Iterator[Place]:
    """Return the edges that share a corner with one; a fold has none of its own."""
    edges = pattern.piece(place.piece).edges
    at = next(i for i, edge in enumerate(edges) if edge.name == place.edge)
    for other in (edges[at - 1], edges[(at + 1) % len(edges)]):
        if not other.fold and other.name != place.edge:
            yield Place(place.piece, other.name)


def crossings(pattern: Pattern, operations: tuple[Operation, ...]) -> Iterator[First]:
    """Return every pair that follows from the pieces."""
    owner = owners(pattern, operations)
    for operation in operations:
        for place in places(pattern, operation.finished):
            for near in beside(pattern, place):
                other = owner.get(near)
                if other is not None and other is not operation:
                    yield from _pair(operation, other)
        yield from _parts(pattern, operation, owner)


def _pair(one: Operation, other: Operation) -> Iterator[First]:
    if one.lies is Lies.ROUND:
        if other.lies is Lies.FLAT and other.sort is Sort.SEAM:
            yield First(other.key, one.key)
    elif other.closes and not one.closes:
        yield First(one.key, other.key)


def _parts(
    pattern: Pattern, operation: Operation, owner: dict[Place, Operation]
) -> Iterator[First]:
    """What is sewn to a part of an edge goes before the edge."""
    runs = [run for meeting in operation.meets if meeting.partly for run in meeting.second]
    for place in places(pattern, runs):
        if place in owner:
            yield First(operation.key, owner[place].key)
