"""How a piece lies by its grain arrow: the arrow always lies along the cloth."""

from __future__ import annotations

from tapewise_core.drafting.extent import size_of
from tapewise_core.drafting.piece import Piece

STRIP = 3.0
"""A piece this many times as long as it is wide is a strip (our choice)."""


def is_strip(piece: Piece) -> bool:
    """Say whether a piece is a strip, such as a band or a belt; one that has a twin which mirrors
    it, such as a narrow skirt's back, is none."""
    return not piece.mirrored and max(size_of(piece)) >= STRIP * min(size_of(piece))


def along_grain(piece: Piece) -> bool:
    """Say whether a piece is longer along its grain than across it."""
    across, along = size_of(piece)
    return along > across
