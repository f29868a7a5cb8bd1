"""F1: what this page is for, and every key that works on it now."""

from __future__ import annotations

from rich.text import Text
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.screen import ModalScreen
from textual.widgets import Static

from tapewise_tui.page import Page

EVERYWHERE = (
    "Every answer is kept as soon as it is given, so the terminal can be closed at any time. "
    "The mouse works too. Numbers may be typed as 92, 92,5, 92.5 cm, 36 1/4 in or 36¼."
)


class HelpDialog(ModalScreen[None]):
    """Help, from the live bindings of the page under it."""

    BINDINGS = [Binding("escape,f1,enter,q", "dismiss", "Close")]

    def __init__(self, page: Page) -> None:
        super().__init__()
        self.page = page
        self.keys = _keys(page)

    def compose(self) -> ComposeResult:
        with VerticalScroll(id="card"):
            yield Static(f"{self.page.NAME.capitalize()}", classes="heading")
            yield Static(self.page.PURPOSE, markup=False)
            yield Static(EVERYWHERE, markup=False, classes="gap")
            yield Static(self._table(), classes="gap")
            yield Static("Escape closes this.", classes="gap quiet")

    def _table(self) -> Text:
        return Text("\n").join(Text(f"{key:<14}{what}") for key, what in self.keys)


def _keys(page: Page) -> list[tuple[str, str]]:
    """Return keys and what they do, each once, those of the page first."""
    found: dict[str, str] = {}
    for active in page.active_bindings.values():
        binding = active.binding
        if binding.description and active.enabled and not binding.system:
            shown = page.app.get_key_display(binding)
            found.setdefault(shown, binding.tooltip or binding.description)
    return sorted(found.items(), key=lambda row: (not _is_function(row[0]), len(row[0]) < 5))


def _is_function(key: str) -> bool:
    return key[:1] == "F" and key[1:].isdigit()
