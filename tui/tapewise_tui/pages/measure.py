"""Measure: one measure a page, with its figure, how to take it, and the field."""

from __future__ import annotations

from collections.abc import Iterable

from textual import on
from textual.binding import Binding
from textual.containers import Horizontal
from textual.widget import Widget
from textual.widgets import Static

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.catalogue import measure
from tapewise_core.measures.order import group
from tapewise_tui import keys, measuring, progress, readings_told, words
from tapewise_tui.dialogs.jump import jump_dialog
from tapewise_tui.measures_page import MeasuresPage
from tapewise_tui.widgets.measure_sheet import MeasureSheet
from tapewise_tui.widgets.readings import Readings
from tapewise_tui.widgets.site import SiteField


class MeasurePage(MeasuresPage):
    """One measure at a time."""

    NAME = "measure"
    PURPOSE = (
        "Take the measure shown, type what the tape says and press Enter; then take it a second "
        "time. Enter on an empty field goes on, up and down go to a reading that is there, and an "
        "emptied one is taken off. Only what the garment needs is asked; Ctrl+L asks for all. "
        "What is left open is estimated, and estimated anew whenever anything changes."
    )
    BINDINGS = [
        *keys.of(
            "all",
            "table",
            back="to the measure before",
            on="to the next measure, this one left as it is",
            find="find a measure by some of its letters",
            take="take what is proposed, or leave it to the estimate",
            confirm="it was read again and is so, though unlikely",
            change="to the table of all measures, unlikely ones on top",
        ),
        Binding("escape", "leave", "Leave it", show=False, tooltip="leave the reading as it was"),
    ]

    @property
    def key(self) -> str:
        """The measure on show."""
        return progress.at(self.desk)

    def parts(self) -> Iterable[Widget]:
        with Horizontal(id="head"):
            yield Static("", id="title", markup=False)
            yield Static("", id="place", markup=False)
        yield MeasureSheet(self.desk, self.entered)

    def begin(self) -> None:
        if not self.desk.profile.measures and not self.desk.work.measure:
            self.app.call_later(self._before_the_first)

    def _before_the_first(self) -> None:
        from tapewise_tui.dialogs.before import BeforeDialog

        self.app.push_screen(BeforeDialog(self.desk.profile, self.desk.reader))

    def show(self) -> None:
        super().show()
        row, order = measure(self.key), self.desk.order
        self.desk.place(measure=row.key)
        title = f"{words.sentence(row.name)} · {group(row)}"
        self.query_one("#title", Static).update(title)
        self.query_one("#place", Static).update(f"{order.index(row.key) + 1} of {len(order)}")
        sheet = self.query_one(MeasureSheet)
        sheet.show(row.key)
        self._readings(self._wanted(row.key))
        sheet.ask(row.key)

    def _readings(self, at: int) -> None:
        """Show the readings, one of them in the field."""
        self.query_one(MeasureSheet).show_readings(self.key, at, brief=self.is_short)

    def _wanted(self, key: str) -> int:
        """The second reading where the first waits for it, else the first."""
        one_there = len(readings_told.spelt(self.desk, key)) == 1
        return 1 if one_there and not readings_told.findings(self.desk, key) else 0

    def entered(self, index: int, text: str) -> None:
        """Keep what was typed for a reading; an empty text takes a reading off, or goes on."""
        kept = readings_told.spelt(self.desk, self.key)
        if text and text != (*kept, "")[index]:
            self._take(index, text)
        elif index < len(kept) and not text:
            self._say(measuring.removed(self.desk, self.key, index), index)
        elif index == 0 and not text:
            self.warn("Nothing was typed. F4 leaves this measure open, and an estimate stands in.")
        elif index == 0 and len(kept) == 1:
            self._readings(1)
        else:
            self._next()

    def _take(self, index: int, text: str) -> None:
        try:
            outcome = measuring.take(self.desk, self.key, index, text)
        except TapewiseError as error:
            self.query_one(Readings).field.refused()
            self.warn(error)
            return
        if outcome.wanted is None and not outcome.wrong:
            self._next(outcome.says)
        else:
            self._say(outcome.says, outcome.wanted or 1, wrong=outcome.wrong)

    def _say(self, says: str, at: int, *, wrong: bool = False) -> None:
        (self.warn if wrong else self.tell)(says)
        self._readings(at)

    def _next(self, says: str = "") -> None:
        order = self.desk.order
        following = order[order.index(self.key) + 1 :]
        if following:
            self._turn(following[0], says)
        else:
            self.tapewise.go("review", says or "That was the last one.")

    def done(self, says: str) -> None:
        self._next(says)

    def _turn(self, key: str, says: str = "") -> None:
        self.desk.place(measure=key)
        self.show()
        self.tell(says)

    def keep_typed(self) -> bool:
        """Keep a reading typed but not entered; what is no length is said, and left to mend."""
        fields = self.query_one(Readings)
        if fields.typed is not None:
            try:
                measuring.take(self.desk, self.key, fields.index, fields.typed)
            except TapewiseError as error:
                fields.field.refused()
                self.warn(f"{self.desk.reader.spell(error.told)} It was not kept.")
                return False
        return True

    def action_leave(self) -> None:
        """Put back what stood in the field."""
        self._readings(self.query_one(Readings).index)
        self.tell("")

    @on(SiteField.Told)
    def site(self, event: SiteField.Told) -> None:
        event.stop()
        if event.site is not self.desk.profile.waist_site:
            self.keep_typed()
            self.desk.waist_site(event.site)
            self._readings(self._wanted(self.key))
        self.query_one(Readings).field.focus()

    def action_back(self) -> None:
        if not self.keep_typed():
            return
        before = self.desk.order[: self.desk.order.index(self.key)]
        self._turn(before[-1]) if before else self.tapewise.go("start")

    def action_on(self) -> None:
        if self.keep_typed():
            self._next()

    def action_change(self) -> None:
        self.tapewise.go("review")

    def action_find(self) -> None:
        if self.keep_typed():
            self.app.push_screen(jump_dialog(self.desk, self.key), self._jumped)

    def _jumped(self, key: str | None) -> None:
        if key:
            self._turn(key)

    def action_table(self) -> None:
        self.tapewise.go("table")

    def action_confirm(self) -> None:
        if not self.keep_typed():
            return
        if self.key in self.desk.check.missing:
            self.warn("There is no reading to confirm yet.")
            return
        self._next(measuring.confirm(self.desk, (self.key,)))
