"""What is to be proved, and what whoever proves answers: proofs, or why there is none."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cached_property
from typing import TYPE_CHECKING

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.facts import Facts
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.chords import CLOSE, Chords, chords
from tapewise_core.proofs.proof import Proof, ProofId, Silent, lacking
from tapewise_core.style.style import Style
from tapewise_core.text.told import said

if TYPE_CHECKING:
    import numpy as np


class Case(Frozen, dict=True):
    """What is to be proved: a pattern, the style it was drafted in, and its cloth."""

    pattern: Pattern
    style: Style
    cloth: Cloth

    @property
    def facts(self) -> Facts:
        """What the draft says about itself."""
        return self.pattern.facts

    @cached_property
    def walked(self) -> Chords:
        """The edges of all pieces in chords that follow them closely, which proofs share."""
        return chords([edge.path for piece in self.pattern.pieces for edge in piece.edges], CLOSE)

    @cached_property
    def stitched(self) -> Mapping[str, np.ndarray]:
        """Each piece's closed stitch line by these chords, a row of x and y for each point."""
        pieces = self.pattern.pieces
        parts = self.walked.split(len(piece.edges) for piece in pieces)
        return {piece.name: part.ring for piece, part in zip(pieces, parts, strict=True)}

    def offers(self, key: str) -> bool:
        """Say whether the garment has an option."""
        return key in self.style.chosen


def without(case: Case, about: ProofId, key: str, thing: str) -> Silent:
    """Return the silence of a style without sleeves, or with grown-on ones, where the garment's
    option ``key`` says that it may have others; else that it has no such thing."""
    if case.facts.bare and case.offers(key):
        return Silent(about, said("It has no sleeves."))
    if case.offers("sleeve-cut"):
        return Silent(about, said("The sleeves are grown on, in one with the body."))
    return lacking(about, thing)


Answer = tuple[Proof, ...] | Silent
"""One result or more, or the reason why there is none."""

Prover = Callable[[Case], Answer]
"""A proof of one kind."""
