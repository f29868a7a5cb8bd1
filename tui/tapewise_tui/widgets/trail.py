"""All measures in their order, beside the one being taken, where the terminal is wide."""

from __future__ import annotations

from rich.text import Text
from textual.widgets import Static

from tapewise_tui import order, words
from tapewise_tui.desk import Desk


class Trail(Static):
    """``x`` is kept, ``>`` is the one on show."""

    def show(self, desk: Desk, at: str) -> None:
        """Draw the list afresh."""
        said, heading = Text(), ""
        for row in order.ORDER:
            if order.group(row) != heading:
                heading = order.group(row)
                said.append(f"{words.sentence(heading)}\n", "bold")
            mark = "x" if row.key in desk.profile.measures else "."
            here = row.key == at
            said.append(f"{'>' if here else ' '} {mark} {row.name}\n", "reverse" if here else "")
        self.update(said)
