"""Cutting out, piece by piece."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.drafting.labels import title
from tapewise_core.drafting.piece import Piece
from tapewise_core.frozen import Frozen
from tapewise_core.sewing.in_hand import grain, how_many, which_way
from tapewise_core.tasks.chores import CUT, MARK, Chore, Chores
from tapewise_core.tasks.drafted import Drafted


class Cutting(Frozen):
    """One piece to cut out: its name, what to know of it, and what is then done, in order.

    ``done`` are keys of the checklist, each with few words.
    """

    piece: Piece
    name: str
    says: tuple[str, ...]
    done: tuple[tuple[str, str], ...]


def cuttings(drafted: Drafted, parts: Sequence[Chores]) -> tuple[Cutting, ...]:
    """Return a draft's pieces in the order of the checklist."""
    listed = {part.heading: part.items for part in parts}
    pieces = drafted.cut.pieces
    marked = (piece.name for piece in pieces if piece.notches)
    marks = dict(zip(marked, listed[MARK], strict=False))
    return tuple(
        _cutting(piece, chore, marks.get(piece.name))
        for piece, chore in zip(pieces, listed[CUT], strict=True)
    )


def _cutting(piece: Piece, cut: Chore, mark: Chore | None) -> Cutting:
    says = tuple(filter(None, (how_many(piece), which_way(piece), grain(piece))))
    done = ((cut.key, "cut out"),)
    if mark is None:
        return Cutting(piece, title(piece.name), says, done)
    says = (*says, f"Then mark {_words(mark)}.")
    return Cutting(piece, title(piece.name), says, (*done, (mark.key, "marked")))


def _words(chore: Chore) -> str:
    """What is marked, without the name of the piece."""
    return chore.says.partition(": ")[2]
