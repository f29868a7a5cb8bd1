"""A field with a few words to choose from, in one row."""

from __future__ import annotations

from dataclasses import dataclass

from rich.text import Text
from textual.binding import Binding
from textual.events import Click
from textual.message import Message
from textual.reactive import reactive
from textual.widget import Widget


class Choice(Widget, can_focus=True):
    """Left and right take the word before or after; so does a click."""

    BINDINGS = [
        Binding("right,space,enter", "take(1)", "Next choice", show=False),
        Binding("left", "take(-1)", "Choice before", show=False),
    ]

    value = reactive("")

    @dataclass
    class Taken(Message):
        """Another word was chosen."""

        value: str

    def __init__(self, value: str, choices: tuple[str, ...]) -> None:
        super().__init__()
        self.choices = choices
        self.set_reactive(Choice.value, value)

    def render(self) -> Text:
        return Text(f"<{self.value.center(max(self.size.width - 2, 0))}>", no_wrap=True)

    def action_take(self, by: int) -> None:
        place = self.choices.index(self.value) if self.value in self.choices else -1
        self.value = self.choices[(place + by) % len(self.choices)]
        self.post_message(self.Taken(self.value))

    def on_click(self, event: Click) -> None:
        self.action_take(-1 if event.x < self.size.width / 2 else 1)
