"""The allowance a seam is sewn with, so that nobody sews another out of habit."""

from __future__ import annotations

from tapewise_core.drafting.piece import Pattern, SeamKind
from tapewise_core.units import Unit


def sewn_at(pattern: Pattern, kind: SeamKind, unit: Unit) -> str:
    """Spell the allowance of the first seam of a kind."""
    run = next(seam.first[0] for seam in pattern.seams if seam.kind is kind)
    piece = pattern.piece(run.piece)
    name = next(name for name in run.edges if piece.has_edge(name))
    return unit.spell(piece.edge(name).allowance)
