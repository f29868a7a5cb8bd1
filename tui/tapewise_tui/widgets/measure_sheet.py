"""One measure as it is taken: its figure, how to take it, its readings, and what they say."""

from __future__ import annotations

from collections.abc import Callable

from rich.text import Text
from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical, VerticalScroll
from textual.widgets import Static

from tapewise_core.measures.body import WaistSite
from tapewise_core.measures.catalogue import measure
from tapewise_core.tasks import people
from tapewise_core.tasks.figure import figure_of
from tapewise_tui import progress, readings_told
from tapewise_tui.desk import Desk
from tapewise_tui.widgets.readings import Readings
from tapewise_tui.widgets.site import SiteField
from tapewise_tui.widgets.sure import SureLine
from tapewise_tui.widgets.trail import Trail
from tapewise_tui.widgets_drawn import FigureView


class MeasureSheet(Horizontal):
    """What the page shows of the measure at hand; ``entered`` takes what is typed."""

    def __init__(self, desk: Desk, entered: Callable[[int, str], None]) -> None:
        super().__init__(id="sheet")
        self.desk, self.entered = desk, entered

    def compose(self) -> ComposeResult:
        yield FigureView()
        with Vertical(id="words"):
            with VerticalScroll(id="how", can_focus=False):
                yield Static("", id="how-text")
            yield SiteField(self.desk.profile.waist_site)
            yield Readings(self.entered)
            yield Static("", id="standing", markup=False)
            yield Static("", id="others", markup=False)
            yield Static("", id="skipped", markup=False)
            yield SureLine(id="open")
        yield Trail()

    def show(self, key: str) -> None:
        """Show how a measure is taken."""
        row, desk = measure(key), self.desk
        self.query_one(FigureView).show(key, figure_of(desk.profile, desk.check.body))
        find = desk.reader.spell(row.find(bra=people.wears_bra(desk.profile)))
        self.query_one("#how-text", Static).update(_how(row.definition, find, row.how))
        self.query_one(SiteField).display = key == "waist"
        self.query_one(SiteField).show(desk.profile.waist_site)
        self.query_one("#how").scroll_home(animate=False)

    def ask(self, key: str) -> None:
        """Give the keyboard to what is asked first: where the waist is, else the reading."""
        if key == "waist" and self.desk.profile.waist_site is WaistSite.NOT_SAID:
            self.query_one(SiteField).ask()
        else:
            self.query_one(Readings).field.focus()

    def show_readings(self, key: str, at: int, *, brief: bool) -> None:
        """Show the readings, one of them in the field, and what is to be said of them."""
        desk = self.desk
        self.query_one(Readings).show(readings_told.spelt(desk, key), desk.unit.value, at)
        others, skipped = readings_told.others(desk, key)
        kept = key not in desk.check.missing
        self.query_one(Trail).show(desk, key)
        self.query_one("#standing", Static).update(f"Kept: {readings_told.standing(desk, key)}")
        self.query_one("#standing").display = kept
        self.query_one("#others", Static).update(others)
        self.query_one("#skipped", Static).update(skipped)
        self.query_one("#skipped").display = not kept
        there, helps = progress.still_open(desk, brief=brief)
        self.query_one(SureLine).show(there, "" if brief else helps, desk)


def _how(definition: str, landmarks: str, how: str) -> Text:
    said = Text()
    for name, text in (("What: ", definition), ("Find: ", landmarks), ("Take: ", how)):
        said.append(name, "bold").append(text).append("\n")
    said.rstrip()
    return said
