"""Something to read, and nothing to answer."""

from __future__ import annotations

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.widgets import Static

from tapewise_tui.widgets.dialog import Dialog


class TellDialog(Dialog[None]):
    """A heading and lines; Escape or Enter closes it."""

    BINDINGS = [Binding("escape,enter,f8", "dismiss", "Close")]

    def __init__(self, title: str, lines: tuple[str, ...]) -> None:
        super().__init__()
        self.heading, self.lines = title, lines

    def compose(self) -> ComposeResult:
        with VerticalScroll(id="card"):
            yield Static(self.heading, classes="heading", markup=False)
            yield Static("\n".join(self.lines), markup=False)
            yield Static("Escape closes this.", classes="gap quiet")
