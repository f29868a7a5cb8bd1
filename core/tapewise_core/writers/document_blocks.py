"""One block of a document at a time: words, lists, tables, pictures with their words."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING, Any

from tapewise_core.paper.document import (
    Block,
    Bullets,
    Figure,
    FillIn,
    Heading,
    NumberedStep,
    Paragraph,
    Table,
    Ticks,
)
from tapewise_core.paper.drawing import Drawing
from tapewise_core.paper.safe import plain
from tapewise_core.writers.document_tables import GREY, grid, halves, widths
from tapewise_core.writers.document_words import running
from tapewise_core.writers.lettering import Lettering
from tapewise_core.writers.pdf_pen import POINTS
from tapewise_core.writers.pdf_picture import picture

if TYPE_CHECKING:
    from reportlab.platypus import Flowable

BODY, STEP, CELL = 9.5, 9.0, 8.5
"""The size of running type, of steps and of tables [points]."""

HEADINGS = {1: 17.0, 2: 13.0, 3: 11.0}
"""The size of headings by level [points]."""

BOX, BULLET = "☐", "•"

BESIDE = 66.5 * POINTS
"""The column for figures on pages to fill in [points]."""

WRITTEN = 42.0 * POINTS
"""The column to write in [points]."""

BLANK = 12.0
"""What a table keeps free beside the words of each cell [points]."""


class BlockSetter:
    """Turns blocks into what the library sets, in columns of one width [points]."""

    def __init__(self, width: float) -> None:
        self.width = width
        self.lettering = Lettering()

    def to_fill(self, block: FillIn) -> list[Any]:
        """A figure, how to measure, and lines to write on."""
        words = [self.words(f"{block.number}. {block.text}", STEP)]
        words += [self.words(f"{BOX} {tick}", STEP) for tick in block.ticks]
        drawn = [picture(block.picture, self.lettering, BESIDE)] if block.picture else []
        return [drawn, words, [self._line(line) for line in block.lines]]

    def _line(self, label: str) -> Flowable:
        """A label with a line below it to write on."""
        from reportlab.lib.colors import HexColor

        rule = [("LINEBELOW", (0, 0), (-1, -1), 0.5, HexColor(GREY))]
        return grid([[self.words(label, CELL)]], [WRITTEN - 8], style=rule, low=13.0)

    def block(self, block: Block) -> Flowable:
        """Set one block."""
        match block:
            case Heading(text, level):
                return self.words(text, HEADINGS.get(level, 11.0), before=8.0)
            case Paragraph(text):
                return self.words(text)
            case Bullets(items):
                return self._list(items, [BULLET] * len(items))
            case Ticks(items, numbered):
                marks = [f"{BOX} {n}." if numbered else BOX for n in range(1, len(items) + 1)]
                return self._list(items, marks, block.drawn())
            case Table():
                return self._table(block)
            case NumberedStep():
                return self._step(block)
            case Figure(drawing, text):
                return self._figure(drawing, text)
            case FillIn():
                return grid([self.to_fill(block)], [BESIDE, self.width - BESIDE - WRITTEN, WRITTEN])

    def words(self, text: str, size: float = BODY, before: float = 0.0) -> Flowable:
        """Set running words of a size, with room ``before`` them [points]."""
        return running(escape(self.lettering.shaped(plain(text)), quote=False), size, before)

    def _list(
        self, items: tuple[str, ...], marks: list[str], drawn: tuple[Drawing | None, ...] = ()
    ) -> Flowable:
        narrow = 14.0 if all(len(mark) < 2 for mark in marks) else 34.0
        rows = [
            [self._cell(mark, narrow), self._item(item, one, self.width - narrow)]
            for mark, item, one in zip(marks, items, drawn or (None,) * len(items), strict=True)
        ]
        return grid(rows, [narrow, self.width - narrow])

    def _item(self, item: str, drawing: Drawing | None, room: float) -> Flowable:
        """One thing of a list, its picture beside it."""
        if drawing is None:
            return self.words(item)
        drawn = picture(drawing, self.lettering)
        wide = drawn.wrap(0, 0)[0] + 8
        return grid([[self.words(item), drawn]], [room - wide, wide])

    def _table(self, table: Table) -> Flowable:
        """Columns as wide as their words; a long list of pairs in two halves beside each other."""
        rows = [table.head, *table.rows] if len(table.head) > 2 else halves(table)
        needed = [[self._breadth(cell) for cell in row] for row in rows]
        columns = widths([max(column) for column in zip(*needed, strict=True)], self.width)
        cells = [
            [self._cell(cell, room, CELL) for cell, room in zip(row, columns, strict=True)]
            for row in rows
        ]
        return grid(cells, columns, ruled=True, size=CELL)

    def _breadth(self, text: str) -> float:
        """How wide a cell is whose words stand in one line."""
        return self.lettering.width(self.lettering.shaped(plain(text)), CELL) + BLANK

    def _cell(self, text: str, room: float, size: float = BODY) -> Flowable | str:
        """A cell's words, which the library sets much faster where they need only one line."""
        shaped = self.lettering.shaped(plain(text))
        one_line = self.lettering.width(shaped, size) <= room - BLANK + 0.01
        return shaped if one_line else self.words(text, size)

    def _figure(self, drawing: Drawing, text: str) -> Flowable:
        """A picture below what is said of it."""
        from reportlab.platypus import KeepTogether

        return KeepTogether([self.words(text), picture(drawing, self.lettering)])

    def _step(self, step: NumberedStep) -> Flowable:
        words = self.words(f"{step.number}. {step.text}", STEP)
        if step.picture is None:
            return words
        drawn = picture(step.picture, self.lettering)
        wide = drawn.wrap(0, 0)[0] + 8
        left = self.width - wide
        aside = [picture(step.aside, self.lettering, left)] if step.aside else []
        return grid([[[words, *aside], drawn]], [left, wide])
