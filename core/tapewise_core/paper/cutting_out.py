"""What a machine that cuts is given: whole pieces beside each other, their cut lines alone."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.paper.drawing import Drawing, Layer
from tapewise_core.paper.nesting import nested
from tapewise_core.paper.packing import ink_box, joined
from tapewise_core.paper.pattern_set import PatternSet

WIDE = 1500.0
"""Pieces lie beside each other up to this width, about a cloth's [mm]."""


def cut_only(pattern: PatternSet) -> Drawing:
    """Return the cut lines of the whole pieces, laid apart by their outlines as the grain runs."""
    pieces = [
        replace(piece, inks=tuple(ink for ink in piece.inks if ink.layer is Layer.CUT))
        for piece in pattern.opened
    ]
    widest = max(ink_box(piece).width for piece in pieces) + 10
    laid = nested([[piece] for piece in pieces], max(WIDE, widest))
    return joined(pattern.title, pattern.label(), laid, 10.0)
