"""A document as PDF pages to print and write on."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape
from io import BytesIO
from itertools import groupby, zip_longest
from typing import TYPE_CHECKING, Any

from tapewise_core.paper.document import (
    Block,
    Bullets,
    Document,
    Heading,
    NumberedStep,
    Paragraph,
    Table,
    Ticks,
)
from tapewise_core.paper.drawing import Drawing
from tapewise_core.paper.lettering import shortened
from tapewise_core.paper.look import PRINTED
from tapewise_core.paper.safe import checked, plain
from tapewise_core.paper.sizes import A4_OR_LETTER, PageSize
from tapewise_core.writers.lettering import FONT, Lettering
from tapewise_core.writers.pdf_pen import POINTS, PdfPen

if TYPE_CHECKING:
    from reportlab.platypus import Flowable

MARGIN = 15.0
"""Left blank all round [mm]."""

LARGEST = 170.0
"""The longest side of a picture on a page [mm], its words above it (our choice)."""

PADDING = 6.0
"""What the library keeps free inside its margins [points]."""

BODY, HEADINGS = 9.5, {1: 17.0, 2: 13.0, 3: 11.0}
"""The size of type by level [points]."""

SMALL = 8.0
"""The type at the foot of each page [points]."""

BOX, BULLET = "☐", "•"


def document_pdf(document: Document, page: PageSize = A4_OR_LETTER) -> bytes:
    """Return the document as one PDF file; the same document gives the same bytes.

    A step keeps together with its picture and whatever follows up to the next one.
    """
    from reportlab import rl_config
    from reportlab.platypus import SimpleDocTemplate

    rl_config.useA85 = 0  # as in the pages of the pattern: the same bytes whichever comes first
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
        invariant=1,
    )
    setter = _Setter((page.width - 2 * MARGIN) * POINTS - 2 * PADDING)

    def foot(canvas: Any, at: Any) -> None:
        said = f"{shortened(plain(document.title), page.width - 60, 2.8)} · page {at.page}"
        canvas.setFont(FONT, SMALL)
        canvas.drawString(margin + PADDING, margin / 2, setter.lettering.shaped(said))

    template.build(list(setter.set(document)), onFirstPage=foot, onLaterPages=foot)
    return file.getvalue()


class _Setter:
    """Turns blocks into what the library sets on pages of one width [points]."""

    def __init__(self, width: float) -> None:
        self.width = width
        self.lettering = Lettering()

    def set(self, document: Document) -> Iterator[Flowable]:
        """Yield everything in reading order, what lies between two headings or steps together."""
        from reportlab.platypus import KeepTogether

        blocks = list(document.blocks)
        if not any(isinstance(block, Heading) and block.level == 1 for block in blocks):
            blocks.insert(0, Heading(document.title, 1))
        held: list[Flowable] = []
        parts = list(_in_runs(blocks))
        for part, after in zip_longest(parts, parts[1:]):
            if isinstance(part, list):
                yield from (*held, self._side_by_side(part))
                held = []
                continue
            held.append(self._block(part))
            opens = isinstance(part, Heading | NumberedStep)
            if not opens and (after is None or isinstance(after, Heading | NumberedStep | list)):
                yield KeepTogether(held)
                held = []
        yield from held

    def _side_by_side(self, steps: Sequence[NumberedStep]) -> Flowable:
        """Steps in rows, each over its picture, as many beside each other as there is room for."""
        shown = [step.picture.box for step in steps if step.picture]
        widest = min(max(box.width for box in shown), LARGEST) * POINTS + 10
        columns = max(1, min(3, int(self.width / widest)))
        cells = [self._over_its_picture(step) for step in steps]
        cells += [[]] * (-len(cells) % columns)
        rows: list[Any] = [cells[i : i + columns] for i in range(0, len(cells), columns)]
        return _grid(rows, [self.width / columns] * columns, ruled=False)

    def _over_its_picture(self, step: NumberedStep) -> list[Flowable]:
        words = self._words(f"{step.number}. {step.text}", 9.0)
        return [words, *([_picture(step.picture, self.lettering)] if step.picture else [])]

    def _block(self, block: Block) -> Flowable:
        match block:
            case Heading(text, level):
                return self._words(text, HEADINGS.get(level, 11.0), before=8.0)
            case Paragraph(text):
                return self._words(text)
            case Bullets(items):
                return self._list(items, [BULLET] * len(items))
            case Ticks(items, numbered):
                marks = [f"{BOX} {n}." if numbered else BOX for n in range(1, len(items) + 1)]
                return self._list(items, marks)
            case Table(head, rows):
                return self._table(head, rows)
            case NumberedStep():
                return self._step(block)

    def _words(self, text: str, size: float = BODY, before: float = 0.0) -> Flowable:
        from reportlab.lib.styles import ParagraphStyle
        from reportlab.platypus import Paragraph as Flowing

        style = ParagraphStyle(
            "words", fontName=FONT, fontSize=size, leading=size * 1.4,
            spaceBefore=before, spaceAfter=4,
        )  # fmt: skip
        return Flowing(escape(self.lettering.shaped(plain(text)), quote=False), style)

    def _list(self, items: tuple[str, ...], marks: list[str]) -> Flowable:
        rows = [
            [self._words(mark), self._words(item)] for mark, item in zip(marks, items, strict=True)
        ]
        narrow = 14.0 if all(len(mark) < 2 for mark in marks) else 30.0
        return _grid(rows, [narrow, self.width - narrow], ruled=False)

    def _table(self, head: tuple[str, ...], rows: tuple[tuple[str, ...], ...]) -> Flowable:
        cells = [[self._words(cell, 8.5) for cell in row] for row in (head, *rows)]
        return _grid(cells, [self.width / len(head)] * len(head), ruled=True)

    def _step(self, step: NumberedStep) -> Flowable:
        words = self._words(f"{step.number}. {step.text}")
        if step.picture is None:
            return words
        picture = _picture(step.picture, self.lettering)
        wide = picture.wrap(0, 0)[0] + 8
        return _grid([[words, picture]], [self.width - wide, wide], ruled=False)


def _in_runs(blocks: Sequence[Block]) -> Iterator[Block | list[NumberedStep]]:
    """The blocks in order; steps with pictures that follow one another come as one list."""
    for stepping, run in groupby(blocks, _is_pictured):
        found = list(run)
        steps = [block for block in found if isinstance(block, NumberedStep)]
        if stepping and len(steps) > 1:
            yield steps
        else:
            yield from found


def _is_pictured(block: Block) -> bool:
    return isinstance(block, NumberedStep) and block.picture is not None


def _grid(rows: list[list[Flowable]], widths: list[float], *, ruled: bool) -> Flowable:
    from reportlab.lib.colors import HexColor
    from reportlab.platypus import Table as Grid

    style: list[tuple[Any, ...]] = [("VALIGN", (0, 0), (-1, -1), "TOP")]
    if ruled:
        style += [("GRID", (0, 0), (-1, -1), 0.5, HexColor("#777777"))]
    else:
        style += [(f"{side}PADDING", (0, 0), (-1, -1), 0) for side in ("LEFT", "TOP", "BOTTOM")]
    return Grid(rows, colWidths=widths, style=style, spaceAfter=6)


def _picture(drawing: Drawing, lettering: Lettering) -> Flowable:
    """A drawing at its own size, smaller only where no page would hold it; cut off at its edges."""
    from reportlab.platypus import Flowable

    drawn, box = checked(drawing), drawing.box
    scale = min(1.0, LARGEST / max(box.width, box.height, 1.0))

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
