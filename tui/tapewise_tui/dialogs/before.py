"""Before the first measure: what to wear, how to stand, is the tape true."""

from __future__ import annotations

from rich.table import Table
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical, VerticalScroll
from textual.widgets import Static

from tapewise_core.measures.advice import KNOW, before
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people
from tapewise_core.text.told import Reader
from tapewise_tui.widgets.dialog import Dialog

MORE = {"Read": " You are asked for both."}
"""What is to be said on the screen besides, after the advice for everywhere."""

HELP = "is wanted for the last ones; with two mirrors or a photograph you manage alone."


BEGINS = "Enter begins. A room that is warm is half the accuracy."
MORE_BELOW = "Down shows the rest."


class BeforeDialog(Dialog[None]):
    """A page of advice, once; for a child with what to heed in a child's clothes."""

    VERTICAL_BREAKPOINTS = [(0, "-short"), (20, "-tight"), (32, "-low")]
    BINDINGS = [Binding("enter,escape,space,f4", "dismiss", "Begin")]

    def __init__(self, profile: Profile, reader: Reader) -> None:
        super().__init__()
        self.profile, self.reader = profile, reader

    def compose(self) -> ComposeResult:
        with Vertical(id="card"):
            yield Static("Before the first measure", classes="heading")
            with VerticalScroll(id="advice-rows"):
                yield Static(self._table())
            yield Static(BEGINS, classes="quiet", id="begins", markup=False)

    def on_mount(self) -> None:
        self.call_after_refresh(self._say_more)

    def on_resize(self) -> None:
        self.call_after_refresh(self._say_more)

    def _say_more(self) -> None:
        """Say that there is more, where some of it lies below."""
        more = self.query_one("#advice-rows").max_scroll_y > 0
        self.query_one("#begins", Static).update(f"{MORE_BELOW} {BEGINS}" if more else BEGINS)

    def _table(self) -> Table:
        rows = Table.grid(padding=(0, 2, 0, 0))
        rows.add_column(style="bold", no_wrap=True)
        rows.add_column()
        for word, rest in before(bra=people.wears_bra(self.profile)):
            rows.add_row(word, self.reader.spell(rest) + MORE.get(word, ""))
        rows.add_row("Help", HELP)
        rows.add_row("Know", KNOW)
        for caution in people.for_child(self.profile):
            rows.add_row("Heed", self.reader.spell(caution))
        return rows
