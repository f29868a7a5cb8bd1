"""A document: headings, sentences, tables, tick boxes and pictures, before any file format."""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.frozen import Frozen
from tapewise_core.paper.drawing import Drawing

Draw = Callable[[], Drawing | None]
"""Draws a picture when it is asked for."""


class Heading(Frozen):
    """A heading; level 1 is the document's title."""

    text: str
    level: int = 2


class Paragraph(Frozen):
    """One paragraph of plain text."""

    text: str


class Bullets(Frozen):
    """Short items in no order."""

    items: tuple[str, ...]


class Ticks(Frozen):
    """Things to do, each with a box to tick.

    ``pictures``, one for each item or none at all, are drawn by whoever shows them; there may be
    nothing to draw.
    """

    items: tuple[str, ...]
    numbered: bool = False
    pictures: tuple[Draw, ...] = ()

    def drawn(self) -> tuple[Drawing | None, ...]:
        """Return each item's picture."""
        return tuple(draw() for draw in self.pictures) or (None,) * len(self.items)


class Table(Frozen):
    """A small table; every row as long as the head."""

    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


class NumberedStep(Frozen):
    """One numbered instruction, with the picture that shows it done; ``aside`` is a second one, of
    something to be seen nearer by."""

    number: int
    text: str
    picture: Drawing | None = None
    file: str = ""
    aside: Drawing | None = None
    aside_file: str = ""


class Figure(Frozen):
    """A picture by itself, with what is to be said of it."""

    picture: Drawing
    text: str
    file: str


BLANK = "…" * 7
"""A line to write on, in every format."""


class FillIn(Frozen):
    """Something to find out and write down: what to do, its figure, and a labelled line for each
    number; ``ticks`` are boxes to tick with it."""

    number: int
    text: str
    lines: tuple[str, ...]
    ticks: tuple[str, ...] = ()
    picture: Drawing | None = None
    file: str = ""


Block = Heading | Paragraph | Bullets | Ticks | Table | NumberedStep | FillIn | Figure


class Document(Frozen):
    """Blocks in reading order."""

    title: str
    blocks: tuple[Block, ...]
