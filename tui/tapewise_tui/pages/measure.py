"""Measure: one measure a page, with its figure, how to take it, and the field."""

from __future__ import annotations

from collections.abc import Iterable

from rich.text import Text
from textual import on
from textual.containers import Horizontal, Vertical, VerticalScroll
from textual.widget import Widget
from textual.widgets import Static

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.body import WaistSite
from tapewise_core.measures.catalogue import measure
from tapewise_tui import keys, measuring, order, words
from tapewise_tui.dialogs.jump import jump_dialog
from tapewise_tui.page import Page
from tapewise_tui.widgets.readings import Readings
from tapewise_tui.widgets.site import SiteField
from tapewise_tui.widgets.trail import Trail
from tapewise_tui.widgets_drawn import FigureView


class MeasurePage(Page):
    """One measure at a time."""

    NAME = "measure"
    PURPOSE = (
        "Take the measure shown, type what the tape says and press Enter; then take it a second "
        "time. Enter on an empty second field goes on. Skipping leaves a measure open, and an "
        "estimate stands in for it, marked as one, until you measure."
    )
    BINDINGS = keys.of(
        back="to the measure before",
        on="to the next measure, this one left open",
        find="list of all measures; jump to one",
        take="take the estimate, marked as one",
        confirm="read again and right, though unlikely",
        change="to the table of all measures",
    )

    @property
    def key(self) -> str:
        """The measure on show."""
        kept = self.desk.work.measure
        return kept if kept in order.KEYS else order.first_open(self.desk.check.missing)

    def parts(self) -> Iterable[Widget]:
        with Horizontal(id="head"):
            yield Static("", id="title", markup=False)
            yield Static("", id="place", markup=False)
        with Horizontal(id="sheet"):
            yield FigureView()
            with Vertical(id="words"):
                with VerticalScroll(id="how", can_focus=False):
                    yield Static("", id="how-text")
                yield SiteField(self.desk.profile.waist_site)
                yield Readings()
                yield Static("", id="standing", markup=False)
                yield Static("", id="others", markup=False)
                yield Static("", id="skipped", markup=False)
            yield Trail()

    def begin(self) -> None:
        if not self.desk.profile.measures and not self.desk.work.measure:
            self.app.call_later(self._before_the_first)

    def _before_the_first(self) -> None:
        from tapewise_tui.dialogs.before import BeforeDialog

        self.app.push_screen(BeforeDialog(self.desk.reader))

    def show(self) -> None:
        super().show()
        row, desk = measure(self.key), self.desk
        self.desk.place(measure=row.key)
        place = f"{order.KEYS.index(row.key) + 1} of {len(order.KEYS)}"
        title = f"{words.sentence(row.name)} · {order.group(row)}"
        self.query_one("#title", Static).update(title)
        self.query_one("#place", Static).update(place)
        self.query_one(FigureView).show(row.key)
        self.query_one("#how-text", Static).update(
            _how(row.definition, desk.reader.spell(row.landmarks), row.how)
        )
        self.query_one(Readings).show(measuring.spelt(desk, row.key), desk.unit.value)
        self.query_one(SiteField).display = row.key == "waist"
        self.query_one(SiteField).show(desk.profile.waist_site)
        self._remarks()
        self.query_one("#how").scroll_home(animate=False)
        self._begin(row.key)

    def _begin(self, key: str) -> None:
        """Put the cursor into the field, or first ask where the waist is."""
        if key == "waist" and self.desk.profile.waist_site is WaistSite.NOT_SAID:
            self.query_one(SiteField).ask()
        else:
            self.query_one(Readings).field(self._wanted(key)).focus()

    def _wanted(self, key: str) -> int:
        """The second field where the first reading waits for it, else the first."""
        waits = len(measuring.spelt(self.desk, key)) == 1 and not measuring.findings(self.desk, key)
        return 1 if waits else 0

    def _remarks(self) -> None:
        others, skipped = measuring.others(self.desk, self.key)
        kept = self.key in self.desk.profile.measures
        self.query_one(Trail).show(self.desk, self.key)
        self.query_one("#standing", Static).update(
            f"Kept: {measuring.standing(self.desk, self.key)}"
        )
        self.query_one("#standing").display = kept
        self.query_one("#others", Static).update(others)
        self.query_one("#skipped", Static).update(skipped)
        self.query_one("#skipped").display = not kept

    @on(Readings.Entered)
    def enter(self, event: Readings.Entered) -> None:
        event.stop()
        if event.changed and event.text:
            self._take(event.index, event.text)
        elif event.index == 0 and not event.text:
            self._emptied()
        elif event.index == 0 and not self.query_one(Readings).field(1).value:
            self.query_one(Readings).field(1).focus()
        else:
            self._next()

    def _take(self, index: int, text: str) -> None:
        try:
            outcome = measuring.take(self.desk, self.key, index, text)
        except TapewiseError as error:
            self.warn(error)
            return
        if outcome.wanted is None and not outcome.wrong:
            self._next(outcome.says)
            return
        self._stay(outcome)

    def _stay(self, outcome: measuring.Outcome) -> None:
        (self.warn if outcome.wrong else self.tell)(outcome.says)
        fields = self.query_one(Readings)
        fields.show(measuring.spelt(self.desk, self.key), self.desk.unit.value)
        self._remarks()
        if outcome.wanted == 2:
            fields.third(True)
        fields.field(outcome.wanted or 1).focus()

    def _emptied(self) -> None:
        if self.key not in self.desk.profile.measures:
            self.warn("Nothing was typed. F4 skips this measure, F6 takes the estimate.")
            return
        self.tell(measuring.drop(self.desk, self.key))
        self.show()

    def _next(self, says: str = "") -> None:
        following = order.after(self.key)
        if following is None:
            self.tapewise.go("review", says or "That was the last one.")
            return
        self._turn(following, says)

    def _turn(self, key: str, says: str = "") -> None:
        self.desk.place(measure=key)
        self.show()
        self.tell(says)

    def keep_typed(self) -> None:
        """Keep readings typed but not entered; what is no length is said and left."""
        for index, text in self.query_one(Readings).typed():
            try:
                measuring.take(self.desk, self.key, index, text)
            except TapewiseError as error:
                self.warn(f"{error} It was not kept.")

    @on(SiteField.Told)
    def site(self, event: SiteField.Told) -> None:
        event.stop()
        if event.site is not self.desk.profile.waist_site:
            self.desk.waist_site(event.site)
            self._remarks()
        self.query_one(Readings).field(0).focus()

    def action_back(self) -> None:
        self.keep_typed()
        previous = order.before(self.key)
        self._turn(previous) if previous else self.tapewise.go("start")

    def action_on(self) -> None:
        self.keep_typed()
        self._next()

    def action_find(self) -> None:
        self.keep_typed()
        self.app.push_screen(jump_dialog(self.desk, self.key), self._jumped)

    def _jumped(self, key: str | None) -> None:
        if key:
            self._turn(key)
        else:
            self.show()

    def action_take(self) -> None:
        says = measuring.estimate(self.desk, self.key)
        if says is None:
            self.warn(measuring.refused(self.desk) or "There is nothing to estimate it from yet.")
            return
        self._next(says)

    def action_confirm(self) -> None:
        self.keep_typed()
        if self.key not in self.desk.profile.values():
            self.warn("There is no reading to confirm yet.")
            return
        self._next(measuring.confirm(self.desk, (self.key,)))

    def action_change(self) -> None:
        self.tapewise.go("review")


def _how(definition: str, landmarks: str, how: str) -> Text:
    said = Text()
    for name, text in (("What: ", definition), ("Find: ", landmarks), ("Take: ", how)):
        said.append(name, "bold").append(text).append("\n")
    said.rstrip()
    return said
