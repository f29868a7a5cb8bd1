"""Which machines there are; stitches and stretch of the seams follow from that."""

from __future__ import annotations

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.widgets import Static

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks import wizard
from tapewise_tui.widgets.dialog import Dialog
from tapewise_tui.widgets.toggles import Tick


class MachinesDialog(Dialog[tuple[str, ...] | None]):
    """Returns the names of the machines ticked."""

    BINDINGS = [
        Binding("escape", "dismiss(None)", "Leave it"),
        Binding("down", "app.focus_next", "Next line", show=False),
        Binding("up", "app.focus_previous", "Line before", show=False),
        Binding("f4,enter", "keep", "Keep"),
    ]

    def __init__(self, machines: tuple[str, ...]) -> None:
        super().__init__()
        self.machines = machines

    def compose(self) -> ComposeResult:
        with Vertical(id="card"):
            yield Static("Which machines do you have?", classes="heading")
            for name, words in wizard.MACHINES.items():
                yield Tick(words, name in self.machines, id=name, compact=True)
            yield Static("", id="fault", classes="wrong", markup=False)
            yield Static(
                "Arrows choose · Space ticks · Enter keeps it · Escape leaves it", classes="quiet"
            )

    def action_keep(self) -> None:
        ticked = tuple(name for name in wizard.MACHINES if self.query_one(f"#{name}", Tick).value)
        if not ticked:
            self._say("Space ticks the line marked; at least one is wanted, if it is by hand.")
            return
        try:
            wizard.machines(ticked)
        except TapewiseError as error:
            self._say(str(error))
            return
        self.dismiss(ticked)

    def _say(self, says: str) -> None:
        self.query_one("#fault", Static).update(f"! {says}")
