"""A list of lines that keys may be pressed on before it stands."""

from __future__ import annotations

from textual.widgets import OptionList


class Lines(OptionList):
    """Page Up and Page Down do nothing yet where no line is drawn; there is no page to go by."""

    def action_page_up(self) -> None:
        if self.size.height:
            super().action_page_up()  # type: ignore[no-untyped-call]

    def action_page_down(self) -> None:
        if self.size.height:
            super().action_page_down()  # type: ignore[no-untyped-call]
