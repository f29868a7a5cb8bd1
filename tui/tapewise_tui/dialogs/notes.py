"""Notes for the next time, and what was noted before."""

from __future__ import annotations

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.widgets import Static, TextArea

from tapewise_tui.widgets.dialog import Dialog


class NotesDialog(Dialog[str]):
    """Returns what is written when it is closed, by whatever key."""

    BINDINGS = [Binding("escape,f4", "close", "Close", priority=True)]

    def __init__(self, notes: str, before: tuple[str, ...]) -> None:
        super().__init__()
        self.notes, self.before = notes, before

    def compose(self) -> ComposeResult:
        with Vertical(id="card", classes="tall"):
            yield Static("For the next time", classes="heading")
            yield TextArea(self.notes, id="notes", compact=True)
            if self.before:
                told = "\n".join(("Noted before:", *self.before))
                yield Static(told, id="noted", markup=False)
            yield Static("They are shown when the next garment begins. Escape closes this.",
                         classes="quiet")  # fmt: skip

    def on_mount(self) -> None:
        area = self.query_one(TextArea)
        area.focus()
        area.move_cursor(area.document.end)

    def action_close(self) -> None:
        self.dismiss(self.query_one(TextArea).text)
