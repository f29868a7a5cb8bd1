"""What a document's blocks become on pages of one width: words, lists, tables, rows of pictures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape
from itertools import groupby
from typing import TYPE_CHECKING, Any

from tapewise_core.paper.document import (
    Block,
    Bullets,
    Document,
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
from tapewise_core.writers.document_tables import grid, halves, widths
from tapewise_core.writers.lettering import FONT, Lettering
from tapewise_core.writers.pdf_pen import POINTS
from tapewise_core.writers.pdf_picture import picture

if TYPE_CHECKING:
    from reportlab.platypus import Flowable

PADDING = 6.0
"""What the library keeps free inside its margins [points]."""

BODY, STEP, CELL = 9.5, 9.0, 8.5
"""The size of running type, of steps and of tables [points]."""

HEADINGS = {1: 17.0, 2: 13.0, 3: 11.0}
"""The size of headings by level [points]."""

BOX, BULLET = "☐", "•"

NARROW = 58.0
"""Pictures up to this width stand in columns, wider ones beside their words [mm]."""

COLUMNS = 3
"""How many pictures stand beside each other at most."""

BESIDE = 66.5 * POINTS
"""The column for figures on pages to fill in [points]."""

WRITTEN = 42.0 * POINTS
"""The column to write in [points]."""

LONG = 8
"""A table of more rows may run on over the page."""

BLANK = 12.0
"""What a table keeps free beside the words of each cell [points]."""

AFTER = 60.0
"""What must find room below a heading that is not kept with all that follows [points]."""


class Setter:
    """Turns blocks into what the library sets on pages of one width [points]."""

    def __init__(self, width: float) -> None:
        self.width = width
        self.lettering = Lettering()

    def set(self, document: Document) -> Iterator[Flowable]:
        """Yield everything in reading order, what is below a heading together if it is short."""
        blocks = list(document.blocks)
        if not any(isinstance(block, Heading) and block.level == 1 for block in blocks):
            blocks.insert(0, Heading(document.title, 1))
        for section in _sections(blocks):
            yield from self._section(section)

    def _section(self, blocks: Sequence[Block]) -> Iterator[Flowable]:
        from reportlab.platypus import CondPageBreak, KeepTogether

        found: list[Flowable] = []
        room, runs_on = AFTER, False
        for kind, run in groupby(blocks, _kind):
            parts = list(run)
            if kind is not None and not found[1:]:
                room += _height(parts[0])
            runs_on = runs_on or kind is not None or _is_long(parts)
            found += self._run(kind, parts)
        if runs_on:
            yield CondPageBreak(room)
            yield from found
        else:
            yield KeepTogether(found)

    def _run(self, kind: str | None, blocks: Sequence[Block]) -> Iterator[Flowable]:
        if kind == "columns":
            yield self._in_columns([b for b in blocks if isinstance(b, NumberedStep)])
        elif kind == "fill in":
            rows = [self._to_fill(block) for block in blocks if isinstance(block, FillIn)]
            words = self.width - BESIDE - WRITTEN
            yield grid(rows, [BESIDE, words, WRITTEN], lined=True)
        else:
            yield from map(self._block, blocks)

    def _in_columns(self, steps: Sequence[NumberedStep]) -> Flowable:
        """Steps in rows, each over its picture, as many beside each other as there is room for."""
        columns = max(1, min(COLUMNS, int(self.width / ((NARROW - 1) * POINTS))))
        cells = [self._over_its_picture(step) for step in steps]
        cells += [[]] * (-len(cells) % columns)
        rows: list[Any] = [cells[i : i + columns] for i in range(0, len(cells), columns)]
        return grid(rows, [self.width / columns] * columns)

    def _over_its_picture(self, step: NumberedStep) -> list[Flowable]:
        words = self._words(f"{step.number}. {step.text}", STEP)
        return [words, *([picture(step.picture, self.lettering)] if step.picture else [])]

    def _to_fill(self, block: FillIn) -> list[Any]:
        """A figure, how to measure, and lines to write on."""
        words = [self._words(f"{block.number}. {block.text}", STEP)]
        words += [self._words(f"{BOX} {tick}", STEP) for tick in block.ticks]
        drawn = [picture(block.picture, self.lettering, BESIDE)] if block.picture else []
        return [drawn, words, [self._line(line) for line in block.lines]]

    def _line(self, label: str) -> Flowable:
        """A label with a line below it to write on."""
        from reportlab.lib.colors import HexColor

        rule = [("LINEBELOW", (0, 0), (-1, -1), 0.5, HexColor("#777777"))]
        return grid([[self._words(label, CELL)]], [WRITTEN - 8], style=rule, low=13.0)

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
            case Table():
                return self._table(block)
            case NumberedStep():
                return self._step(block)
            case Figure(drawing, text):
                return self._figure(drawing, text)
            case FillIn():
                return grid(
                    [self._to_fill(block)], [BESIDE, self.width - BESIDE - WRITTEN, WRITTEN]
                )

    def _words(self, text: str, size: float = BODY, before: float = 0.0) -> Flowable:
        from reportlab.lib.styles import ParagraphStyle
        from reportlab.platypus import Paragraph as Flowing

        style = ParagraphStyle(
            "words", fontName=FONT, fontSize=size, leading=size * 1.35,
            spaceBefore=before, spaceAfter=4,
        )  # fmt: skip
        return Flowing(escape(self.lettering.shaped(plain(text)), quote=False), style)

    def _list(self, items: tuple[str, ...], marks: list[str]) -> Flowable:
        narrow = 14.0 if all(len(mark) < 2 for mark in marks) else 34.0
        rows = [
            [self._cell(mark, narrow), self._words(item)]
            for mark, item in zip(marks, items, strict=True)
        ]
        return grid(rows, [narrow, self.width - narrow])

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
        return shaped if one_line else self._words(text, size)

    def _figure(self, drawing: Drawing, text: str) -> Flowable:
        """A picture below what is said of it."""
        from reportlab.platypus import KeepTogether

        return KeepTogether([self._words(text), picture(drawing, self.lettering)])

    def _step(self, step: NumberedStep) -> Flowable:
        words = self._words(f"{step.number}. {step.text}", STEP)
        if step.picture is None:
            return words
        drawn = picture(step.picture, self.lettering)
        wide = drawn.wrap(0, 0)[0] + 8
        left = self.width - wide
        aside = [picture(step.aside, self.lettering, left)] if step.aside else []
        return grid([[[words, *aside], drawn]], [left, wide])


def _sections(blocks: Sequence[Block]) -> Iterator[list[Block]]:
    """Each heading with what follows it; headings that follow each other together."""
    held: list[Block] = []
    for block in blocks:
        if isinstance(block, Heading) and not all(isinstance(one, Heading) for one in held):
            yield held
            held = []
        held.append(block)
    yield held


def _kind(block: Block) -> str | None:
    """What is set in rows with its like: small pictures with their words, and what is filled in."""
    if isinstance(block, FillIn):
        return "fill in"
    small = isinstance(block, NumberedStep) and block.picture and block.picture.box.width <= NARROW
    return "columns" if small else None


def _is_long(blocks: Sequence[Block]) -> bool:
    tables = (block for block in blocks if isinstance(block, Table))
    drawn = any(isinstance(block, NumberedStep) for block in blocks)
    return drawn or any(len(table.rows) > LONG for table in tables)


def _height(block: Block) -> float:
    """About how high a block's picture is [points]."""
    drawn = block.picture if isinstance(block, NumberedStep | FillIn) else None
    return drawn.box.height * POINTS if drawn else 0.0
