"""F9: turn to any page by its number, its name or a click."""

from __future__ import annotations

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.events import Key
from textual.widgets import OptionList, Static
from textual.widgets.option_list import Option

from tapewise_core.tasks.work import PAGES
from tapewise_tui.widgets.dialog import Dialog
from tapewise_tui.widgets.lines import Lines

WHAT = {
    "start": "people, and where you stopped",
    "measure": "one measure a page, or F10: one sheet",
    "review": "all measures, unlikely ones first",
    "garment": "style, cloth and machines, and the pattern",
    "prove": "what was checked before anyone cuts",
    "save": "write the pattern's files",
    "sew": "all to be done, or F10: one thing a page",
}


class PagesDialog(Dialog[str | None]):
    """The pages as a list; a number, a click or Enter turns to one, letters go to its line."""

    BINDINGS = [Binding("escape,f9", "dismiss(None)", "Close")]

    sought = ""

    def compose(self) -> ComposeResult:
        with Vertical(id="card"):
            yield Static("Turn to", classes="heading")
            yield Lines(
                *(
                    Option(f"{number} {page.capitalize():<9}{WHAT[page]}", id=page)
                    for number, page in enumerate(PAGES, start=1)
                )
            )
            yield Static("Its number, or its letters and Enter · Escape leaves", classes="quiet")

    def on_key(self, event: Key) -> None:
        if event.key.isdigit() and 0 < int(event.key) <= len(PAGES):
            event.stop()
            self.dismiss(PAGES[int(event.key) - 1])
        elif event.is_printable and event.character and event.character.isalpha():
            event.stop()
            self._seek(event.character.lower())

    def _seek(self, letter: str) -> None:
        """Mark the page of which the name begins with the letters typed, else with the last."""
        for sought in (self.sought + letter, letter):
            place = next((i for i, page in enumerate(PAGES) if page.startswith(sought)), None)
            if place is not None:
                self.sought, self.query_one(Lines).highlighted = sought, place
                return

    @on(OptionList.OptionSelected)
    def choose(self, event: OptionList.OptionSelected) -> None:
        self.dismiss(event.option.id)
