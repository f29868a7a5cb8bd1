"""The field a reading is typed into, and those for the second and a third one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from textual import on
from textual.app import ComposeResult
from textual.containers import Horizontal
from textual.message import Message
from textual.widgets import Input, Label

NAMES = ("1st", "2nd", "3rd")


class Readings(Horizontal):
    """Up to three readings of one measure, in one row."""

    @dataclass
    class Entered(Message):
        """A reading was typed; ``changed`` tells it from one that was there and stands."""

        index: int
        text: str
        changed: bool

    def __init__(self) -> None:
        super().__init__()
        self._shown: tuple[str, ...] = ("", "", "")

    def compose(self) -> ComposeResult:
        for index, name in enumerate(NAMES):
            yield Label(name, classes=f"reading-{index}")
            yield Input(id=f"reading-{index}", classes=f"reading-{index}", compact=True)
        yield Label("", id="unit")

    def show(self, spelt: Sequence[str], unit: str) -> None:
        """Fill the fields; the third is shown only if there is something in it."""
        self._shown = (*spelt, "", "", "")[:3]
        for index, text in enumerate(self._shown):
            field = self.field(index)
            with field.prevent(Input.Changed):
                field.value = text
        self.query_one("#unit", Label).update(unit)
        self.third(bool(self._shown[2]))

    def third(self, due: bool) -> None:
        """Show or hide the third field."""
        for part in self.query(".reading-2"):
            part.display = due

    def field(self, index: int) -> Input:
        return self.query_one(f"#reading-{index}", Input)

    def typed(self) -> list[tuple[int, str]]:
        """Return what was typed and not entered yet."""
        return [
            (index, text)
            for index, shown in enumerate(self._shown)
            if (text := self.field(index).value.strip()) and text != shown
        ]

    @on(Input.Submitted)
    def enter(self, event: Input.Submitted) -> None:
        event.stop()
        index = int((event.input.id or "reading-0")[-1])
        changed = event.value.strip() != self._shown[index]
        self.post_message(self.Entered(index, event.value.strip(), changed))
