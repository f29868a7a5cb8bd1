"""Rows under columns, of which the last takes the room that is left.

Only the lines in sight are drawn, so that a thousand rows keep nobody waiting.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import ClassVar

from rich.style import Style
from rich.text import Text
from textual.binding import Binding, BindingType
from textual.events import Click, Resize
from textual.geometry import Region, Size
from textual.message import Message
from textual.scroll_view import ScrollView
from textual.strip import Strip

from tapewise_tui.line import Line

Cell = str | Text
Row = tuple[str, tuple[Cell, ...]]
"""A row's key, which need not be its alone, and its cells."""

BAR = 2
"""Columns that are left for the scroll bar, so that nothing moves where it comes or goes."""

WAYS = ("up", "down", "pageup", "pagedown", "home", "end")


class Rows(ScrollView):
    """Rows of plain text with a cursor; the keyboard may belong to a field beside it."""

    class RowHighlighted(Message):
        """Another row has the cursor."""

    class Resized(Message):
        """There is another room for columns."""

    class RowSelected(Message):
        """Enter was pressed on a row, or it was clicked."""

    BINDINGS: ClassVar[list[BindingType]] = [
        *(Binding(key, f"go('{key}')", show=False) for key in WAYS),
        Binding("enter", "select", show=False),
    ]
    COMPONENT_CLASSES = {"rows--head", "rows--cursor"}
    DEFAULT_CSS = """
    Rows {
        height: 1fr; overflow-x: hidden; background: $background;
        & > .rows--head { text-style: bold; background: $surface; color: $foreground; }
        & > .rows--cursor {
            color: $block-cursor-background; background: $block-cursor-foreground;
            text-style: reverse;
        }
    }
    """

    def __init__(self, id: str, *, takes_keys: bool = True) -> None:
        super().__init__(id=id)
        self.can_focus = takes_keys
        self.cursor_row = 0
        self._columns: tuple[tuple[str, int], ...] = ()
        self._rows: list[Row] = []
        self._ground: Style | None = None

    @property
    def row_count(self) -> int:
        return len(self._rows)

    def fill(self, columns: Sequence[tuple[str, int]], rows: Sequence[Row]) -> None:
        """Show rows under columns of given widths, the last as wide as there is room.

        The cursor stays on the row of its key, else goes to the first.
        """
        at, before = self.at, self._rows
        stays = self._columns == tuple(columns) and self._keys == [key for key, _ in rows]
        self._columns, self._rows = tuple(columns), list(rows)
        if stays:
            for place, (old, new) in enumerate(zip(before, rows, strict=True)):
                if old != new:
                    self.refresh_line(place + 1)
            return
        self.virtual_size = Size(0, len(rows) + 1)
        self.cursor_row = self._place(at)
        self.refresh()
        self._into_sight()
        self.post_message(self.RowHighlighted())

    def write(self, row: int, column: int, cell: Cell) -> None:
        """Write one cell."""
        key, cells = self._rows[row]
        self._rows[row] = (key, (*cells[:column], cell, *cells[column + 1 :]))
        self.refresh_line(row + 1)

    @property
    def _keys(self) -> list[str]:
        return [key for key, _ in self._rows]

    def _place(self, key: str | None) -> int:
        """The first row of a key, or the first of all if there is none."""
        keys = self._keys
        return keys.index(key) if key in keys else 0

    @property
    def at(self) -> str | None:
        """The key of the row with the cursor, or None if there are no rows."""
        return self._rows[self.cursor_row][0] if self._rows else None

    def lines(self) -> list[Line]:
        """The rows as lines to find, each by its key."""
        return [Line(key, "  ".join(filter(None, map(str, cells)))) for key, cells in self._rows]

    def to(self, key: str) -> None:
        """Put the cursor on the first row of a key, or on the first of all if there is none."""
        self.move_cursor(self._place(key))

    def action_go(self, way: str) -> None:
        """Move the cursor up, down, by a page, or to the first or last row."""
        page = max(self.size.height - 2, 1)
        steps = {"up": -1, "down": 1, "pageup": -page, "pagedown": page}
        last = self.row_count - 1
        self.move_cursor({"home": 0, "end": last}.get(way, self.cursor_row + steps.get(way, 0)))

    def move_cursor(self, row: int) -> None:
        """Put the cursor on a row, or on the nearest there is."""
        before, self.cursor_row = self.cursor_row, max(0, min(row, self.row_count - 1))
        if before != self.cursor_row:
            self.refresh_line(before + 1)
            self.refresh_line(self.cursor_row + 1)
            self.post_message(self.RowHighlighted())
        self._into_sight()

    def _into_sight(self) -> None:
        """Scroll as little as brings the cursor into sight, below the head."""
        room, top = self.size.height - 1, round(self.scroll_offset.y)
        wanted = min(max(top, self.cursor_row - room + 1), self.cursor_row)
        if room > 0 and wanted != top:
            self.scroll_to(y=wanted, animate=False, immediate=True)

    def action_select(self) -> None:
        if self._rows:
            self.post_message(self.RowSelected())

    def on_click(self, event: Click) -> None:
        row = event.y - 1 + round(self.scroll_offset.y)
        if event.y > 0 and row < self.row_count:
            self.move_cursor(row)
            self.action_select()

    def on_resize(self, event: Resize) -> None:
        self._into_sight()
        self.post_message(self.Resized())

    def render_lines(self, crop: Region) -> list[Strip]:
        """Draw some lines, all on the same ground, which takes long to look up."""
        self._ground = self.rich_style
        return super().render_lines(crop)

    def render_line(self, y: int) -> Strip:
        row = y - 1 + round(self.scroll_offset.y)
        if y == 0 and self._columns:
            return self._line([name for name, _ in self._columns], "rows--head")
        if not 0 <= row < self.row_count:
            return Strip.blank(self.size.width, self._ground)
        return self._line(self._rows[row][1], "rows--cursor" if row == self.cursor_row else "")

    def _line(self, cells: Sequence[Cell], kind: str) -> Strip:
        """One line, each cell cut to its column."""
        ground = self._ground or self.rich_style
        look = self.get_component_rich_style(kind) if kind else ground
        line = Text(no_wrap=True)
        for cell, width in zip(cells, self._widths, strict=True):
            line.append(" ").append_text(_fitted(cell, width)).append(" ")
        strip = Strip(line.render(self.app.console), line.cell_len).apply_style(look)
        return strip.adjust_cell_length(self.size.width, look if kind == "rows--head" else ground)

    @property
    def _widths(self) -> list[int]:
        *fixed, (_, least) = self._columns
        used = sum(width + 2 for _, width in fixed)
        return [*(width for _, width in fixed), max(least, self.outer_size.width - used - 2 - BAR)]


def _fitted(cell: Cell, width: int) -> Text:
    drawn = Text(cell) if isinstance(cell, str) else cell.copy()
    drawn.truncate(width, overflow="ellipsis", pad=True)
    return drawn
