"""Before the first measure: what to wear, how to stand, is the tape true."""

from __future__ import annotations

from rich.table import Table
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.screen import ModalScreen
from textual.widgets import Static

from tapewise_core.measures.advice import BEFORE

ADVICE = dict(BEFORE)
STEPS = ADVICE | {
    "Read": f"{ADVICE['Read']} You are asked for both.",
    "Help": "is wanted for six at the end; with two mirrors or a photograph you manage alone.",
}
"""The advice for everywhere, and what is to be said on the screen besides."""


class BeforeDialog(ModalScreen[None]):
    """A page of advice, once."""

    BINDINGS = [Binding("enter,escape,space,f4", "dismiss", "Begin")]

    def compose(self) -> ComposeResult:
        with VerticalScroll(id="card"):
            yield Static("Before the first measure", classes="heading")
            yield Static(_table())
            yield Static("Enter begins. A room that is warm is half the accuracy.", classes="quiet")


def _table() -> Table:
    rows = Table.grid(padding=(0, 2, 0, 0))
    rows.add_column(style="bold", no_wrap=True)
    rows.add_column()
    for word, rest in STEPS.items():
        rows.add_row(word, rest)
    return rows
