"""F5: find a line of a page by some of its letters, and go to it."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.events import Key
from textual.widgets import Input, OptionList, Static

from tapewise_tui.line import Line
from tapewise_tui.widgets.dialog import Dialog
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.lines import Lines, option_of


class FindDialog(Dialog[str | None]):
    """All lines; typing leaves those with every word typed, Enter returns the key of one."""

    BINDINGS = [
        Binding("escape,f5", "dismiss(None)", "Close"),
        Binding("up", "move('cursor_up')", priority=True),
        Binding("down", "move('cursor_down')", priority=True),
        Binding("pageup", "move('page_up')", priority=True),
        Binding("pagedown", "move('page_down')", priority=True),
        Binding("home", "move('first')", priority=True),
        Binding("end", "move('last')", priority=True),
    ]

    def __init__(
        self, title: str, lines: Sequence[Line], at: str | None = None, typed: str = ""
    ) -> None:
        super().__init__()
        self.heading, self.lines, self.at, self.typed = title, tuple(lines), at, typed
        self.narrowed = ""

    def compose(self) -> ComposeResult:
        with Vertical(id="card", classes="tall"):
            yield Static(self.heading, classes="heading")
            yield Field(self._take, id="find", placeholder="type some letters", value=self.typed)
            yield Lines(*map(option_of, self.lines))
            yield Static("Enter takes the line marked · Escape leaves", classes="quiet")

    def on_mount(self) -> None:
        if self.answered_already:  # by a key pressed before the list was there
            return
        self.query_one(OptionList).can_focus = False
        if self.typed:
            self._narrow(self.typed)
        else:
            self._mark(self.at)

    def more(self, letters: str) -> None:
        """Take letters that were typed while the dialog was still to come."""
        self.typed += letters
        for field in self.query(Field):
            field.insert_text_at_cursor(letters)

    def on_key(self, event: Key) -> None:
        """Give the field a key that was pressed before it had the cursor."""
        for field in self.query(Field):
            if event.is_printable or event.key in EDITS:
                event.stop()
                field.post_message(Key(event.key, event.character))

    def _mark(self, key: str | None) -> None:
        """Put the cursor on a line, else on the first that can be gone to."""
        rows = self.query_one(OptionList)
        free = [place for place, row in enumerate(rows.options) if not row.disabled]
        wanted = [place for place in free if rows.options[place].id == key]
        rows.highlighted = next(iter(wanted or free), None)

    @on(Input.Changed)
    def narrow(self, event: Input.Changed) -> None:
        event.stop()
        self._narrow(event.value)

    def _narrow(self, typed: str) -> None:
        """Leave the lines with every word typed; done once for the same letters, whoever asks."""
        if typed == self.narrowed or self.answered_already:
            return
        self.narrowed = typed
        rows = self.query_one(OptionList)
        rows.clear_options()
        left = tuple(self._left(typed)) or (Line(None, _nothing(typed)),)
        rows.add_options(map(option_of, left))
        self._mark(_begun(left, typed))

    def _left(self, typed: str) -> Iterator[Line]:
        wanted = typed.casefold().split()
        for line in self.lines:
            letters = f"{line.text} {line.also}".casefold()
            if not wanted or (line.key and all(w in letters for w in wanted)):
                yield line

    def _take(self, typed: str) -> None:
        self._narrow(typed)
        marked = self.query_one(OptionList).highlighted_option
        if marked is not None:
            self.dismiss(marked.id)

    @on(OptionList.OptionSelected)
    def pointed(self, event: OptionList.OptionSelected) -> None:
        self.dismiss(event.option.id)

    def action_move(self, way: str) -> None:
        """Move among the lines left by what is typed, though the list has not heard of it yet."""
        for field in self.query(Field):
            self._narrow(field.value)
        for rows in self.query(OptionList):
            getattr(rows, f"action_{way}")()


EDITS = ("enter", "backspace")
"""Keys that belong to what is typed, besides its letters."""


def _begun(lines: Iterable[Line], typed: str) -> str | None:
    """Return the key of the first line that begins with what is typed, its tick left aside."""
    letters = typed.strip().casefold()
    named = ((one.key, _TICK.sub("", one.text).casefold()) for one in lines)
    return next((key for key, name in named if name.startswith(letters)), None)


_TICK = re.compile(r"^\s*[(\[][x ][)\]]\s*")


def _nothing(typed: str) -> str:
    return f"Nothing here is written with “{typed.strip()}”. Backspace takes letters away."
