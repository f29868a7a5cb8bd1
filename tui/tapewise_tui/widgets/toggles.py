"""Choices and ticks that show their state by a sign, so that no colour is needed to read them."""

from __future__ import annotations

from typing import ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.content import Content
from textual.widgets import Checkbox, RadioButton, RadioSet


class OneOf(RadioButton):
    """One of several: ``(*)`` is the one chosen."""

    @property
    def _button(self) -> Content:
        return Content("(*)" if self.value else "( )")


class Tick(Checkbox, inherit_bindings=False):
    """Any of several: ``[x]`` is ticked. Enter is left to what is around it."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("space", "toggle_button", "Tick", show=False),
    ]

    @property
    def _button(self) -> Content:
        return Content("[x]" if self.value else "[ ]")


class Radios(RadioSet):
    """Choices of which the arrow keys take the next one at once."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("down,right", "take(1)", "Next choice", show=False),
        Binding("up,left", "take(-1)", "Choice before", show=False),
        Binding("enter", "app.focus_next", "Next question", show=False),
    ]

    _wanted: int | None = None
    """The choice taken last, until the set has heard of it: keys may come faster."""

    @property
    def chosen(self) -> int:
        """Which one is chosen, however fast that was."""
        return self.pressed_index if self._wanted is None else self._wanted

    def action_take(self, by: int) -> None:
        buttons = list(self.query(RadioButton))
        self._wanted = (self.chosen + by) % len(buttons)
        buttons[self._wanted].value = True

    @on(RadioSet.Changed)
    def heard(self, event: RadioSet.Changed) -> None:
        if event.index == self._wanted:
            self._wanted = None
