"""What may be wrong with a sewing order, found without asking the order itself."""

from __future__ import annotations

from collections import Counter

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.sewing.crossing import Place, beside, places
from tapewise_core.sewing.machines import Machine
from tapewise_core.sewing.neck_flat import BAND_FLAT
from tapewise_core.sewing.operation import Operation

CLOSERS = {SeamKind.SIDE, SeamKind.PANEL}
"""Seams that close a tube: whatever lies flat beside one cannot be sewn flat afterwards."""

FLAT = {SeamKind.DART, SeamKind.BAND_JOIN, SeamKind.FACING_SHOULDER, SeamKind.SHOULDER}
"""Seams that are sewn while their pieces lie flat."""

ROUND = {
    SeamKind.NECKBAND, SeamKind.NECK_EDGE, SeamKind.FACING, SeamKind.WAIST, SeamKind.WAISTBAND,
    SeamKind.CASING, SeamKind.SLEEVE_HEM, SeamKind.HEM, SeamKind.TIER,
}  # fmt: skip
"""Seams that run across those that end at their edges."""


def owner_of(pattern: Pattern, chain: tuple[Operation, ...]) -> dict[tuple[str, str], int]:
    """Return when each edge is finished."""
    return {
        (place.piece, place.edge): at
        for at, operation in enumerate(chain)
        for place in places(pattern, operation.finished)
    }


def faults(pattern: Pattern, chain: tuple[Operation, ...]) -> list[str]:
    """Return what is closed too early or sewn across before it is there, by the seams' kinds.

    A band that is sewn on flat is neither; its order is asked for by its keys.
    """
    when, found = owner_of(pattern, chain), []
    kind = {
        (run.piece, edge): seam.kind
        for seam in pattern.seams
        if seam.making != BAND_FLAT
        for run in (*seam.first, *seam.second)
        for edge in run.edges
    }
    for (piece, edge), mine in kind.items():
        if (piece, edge) not in when:
            continue
        for near in beside(pattern, Place(piece, edge)):
            theirs = kind.get((near.piece, near.edge))
            if theirs is None or near not in when:
                continue
            one, other = when[piece, edge], when[near]
            if mine in FLAT and theirs in CLOSERS and one > other:
                found.append(f"{mine} of {piece} after {theirs}")
            if mine in ROUND and theirs in CLOSERS | FLAT and one < other:
                found.append(f"{mine} of {piece} before {theirs}")
    return found


def unfinished(pattern: Pattern, chain: tuple[Operation, ...]) -> list[str]:
    """Return the edges that are finished by no operation, or by more than one.

    Of a piece cut twice, as a sleeve, both copies may be told apart.
    """
    done = Counter(place for one in chain for place in places(pattern, one.finished))
    there = {Place(p.name, e.name): p.count for p in pattern.pieces for e in p.edges if not e.fold}
    return [
        f"{place} {done[place]} times"
        for place in {**there, **done}
        if done[place] not in (1, max(there.get(place, 0), 1))
    ]


def impossible(chain: tuple[Operation, ...], there: frozenset[Machine]) -> list[str]:
    """Return the operations that what is there cannot sew."""
    able = there | {Machine.HAND}
    return [
        one.key
        for one in chain
        if any(not set(stitch.machines) & able for stitch in one.stitches)
        or (one.turns and (not one.stitches or any(stitch.cuts for stitch in one.stitches)))
    ]


def moved_first(chain: tuple[Operation, ...], key: str) -> tuple[Operation, ...]:
    """Return an order with one operation done too early."""
    first = next(one for one in chain if one.key == key)
    return (first, *(one for one in chain if one is not first))
