"""All measures in their order, beside the one being taken, where the terminal is wide."""

from __future__ import annotations

from rich.text import Text
from textual.widgets import Static

from tapewise_core.measures.catalogue import measure
from tapewise_core.measures.order import group
from tapewise_tui import words
from tapewise_tui.desk import Desk


class Trail(Static):
    """``x`` is kept, ``>`` is the one on show."""

    def show(self, desk: Desk, at: str) -> None:
        """Draw the list afresh."""
        said, heading = Text(), ""
        missing = desk.check.missing
        for row in map(measure, desk.order):
            if group(row) != heading:
                heading = group(row)
                said.append(f"{words.sentence(heading)}\n", "bold")
            mark = "." if row.key in missing else "x"
            here = row.key == at
            said.append(f"{'>' if here else ' '} {mark} {row.name}\n", "reverse" if here else "")
        self.update(said)
