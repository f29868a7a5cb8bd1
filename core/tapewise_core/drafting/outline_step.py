"""The step that draws the line to cut along."""

from __future__ import annotations

from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.marks import Finished
from tapewise_core.drafting.steps import Stated, listed
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.text.told import LineName, Told, joined, said
from tapewise_core.units import Length


class Outline(Frozen):
    """Add the allowances: draw the line to cut along outside the pattern's own lines.

    The allowances of the edges ``turned`` are mirrored at their corners; ``shown`` is what the
    picture, the piece's dimensioned drawing, has besides.
    """

    edges: tuple[tuple[str, Length], ...]
    path: Path
    turned: tuple[str, ...] = ()
    shown: Finished | None = None

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Draw the cut line."""
        return paper.with_line("cutting_line", self.path)

    def tell(self) -> Told:
        """Say what each edge gets."""
        each = (said("{} {}", LineName(name), by if by.mm else "none") for name, by in self.edges)
        opening = "Add the allowances outside the lines, then cut along the outer line: "
        corners = self._corners() if self.shown and self.shown.corner else ""
        return (opening, *joined(each, "; "), ".", corners)

    def _corners(self) -> str:
        """How the corners of what is turned are found, so that it turns flat."""
        turned = listed(tuple(str(LineName(name)) for name in self.turned))
        return (
            f" Mirror the corners of the {turned} first, so that the allowance turns flat: fold "
            "the paper back along that stitching line. Cut along the cutting line of the edge "
            "beside it through both layers. Open the paper: beyond the fold the corner leans as "
            "the edge does before it."
        )

    def stated(self) -> tuple[Stated, ...]:
        """State no distance between points."""
        return ()
