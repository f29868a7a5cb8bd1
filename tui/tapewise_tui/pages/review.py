"""Review: every measure in one table, unlikely ones on top, mended in place."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from textual import on
from textual.binding import Binding
from textual.containers import Horizontal
from textual.widget import Widget
from textual.widgets import Input, Label, Static

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.finding import Finding
from tapewise_core.tasks.guesses import next_measure
from tapewise_tui import keys, measuring, reviewing, words
from tapewise_tui.line import Line
from tapewise_tui.page import Page
from tapewise_tui.widgets.rows import Rows


class ReviewPage(Page):
    """All measures at a glance."""

    NAME = "review"
    PURPOSE = (
        "Every measure with where it came from and how far off an estimate may be. What looks "
        "unlikely stands on top, with what to do about it. Enter on a row types a new value."
    )
    BINDINGS = [
        *keys.of(
            "find",
            on="on to the garment",
            take="take the correction or the estimate offered",
            confirm="keep the value as right",
            change="open the measure's own page",
        ),
        Binding("escape", "leave", "Back to the table", show=False),
    ]

    def parts(self) -> Iterable[Widget]:
        yield Static("", id="summary", markup=False)
        yield Rows(id="table")
        with Horizontal(id="mend"):
            yield Label("", id="mend-name")
            yield Input(id="mend-value", compact=True)
            yield Label("Enter keeps it, Escape leaves it", classes="quiet")
        yield Static("", id="advice", markup=False)

    def show(self) -> None:
        super().show()
        self.rows = reviewing.rows(self.desk)
        table = self.query_one(Rows)
        value = (self.desk.unit.value, 7)
        columns = (("Measure", 18), value, ("Origin", 10), ("±", 7), ("Remark", 20))
        table.fill(columns, [(row.measure.key, row.cells) for row in self.rows])
        self.query_one("#mend").display = False
        self._summary()
        self._advise()
        table.focus()

    def _summary(self) -> None:
        urgent = [row for row in self.rows if row.urgent == 0]
        known = len(self.rows) - len(self.desk.check.missing)
        said = f"{known} of {len(self.rows)} measures are there"
        said += f", {len(urgent)} unlikely, on top." if urgent else ", none unlikely."
        worth = next_measure(self.desk.profile, self.desk.work.garment, self.desk.unit)
        self.query_one("#summary", Static).update(f"{said} {worth}")

    def _key(self) -> str:
        return self.query_one(Rows).at or self.rows[0].measure.key

    @property
    def row(self) -> reviewing.Standing:
        """The row marked."""
        key = self._key()
        return next(row for row in self.rows if row.measure.key == key)

    @on(Rows.RowHighlighted)
    def _advise(self) -> None:
        if self.query_one(Rows).row_count:
            self.query_one("#advice", Static).update(reviewing.advice(self.row, self.desk))

    @on(Rows.RowSelected)
    def mend(self) -> None:
        """Open the field for a new value."""
        spelt = measuring.spelt(self.desk, self.row.measure.key)
        self.query_one("#mend-name", Label).update(words.sentence(self.row.measure.name))
        field = self.query_one("#mend-value", Input)
        field.value = self.row.value if spelt else ""
        self.query_one("#mend").display = True
        field.focus()

    @on(Input.Submitted, "#mend-value")
    def mended(self, event: Input.Submitted) -> None:
        event.stop()
        key, text = self.row.measure.key, event.value.strip()
        if text == self.row.value or (not text and key not in self.desk.profile.measures):
            self.action_leave()
            return
        try:
            says = measuring.replaced(self.desk, key, text)
        except TapewiseError as error:
            self.warn(error)
            return
        self.show()
        self.tell(says)

    def findable(self) -> tuple[Sequence[Line], str | None]:
        table = self.query_one(Rows)
        return table.lines(), table.at

    def found(self, key: str) -> None:
        self.query_one(Rows).to(key)

    def action_leave(self) -> None:
        self.query_one("#mend").display = False
        self.query_one(Rows).focus()

    def action_take(self) -> None:
        row = self.row
        if row.finding is not None and row.finding.proposed:
            self._correct(row.finding)
        elif row.measure.key not in self.desk.profile.measures:
            taken = measuring.estimate(self.desk, row.measure.key)
            self._done(taken) if taken else self.warn("There is nothing to estimate it from yet.")
        else:
            self.warn("Nothing is offered for this row; Enter changes it, F8 measures again.")

    def _correct(self, finding: Finding) -> None:
        """Take what a finding proposes; what no profile may hold is said, and changes nothing."""
        try:
            self._done(measuring.correct(self.desk, finding))
        except TapewiseError as error:
            self.warn(error)

    def action_confirm(self) -> None:
        row = self.row
        known = self.desk.profile.measures
        keys = tuple(key for key in row.finding.measures if key in known) if row.finding else ()
        keys = keys or ((row.measure.key,) if row.measure.key in known else ())
        if not keys:
            self.warn("It was not measured; F6 takes the estimate, F8 measures it.")
            return
        self._done(measuring.confirm(self.desk, keys))

    def action_change(self) -> None:
        self.desk.place(measure=self._key())
        self.tapewise.go("measure")

    def _done(self, says: str) -> None:
        self.show()
        self.tell(says)
