"""What was written, with sizes, and what to do with it first."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical, VerticalScroll
from textual.screen import ModalScreen
from textual.widgets import Static

from tapewise_core.text.told import Reader
from tapewise_tui import words

if TYPE_CHECKING:
    from tapewise_core.tasks.files import Written

NEXT = (
    "Print one page first, at 100 %, and measure its square: 100 mm, or 4 in, neither more nor "
    "less. Only then print the rest."
)


class WrittenDialog(ModalScreen[None]):
    """The files of one draft."""

    BINDINGS = [
        Binding("escape,enter,f6", "dismiss", "Close"),
        Binding("f4", "sew", "Sew"),
        Binding("f7", "open", "Open folder"),
    ]

    def __init__(self, folder: Path, written: Written, reader: Reader) -> None:
        super().__init__()
        self.folder, self.written, self.reader = folder, written, reader

    def compose(self) -> ComposeResult:
        with Vertical(id="card", classes="tall"):
            yield Static("Written", classes="heading")
            yield Static(str(self.folder), markup=False)
            for says in self.written.failed_words(self.reader):
                yield Static(f"! {says}", classes="wrong", markup=False)
            with VerticalScroll(classes="gap"):
                yield Static("\n".join(self._lines()), markup=False)
                yield Static(self.written.removed_words(), markup=False)
            yield Static(NEXT, classes="gap", markup=False)
            yield Static("F4: the list to sew by · F7: open the folder · Enter: close")

    def _lines(self) -> Iterator[str]:
        """What to print first, what to read, what to keep."""
        for purpose, files in self.written.by_purpose().items():
            yield from (f"{purpose.capitalize()} this:",) if files else ()
            yield from (_line(name, size) for name, size in files)

    def action_open(self) -> None:
        self.app.open_url(self.folder.absolute().as_uri())

    def action_sew(self) -> None:
        self.dismiss()
        self.app.call_later(self.app.run_action, "turn('sew')")


def _line(name: str, size: int) -> str:
    return f"{name:<40}{words.size(size):>12}"
