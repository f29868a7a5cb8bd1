"""The garment's options, a row each under headings: name, field, and a mark where it was chosen."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rich.text import Text
from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.events import DescendantFocus
from textual.message import Message
from textual.widget import Widget
from textual.widgets import Input, Label

from tapewise_core.tasks.wizard import OptionRow
from tapewise_tui.widgets.choice import Choice


class OptionLine(Widget):
    """One option: its name, its field, and a star where it is not left as usual."""

    @dataclass
    class Typed(Message):
        """The field's text changed."""

        key: str
        text: str

    @dataclass
    class Settled(Message):
        """Enter was pressed in the field, or it was ``left``."""

        key: str
        text: str
        left: bool

    def __init__(self, row: OptionRow) -> None:
        super().__init__(id=f"option-{row.key}")
        self.row = row

    def compose(self) -> ComposeResult:
        if self.row.choices:
            yield Choice(self.row.value, self.row.choices)
        else:
            yield Input(self.row.value, compact=True)

    def render(self) -> Text:
        """The name, drawn by the row itself: one widget fewer for each of forty rows."""
        return Text(f"{self.row.label}{' *' if self.row.asked else ''}", no_wrap=True)

    def show(self, row: OptionRow) -> None:
        """Show the option's value afresh."""
        if row == self.row and self.text == row.value:
            return
        self.row = row
        field = self.field
        with field.prevent(Input.Changed):
            field.value = row.value
        self.refresh()

    @property
    def field(self) -> Input | Choice:
        """What is typed into or chosen from."""
        return self.query_one(Choice) if self.row.choices else self.query_one(Input)

    @property
    def text(self) -> str:
        """What stands in the field."""
        return self.field.value.strip()

    @on(Input.Changed)
    def typed(self, event: Input.Changed) -> None:
        event.stop()
        self.post_message(self.Typed(self.row.key, event.value.strip()))

    @on(Input.Submitted)
    @on(Input.Blurred)
    def settled(self, event: Input.Submitted | Input.Blurred) -> None:
        event.stop()
        left = isinstance(event, Input.Blurred)
        self.post_message(self.Settled(self.row.key, event.value.strip(), left))

    @on(Choice.Taken)
    def taken(self, event: Choice.Taken) -> None:
        event.stop()
        self.post_message(self.Settled(self.row.key, event.value, left=False))


class Options(VerticalScroll):
    """All options; the arrow keys go from row to row."""

    BINDINGS = [
        Binding("up", "app.focus_previous", "Row above", show=False),
        Binding("down", "app.focus_next", "Row below", show=False),
    ]

    @dataclass
    class Entered(Message):
        """Another option has the cursor."""

        row: OptionRow

    def __init__(self, rows: tuple[OptionRow, ...]) -> None:
        super().__init__(can_focus=False)
        self.rows = rows

    def compose(self) -> Iterator[Widget]:
        heading = ""
        for row in self.rows:
            if row.group != heading:
                heading = row.group
                yield Label(heading, classes="group")
            yield OptionLine(row)

    def show(self, rows: tuple[OptionRow, ...]) -> None:
        self.rows = rows
        for row in rows:
            self.line(row.key).show(row)

    def put_back(self, key: str) -> None:
        """Show one option's standing value in place of what was typed."""
        self.line(key).show(next(row for row in self.rows if row.key == key))

    def line(self, key: str) -> OptionLine:
        """Return an option's row."""
        return self.query_one(f"#option-{key}", OptionLine)

    @property
    def at(self) -> OptionLine | None:
        """The row with the cursor, if it is in one."""
        focused = self.screen.focused
        line = focused.parent if focused is not None else None
        return line if isinstance(line, OptionLine) else None

    def on_descendant_focus(self, event: DescendantFocus) -> None:
        if self.at is not None:
            self.post_message(self.Entered(self.at.row))
