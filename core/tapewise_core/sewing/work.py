"""What there is to sew at one place in the order: seams of one making, and how far they run."""

from __future__ import annotations

from dataclasses import dataclass

from tapewise_core.drafting.making import How
from tapewise_core.drafting.piece import Pattern, Seam
from tapewise_core.sewing.machines import Stitching
from tapewise_core.units import Length, mm


@dataclass(frozen=True, slots=True)
class Work:
    """Seams of one making, the pattern they belong to, and the stitches there are."""

    seams: tuple[Seam, ...]
    pattern: Pattern
    stitching: Stitching

    @property
    def at(self) -> Length:
        """The allowance the seams are sewn with."""
        return sewn_at(self.pattern, self.seams[0])


def sewn_at(pattern: Pattern, seam: Seam) -> Length:
    """Return the allowance a seam is sewn with, so that nobody sews another out of habit.

    That of the first edge there is: a run may name edges that a piece does not have.
    """
    run = seam.first[0]
    piece = pattern.piece(run.piece)
    name = next(name for name in run.edges if piece.has_edge(name))
    return mm(piece.edge(name).allowance)


def made_so(pattern: Pattern, how: How) -> tuple[Seam, ...]:
    """Return the pattern's seams that are made in one way."""
    return tuple(seam for seam in pattern.seams if seam.making.how is how)


def apart(pattern: Pattern, seam: Seam) -> float:
    """Return by how much a seam's first side is longer than its second [mm]."""
    return pattern.run_length(seam.first) - pattern.run_length(seam.second)
