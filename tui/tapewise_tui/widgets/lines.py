"""A list of lines that keys may be pressed on before it stands."""

from __future__ import annotations

import contextlib

from rich.text import Text
from textual.widgets import OptionList
from textual.widgets.option_list import Option

from tapewise_tui.line import Line


def option_of(line: Line) -> Option:
    """Return a line as a list shows it: a heading in bold that nobody can choose, or one row."""
    if line.key is None:
        return Option(Text(line.text, "bold"), disabled=True)
    return Option(Text(line.text, no_wrap=True, overflow="ellipsis"), id=line.key)


class Lines(OptionList):
    """Page Up and Page Down do nothing yet where the line marked is not laid out: Textual looks its
    place up, and has none."""

    def redraw(self, place: int, prompt: Text) -> None:
        """Draw one line anew that takes one row, and no other: Textual would draw them all."""
        option, drawn = self.get_option_at_index(place), self._option_render_cache
        option._set_prompt(prompt)
        for key in [key for key in drawn.keys() if key[0] is option]:  # noqa: SIM118
            drawn.discard(key)
        self.refresh_line(place)

    def action_page_up(self) -> None:
        with contextlib.suppress(KeyError):
            super().action_page_up()  # type: ignore[no-untyped-call]

    def action_page_down(self) -> None:
        with contextlib.suppress(KeyError):
            super().action_page_down()  # type: ignore[no-untyped-call]
