"""A bodice of back and front that end at the waist, to have a skirt joined to it: its waist seam
and marks.

Its drafting is a top's own, with a waist seam for its lower edge (:mod:`parts.hem`), which has a
seam's allowance. Numbers without another source are common practice.
"""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.finish import for_pieces
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.sewing.waist import STAYED_WAIST
from tapewise_core.sewing.way import Way


class Mark(Frozen):
    """A mark on the waist seam at a walked distance from the centre back [mm]."""

    distance: float
    pair: str
    strokes: int = 1


def waist_seam(bodice: Pattern) -> float:
    """Return the whole waist seam [mm]."""
    return bodice.run_length(bodice_runs(bodice))


def bodice_runs(bodice: Pattern) -> tuple[EdgeRun, ...]:
    """Return the bodice's waist walked from the centre back, by the right side."""
    back, front = bodice.piece("back"), bodice.piece("front")
    if back.on_fold:
        return (EdgeRun("back", ("waist",), 2, backwards=True), EdgeRun("front", ("waist",), 2))
    order = ((back, "waist"), (front, "waist_2"), (front, "waist"), (back, "waist_2"))
    return tuple(EdgeRun(piece.name, (edge,), backwards=True) for piece, edge in order)


def marked(bodice: Pattern, marks: tuple[Mark, ...]) -> Pattern:
    """Return the bodice with marks on its waist seam, on both halves."""
    pieces = tuple(
        replace(piece, notches=(*piece.notches, *_notches(bodice, piece, marks)))
        if piece.name in ("back", "front")
        else piece
        for piece in bodice.pieces
    )
    return replace(bodice, pieces=pieces, drafts=for_pieces(bodice.drafts, pieces[:2]))


def back_half(bodice: Pattern) -> float:
    """Return the waist seam from the centre back to the side [mm]."""
    return bodice.piece("back").sewn("waist")


def _notches(bodice: Pattern, piece: Piece, marks: tuple[Mark, ...]) -> list[Notch]:
    """The marks that fall on one piece, on its plain edge and on the mirrored one."""
    back, own = back_half(bodice), piece.sewn("waist")
    found = []
    for mark in marks:
        on_back = mark.distance <= back + 0.5
        if on_back is not (piece.name == "back"):
            continue
        at = back - mark.distance if on_back else mark.distance - back
        at = min(max(at, 0.0), own)
        found.append(Notch("waist", _opened(piece, "waist", at), mark.pair, mark.strokes))
        if piece.has_edge("waist_2"):
            there = max(piece.sewn("waist_2") - at, 0.0)
            distance = _opened(piece, "waist_2", there)
            found.append(Notch("waist_2", distance, mark.pair, mark.strokes))
    return found


def _opened(piece: Piece, edge: str, sewn: float) -> float:
    """Where on an edge a place of the sewn seam lies, the darts on the way open [mm]."""
    at = sewn
    for dart in piece.darts:
        mouth = dart.mouth(piece.edge(edge).path)
        if mouth is not None and mouth - dart.intake / 2 < at:
            at += dart.intake
    return at


def waist_join(
    bodice: Pattern, skirt: tuple[EdgeRun, ...], ratio: float = 1.0, way: Way = STAYED_WAIST
) -> Seam:
    """Return the seam that joins a skirt to the bodice, gathered by a ratio."""
    return Seam(SeamKind.WAIST, skirt, bodice_runs(bodice), ratio, way)
