"""What to mark on the cloth: notches by snip or chalk, and the wrong side."""

from __future__ import annotations

from tapewise_core.drafting.labels import title
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.text.amounts import About
from tapewise_core.text.told import LineName, Told, joined, said

SNIPPED = 5.0
"""The least allowance that is snipped at all [mm] (common practice); a narrower one is chalked."""


def marks(pattern: Pattern) -> tuple[Told, ...]:
    """Say which notches each piece has and how they are marked."""
    told = tuple(_notches(piece) for piece in pattern.pieces if piece.notches)
    return (*told, ("wrong side of every piece with chalk, so that none is sewn inside out",))


def _notches(piece: Piece) -> Told:
    pairs = ", ".join(dict.fromkeys(notch.pair for notch in piece.notches))
    return said("{}: {}; {}", title(piece.name), pairs, _manner(piece))


def _manner(piece: Piece) -> Told:
    """A snip goes no deeper than half the allowance, and needs some allowance to be made in."""
    narrow = [notch for notch in piece.notches if _room(piece, notch) < SNIPPED]
    if len(narrow) == len(piece.notches):
        return said("with chalk: less than {} of allowance is not snipped", About(SNIPPED))
    if not narrow:
        return ("snip no more than half the allowance",)
    edges = joined([(line,) for line in dict.fromkeys(LineName(n.edge) for n in narrow)], ", ")
    return said(
        "snip no more than half the allowance, but mark {} with chalk, where it is less than {}",
        edges,
        About(SNIPPED),
    )


def _room(piece: Piece, notch: Notch) -> float:
    return piece.edge(notch.edge).allowance
