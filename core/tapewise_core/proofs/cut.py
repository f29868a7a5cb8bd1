"""The cut line: without a tooth, and never beyond a fold."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from tapewise_core.drafting.piece import Edge, Piece
from tapewise_core.geometry.cut_corners import MITRE
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.rows import rows
from tapewise_core.geometry.teeth import teeth
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import in_cm, keeps_to, off_by
from tapewise_core.proofs.proof import Proof, ProofId, Silent
from tapewise_core.text.told import LineName, said

if TYPE_CHECKING:
    import numpy as np

TRUE = 0.05
"""How far a line may lie beyond a fold [mm]: less than a pencil's line."""


def no_teeth(case: Case) -> Answer:
    """The cut line of no piece turns back on itself, but round a point of the piece's own."""
    return tuple(_toothless(piece) for piece in case.pattern.pieces)


def _toothless(piece: Piece) -> Proof:
    found, part = _teeth(piece), LineName(piece.name)
    says = said("The {}'s cut line runs on without a tooth.", part)
    if found:
        where = min(piece.edges, key=lambda edge: _away(edge, found[0].x, found[0].y))
        says = said(
            "The {}'s cut line has a tooth beside the {}; scissors can't follow it. Smooth it "
            "there, or take other measures.",
            part, LineName(where.name),
        )  # fmt: skip
    count = float(len(found))
    return Proof(ProofId.TEETH, str(part), count, 0.0, "1", not found, says)


def _teeth(piece: Piece) -> list[Point]:
    """Teeth of the cut line; a sharp corner of the piece itself, as a V's facing has, is none."""
    found = teeth(piece.cut_rows)
    own = teeth(rows(piece.stitch_line())) if found else ()
    near = MITRE * max(edge.allowance for edge in piece.edges) + TRUE
    return [tooth for tooth in found if all((tooth - corner).length() > near for corner in own)]


def _away(edge: Edge, x: float, y: float) -> float:
    """How far an edge's nearest end or middle lies from a place [mm]."""
    middle, _ = edge.path.at(edge.path.length() / 2)
    spots = edge.path.start, middle, edge.path.end
    return min(math.hypot(spot.x - x, spot.y - y) for spot in spots)


def behind_fold(case: Case) -> Answer:
    """No piece that is cut on the fold reaches beyond it, with its allowances."""
    folded = [piece for piece in case.pattern.pieces if any(edge.fold for edge in piece.edges)]
    if not folded:
        return Silent(ProofId.BEHIND_FOLD, said("No piece is cut on the fold."))
    return tuple(_behind(piece, case.stitched[piece.name]) for piece in folded)


def _behind(piece: Piece, stitched: np.ndarray) -> Proof:
    lines = stitched, piece.cut_rows
    over = max(_beyond(line, edge) for line in lines for edge in piece.edges if edge.fold)
    holds, part = keeps_to(over, TRUE), LineName(piece.name)
    says = said("The {} lies behind its fold.", part)
    if not holds:
        says = said(
            "The {} reaches {} beyond its fold, where there is no cloth: both halves would be cut "
            "into. Take a shallower neckline or a narrower allowance.",
            part, off_by(over),
        )  # fmt: skip
    return in_cm(ProofId.BEHIND_FOLD, str(part), max(over, 0.0), TRUE, holds, says)


def _beyond(line: np.ndarray, fold: Edge) -> float:
    """How far a line lies outside a fold's straight line at the most [mm]."""
    start, square = fold.path.start, (fold.path.end - fold.path.start).unit().square()
    inside = line @ (square.x, square.y)
    return float(start.x * square.x + start.y * square.y - inside.min())
