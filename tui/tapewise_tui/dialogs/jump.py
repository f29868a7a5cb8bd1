"""F5: the list of all measures, to jump to one."""

from __future__ import annotations

from rich.text import Text
from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.screen import ModalScreen
from textual.widgets import OptionList, Static
from textual.widgets.option_list import Option

from tapewise_tui import measuring, order, words
from tapewise_tui.desk import Desk


class JumpDialog(ModalScreen[str | None]):
    """All measures by region, each with what is kept of it."""

    BINDINGS = [Binding("escape,f5", "dismiss(None)", "Close")]

    def __init__(self, desk: Desk, key: str) -> None:
        super().__init__()
        self.desk, self.key = desk, key

    def compose(self) -> ComposeResult:
        with Vertical(id="card", classes="tall"):
            yield Static("Jump to a measure", classes="heading")
            yield OptionList(*self._rows())

    def on_mount(self) -> None:
        rows = self.query_one(OptionList)
        rows.highlighted = rows.get_option_index(self.key)

    def _rows(self) -> list[Option]:
        rows: list[Option] = []
        heading = ""
        for row in order.ORDER:
            if order.group(row) != heading:
                heading = order.group(row)
                rows.append(Option(Text(words.sentence(heading), "bold"), disabled=True))
            kept = row.key in self.desk.profile.measures
            mark = "x" if kept else " "
            said = measuring.standing(self.desk, row.key) if kept else ""
            rows.append(Option(f" ({mark}) {row.name:<20}{said}", id=row.key))
        return rows

    @on(OptionList.OptionSelected)
    def choose(self, event: OptionList.OptionSelected) -> None:
        self.dismiss(event.option.id)
