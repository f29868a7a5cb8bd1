"""A drawing among a document's words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from tapewise_core.paper.drawing import Drawing
from tapewise_core.paper.look import PRINTED
from tapewise_core.paper.safe import checked
from tapewise_core.writers.lettering import Lettering
from tapewise_core.writers.pdf_pen import POINTS, PdfPen

if TYPE_CHECKING:
    from reportlab.platypus import Flowable

LARGEST = 170.0
"""The longest side of a picture on a page [mm], its words above it (our choice)."""


def picture(drawing: Drawing, lettering: Lettering, room: float = LARGEST * POINTS) -> Flowable:
    """Return a drawing at its own size, smaller only where there is no room for it; ``room`` is
    how wide it may be [points]. It is cut off at its edges."""
    from reportlab.platypus import Flowable

    drawn, box = checked(drawing), drawing.box
    scale = min(1.0, LARGEST / max(box.height, 1.0), room / POINTS / max(box.width, 1.0))

    class Picture(Flowable):
        def __init__(self) -> None:
            super().__init__()
            self.width, self.height = scale * box.width * POINTS, scale * box.height * POINTS

        def draw(self) -> None:
            page = self.canv
            page.saveState()
            page.scale(scale, scale)
            frame = page.beginPath()
            frame.rect(0, 0, box.width * POINTS, box.height * POINTS)
            page.clipPath(frame, stroke=0, fill=0)
            page.translate(-box.left * POINTS, 0)
            pen = PdfPen(page, PRINTED, lettering)
            for ink in drawn.inks:
                pen.draw(ink, box.bottom)
            page.restoreState()

    return Picture()
