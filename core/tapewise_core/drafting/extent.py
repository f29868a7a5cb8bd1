"""How much of the cloth a piece takes: the grain arrow always lies along the cloth."""

from __future__ import annotations

from tapewise_core.drafting.piece import Piece


def size_of(piece: Piece) -> tuple[float, float]:
    """Return how much of the cloth a piece takes across and along its grain, unfolded [mm]."""
    line = piece.cut_rows
    width, height = (line.max(axis=0) - line.min(axis=0)).tolist()
    opened = width * (2 if piece.on_fold else 1)
    return (height, opened) if lies_across_paper(piece) else (opened, height)


def lies_across_paper(piece: Piece) -> bool:
    """Say whether a piece's grain runs across the paper it is drawn on."""
    start, end = piece.grain
    return abs(end.x - start.x) > abs(end.y - start.y)


def least_across(piece: Piece) -> float:
    """Return how much of the cloth's width a piece takes at least [mm]."""
    return min(size_of(piece)) if piece.turnable else size_of(piece)[0]
