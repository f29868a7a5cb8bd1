"""The palette of all commands."""

from __future__ import annotations

import contextlib

from textual.await_complete import AwaitComplete
from textual.command import CommandPalette


class Palette(CommandPalette):
    """Textual's own; keys pressed before its list stands, or after its answer, do nothing."""

    answered_already = False

    def dismiss(self, result: None = None) -> AwaitComplete:
        """Go, once."""
        if self.answered_already or not self.is_active:
            return AwaitComplete()
        self.answered_already = True
        return super().dismiss(result)

    def _action_command_list(self, action: str) -> None:
        with contextlib.suppress(KeyError):
            super()._action_command_list(action)
