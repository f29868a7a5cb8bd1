"""A document as PDF pages to print and write on."""

from __future__ import annotations

from io import BytesIO
from typing import Any

from tapewise_core.paper.document import Document, FillIn
from tapewise_core.paper.lettering import shortened
from tapewise_core.paper.safe import plain
from tapewise_core.paper.sizes import A4_OR_LETTER, PageSize
from tapewise_core.writers.document_flow import PADDING, Setter
from tapewise_core.writers.lettering import FONT
from tapewise_core.writers.pdf_library import prepare
from tapewise_core.writers.pdf_pen import POINTS

MARGIN = 15.0
"""Left blank all round [mm]."""

SMALL = 8.0
"""The type at the foot of each page [points]."""

NAME = "Name " + "." * 40
"""At the foot of pages to fill in, so that loose ones find back to whom they belong."""


def document_pdf(document: Document, page: PageSize = A4_OR_LETTER) -> bytes:
    """Return the document as one PDF file; the same document gives the same bytes.

    A step keeps together with its picture and whatever follows up to the next one.
    """
    prepare()  # as for the pages of the pattern: the same bytes whichever comes first
    from reportlab.platypus import SimpleDocTemplate

    file = BytesIO()
    margin = MARGIN * POINTS
    template = SimpleDocTemplate(
        file,
        pagesize=(page.width * POINTS, page.height * POINTS),
        leftMargin=margin,
        rightMargin=margin,
        topMargin=margin,
        bottomMargin=margin,
        title=plain(document.title),
        author="",
        creator="tapewise",
        lang="en",
        initialFontName=FONT,
        invariant=1,
    )
    setter = Setter((page.width - 2 * MARGIN) * POINTS - 2 * PADDING)
    filled = any(isinstance(block, FillIn) for block in document.blocks)

    def foot(canvas: Any, at: Any) -> None:
        if at.page == 1:
            canvas.addPageLabel(0, style="ARABIC")  # as the pages are numbered on paper
        said = f"{shortened(plain(document.title), page.width - 60, 2.8)} · page {at.page}"
        canvas.setFont(FONT, SMALL)
        canvas.drawString(margin + PADDING, margin / 2, setter.lettering.shaped(said))
        if filled:
            right = page.width * POINTS - margin - PADDING
            canvas.drawRightString(right, margin / 2, NAME)

    template.build(list(setter.set(document)), onFirstPage=foot, onLaterPages=foot)
    return file.getvalue()
