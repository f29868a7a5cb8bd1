"""A page with lines to find and, mostly, one field: keys get there whatever has the keyboard."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import ClassVar

from textual.events import Key
from textual.screen import Screen
from textual.widgets import Input

from tapewise_tui.line import Line
from tapewise_tui.widgets.choices import BEGINS
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.find import EDITS, FindDialog


class TypedPage(Screen[None]):
    """``stands`` says that the page is on the screen whole, ``gone`` that it was left; ``early``
    are keys of a number that is begun before it stands, and of what turns to where it belongs."""

    TURNS: ClassVar[tuple[str, ...]] = ()
    """Keys that lead from here to where other numbers are typed."""

    def __init__(self) -> None:
        super().__init__()
        self.stands = self.gone = False
        self.early: list[tuple[str, str | None]] = []

    def show(self) -> None:
        """Draw the page afresh."""
        raise NotImplementedError

    def on_key(self, event: Key) -> None:
        """Give what is typed while no field has the cursor to the page's field, if it has one."""
        fields = self.query(Field)
        if (
            fields
            and event.is_printable
            and event.character
            and not isinstance(self.focused, Input)
        ):
            event.stop()
            fields.first().catch(event.character)

    def waits(self, event: Key) -> bool:
        """Keep a key of a number that is begun before the page stands, and one that turns to
        another number, until it does; say whether it was kept."""
        letter = event.character if event.is_printable else None
        turns = event.key in self.TURNS
        begins = turns or (letter is not None and letter in BEGINS)
        if self.stands or self.gone or not (begins or self.early):
            return False
        if letter is None and event.key not in EDITS and not turns:
            return False
        self.early.append((event.key, letter))
        return True

    def show_again(self) -> None:
        """Draw the page afresh; what is typed into its field and not entered stays there."""
        field = next(iter(self.query(Field)), None)
        typed = field.value if field and field.touched else None
        self.show()
        if field and typed is not None:
            field.catch(typed)

    def type_on(self, keys: Iterable[tuple[str, str | None]]) -> None:
        """Give the page's field keys that were pressed while something lay over the page."""
        for field in self.query(Field):
            for key, letter in keys:
                field.post_message(Key(key, letter))

    def findable(self) -> tuple[Sequence[Line], str | None]:
        """Return the lines that F5 finds, and the key of the one marked."""
        return (), None

    def found(self, key: str) -> None:
        """Put the cursor on a line that was found."""

    def action_find(self) -> None:
        self.find()

    def find(self, typed: str = "") -> None:
        """Find a line by its letters, some of which may be typed already."""
        lines, at = self.findable()

        def go(key: str | None) -> None:
            if key is not None:
                self.found(key)

        self.app.push_screen(FindDialog("Find", lines, at, typed), go)
