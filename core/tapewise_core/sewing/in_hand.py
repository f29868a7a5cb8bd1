"""A piece at the cutting table, in few words: how many, which way up, and where its grain lies."""

from __future__ import annotations

from tapewise_core.drafting.piece import Piece
from tapewise_core.sewing.lying import along_grain, is_strip


def how_many(piece: Piece) -> str:
    """Say how many are cut, from how many layers.

    Folded cloth gives a piece and its mirror image at once.
    """
    if piece.on_fold:
        return "Cut 1, on the fold." if piece.count == 1 else f"Cut {piece.count}, each on a fold."
    if piece.mirrored:
        half = piece.count // 2
        pairs = "a left and a right" if half == 1 else f"{half} left and {half} right"
        return f"Cut {piece.count}: {pairs}."
    return f"Cut {piece.count}, single: from one layer."


def which_way(piece: Piece) -> str:
    """Say which side of the printed piece is up, or what lies on the fold; nothing of a strip, of
    which either side may be up."""
    if piece.on_fold:
        return "The straight edge marked so lies on the fold: do not cut along it."
    if piece.mirrored:
        return "From one layer: half of them printed side up, half down. From two: as it is."
    if is_strip(piece):
        return ""
    return "Printed side up, the right side of the cloth up."


def grain(piece: Piece) -> str:
    """Say how its arrow lies; the ribs of jersey run along the cloth."""
    if not is_strip(piece):
        return "The arrow along the ribs of the cloth."
    if along_grain(piece):
        return "Its length along the ribs; join strips if the cloth is short."
    return "Its length across the cloth, the arrow along the ribs."
