"""The fold test: how far the cloth stretches, from two marks and a ruler."""

from __future__ import annotations

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.screen import ModalScreen
from textual.widgets import Input, Label, Static

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks import wizard
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

HOW = (
    "Fold the washed cloth across, a hand's breadth from the cut edge. Mark {marked} on the "
    "fold with two pins. Hold one pin at the ruler's end and pull the other until the cloth "
    "resists; do not force it. Read where the second pin is. Then let go: cloth that stays "
    "long will not hold a neckline."
)


class FoldDialog(ModalScreen[float | None]):
    """Returns the stretch in per cent."""

    BINDINGS = [Binding("escape", "dismiss(None)", "Leave it")]

    def __init__(self, unit: Unit) -> None:
        super().__init__()
        self.unit = unit

    def compose(self) -> ComposeResult:
        marked = self.unit.spell(wizard.FOLD[self.unit])
        with Vertical(id="card"):
            yield Static("The fold test", classes="heading")
            yield Static(HOW.format(marked=marked), markup=False)
            yield Label(f"The {marked} reach", classes="gap")
            yield Input(placeholder=self.unit.value, compact=True)
            yield Static("", id="fault", classes="wrong", markup=False)
            yield Static("Enter keeps it · Escape leaves it", classes="quiet")

    @on(Input.Changed)
    def tried(self, event: Input.Changed) -> None:
        try:
            stretch = wizard.stretch_from_fold(event.value, self.unit)
        except TapewiseError:
            self.query_one("#fault", Static).update("")
            return
        self.query_one("#fault", Static).update(f"That is a stretch of {stretch:g} %.")

    @on(Input.Submitted)
    def keep(self, event: Input.Submitted) -> None:
        try:
            self.dismiss(wizard.stretch_from_fold(event.value, self.unit))
        except TapewiseError as error:
            said = Reader(self.unit).spell(error.told)
            self.query_one("#fault", Static).update(f"! {said}")
