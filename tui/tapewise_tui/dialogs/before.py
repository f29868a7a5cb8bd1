"""Before the first measure: what to wear, how to stand, is the tape true."""

from __future__ import annotations

from rich.table import Table
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.screen import ModalScreen
from textual.widgets import Static

STEPS = (
    ("Wear", "what goes under the garment: underwear, and the bra you will wear with it."),
    ("Tie", "a narrow elastic round the waist, where it settles. It stays on to the end."),
    ("Mark", "with stickers: nape bone, shoulder points, the height where the seat stands out."),
    ("Stand", "as usual, feet together, weight on both; neither drawn in nor drawn up."),
    ("Breathe", "out easily before each reading. A girth touches the skin and presses nowhere."),
    ("Check", "the tape against a ruler, end to 20 cm (8 in): cloth tapes stretch with age."),
    ("Read", "each measure twice, taking the tape off in between. You are asked for both."),
    ("Help", "is wanted for six at the end; with two mirrors or a photograph you manage alone."),
)


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
    for word, rest in STEPS:
        rows.add_row(word, rest)
    return rows
