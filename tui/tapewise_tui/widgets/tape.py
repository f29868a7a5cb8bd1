"""The measuring tape along the top: the pages are its marks, and one of them is where you are."""

from __future__ import annotations

from dataclasses import dataclass

from rich.text import Text
from textual.events import Click
from textual.message import Message
from textual.widget import Widget

from tapewise_core.tasks.work import PAGES, PART_OF


class PagesTape(Widget):
    """Two rows: the pages' names with the present one in brackets, and the tape's marks below."""

    @dataclass
    class Pointed(Message):
        """A page's name was clicked."""

        page: str

    def __init__(self, page: str) -> None:
        super().__init__()
        self.page = PART_OF.get(page, page)
        self.who, self.unit = "", ""

    def show(self, name: str, unit: str) -> None:
        """Write whose measures these are, and in which unit, at the end of the tape."""
        self.who, self.unit = name, unit
        self.refresh()

    def marks(self) -> list[tuple[int, int, str]]:
        """Return where each page's name begins and ends, and the page."""
        found, at = [], 1
        for number, page in enumerate(PAGES, start=1):
            end = at + len(f" {number} {page} ")
            found.append((at, end, page))
            at = end
        return found

    def render(self) -> Text:
        width = self.size.width
        names, ticks = Text(" "), ""
        for number, page in enumerate(PAGES, start=1):
            word = f"{number} {page.capitalize()}"
            here = page == self.page
            names.append(f"[{word}]" if here else f" {word} ", "bold reverse" if here else "")
        room = width - names.cell_len - 1
        names.append(self._whose(room).rjust(max(room, 0)))
        ticks = "".join("┃" if cell % 10 == 0 else "╷" for cell in range(width))
        names.truncate(width)
        return Text("\n").join([names, Text(ticks)])

    def _whose(self, room: int) -> str:
        """Name and unit, the name cut where there is too little room."""
        if not self.who:
            return ""
        left = max(room - len(self.unit) - 3, 1)
        name = self.who if len(self.who) <= left else self.who[: left - 1].rstrip() + "…"
        return f"{name}, {self.unit}"

    def on_click(self, event: Click) -> None:
        for start, end, page in self.marks():
            if start <= event.x < end:
                self.post_message(self.Pointed(page))
