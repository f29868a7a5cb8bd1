"""Corners: lines run smoothly across seams, and leave the fold square.

Limits are common practice in the trade.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Edge, Piece
from tapewise_core.drafting.seam import Join
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import beyond, keeps_to
from tapewise_core.proofs.proof import Proof, ProofId, Silent, lacking
from tapewise_core.text.told import LineName, said

SQUARE = 2.0
"""How far a line may be from square to the fold [degrees]."""


def smooth_across(case: Case) -> Answer:
    """Add up the two corners wherever a seam joins the ends of one line."""
    if not case.pattern.joins:
        return lacking(ProofId.LINE, "line that runs on across a seam")
    return tuple(_smooth(case.pattern, join) for join in case.pattern.joins)


def _smooth(pattern: Pattern, join: Join) -> Proof:
    angles = [
        corner(pattern.piece(piece), line, beside)
        for piece, line, beside in (join.first, join.second)
    ]
    off = sum(angles) - 180
    limit = join.within
    holds = keeps_to(abs(off), limit)
    says = said(f"The {join.name} runs on smoothly: {angles[0]:.0f}° and {angles[1]:.0f}°.")
    if not holds:
        shape = "a peak" if off > limit else "a dip"
        over = beyond(abs(off) - limit, 0.0)
        says = said(
            f"The {join.name} makes {shape} of {abs(off):.0f}°, {over}° too much; redraw its ends "
            "square to the seam."
        )
    return Proof(ProofId.LINE, join.name, round(abs(off), 2), limit, "degrees", holds, says)


def corner(piece: Piece, line: str, beside: str) -> float:
    """Return the angle inside a piece where two neighbouring edges meet [degrees]."""
    first, second = piece.edge(line), piece.edge(beside)
    if _apart(first, second) > _apart(second, first):
        first, second = second, first
    coming, going = first.path.arriving(), second.path.leaving()
    turn = math.degrees(math.atan2(coming.cross(going), coming.dot(going)))
    return 180.0 - turn


def _apart(first: Edge, second: Edge) -> float:
    """How far one edge ends from where another starts [mm]."""
    return (first.path.end - second.path.start).length()


def square_to_fold(case: Case) -> Answer:
    """Check the corners on the fold, where a slant would cut a point or a dip."""
    folded = [piece for piece in case.pattern.pieces if any(edge.fold for edge in piece.edges)]
    if not folded:
        return Silent(ProofId.FOLD, said("No piece is cut on the fold."))
    return tuple(proof for piece in folded for proof in _on_fold(piece))


def _on_fold(piece: Piece) -> list[Proof]:
    """The corners of one piece; the point of a V is not meant to be square."""
    worst: dict[str, float] = {}
    for fold, edge in _beside_folds(piece):
        if not edge.slants:
            line = str(LineName(edge.name))
            off = abs(corner(piece, edge.name, fold.name) - 90)
            worst[line] = max(worst.get(line, 0.0), off)
    return [_squared(piece, line, off) for line, off in worst.items()]


def _beside_folds(piece: Piece) -> Iterator[tuple[Edge, Edge]]:
    """Each fold with the edges before and after it."""
    for index, edge in enumerate(piece.edges):
        if edge.fold:
            yield edge, piece.edges[index - 1]
            yield edge, piece.edges[(index + 1) % len(piece.edges)]


def _squared(piece: Piece, line: str, off: float) -> Proof:
    part = LineName(piece.name)
    holds = keeps_to(off, SQUARE)
    says = said("The {}'s {} is square to the fold.", part, line)
    if not holds:
        slant = f"{beyond(off, SQUARE, 1)}° off, {SQUARE:g}° allowed"
        says = said("The {}'s {} is not square to the fold: {}.", part, line, slant)
    of = f"{part} {line}"
    return Proof(ProofId.FOLD, of, round(off, 2), SQUARE, "degrees", holds, says)
