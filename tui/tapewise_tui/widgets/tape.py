"""The measuring tape along the top: the pages are its marks, and one of them is where you are."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import accumulate

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

    def names(self) -> list[tuple[str, str]]:
        """Return each page and its name, the present one in brackets; where it is narrow, two
        names share the blank between them."""
        found: list[tuple[str, str]] = []
        words = [f"{number} {page.capitalize()}" for number, page in enumerate(PAGES, start=1)]
        wide = sum(len(word) + 2 for word in words) < self.size.width
        for page, word in zip(PAGES, words, strict=True):
            bracketed = bool(found) and found[-1][0] == self.page
            beside = "" if bracketed and not wide else " "
            told = f"{beside}{word}{' ' * wide}"
            found.append((page, f"[{word}]" if page == self.page else told))
        return found

    def marks(self) -> list[tuple[int, int, str]]:
        """Return where each page's name begins and ends, and the page."""
        names = self.names()
        ends = list(accumulate((len(word) for _, word in names), initial=1))
        return [(ends[at], ends[at + 1], page) for at, (page, _) in enumerate(names)]

    def render(self) -> Text:
        width = self.size.width
        names = Text(" ")
        for page, word in self.names():
            names.append(word, "bold reverse" if page == self.page else "")
        room = width - names.cell_len - 1
        names.append(self._whose(room).rjust(max(room, 0)))
        ticks = "".join("┃" if cell % 10 == 0 else "╷" for cell in range(width))
        names.truncate(width)
        return Text("\n").join([names, Text(ticks)])

    def _whose(self, room: int) -> str:
        """Name and unit, the name cut where there is too little room."""
        if not self.who or room <= len(self.unit) + 3:
            return ""
        left = max(room - len(self.unit) - 3, 1)
        name = self.who if len(self.who) <= left else self.who[: left - 1].rstrip() + "…"
        return f"{name}, {self.unit}"

    def on_click(self, event: Click) -> None:
        for start, end, page in self.marks():
            if start <= event.x < end:
                self.post_message(self.Pointed(page))
