"""What each format makes of a pattern set."""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.errors import OptionError
from tapewise_core.frozen import Frozen
from tapewise_core.paper import sizes
from tapewise_core.paper.cutting_out import cut_only
from tapewise_core.paper.document import Document
from tapewise_core.paper.look import DARK, LIGHT
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.paper.projector import canvas, projected
from tapewise_core.paper.roll import rolled
from tapewise_core.paper.sizes import OVERLAP, PageSize
from tapewise_core.paper.tiling import large, tiled
from tapewise_core.paper.whole_sheets import whole_sheets
from tapewise_core.units import Unit
from tapewise_core.writers.dxf import cutter_dxf, plain_dxf
from tapewise_core.writers.html import html as html_text
from tapewise_core.writers.pdf import pdf
from tapewise_core.writers.svg import svg


class PaperOptions(Frozen):
    """What a person may choose about paper; lengths in mm."""

    overlap: float = OVERLAP
    roll: float = sizes.ROLL
    margin: float = sizes.MARGIN
    page: PageSize | None = None


Files = dict[str, bytes]


class Format(Frozen):
    """One way onto paper, cloth or screen: its name, what it is for, the files it gives."""

    name: str
    says: str
    extension: str
    files: tuple[str, ...]
    make: Callable[[PatternSet, PaperOptions], list[bytes]]


def pages(page: PageSize) -> Callable[[PatternSet, PaperOptions], list[bytes]]:
    """Return what lays a pattern on pages of one size, to join, with a map."""
    return lambda pattern, paper: [pdf(tiled(pattern, page, paper.margin, paper.overlap))]


def sheets(page: PageSize) -> Callable[[PatternSet, PaperOptions], list[bytes]]:
    """Return what lays whole pieces on large sheets of one size.

    Where that takes more sheets than pieces joined over two of them, or a piece is larger
    than a sheet, they are joined.
    """

    def made(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
        whole = whole_sheets(pattern, page, paper.margin)
        if whole and len(whole.sheets) == 1:
            return [pdf(whole)]
        over = large(pattern, page, paper.margin, paper.overlap)
        return [pdf(whole if whole and len(whole.sheets) <= len(over.sheets) else over)]

    return made


def page(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    """Paper of a size somebody has: joined like a home printer's, or whole like a copy shop's."""
    if paper.page is None:
        raise OptionError("pdf-page needs the paper's size; give it as --page 30x42 cm.")
    home = min(paper.page.width, paper.page.height) <= sizes.HOME
    return (pages if home else sheets)(paper.page)(pattern, paper)


def reading(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    """What to sew by first, then how to draft it by hand."""
    from tapewise_core.writers.document_pdf import document_pdf

    told = (*pattern.checklist.blocks, *pattern.instructions.blocks)
    page = sizes.LETTER if pattern.reader.unit is Unit.IN else sizes.A4
    return [document_pdf(Document(pattern.label(), told), page)]


def roll(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    """Long pages for a plotter."""
    return [pdf(rolled(pattern, paper.roll, paper.margin))]


def pdf_projector(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    """A page to set up by and the canvas as PDF, light on dark and dark on light."""
    prints = projected(pattern)
    return [pdf(prints, look) for look in (DARK, LIGHT)]


def svg_projector(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    """The canvas as SVG, light on dark and dark on light."""
    drawing = canvas(pattern)
    return [svg(drawing, look).encode() for look in (DARK, LIGHT)]


def dxf(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    """Whole pieces for cutters and drawing programs, and the lines to cut alone."""
    from tapewise_core.writers.dxf_2000 import cut_dxf, modern_dxf

    pieces = pattern.opened
    cut = cut_dxf(pieces, pattern.label())
    return [cutter_dxf(pieces), plain_dxf(pieces), modern_dxf(pieces), cut]


def svg_cut(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    """The lines to cut alone."""
    return [svg(cut_only(pattern)).encode()]


def html(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    """All there is to read, in one page."""
    return [html_text(pattern).encode()]
