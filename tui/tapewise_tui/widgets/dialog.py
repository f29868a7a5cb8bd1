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
