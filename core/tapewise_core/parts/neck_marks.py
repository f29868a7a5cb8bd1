"""The marks by which a band is spread round a neckline."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.piece import Notch, Piece

HALFWAY, FRONT, BACK = "neck halfway", "centre front", "centre back"


def quarter_marked(pieces: tuple[Piece, ...], *, pointed: bool) -> tuple[Piece, ...]:
    """Mark half a neckline, ``pieces`` from the back to the front, at the quarter of the whole.

    The band's own middle is marked too: on the front, or on the back of a V. The front's edge
    begins at its centre, every other at the back.
    """
    back, *_, front = pieces
    lengths = [piece.length("neckline") for piece in pieces]
    half = sum(lengths) / 2
    marks: dict[str, tuple[Notch, ...]] = {piece.name: () for piece in pieces}
    if pointed:
        marks[back.name] = (Notch("neckline", 0.0, BACK),)
    else:
        marks[front.name] = (Notch("neckline", 0.0, FRONT),)
    if lengths[-1] >= half:
        marks[front.name] += (Notch("neckline", half, HALFWAY),)
    else:
        at, piece = _reached(pieces, lengths, half)
        marks[piece.name] += (Notch("neckline", at, HALFWAY),)
    return tuple(replace(one, notches=(*marks[one.name], *one.notches)) for one in pieces)


def _reached(pieces: tuple[Piece, ...], lengths: list[float], walked: float) -> tuple[float, Piece]:
    """The piece that a walk from the centre back reaches before the front, and how far on it."""
    for piece, length in zip(pieces, lengths, strict=True):
        if walked <= length:
            return walked, piece
        walked -= length
    return walked, pieces[-1]
