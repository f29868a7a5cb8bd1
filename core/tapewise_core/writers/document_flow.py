"""What a document's blocks become on pages of one width: words, lists, tables, rows of pictures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby, zip_longest
from typing import TYPE_CHECKING, Any

from tapewise_core.paper.document import (
    Block,
    Document,
    FillIn,
    Heading,
    NumberedStep,
    Paragraph,
    Table,
)
from tapewise_core.writers.document_blocks import BESIDE, STEP, WRITTEN, BlockSetter
from tapewise_core.writers.document_tables import grid
from tapewise_core.writers.pdf_pen import POINTS
from tapewise_core.writers.pdf_picture import picture

if TYPE_CHECKING:
    from reportlab.platypus import Flowable

PADDING = 6.0
"""What the library keeps free inside its margins [points]."""

NARROW = 58.0
"""Pictures up to this width stand in columns, wider ones beside their words [mm]."""

COLUMNS = 3
"""How many pictures stand beside each other at most."""

LONG = 8
"""A table of more rows may run on over the page."""

AFTER = 60.0
"""What must find room below a heading that is not kept with all that follows [points]."""

OPENED = 110.0
"""What must find room where a paragraph opens a table: it, and the first rows [points]."""


class Setter(BlockSetter):
    """Turns a document into what the library sets on pages of one width [points]."""

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
            rows = [self.to_fill(block) for block in blocks if isinstance(block, FillIn)]
            words = self.width - BESIDE - WRITTEN
            yield grid(rows, [BESIDE, words, WRITTEN], lined=True)
        else:
            yield from self._plain(blocks)

    def _plain(self, blocks: Sequence[Block]) -> Iterator[Flowable]:
        """One block below the other, what opens a table not alone at the foot of a page."""
        from reportlab.platypus import CondPageBreak

        for block, after in zip_longest(blocks, blocks[1:]):
            if isinstance(block, Paragraph) and isinstance(after, Table):
                yield CondPageBreak(OPENED)
            yield self.block(block)

    def _in_columns(self, steps: Sequence[NumberedStep]) -> Flowable:
        """Steps in rows, each over its picture, as many beside each other as there is room for."""
        columns = max(1, min(COLUMNS, int(self.width / ((NARROW - 1) * POINTS))))
        cells = [self._over_its_picture(step) for step in steps]
        cells += [[]] * (-len(cells) % columns)
        rows: list[Any] = [cells[i : i + columns] for i in range(0, len(cells), columns)]
        return grid(rows, [self.width / columns] * columns)

    def _over_its_picture(self, step: NumberedStep) -> list[Flowable]:
        words = self.words(f"{step.number}. {step.text}", STEP)
        return [words, *([picture(step.picture, self.lettering)] if step.picture else [])]


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
