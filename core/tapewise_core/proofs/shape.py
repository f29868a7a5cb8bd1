"""The drawn shapes themselves: outlines and allowances.

Limits are plain geometry.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.cut_check import allowances_off
from tapewise_core.geometry.outline import is_simple
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import in_cm, keeps_to, off_by
from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.text.told import LineName, said

if TYPE_CHECKING:
    import numpy as np

TRUE = 0.05
"""How far a drawn allowance may be from the one asked for [mm], anywhere along its edge: the curves
under a cut line are drawn to 0.03."""

GAP = 0.01
"""How far apart two edges may end and start and still count as joined [mm]: rounding."""


def outlines(case: Case) -> Answer:
    """Every stitch line and cut line is closed and never crosses itself."""
    return tuple(_simple(piece, case.stitched[piece.name]) for piece in case.pattern.pieces)


def _simple(piece: Piece, stitched: np.ndarray) -> Proof:
    crossed = sum(not is_simple(line) for line in (stitched, piece.cut_rows))
    apart, before, after = _gap(piece)
    part = LineName(piece.name)
    says = said("The {}'s outline is closed and does not cross itself.", part)
    if crossed:
        says = said("The {}'s outline crosses itself; its measures can't be drawn like this.", part)
    elif not keeps_to(apart, GAP):
        where = LineName(before), LineName(after), off_by(apart)
        says = said("The {}'s outline is open: its {} and its {} are {} apart.", part, *where)
    faults = crossed + (not keeps_to(apart, GAP))
    return Proof(ProofId.OUTLINE, str(part), float(faults), 0.0, "1", faults == 0, says)


def _gap(piece: Piece) -> tuple[float, str, str]:
    """The widest gap between an edge's end and the next one's start [mm], and those two edges."""
    edges = zip(piece.edges, (*piece.edges[1:], piece.edges[0]), strict=True)
    return max(((b.path.start - a.path.end).length(), a.name, b.name) for a, b in edges)


def allowances(case: Case) -> Answer:
    """The cut line lies outside the stitch line by each edge's own allowance."""
    pieces = case.pattern.pieces
    outlines = [[edge.margin() for edge in piece.edges] for piece in pieces]
    darts = any(edge.mouth for piece in pieces for edge in piece.edges)
    off = allowances_off(
        [piece.cut_rows for piece in pieces], outlines, None if darts else case.walked
    )
    return tuple(_allowed(*one) for one in zip(pieces, off, strict=True))


def _allowed(piece: Piece, off: list[float]) -> Proof:
    worst, where = max(_cut_along(piece, off))
    holds, part = keeps_to(worst, TRUE), LineName(piece.name)
    says = said("Every allowance of the {} is as wide as asked for.", part)
    if not holds:
        says = said(
            "The {}'s allowance at the {} is off by {}.", part, LineName(where), off_by(worst)
        )
    return in_cm(ProofId.ALLOWANCES, str(part), worst, TRUE, holds, says)


def _cut_along(piece: Piece, off: list[float]) -> list[tuple[float, str]]:
    """What each edge is off by; not a dart's mouth, short and between corners that decide all."""
    pairs = zip(piece.edges, off, strict=True)
    return [(by, edge.name) for edge, by in pairs if edge.mouth is None]
