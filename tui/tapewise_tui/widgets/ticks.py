"""A list of things to tick; a box says what is ticked, headings stand between."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence
from dataclasses import dataclass

from textual import on
from textual.binding import Binding
from textual.content import Content
from textual.events import Resize
from textual.message import Message
from textual.widgets import OptionList
from textual.widgets.option_list import Option

from tapewise_tui.item import Item
from tapewise_tui.line import Line
from tapewise_tui.widgets.lines import Lines


class TickList(Lines):
    """Things to tick with Enter or Space."""

    BINDINGS = [Binding("space", "select", "Tick", show=False)]

    @dataclass
    class Ticked(Message):
        """A row's box was ticked, or cleared."""

        key: str

    def __init__(self, id: str) -> None:
        super().__init__(id=id)
        self.items: tuple[Item, ...] = ()
        self._wide = 0

    def fill(self, items: Sequence[Item]) -> None:
        """Show rows; the cursor stays where it is, at first on what is not ticked yet."""
        at = self.highlighted
        self.items = tuple(items)
        self._wide = self.outer_size.width
        width = (self._wide or 60) - 3
        self.clear_options()
        self.add_options([Option(_row(item, width), disabled=item.key is None) for item in items])
        self.highlighted = self._first() if at is None or at >= len(items) else at

    def on_resize(self, event: Resize) -> None:
        """A scroll bar that comes or goes changes nothing; another terminal width does."""
        if self.outer_size.width != self._wide:
            self.fill(self.items)

    def lines(self) -> tuple[list[Line], str | None]:
        """The rows as lines to find, by their places, and the place marked."""
        rows = enumerate(self.items)
        lines = [Line(str(at) if item.key else None, _line(item)) for at, item in rows]
        return lines, None if self.highlighted is None else str(self.highlighted)

    def to(self, place: str) -> None:
        """Put the cursor on a row that was found."""
        self.highlighted = int(place)
        self.focus()

    def _first(self) -> int | None:
        return next(
            (at for at, item in enumerate(self.items) if item.key and not item.ticked), None
        )

    @on(OptionList.OptionSelected)
    def tick(self, event: OptionList.OptionSelected) -> None:
        event.stop()
        key = self.items[event.option_index].key
        if key is not None:
            self.post_message(self.Ticked(key))


def _line(item: Item) -> str:
    box = "" if item.ticked is None or item.key is None else "[x] " if item.ticked else "[ ] "
    return " ".join(filter(None, (box.strip(), item.lead, item.text)))


def _row(item: Item, width: int) -> Content:
    """A box, what leads, and the text hung beside both."""
    if item.key is None and item.ticked is not None:
        return Content.styled(item.text, "bold underline")
    box = " – " if item.ticked is None else "[x]" if item.ticked else "[ ]"
    start = f"{box} {item.lead:<14} " if item.lead else f"{box} "
    hung = " " * len(start)
    lines = textwrap.wrap(
        item.text, max(width - 2, 20), initial_indent=start, subsequent_indent=hung
    )
    return Content("\n".join(lines))
