"""What was written: what to print first, what to read, what to keep, and how to open it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from rich.text import Text
from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.widgets import OptionList, Static
from textual.widgets.option_list import Option

from tapewise_core.text.told import Reader
from tapewise_tui import opening, words
from tapewise_tui.saving import PRINTER
from tapewise_tui.widgets.dialog import Dialog
from tapewise_tui.widgets.lines import Lines

if TYPE_CHECKING:
    from tapewise_core.tasks.files import Written

NEXT = (
    f"{PRINTER} Print the first page alone and measure its square: 100 mm, or 4 in, neither more "
    "nor less. Only then print the rest."
)

WHAT = {"print": "Print this", "read": "Read this", "keep": "Keep this"}
"""What a person does with files, in the order in which she does it."""

KEYS = "Enter opens the file · F: its folder · C copies its path · F4: on to sewing · Escape"


class WrittenDialog(Dialog[None]):
    """The files of one draft."""

    BINDINGS = [
        Binding("escape,ctrl+s", "dismiss", "Close"),
        Binding("f4", "sew", "Sew"),
        Binding("f,ctrl+o", "folder", "Folder"),
        Binding("c", "copy", "Copy"),
    ]

    def __init__(self, folder: Path, written: Written, reader: Reader) -> None:
        super().__init__()
        self.folder, self.written, self.reader = folder, written, reader

    def compose(self) -> ComposeResult:
        with Vertical(id="card", classes="tall"):
            yield Static(f"Written to {self.folder}", classes="heading", markup=False)
            for says in self.written.failed_words(self.reader):
                yield Static(f"! {says}", classes="wrong", markup=False)
            yield Lines(*self._rows(), id="files")
            removed = self.written.removed_words()
            if removed:
                yield Static(removed, classes="quiet", markup=False)
            yield Static(NEXT, id="next", markup=False)
            yield Static(KEYS, id="way", classes="quiet", markup=False)

    def on_mount(self) -> None:
        files = self.query_one(OptionList)
        files.focus()
        files.action_first()

    def _rows(self) -> Iterator[Option]:
        """What to print first, what to read, what to keep, the step pictures in one line."""
        for purpose, files in self.written.by_purpose().items():
            if files:
                yield Option(Text(WHAT[purpose], "bold underline"), disabled=True)
            for name, size in files:
                yield Option(_line(name, size), id=name)
        steps = [size for name, size in self.written.files if name.startswith("steps/")]
        if steps:
            named = f"steps: {words.count(len(steps), 'picture')}"
            yield Option(_line(named, sum(steps)), id="steps")

    @property
    def place(self) -> Path:
        """The file marked."""
        marked = self.query_one(OptionList).highlighted_option
        return self.folder / (marked.id if marked and marked.id else "")

    def _say(self, sentence: str) -> None:
        self.query_one("#way", Static).update(f"{sentence} {KEYS}")

    @on(OptionList.OptionSelected)
    def action_open(self) -> None:
        self._say(opening.opened(self.app, self.place))

    def action_folder(self) -> None:
        self._say(opening.opened(self.app, self.place.parent))

    def action_copy(self) -> None:
        whole = str(self.place.absolute())
        self.app.copy_to_clipboard(whole)
        self._say(f"Copied, where the terminal lets it: {whole}.")

    def action_sew(self) -> None:
        self.dismiss()
        self.app.call_later(self.app.run_action, "turn('sew')")


def _line(name: str, size: int) -> Text:
    return Text(f"{words.size(size):>9}  {name}", no_wrap=True, overflow="ellipsis")
