"""Files in the way that no draft wrote: may they be replaced?"""

from __future__ import annotations

from pathlib import Path

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical, VerticalScroll
from textual.widgets import Static

from tapewise_tui.widgets.dialog import Dialog

SAYS = (
    "Nothing says that Tapewise wrote these files, and the draft has files of the same names. "
    "Nothing is written yet."
)


class ReplacingDialog(Dialog[bool]):
    """Returns whether the files may be replaced; leaving it means no."""

    BINDINGS = [
        Binding("escape,enter", "dismiss(False)", "Leave them"),
        Binding("f6", "dismiss(True)", "Replace"),
    ]

    def __init__(self, folder: Path, names: tuple[str, ...]) -> None:
        super().__init__()
        self.folder, self.names = folder, names

    def compose(self) -> ComposeResult:
        with Vertical(id="card"):
            yield Static("Are these yours?", classes="heading")
            yield Static(str(self.folder), markup=False)
            with VerticalScroll(classes="gap"):
                yield Static("\n".join(self.names), markup=False)
            yield Static(SAYS, classes="gap", markup=False)
            yield Static("F6: replace them · Enter: leave them and name another folder")
