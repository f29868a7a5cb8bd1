"""A pattern: everything drafted for one garment."""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.facts import Facts
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import EdgeRun, Join, Seam
from tapewise_core.frozen import Frozen
from tapewise_core.text.told import Told


class Girth(Frozen):
    """A closed girth of the finished garment [mm] beside the body's [mm]."""

    name: str
    garment: float
    body: float


class Pattern(Frozen):
    """Everything drafted for one garment: drafts to tell, pieces to cut, and what joins them.

    ``facts`` is what proofs ask of a draft, ``lengths`` are those of the finished
    garment, by name [mm]; ``remarks`` are what the drafter should read.
    """

    garment: str
    title: str
    drafts: tuple[Draft, ...]
    pieces: tuple[Piece, ...]
    seams: tuple[Seam, ...]
    joins: tuple[Join, ...]
    girths: tuple[Girth, ...]
    facts: Facts
    lengths: Mapping[str, float]
    remarks: tuple[Told, ...] = ()

    def piece(self, name: str) -> Piece:
        """Return a piece by its name; raises KeyError if there is none."""
        for piece in self.pieces:
            if piece.name == name:
                return piece
        raise KeyError(name)

    def run_length(self, runs: tuple[EdgeRun, ...]) -> float:
        """Return the walked length of one side of a seam [mm], darts closed."""
        return sum(self.piece(run.piece).sewn(*run.edges) * run.times for run in runs)
