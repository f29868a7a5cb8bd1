"""A table whose last column takes the room that is left, whatever the terminal's width."""

from __future__ import annotations

from collections.abc import Sequence
from typing import ClassVar

from rich.text import Text
from textual.binding import Binding, BindingType
from textual.coordinate import Coordinate
from textual.events import Resize
from textual.widgets import DataTable

from tapewise_tui.line import Line

Cell = str | Text
Row = tuple[str, tuple[Cell, ...]]
"""A row's key, which need not be its alone, and its cells."""


AT_ONCE = 100
"""Rows added before the first are shown (our choice), so that a thousand keep nobody waiting."""


class Rows(DataTable[Text]):
    """Rows of plain text with a cursor; the keyboard may belong to a field beside it."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("home", "scroll_top", "First row", show=False),
        Binding("end", "scroll_bottom", "Last row", show=False),
    ]

    def __init__(self, id: str, *, takes_keys: bool = True) -> None:
        super().__init__(id=id, cursor_type="row", cell_padding=1)
        self.can_focus = takes_keys
        self._columns: tuple[tuple[str, int], ...] = ()
        self._wide = 0
        self._rows: tuple[Row, ...] = ()

    def fill(self, columns: Sequence[tuple[str, int]], rows: Sequence[Row]) -> None:
        """Show rows under columns of given widths, the last as wide as there is room.

        The cursor stays on the row of its key, else goes to the first.
        """
        before, at = (self._columns, self._wide, self._keys), self.at
        self._columns, was, self._rows = tuple(columns), self._rows, tuple(rows)
        self._wide = self.outer_size.width
        if before == (self._columns, self._wide, self._keys):
            self._mend(was)
            return
        self._build()
        if at is not None:
            self.to(at)

    def _build(self) -> None:
        self.clear(columns=True)
        *fixed, (last, least) = self._columns
        for name, width in fixed:
            self.add_column(name, width=width)
        used = sum(width + 2 for _, width in fixed)
        self.add_column(last, width=max(least, self._wide - used - 4))
        self._more(AT_ONCE)

    def _more(self, number: int) -> None:
        """Add so many rows of those still to come; the rest follows once these are seen."""
        there = self.row_count
        for _, cells in self._rows[there : there + number]:
            self.add_row(*map(_drawn, cells))
        if self.row_count < len(self._rows):
            self.call_after_refresh(self._more, len(self._rows))

    def _mend(self, was: Sequence[Row]) -> None:
        """Write only the cells that changed, in rows that stayed."""
        for row, ((_, old), (_, new)) in enumerate(zip(was, self._rows, strict=True)):
            for column, (one, other) in enumerate(zip(old, new, strict=True)):
                if one != other:
                    self.write(row, column, other)

    def write(self, row: int, column: int, cell: Cell) -> None:
        """Write one cell; a row that is still to come is added as it is by then."""
        if row < self.row_count:
            self.update_cell_at(Coordinate(row, column), _drawn(cell))

    @property
    def _keys(self) -> list[str]:
        return [key for key, _ in self._rows]

    @property
    def at(self) -> str | None:
        """The key of the row with the cursor, or None if there are no rows."""
        if not self.row_count:
            return None
        return self._rows[self.cursor_row][0]

    def lines(self) -> list[Line]:
        """The rows as lines to find, each by its key."""
        return [Line(key, "  ".join(filter(None, map(str, cells)))) for key, cells in self._rows]

    def to(self, key: str) -> None:
        """Put the cursor on the first row of a key, or on the first of all if there is none."""
        keys = self._keys
        row = keys.index(key) if key in keys else 0
        if row >= self.row_count:
            self._more(row + 1 - self.row_count)
        self.move_cursor(row=row)

    def go(self, way: str) -> None:
        """Move the cursor up, down, by a page, or to the first or last row."""
        page = max(self.size.height - 2, 1)
        steps = {"up": -1, "down": 1, "pageup": -page, "pagedown": page}
        last = self.row_count - 1
        to = {"home": 0, "end": last}.get(way, self.cursor_row + steps.get(way, 0))
        self.move_cursor(row=max(0, min(to, last)))

    def on_resize(self, event: Resize) -> None:
        """A scroll bar that comes or goes changes nothing; another terminal width does."""
        if self._columns and self.outer_size.width != self._wide:
            self.fill(self._columns, self._rows)


def _drawn(cell: Cell) -> Text:
    drawn = Text(cell) if isinstance(cell, str) else cell.copy()
    drawn.no_wrap, drawn.overflow = True, "ellipsis"
    return drawn
