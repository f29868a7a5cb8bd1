"""The step that joins two halves, drafted apart, into one piece."""

from __future__ import annotations

from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.steps import Stated, spoken
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point
from tapewise_core.text.told import Told

CENTRE = Point(0, 0), Point(0, 1)
"""Both halves are drafted with it for their fold."""


class JoinHalves(Frozen):
    """Lay two halves beside each other, the second turned over; each with its name."""

    plain: str
    mirrored: str
    first: DraftingPaper
    second: DraftingPaper

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Draw the lines of both."""
        for name, path in self.first.lines.items():
            paper = paper.with_line(name, path)
        for name, path in self.second.lines.items():
            paper = paper.with_line(f"{name}, turned over", path.mirrored(*CENTRE))
        return paper

    def tell(self) -> Told:
        """Say how they are laid."""
        return (
            f"Turn the {spoken(self.mirrored)} over and lay it to the {spoken(self.plain)}, fold "
            "line on fold line. Stick them together, or trace both onto one sheet: the fold line "
            "is the centre, and the piece is cut as a whole.",
        )

    def stated(self) -> tuple[Stated, ...]:
        """State no distance."""
        return ()
