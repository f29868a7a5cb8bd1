"""The garment's options, a row each: name, field, limits; and what one means."""

from __future__ import annotations

from dataclasses import dataclass

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Horizontal, VerticalScroll
from textual.events import DescendantFocus
from textual.message import Message
from textual.widgets import Input, Label

from tapewise_core.tasks.wizard import OptionRow


class OptionLine(Horizontal):
    """One option: its name, its field, and a mark where it is not the usual value."""

    @dataclass
    class Typed(Message):
        """The field's text changed."""

        key: str
        text: str

    @dataclass
    class Settled(Message):
        """Enter was pressed in the field, or it was left."""

        key: str
        text: str
        left: bool

    def __init__(self, row: OptionRow) -> None:
        super().__init__(id=f"option-{row.key}")
        self.row = row

    def compose(self) -> ComposeResult:
        yield Label(self.row.label, classes="name")
        yield Input(self.row.value, compact=True)
        yield Label(_mark(self.row), classes="mark")

    def show(self, row: OptionRow) -> None:
        """Show the option's value afresh."""
        self.row = row
        field = self.query_one(Input)
        if field.value != row.value:
            with field.prevent(Input.Changed):
                field.value = row.value
        self.query_one(".mark", Label).update(_mark(row))

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

    def compose(self) -> ComposeResult:
        for row in self.rows:
            yield OptionLine(row)

    def show(self, rows: tuple[OptionRow, ...]) -> None:
        self.rows = rows
        for row in rows:
            self.query_one(f"#option-{row.key}", OptionLine).show(row)

    def on_descendant_focus(self, event: DescendantFocus) -> None:
        line = next((one for one in event.widget.ancestors if isinstance(one, OptionLine)), None)
        if line is not None:
            self.post_message(self.Entered(line.row))


def _mark(row: OptionRow) -> str:
    return "chosen" if row.asked else ""
