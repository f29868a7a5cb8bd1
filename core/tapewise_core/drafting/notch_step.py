"""The step that marks a piece's notches."""

from __future__ import annotations

from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.marks import NotchMark
from tapewise_core.drafting.steps import Stated
from tapewise_core.frozen import Frozen
from tapewise_core.text.told import Told


class Notches(Frozen):
    """Mark the notches of a finished piece across its stitching lines, told in ``words``."""

    words: Told
    marks: tuple[NotchMark, ...]

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Put the marks on the paper."""
        return paper.with_marks(self.marks)

    def tell(self) -> Told:
        """Say where each goes."""
        return self.words

    def stated(self) -> tuple[Stated, ...]:
        """State no distance between points: they are walked along the lines."""
        return ()
