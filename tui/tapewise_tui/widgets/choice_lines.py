"""A page's choices as lines, drawn by one list with a cursor: forty cost no more than one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from textual import on
from textual.events import Resize
from textual.message import Message
from textual.widgets import OptionList
from textual.widgets.option_list import Option

from tapewise_tui.widgets.choice_line import ChoiceLine, told
from tapewise_tui.widgets.lines import Lines


class ChoiceLines(Lines):
    """Lines of choices and headings; ``typed`` is what is being typed into the one marked."""

    @dataclass
    class Marked(Message):
        """Another line has the cursor."""

        key: str

    def __init__(self) -> None:
        super().__init__(id="choices", compact=True)
        self.lines: tuple[ChoiceLine, ...] = ()
        self.typed: str | None = None
        self._wide = 0
        self._marked = ""

    def fill(self, lines: Sequence[ChoiceLine]) -> None:
        """Show lines; the cursor stays on the line of its key, else goes to the first."""
        at, old = self.at, self.lines
        self.lines, self.typed = tuple(lines), None
        if [line.key for line in lines] == [line.key for line in old]:
            for place, (before, now) in enumerate(zip(old, lines, strict=True)):
                if before != now or now == at:
                    self._draw(place)
        else:
            self._draw_all()
            self.to(at.key if at and at.key else "")

    def _draw_all(self) -> None:
        self._wide = self.outer_size.width
        self.clear_options()
        rows = [Option(told(line, self._wide), disabled=line.key is None) for line in self.lines]
        self.add_options(rows)

    def _draw(self, place: int) -> None:
        typed = self.typed if place == self.highlighted else None
        self.redraw(place, told(self.lines[place], self._wide, typed))

    def on_resize(self, event: Resize) -> None:
        """Lines are set to the width there is."""
        if self.outer_size.width != self._wide:
            at = self.highlighted
            self._draw_all()
            self.highlighted = at

    @property
    def at(self) -> ChoiceLine | None:
        """The line with the cursor."""
        place = self.highlighted
        return self.lines[place] if place is not None and place < len(self.lines) else None

    def to(self, key: str) -> None:
        """Put the cursor on the line of a key, else on the first."""
        keys = [line.key for line in self.lines]
        free = (place for place, name in enumerate(keys) if name is not None)
        self.highlighted = keys.index(key) if key in keys else next(free, None)

    def action_cursor_up(self) -> None:
        """Go up; the first line is the end."""
        if any(line.key for line in self.lines[: self.highlighted or 0]):
            super().action_cursor_up()

    def action_cursor_down(self) -> None:
        """Go down; the last line is the end."""
        if self.highlighted is not None and self.highlighted < len(self.lines) - 1:
            super().action_cursor_down()

    @on(OptionList.OptionHighlighted)
    def marked(self, event: OptionList.OptionHighlighted) -> None:
        """Send on that another line has the cursor; a line drawn anew is the same one."""
        event.stop()
        if self.at is not None and self.at.key and self.at.key != self._marked:
            self._marked = self.at.key
            self.post_message(self.Marked(self._marked))
