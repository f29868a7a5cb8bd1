"""What table and review show: rows of measures, one of them marked, with the room they have."""

from __future__ import annotations

from textual import on

from tapewise_tui import progress, reviewing
from tapewise_tui.desk import Desk
from tapewise_tui.measures_page import MeasuresPage
from tapewise_tui.widgets.entry_line import FIGURE, WIDE
from tapewise_tui.widgets.rows import Cell, Rows
from tapewise_tui.widgets.sure import SureLine


class RowsPage(MeasuresPage):
    """A row a measure, under columns that each page names itself."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.rows: tuple[reviewing.Standing, ...] = ()

    def standing(self) -> tuple[reviewing.Standing, ...]:
        """Return the rows to show."""
        raise NotImplementedError

    def columns(self) -> tuple[tuple[str, int], ...]:
        """Return the columns with their widths."""
        raise NotImplementedError

    def cells(self, row: reviewing.Standing) -> tuple[Cell, ...]:
        """Return one row as it is shown."""
        raise NotImplementedError

    def fill(self) -> None:
        """Show the rows as they are now, and what stands above them."""
        self.rows = self.standing()
        lines = [(row.measure.key, self.cells(row)) for row in self.rows]
        self.query_one(Rows).fill(self.columns(), lines)
        self.query_one(SureLine).show(*self.summary(), self.desk)

    @on(Rows.Resized)
    def resized(self) -> None:
        """Set the columns to the room there is now."""
        if self.stands:
            self.fill()

    def summary(self) -> tuple[str, str]:
        """Return what stands above the rows, before and behind how sure the garment is."""
        return progress.still_open(self.desk, brief=self.is_short)

    @property
    def room(self) -> int:
        """How many columns the rows have, beside a figure where there is one."""
        beside = FIGURE if self.has_class("-wide") and self.has_class("-tall") else 0
        return self.size.width - beside

    @property
    def is_wide(self) -> bool:
        """Whether there is room for more than what must be there."""
        return self.room >= WIDE

    @property
    def named(self) -> tuple[str, int]:
        """The column of names."""
        return ("Measure", 20 if self.is_wide else 18)

    @property
    def row(self) -> reviewing.Standing:
        """The row marked."""
        return self.rows[min(self.query_one(Rows).cursor_row, len(self.rows) - 1)]

    @property
    def key(self) -> str:
        """The measure of the row marked."""
        return self.row.measure.key
