"""Before the first measure: what to wear, how to stand, is the tape true."""

from __future__ import annotations

from rich.table import Table
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.screen import ModalScreen
from textual.widgets import Static

from tapewise_core.measures.advice import BEFORE
from tapewise_core.measures.order import HELPED
from tapewise_core.text.told import Reader

MORE = {"Read": " You are asked for both."}
"""What is to be said on the screen besides, after the advice for everywhere."""

HELP = f"is wanted for the last {len(HELPED)}; with two mirrors or a photograph you manage alone."


class BeforeDialog(ModalScreen[None]):
    """A page of advice, once."""

    BINDINGS = [Binding("enter,escape,space,f4", "dismiss", "Begin")]

    def __init__(self, reader: Reader) -> None:
        super().__init__()
        self.reader = reader

    def compose(self) -> ComposeResult:
        with VerticalScroll(id="card"):
            yield Static("Before the first measure", classes="heading")
            yield Static(_table(self.reader))
            yield Static("Enter begins. A room that is warm is half the accuracy.", classes="quiet")


def _table(reader: Reader) -> Table:
    rows = Table.grid(padding=(0, 2, 0, 0))
    rows.add_column(style="bold", no_wrap=True)
    rows.add_column()
    for word, rest in BEFORE:
        rows.add_row(word, reader.spell(rest) + MORE.get(word, ""))
    rows.add_row("Help", HELP)
    return rows
