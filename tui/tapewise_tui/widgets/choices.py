"""What keys do to a page's choices.

Every key is handled here and at once, so that typing ahead loses nothing at any speed.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from textual import on
from textual.events import Key, Paste
from textual.message import Message
from textual.widgets import OptionList

from tapewise_tui.widgets.at_once import acted, no_more, passed_on
from tapewise_tui.widgets.choice_line import ChoiceLine, begins
from tapewise_tui.widgets.choice_lines import ChoiceLines

BEGINS = "0123456789,.-−½¼¾⅛⅜⅝⅞"
"""Signs that begin an entry; letters look for a line."""

MOVES = {
    "up": "cursor_up", "down": "cursor_down", "home": "first", "end": "last",
    "pageup": "page_up", "pagedown": "page_down",
}  # fmt: skip
"""Keys that keep what is typed and go on."""

AWAY = ("backspace", "delete")
"""Keys that take a sign away, or what was chosen."""


class Choices(ChoiceLines):
    """Arrows move and take words, digits begin an entry, letters go to a line.

    ``keep`` is asked to keep a text for a key, an empty one for the usual; it returns whether it
    could.
    """

    @dataclass
    class Tried(Message):
        """What is being typed changed."""

        key: str
        text: str

    @dataclass
    class Opened(Message):
        """Enter was pressed on a line with words, or one that opens something."""

        key: str

    def __init__(self, keep: Callable[[str, str], bool]) -> None:
        super().__init__()
        self.keep = keep
        self._fresh = self._refused = False
        self._sought = ""

    def on_mouse_down(self) -> None:
        """Another line may be pointed at: what is typed is kept, or left where it cannot be."""
        if not self.end():
            self.end(keep=False)

    @on(OptionList.OptionSelected)
    def clicked(self, event: OptionList.OptionSelected) -> None:
        event.stop()
        self._open()

    async def on_key(self, event: Key) -> None:
        if not passed_on(self, event) and not self._used(event):
            await acted(self, event)

    def _used(self, event: Key) -> bool:
        """Type, take a word, open, or look for a line; what is none of these is for others."""
        line, sign = self.at, event.character if event.is_printable else None
        if line is None or line.key is None:
            return False
        if self.typed is not None:
            used = self._edited(event.key, sign)
        else:
            used = self._began(line, event.key, sign)
        if used:
            no_more(event)
        return used

    def catch(self, event: Key) -> None:
        """Take the keyboard back with a key that was pressed elsewhere on the page."""
        self.focus()
        if event.key in MOVES and self.typed is None:
            getattr(self, f"action_{MOVES[event.key]}")()
        else:
            self._used(event)

    def _began(self, line: ChoiceLine, key: str, sign: str | None) -> bool:
        if sign and sign in BEGINS and line.is_typed:
            self._type(sign)
        elif sign and sign.isalpha():
            self._seek(sign.casefold())
            return True
        elif key in ("left", "right") and line.words:
            self._word(line, 1 if key == "right" else -1)
        elif key in AWAY and line.mark and line.key:
            self.keep(line.key, "")
        elif key == "enter":
            self._open()
        else:
            self._sought = "" if key in MOVES else self._sought
            return False
        return True

    def _edited(self, key: str, sign: str | None) -> bool:
        typed = self.typed or ""
        if sign:
            self._type(self._after(sign))
        elif key in AWAY:
            self._type(typed[:-1])
        elif key in ("enter", "escape", *MOVES):
            if self.end(key != "escape") and key in MOVES:
                getattr(self, f"action_{MOVES[key]}")()
        else:
            return False
        return True

    def on_paste(self, event: Paste) -> None:
        """Take what is pasted as typed."""
        if self.at is not None and self.at.is_typed:
            event.stop()
            self._type(self._after(" ".join(event.text.split())))

    def _after(self, text: str) -> str:
        """What a text makes of an entry: in place of a value just opened, and a number in place of
        what was refused; else behind what is typed."""
        anew = self._fresh or (self._refused and text[:1].isdigit())
        return text if anew else (self.typed or "") + text

    def _type(self, text: str) -> None:
        self.typed, self._fresh, self._refused = text, False, False
        if self.highlighted is not None and self.at is not None and self.at.key:
            self._draw(self.highlighted)
            self.post_message(self.Tried(self.at.key, text.strip()))

    def end(self, keep: bool = True) -> bool:
        """Keep what is typed, or leave the value as it was; return False if it cannot be kept."""
        if self.typed is None or self.at is None or self.at.key is None:
            return True
        if keep and not self.keep(self.at.key, self.typed.strip()):
            self._refused = True
            return False
        self.typed = None
        if self.highlighted is not None:
            self._draw(self.highlighted)
        if not keep:
            self.post_message(self.Tried(self.at.key, self.at.value))
            self.post_message(self.Marked(self.at.key))  # what was said of the typing is over
        return True

    def _open(self) -> None:
        """Begin an entry with the value to type over, or have the page open something."""
        line = self.at
        if line is not None and line.is_typed:
            self.typed, self._fresh = line.value, True
            self._draw(self.highlighted or 0)
        elif line is not None and line.key:
            self.post_message(self.Opened(line.key))

    def _word(self, line: ChoiceLine, by: int) -> None:
        place = line.words.index(line.value) if line.value in line.words else -1
        if line.key:
            self.keep(line.key, line.words[(place + by) % len(line.words)])

    def _seek(self, sign: str) -> None:
        """Go to the next line of which a word begins with the letters typed one after another."""
        for sought in (self._sought + sign, sign):
            start = (self.highlighted or 0) + (len(sought) == 1)
            for place in (*range(start, len(self.lines)), *range(start)):
                line = self.lines[place]
                if line.key and begins(line.label, sought):
                    self._sought, self.highlighted = sought, place
                    return
