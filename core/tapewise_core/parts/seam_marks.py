"""Marks on a seam: placed on its second side, and on its first where they meet it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from msgspec.structs import replace

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.drafting.seam import EdgeRun, Seam


def with_marks(pattern: Pattern, marks: Iterable[tuple[Seam, Notch]]) -> tuple[Piece, ...]:
    """Return a pattern's pieces, each mark of a seam's second side on both its sides.

    A front that is gathered or has a dart on the way has its marks further along its own edge, so
    that they meet the back's as the seam is sewn.
    """
    found: dict[str, list[Notch]] = {}
    pieces = {piece.name: piece for piece in pattern.pieces}
    for seam, mark in marks:
        found.setdefault(seam.second[0].piece, []).append(mark)
        walked = _walked(pieces, seam.second[0], mark)
        there = seam.fullness.beside(walked) if seam.fullness else walked
        run = seam.first[0]
        found.setdefault(run.piece, []).append(_placed(pieces, run, there, mark))
    return tuple(
        replace(piece, notches=(*piece.notches, *found.get(piece.name, ())))
        for piece in pattern.pieces
    )


def _walked(pieces: Mapping[str, Piece], run: EdgeRun, mark: Notch) -> float:
    """How far from a run's start a mark lies [mm]."""
    before = 0.0
    for name, length in _lengths(pieces, run):
        if name == mark.edge:
            return before + (length - mark.distance if run.backwards else mark.distance)
        before += length
    raise ValueError(f"{mark.edge} is no edge of this side of the seam")


def _placed(pieces: Mapping[str, Piece], run: EdgeRun, walked: float, mark: Notch) -> Notch:
    """The same mark on the edge of a run that a walked way ends on."""
    lengths = _lengths(pieces, run)
    while len(lengths) > 1 and walked > lengths[0][1]:
        walked -= lengths.pop(0)[1]
    name, length = lengths[0]
    at = min(max(walked, 0.0), length)
    return replace(mark, edge=name, distance=length - at if run.backwards else at)


def _lengths(pieces: Mapping[str, Piece], run: EdgeRun) -> list[tuple[str, float]]:
    piece = pieces[run.piece]
    return [(name, piece.length(name)) for name in run.edges if piece.has_edge(name)]
