"""F1: what this page is for, every key that works on it, and words of the trade."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from rich.table import Table
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.widgets import Static

from tapewise_core.text.glossary import GLOSSARY
from tapewise_tui.keys import MOVES, Key, both
from tapewise_tui.widgets.dialog import Dialog

EVERYWHERE = (
    "Every answer is kept as soon as it is given, so the terminal can be closed at any time. "
    "The mouse works too. Numbers may be typed as 92, 92,5, 92.5 cm, 36 1/4 in or 36¼."
)


class HelpDialog(Dialog[None]):
    """Help, with the keys that work on the page under it, and the lines ``cut`` short there."""

    BINDINGS = [Binding("escape,f1,enter,q", "dismiss", "Close")]

    def __init__(
        self, page: str, purpose: str, keys: Iterable[tuple[Key, str]], cut: Sequence[str] = ()
    ) -> None:
        super().__init__()
        self.page, self.purpose, self.cut = page, purpose, cut
        self.rows = (*((both(key), says) for key, says in keys), *MOVES)

    def compose(self) -> ComposeResult:
        with VerticalScroll(id="card"):
            yield Static(f"{self.page.capitalize()}", classes="heading")
            for line in self.cut:
                yield Static(f"In full: {line}", markup=False, classes="cut")
            yield Static(self.purpose, markup=False)
            yield Static(_table(self.rows), classes="gap")
            yield Static(EVERYWHERE, markup=False, classes="gap")
            yield Static("Words of the trade", classes="heading gap")
            yield Static(_table(tuple((term.named, term.means) for term in GLOSSARY)))
            yield Static("Escape closes this.", classes="gap quiet")


def _table(rows: tuple[tuple[str, str], ...]) -> Table:
    table = Table.grid(padding=(0, 2, 0, 0))
    table.add_column(style="bold")
    table.add_column()
    for row in rows:
        table.add_row(*row)
    return table
