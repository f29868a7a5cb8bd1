"""A document as Markdown that reads well as plain text too."""

from __future__ import annotations

import re

from tapewise_core.paper.document import (
    BLANK,
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

_MARKS = re.compile(r"[\\`*_\[\]<>|]")
_OPENERS = re.compile(r"^(#{1,6} |[-+] |\d+[.)] |=+$|-+$|~{3})")


def markdown(document: Document) -> str:
    """Return the document as Markdown, one blank line between blocks, ending in a line feed."""
    blocks = list(document.blocks)
    if not any(isinstance(block, Heading) and block.level == 1 for block in blocks):
        blocks.insert(0, Heading(document.title, 1))
    return "\n\n".join(_block(block) for block in blocks) + "\n"


def _block(block: Block) -> str:
    match block:
        case Heading(text, level):
            return f"{'#' * min(max(level, 1), 6)} {escaped(text)}"
        case Paragraph(text):
            return _opened(escaped(text))
        case Bullets(items):
            return "\n".join(f"- {escaped(item)}" for item in items)
        case Ticks(items, numbered):
            marks = [f"{n}." if numbered else "-" for n in range(1, len(items) + 1)]
            return "\n".join(
                f"{m} [ ] {escaped(item)}" for m, item in zip(marks, items, strict=True)
            )
        case Table(head, rows):
            return _table(head, rows)
        case NumberedStep():
            return _step(block)
        case FillIn():
            return _to_fill(block)
        case Figure(picture, text, file):
            return f"{escaped(text)}\n\n{_shown(picture, file)}"


def _table(head: tuple[str, ...], rows: tuple[tuple[str, ...], ...]) -> str:
    """Columns padded so that the source lines up."""
    cells = [[escaped(cell) for cell in row] for row in (head, *rows)]
    widths = [max(3, *(len(row[i]) for row in cells)) for i in range(len(head))]
    lines = [_row([c.ljust(w) for c, w in zip(row, widths, strict=True)]) for row in cells]
    lines.insert(1, _row(["-" * width for width in widths]))
    return "\n".join(lines)


def _row(cells: list[str]) -> str:
    return f"| {' | '.join(cells)} |"


def _to_fill(block: FillIn) -> str:
    """The step, its boxes to tick, and a table with room to write in."""
    step = _step(NumberedStep(block.number, block.text, block.picture, block.file))
    ticks = (_block(Ticks(block.ticks)),) if block.ticks else ()
    return "\n\n".join((step, *ticks, _table(block.lines, ((BLANK,) * len(block.lines),))))


def _step(step: NumberedStep) -> str:
    """A bold number rather than a list, which would start again after each picture."""
    text = f"**{step.number}.** {escaped(step.text)}"
    shown = ((step.picture, step.file), (step.aside, step.aside_file))
    pictures = (_shown(drawn, file) for drawn, file in shown if drawn and file)
    return "\n\n".join((text, *pictures))


def _shown(picture: Drawing, file: str) -> str:
    return f"![{escaped(picture.title)}]({file})"


def escaped(text: str) -> str:
    """Return printable text in which nothing is taken for markup.

    >>> escaped("a*b | <c> _d_")
    'a\\\\*b \\\\| \\\\<c\\\\> \\\\_d\\\\_'
    """
    return _MARKS.sub(_literal, plain(text))


def _literal(mark: re.Match[str]) -> str:
    return f"\\{mark[0]}"


def _opened(text: str) -> str:
    """A paragraph whose first characters would open a heading or a list."""
    return f"\\{text}" if _OPENERS.match(text) and not text[0].isdigit() else text
