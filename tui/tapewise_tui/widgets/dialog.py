"""A question over a page."""

from __future__ import annotations

from textual.await_complete import AwaitComplete
from textual.screen import ModalScreen, ScreenResultType


class Dialog(ModalScreen[ScreenResultType]):
    """Answered once, however many keys were pressed before it was gone."""

    answered_already = False

    def dismiss(self, result: ScreenResultType | None = None) -> AwaitComplete:
        """Give the answer and go; a second one counts for nothing."""
        if self.answered_already or not self.is_active:
            return AwaitComplete()
        self.answered_already = True
        return super().dismiss(result)

    def check_action(self, action: str, parameters: tuple[object, ...]) -> bool | None:
        """A dialog that is still being made, or was answered, does nothing but go."""
        there = bool(self.children) or action == "dismiss"
        return True if there and not self.answered_already else None
