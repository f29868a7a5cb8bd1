"""Choices and ticks that show their state by a sign, so that no colour is needed to read them."""

from __future__ import annotations

from textual.content import Content
from textual.widgets import Checkbox, RadioButton


class Choice(RadioButton):
    """One of several: ``(*)`` is the one chosen."""

    @property
    def _button(self) -> Content:
        return Content("(*)" if self.value else "( )")


class Tick(Checkbox):
    """Any of several: ``[x]`` is ticked."""

    @property
    def _button(self) -> Content:
        return Content("[x]" if self.value else "[ ]")
