"""A list of lines that keys may be pressed on before it stands."""

from __future__ import annotations

import contextlib

from textual.widgets import OptionList


class Lines(OptionList):
    """Page Up and Page Down do nothing yet where the line marked is not laid out: Textual looks its
    place up, and has none."""

    def action_page_up(self) -> None:
        with contextlib.suppress(KeyError):
            super().action_page_up()  # type: ignore[no-untyped-call]

    def action_page_down(self) -> None:
        with contextlib.suppress(KeyError):
            super().action_page_down()  # type: ignore[no-untyped-call]
