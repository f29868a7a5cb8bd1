"""A field for typing ahead: every key is acted on before the next one is looked at."""

from __future__ import annotations

from collections.abc import Callable
from typing import ClassVar

from textual.binding import BindingType
from textual.events import Key, Paste
from textual.widgets import Input

from tapewise_tui.widgets.at_once import acted, no_more, passed_on


class Field(Input, inherit_bindings=False):
    """A field that stays while what it asks for changes.

    Elsewhere a key that is no letter rises through the page to the app before it acts; whatever
    is typed meanwhile still lands in the field as it was, and two numbers become one. Here Enter,
    arrows and function keys act at once, so that the next letter belongs to what they led to.
    That is also why ``entered`` is called rather than sent a message.
    """

    BINDINGS: ClassVar[list[BindingType]] = [*Input.BINDINGS]
    """An input's own, without those that scroll: up and down belong to what is around it."""

    def __init__(
        self,
        entered: Callable[[str], None],
        id: str,
        step: Callable[[str], None] | None = None,
        placeholder: str = "",
        value: str = "",
    ) -> None:
        super().__init__(value, id=id, compact=True, placeholder=placeholder, select_on_focus=False)
        self.entered, self.step = entered, step
        self.shown = ""
        self._anew = False

    async def action_submit(self) -> None:
        self.entered(self.value.strip())

    def put(self, text: str) -> None:
        """Show a text; what is typed next replaces it."""
        self.shown, self._anew = text, False
        with self.prevent(Input.Changed):
            self.value = text
        self.select_all()

    def refused(self) -> None:
        """Keep what is typed to be mended: keys that edit do so, a digit begins anew."""
        self._anew = True

    def _begin(self, text: str) -> None:
        """Let a digit that follows on what was refused take its place; a unit is added to it."""
        if self._anew and text[:1].isdigit():
            self.select_all()
        self._anew = False

    def catch(self, letter: str) -> None:
        """Take a letter that was typed while the cursor was elsewhere."""
        self.focus()
        self._begin(letter)
        self.replace(letter, *self.selection)

    @property
    def touched(self) -> bool:
        """Whether anything was typed since a text was shown."""
        return self.value.strip() != self.shown

    def action_cursor_left(self, select: bool = False) -> None:
        self._move("left", super().action_cursor_left, select)

    def action_cursor_right(self, select: bool = False) -> None:
        self._move("right", super().action_cursor_right, select)

    def action_home(self, select: bool = False) -> None:
        self._move("home", super().action_home, select)

    def action_end(self, select: bool = False) -> None:
        self._move("end", super().action_end, select)

    def _move(self, way: str, inside: Callable[[bool], None], select: bool) -> None:
        """Go about in what is typed; where nothing is, and around is something, go there."""
        if self.step is None or self.touched or select:
            inside(select)
        else:
            self.step(way)

    async def _on_key(self, event: Key) -> None:
        if passed_on(self, event):
            return
        other = self.screen.focused
        if isinstance(other, Field) and other is not self:
            no_more(event)  # pressed here, but an earlier key has led on
            other.post_message(Key(event.key, event.character))
            return
        if event.is_printable and event.character:
            self._begin(event.character)
        elif await acted(self, event) and event.key != "enter":
            self._anew = False

    def _on_paste(self, event: Paste) -> None:
        self._begin(event.text.lstrip())
