"""The line under a table that is typed into, and how wide the table's parts are."""

from __future__ import annotations

from typing import ClassVar

from rich.text import Text
from textual.binding import Binding, BindingType
from textual.containers import Horizontal

from tapewise_core.units import Unit

WAYS = ("up", "down", "pageup", "pagedown")


WIDTHS = {Unit.CM: 7, Unit.IN: 10}
"""How wide a value is at most, in brackets too."""

FIGURE = 46
"""How wide the figure is that stands beside the rows of a large terminal."""

WIDE = 72
"""Columns of the terminal from which a table has room for more than what must be there."""


def guessed(value: str) -> Text:
    """Return an estimate so that it looks like no measurement, without colour too."""
    return Text(f"({value})", "dim")


class EntryLine(Horizontal):
    """The field with its name; keys that move go through the rows above it."""

    BINDINGS: ClassVar[list[BindingType]] = [
        *(Binding(key, f"screen.go('{key}')", show=False) for key in WAYS),
        Binding("tab", "screen.go('right')", show=False),
        Binding("shift+tab", "screen.go('left')", show=False),
    ]
