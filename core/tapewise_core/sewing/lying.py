"""How a piece lies by its grain arrow: the arrow always lies along the cloth."""

from __future__ import annotations

from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.outline import box_of

STRIP = 3.0
"""A piece this many times as long as it is wide is a strip (our choice)."""


def size_of(piece: Piece) -> tuple[float, float]:
    """Return how much of the cloth a piece takes across and along its grain, unfolded [mm]."""
    box = box_of(piece.cut)
    width = box.width * (2 if piece.on_fold else 1)
    start, end = piece.grain
    lies_across_paper = abs(end.x - start.x) > abs(end.y - start.y)
    return (box.height, width) if lies_across_paper else (width, box.height)


def is_strip(piece: Piece) -> bool:
    """Say whether a piece is a strip, such as a band or a belt."""
    return max(size_of(piece)) >= STRIP * min(size_of(piece))


def along_grain(piece: Piece) -> bool:
    """Say whether a piece is longer along its grain than across it."""
    across, along = size_of(piece)
    return along > across
