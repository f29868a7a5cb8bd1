"""The girths of a finished trunk beside the body's."""

from __future__ import annotations

from tapewise_core.drafting.piece import Girth, Piece
from tapewise_core.measures.body import Body


def trunk_girths(halves: tuple[Piece, ...], body: Body) -> tuple[Girth, ...]:
    """Return bust, waist and hip where all four quarters reach them."""
    found = []
    for key in ("bust", "waist", "hip"):
        at = [half.points[f"{key}_side"].x for half in halves if f"{key}_side" in half.points]
        if len(at) == len(halves):
            found.append(Girth(key, sum(at), body[key].mm))
    return tuple(found)
