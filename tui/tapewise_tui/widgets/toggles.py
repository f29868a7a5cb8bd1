"""Choices and ticks that show their state by a sign, so that no colour is needed to read them."""

from __future__ import annotations

from typing import ClassVar

from textual.binding import Binding, BindingType
from textual.content import Content
from textual.widgets import Checkbox, RadioButton, RadioSet


class OneOf(RadioButton):
    """One of several: ``(*)`` is the one chosen."""

    @property
    def _button(self) -> Content:
        return Content("(*)" if self.value else "( )")


class Tick(Checkbox):
    """Any of several: ``[x]`` is ticked."""

    @property
    def _button(self) -> Content:
        return Content("[x]" if self.value else "[ ]")


class Choices(RadioSet):
    """Choices of which the arrow keys take the next one at once."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("down,right", "take(1)", "Next choice", show=False),
        Binding("up,left", "take(-1)", "Choice before", show=False),
        Binding("enter", "app.focus_next", "Next question", show=False),
    ]

    def action_take(self, by: int) -> None:
        buttons = list(self.query(RadioButton))
        buttons[(self.pressed_index + by) % len(buttons)].value = True
