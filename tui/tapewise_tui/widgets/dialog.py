"""A question over a page."""

from __future__ import annotations

from textual.await_complete import AwaitComplete
from textual.screen import ModalScreen, ScreenResultType

from tapewise_tui.widgets.room import room


class Dialog(ModalScreen[ScreenResultType]):
    """Answered once, however many keys were pressed before it was gone."""

    answered_already = False

    def on_mount(self) -> None:
        """Be laid out for the room there is before anything is drawn."""
        across = self.HORIZONTAL_BREAKPOINTS or self.app.HORIZONTAL_BREAKPOINTS
        down = self.VERTICAL_BREAKPOINTS or self.app.VERTICAL_BREAKPOINTS
        self.add_class(*room(self.app.size, across, down))

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
