"""A table whose last column takes the room that is left, whatever the terminal's width."""

from __future__ import annotations

from collections.abc import Sequence
from typing import ClassVar

from rich.text import Text
from textual.binding import Binding, BindingType
from textual.events import Resize
from textual.widgets import DataTable

from tapewise_tui.line import Line


class Rows(DataTable[Text]):
    """Rows of plain text with a cursor; each row has a key, which need not be its alone."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("home", "scroll_top", "First row", show=False),
        Binding("end", "scroll_bottom", "Last row", show=False),
    ]

    def __init__(self, id: str) -> None:
        super().__init__(id=id, cursor_type="row", cell_padding=1)
        self._columns: tuple[tuple[str, int], ...] = ()
        self._wide = 0
        self._rows: tuple[tuple[str, tuple[str, ...]], ...] = ()

    def fill(
        self, columns: Sequence[tuple[str, int]], rows: Sequence[tuple[str, tuple[str, ...]]]
    ) -> None:
        """Show rows under columns of given widths, the last as wide as there is room.

        The cursor stays on the row of its key, else goes to the first.
        """
        at = self.at
        self._columns, self._rows = tuple(columns), tuple(rows)
        self.clear(columns=True)
        *fixed, (last, least) = columns
        for name, width in fixed:
            self.add_column(name, width=width)
        used = sum(width + 2 for _, width in fixed)
        self._wide = self.outer_size.width
        self.add_column(last, width=max(least, self._wide - used - 4))
        for _, cells in rows:
            self.add_row(*(Text(cell, no_wrap=True, overflow="ellipsis") for cell in cells))
        if at is not None:
            self.to(at)

    @property
    def at(self) -> str | None:
        """The key of the row with the cursor, or None if there are no rows."""
        if not self.row_count:
            return None
        return self._rows[self.cursor_row][0]

    def lines(self) -> list[Line]:
        """The rows as lines to find, each by its key."""
        return [Line(key, "  ".join(filter(None, cells))) for key, cells in self._rows]

    def to(self, key: str) -> None:
        """Put the cursor on the first row of a key, or on the first of all if there is none."""
        keys = [name for name, _ in self._rows]
        self.move_cursor(row=keys.index(key) if key in keys else 0)

    def on_resize(self, event: Resize) -> None:
        """A scroll bar that comes or goes changes nothing; another terminal width does."""
        if self._columns and self.outer_size.width != self._wide:
            self.fill(self._columns, self._rows)
