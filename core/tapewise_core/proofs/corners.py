"""Corners: lines run smoothly across seams, and leave the fold square.

Limits are common practice in the trade.
"""

from __future__ import annotations

import math

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.piece import Edge, Join, Pattern, Piece
from tapewise_core.proofs.proof import Proof
from tapewise_core.units import Unit

SMOOTH = 10.0
"""How far two corners that join may be from a straight angle together [degrees]."""

SQUARE = 2.0
"""How far a line may be from square to the fold [degrees]."""


def smooth_across(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """Add up the two corners wherever a seam joins the ends of one line."""
    return tuple(_smooth(pattern, join) for join in pattern.joins)


def _smooth(pattern: Pattern, join: Join) -> Proof:
    angles = [
        corner(pattern.piece(piece), line, beside)
        for piece, line, beside in (join.first, join.second)
    ]
    off = sum(angles) - 180
    holds = abs(off) <= SMOOTH
    says = f"The {join.name} runs on smoothly: {angles[0]:.0f}° and {angles[1]:.0f}°."
    if not holds:
        shape = "a peak" if off > 0 else "a dip"
        says = (
            f"The {join.name} makes {shape} of {abs(off):.0f}°, {abs(off) - SMOOTH:.0f}° too much; "
            "redraw its ends square to the seam."
        )
    return Proof(join.name, round(abs(off), 2), SMOOTH, "degrees", holds, says)


def corner(piece: Piece, line: str, beside: str) -> float:
    """Return the angle inside a piece where two neighbouring edges meet [degrees]."""
    first, second = piece.edge(line), piece.edge(beside)
    if not _meets(first, second):
        first, second = second, first
    coming, going = first.path.arriving(), second.path.leaving()
    turn = math.degrees(math.atan2(coming.cross(going), coming.dot(going)))
    return 180.0 - turn


def _meets(first: Edge, second: Edge) -> bool:
    return (first.path.end - second.path.start).length() < 1e-3


def square_to_fold(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """Check the corners on the fold, where a slant would cut a point or a dip."""
    pointed = "neck point" in pattern.facts
    folded = (piece for piece in pattern.pieces if piece.on_fold)
    return tuple(proof for piece in folded for proof in _on_fold(piece, pointed))


def _on_fold(piece: Piece, pointed: bool) -> list[Proof]:
    """The corners of one piece; the point of a V is not meant to be square."""
    index = next(i for i, edge in enumerate(piece.edges) if edge.fold)
    fold = piece.edges[index]
    beside = (piece.edges[index - 1], piece.edges[(index + 1) % len(piece.edges)])
    slanted = ("neckline", "outer") if pointed and piece.name.startswith("front") else ()
    return [_squared(piece, fold, edge) for edge in beside if edge.name not in slanted]


def _squared(piece: Piece, fold: Edge, edge: Edge) -> Proof:
    off = abs(corner(piece, edge.name, fold.name) - 90)
    part, line = piece.name.replace("_", " "), edge.name.replace("_", " ").removesuffix(" 2")
    name = f"{part} {line} square to the fold"
    holds = off <= SQUARE
    says = f"The {part}'s {line} is square to the fold."
    if not holds:
        says = f"{says[:-1].replace(' is ', ' is not ')}: {off:.1f}° off, {SQUARE:g}° allowed."
    return Proof(name, round(off, 2), SQUARE, "degrees", holds, says)
