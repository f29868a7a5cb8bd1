"""What is typed on table and review: one field stands for the row marked."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import ClassVar

from msgspec.structs import replace
from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Horizontal
from textual.widget import Widget
from textual.widgets import Label, Static

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.catalogue import ALSO
from tapewise_core.tasks.figure import figure_of
from tapewise_tui import keys, measuring, readings_told, reviewing, words
from tapewise_tui.desk import Desk
from tapewise_tui.line import Line
from tapewise_tui.rows_page import RowsPage
from tapewise_tui.widgets.entry_line import EntryLine
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.rows import Rows
from tapewise_tui.widgets.sure import SureLine
from tapewise_tui.widgets_drawn import FigureView


class EntryPage(RowsPage):
    """The keyboard belongs to the field; arrows move the row it stands for."""

    COLUMNS: ClassVar[int] = 1
    """How many columns can be typed into."""

    BINDINGS: ClassVar[list[BindingType]] = [
        *keys.of(
            "find",
            take="take the value proposed for a slip",
            confirm="it was read again and is so, though unlikely",
            change="this measure alone, with where the tape goes",
        ),
        Binding("escape", "leave", "Leave it", show=False, tooltip="leave the value as it was"),
    ]

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.spot = (0, 0)

    def typed(self, text: str) -> str:
        """Keep what was typed for the row marked and return what to say; raises TapewiseError."""
        raise NotImplementedError

    def parts(self) -> Iterable[Widget]:
        yield SureLine(id="summary")
        with Horizontal(id="rows"):
            yield Rows(id="table", takes_keys=False)
            yield FigureView()
        with EntryLine(id="entry"):
            yield Label("", id="entry-name", markup=False)
            yield Field(self.entered, id="value", step=self.action_go)
            yield Label("", id="entry-unit", markup=False)
        yield Static("", id="advice", markup=False)

    def show(self) -> None:
        super().show()
        self.fill()
        self.mark()
        self.query_one(Field).focus()

    @property
    def spelt(self) -> str:
        """What stands where one would type."""
        kept = readings_told.spelt(self.desk, self.key)
        return kept[self.spot[1]] if self.spot[1] < len(kept) else ""

    def mark(self) -> None:
        """Let the field stand for the row with the cursor."""
        table = self.query_one(Rows)
        self.spot = (table.cursor_row, self.spot[1])
        self.query_one("#entry-name", Label).update(self.name_of_field())
        self.query_one("#entry-unit", Label).update(self.desk.unit.value)
        self.query_one(Field).put(self.spelt)
        build = figure_of(self.desk.profile, self.desk.check.body)
        self.query_one(FigureView).show(self.key, build)
        self.query_one("#advice", Static).update(self._advice())

    def _advice(self) -> str:
        if self.is_short:
            return reviewing.brief(self.row, self.desk) or reviewing.advice(self.row, self.desk)
        return reviewing.advice(self.row, self.desk)

    def name_of_field(self) -> str:
        """Return what is typed into the field."""
        return words.sentence(self.row.measure.name)

    @on(Rows.RowHighlighted)
    @on(Rows.RowSelected)
    def pointed(self) -> None:
        """Follow the mouse; what the keyboard did is done by now."""
        table = self.query_one(Rows)
        if self.rows and table.cursor_row != self.spot[0]:
            there = table.cursor_row
            table.move_cursor(self.spot[0])
            self.keep_typed()
            table.move_cursor(there)
            self.mark()

    def action_go(self, way: str) -> None:
        """Keep what is typed and go to another row or column; what cannot be kept stays."""
        if not self.rows:
            return
        if self.query_one(Field).touched and not self._kept():
            return
        if way in ("left", "right"):
            self.spot = (self.spot[0], (self.spot[1] + 1) % self.COLUMNS)
        else:
            self.query_one(Rows).action_go(way)
        self.mark()

    def entered(self, text: str) -> None:
        """Keep what is typed and go down; a page that is still being made has nowhere to go."""
        if not self.rows:
            return
        row, place = self.row, self.query_one(Rows).cursor_row
        if self.query_one(Field).touched and not self._kept():
            return
        self.spot = (self.spot[0], 0)
        self.go_down(row, place)
        self.mark()

    def go_down(self, row: reviewing.Standing, place: int) -> None:
        """Put the cursor on the row after the one entered, which was at a place."""
        if self.row is self.rows[-1]:
            self.tell("That was the last row; F4 goes on.")
        else:
            self.query_one(Rows).action_go("down")

    def _kept(self) -> bool:
        key, text = self.key, self.query_one(Field).value.strip()
        try:
            says = self.typed(text)
        except TapewiseError as error:
            self.query_one(Field).refused()
            self.warn(error)
            return False
        doubt = next(iter(readings_told.findings(self.desk, key)), None)
        self.show()
        if doubt is None:
            self.tell(says)
        else:
            self.warn(self.desk.reader.spell(doubt.says))
        return True

    def keep_typed(self) -> bool:
        field = self.query_one(Field)
        return self._kept() if field.touched and field.value.strip() else True

    def findable(self) -> tuple[Sequence[Line], str | None]:
        self.keep_typed()
        table = self.query_one(Rows)
        lines = (replace(line, also=ALSO.get(line.key or "", "")) for line in table.lines())
        return tuple(lines), table.at

    def found(self, key: str) -> None:
        self.query_one(Rows).to(key)
        self.mark()

    def action_leave(self) -> None:
        self.mark()
        self.tell("")

    def action_change(self) -> None:
        key = self.key
        if not self.keep_typed():
            return
        self.desk.place(measure=key)
        self.tapewise.go("measure")

    def action_confirm(self) -> None:
        """Confirm the measures that a remark is about, else the one of the row."""
        if not self.keep_typed():
            return
        missing, row = self.desk.check.missing, self.row
        about = row.finding.measures if row.finding else (self.key,)
        keys = tuple(key for key in about if key not in missing)
        if not keys:
            self.warn("It was not measured; type what the tape says.")
            return
        self.act(lambda: measuring.confirm(self.desk, keys))
