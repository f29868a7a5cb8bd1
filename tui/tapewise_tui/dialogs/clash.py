"""One measure changed in two places at once: which counts?"""

from __future__ import annotations

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.events import Key
from textual.widgets import Static

from tapewise_core.measures.catalogue import NAMES
from tapewise_core.profiles.profile import Reading
from tapewise_core.profiles.store import Clash
from tapewise_core.units import Unit
from tapewise_tui.widgets.dialog import Dialog

GO_ON = ("enter", "tab", "backspace", "up", "down")
"""Keys besides letters that belong to what is typed on."""


class ClashDialog(Dialog[bool]):
    """Returns whether what was entered here counts; leaving it lets stand what is on file.

    Enter answers nothing: whoever types on without looking must not decide by it. What is typed
    meanwhile is kept for the page below.
    """

    BINDINGS = [
        Binding("escape,f7", "dismiss(False)", "Leave what is on file"),
        Binding("f6", "dismiss(True)", "Take this one"),
    ]

    def __init__(self, clash: Clash, name: str, unit: Unit) -> None:
        super().__init__()
        self.clash, self.name_, self.unit = clash, name, unit
        self.typed: list[tuple[str, str | None]] = []

    def on_key(self, event: Key) -> None:
        """Keep what is typed on, numbers apart from each other."""
        if event.is_printable or event.key in GO_ON:
            event.stop()
            self.typed.append((event.key, event.character))

    def compose(self) -> ComposeResult:
        mine, theirs = (_spelt(row, self.unit) for row in (self.clash.mine, self.clash.theirs))
        measure = NAMES[self.clash.key]
        with Vertical(id="card"):
            yield Static("Which counts?", classes="heading")
            says = f"The {measure} of {self.name_} was changed in two places at once."
            yield Static(says, markup=False)
            yield Static(f"F6: what was entered here, {mine}", classes="gap", markup=False)
            yield Static(f"F7 or Escape: what is on file, {theirs}", markup=False)
            says = "The other one stays among the states of before."
            yield Static(says, classes="gap", markup=False)


def _spelt(row: Reading | None, unit: Unit) -> str:
    if row is None:
        return "open"
    when = f", {row.taken.isoformat()}" if row.taken else ""
    return f"{unit.spell(row.value * 10)} ({row.origin.value}{when})"
