"""How each piece is cut out: how many, how it lies, how many notches it has."""

from __future__ import annotations

from tapewise_core.drafting.labels import cut_words, title
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.unfolding import opens
from tapewise_core.sewing.lying import along_grain, is_strip

LENGTHWISE = "its grain line along the cloth"

EITHER_WAY = "its arrow along the cloth or across it"


def cut_out(piece: Piece, *, unfolded: bool = False) -> str:
    """Say how a piece is cut out; one printed ``unfolded`` never lies on a fold.

    Its notches are not counted then: those of the other half are printed too.
    """
    if unfolded and opens(piece):
        return (
            f"{title(piece.name)}: cut {piece.count}, single, from one layer of cloth, "
            f"{EITHER_WAY if piece.turnable else LENGTHWISE}"
        )
    notches = len(piece.notches)
    counted = f"; {notches} notch{'es' if notches > 1 else ''}" if notches else ""
    return f"{title(piece.name)}: {cut_words(piece)}, {_lies(piece)}{counted}"


def _lies(piece: Piece) -> str:
    """How a piece lies on the cloth, as its grain arrow says."""
    if piece.turnable:
        return EITHER_WAY
    if piece.on_fold:
        return "the straight edge marked so on the fold"
    if not is_strip(piece):
        return LENGTHWISE
    if along_grain(piece):
        return "its length along the grain, joined from strips if the cloth is short"
    return "its length across the cloth"
