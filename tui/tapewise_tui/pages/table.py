"""Table: a sheet of numbers typed from top to bottom, one row a measure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from textual import on
from textual.widgets import Input

from tapewise_core.measures.body import WaistSite
from tapewise_core.measures.order import ordered
from tapewise_tui import keys, measuring, progress, readings_told, reviewing
from tapewise_tui.desk import Desk
from tapewise_tui.entry_page import EntryPage
from tapewise_tui.line import Line
from tapewise_tui.widgets.entry_line import WIDTHS, guessed
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.find import FindDialog
from tapewise_tui.widgets.rows import Cell, Rows
from tapewise_tui.widgets.site import SITES

NAMES = ("", ", 2nd reading")


class TablePage(EntryPage):
    """Value, second reading, what changed, and what looks unlikely, as it is typed."""

    NAME = "table"
    COLUMNS = 2
    PURPOSE = (
        "Type what your sheet says, Enter after each number: it goes down. Tab is the second "
        "reading. What is not measured stands in brackets, estimated from the rest. Only what the "
        "garment needs is listed; Ctrl+L lists everything. Where you measured before, the change "
        "since then stands beside."
    )
    BINDINGS = keys.of(
        "all",
        back="to the people",
        on="on to the review",
        table="one measure a page, with its figure",
    )

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.before: Mapping[str, float] = {}
        self.listed: frozenset[str] = frozenset()

    def begin(self) -> None:
        self.before = progress.before_today(self.desk)

    def show(self) -> None:
        first = not self.rows
        super().show()
        if first:
            self.query_one(Rows).to(progress.at(self.desk))
            self.mark()

    def standing(self) -> tuple[reviewing.Standing, ...]:
        """Return a row for each measure gone through.

        One that was listed stays, even where the values typed since make it idle: whoever types a
        sheet looks at the sheet, and the next number must find its row.
        """
        self.listed |= frozenset(self.desk.order)
        return reviewing.in_order(self.desk, ordered(self.listed))

    def action_all(self) -> None:
        if self.keep_typed():
            self.listed = frozenset()
            super().action_all()

    def columns(self) -> tuple[tuple[str, int], ...]:
        unit = self.desk.unit
        since = (("Since last time", 15),) if self.before and self.is_wide else ()
        first = (f"1st {unit.value}", WIDTHS[unit])
        return (self.named, first, ("2nd", 8), *since, ("Remark", 12))

    def cells(self, row: reviewing.Standing) -> tuple[Cell, ...]:
        kept = readings_told.spelt(self.desk, row.measure.key)
        first, second = (*kept, "", "")[:2]
        value: Cell = first or (guessed(row.value) if row.off else row.value)
        change = progress.change(self.desk, row.measure.key, self.before)
        if len(self.columns()) == 5:
            return (row.measure.name, value, second, change, _remark(row, kept[2:]))
        remark = ", ".join(filter(None, (_remark(row, kept[2:]), change)))
        return (row.measure.name, value, second, remark)

    def name_of_field(self) -> str:
        return super().name_of_field() + NAMES[self.spot[1]]

    @on(Input.Changed)
    def mirrored(self, event: Input.Changed) -> None:
        """Show what is being typed in its own cell too."""
        event.stop()
        field = self.query_one(Field)
        if field.touched:
            self.query_one(Rows).write(self.spot[0], 1 + self.spot[1], field.value)

    def typed(self, text: str) -> str:
        if not text:
            return measuring.removed(self.desk, self.key, self.spot[1])
        self.desk.place(measure=self.key)
        return measuring.take(self.desk, self.key, self.spot[1], text).kept

    def action_leave(self) -> None:
        self.show()
        super().action_leave()

    def action_back(self) -> None:
        self.tapewise.go("start")

    def action_on(self) -> None:
        """Go on to the review; once, where a waist was typed, ask where the elastic sits."""
        if not self.keep_typed():
            return
        profile = self.desk.profile
        unsaid = profile.waist_site is WaistSite.NOT_SAID and "waist" in profile.measures
        if not unsaid or self.desk.asked_site:
            self.tapewise.go("review")
            return
        self.desk.asked_site = True
        lines = [Line(site, says) for says, site in SITES]
        self.app.push_screen(FindDialog("The waist: where does the elastic sit?", lines), self._sat)

    def _sat(self, site: str | None) -> None:
        if site is not None and WaistSite(site) is not self.desk.profile.waist_site:
            self.desk.waist_site(WaistSite(site))
        self.tapewise.go("review")

    def action_table(self) -> None:
        self.action_change()


def _remark(row: reviewing.Standing, more: Sequence[str]) -> str:
    """What is unlikely, what was read beyond the columns, or how far an estimate may be off."""
    read = f"also {', '.join(more)}: {row.value} counts" if more else ""
    if row.urgent < 2:
        return ", ".join(filter(None, (row.remark, read)))
    return read or row.off
