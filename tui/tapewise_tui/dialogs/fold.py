"""A cloth tried: how far it stretches by the fold test, and what its first wash takes off."""

from __future__ import annotations

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Horizontal, Vertical, VerticalScroll
from textual.widgets import Input, Label, Static

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks import cloth_tests
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui.widgets.dialog import Dialog

FOLD = (
    "Fold the washed cloth across, a hand's breadth from the cut edge. Mark {marked} on the "
    "fold with two pins. Hold one pin at the ruler's end and pull the other until the cloth "
    "resists; do not force it. Read where the second pin is. Then let go: cloth that stays "
    "long will not hold a neckline."
)

WASH = (
    "The wash test: mark a square of {square} on unwashed cloth, wash and dry it as the garment "
    "will be, and measure it again."
)

ASKED = {
    "stretch": "The {marked} across reach",
    "stretch-along": "Folded lengthwise, {marked} along reach",
    "shrinkage": "After its wash the {square} along are",
    "shrinkage-across": "After its wash the {square} across are",
}
"""What is read, by the option that it finds out."""

FOUND = {
    "stretch": "a stretch of {} %",
    "stretch-along": "{} % along",
    "shrinkage": "{} % shrinkage",
    "shrinkage-across": "{} % across",
}
"""What a reading says."""


def told(words: str, unit: Unit) -> str:
    """Return a sentence above with what is marked on the cloth, in the reader's unit."""
    marked, square = cloth_tests.FOLD[unit], cloth_tests.SQUARE[unit]
    return words.format(marked=unit.spell(marked), square=unit.spell(square))


class FoldDialog(Dialog[dict[str, str] | None]):
    """Returns the cloth's options that were found out, as they are typed."""

    BINDINGS = [Binding("escape", "dismiss(None)", "Leave it")]

    def __init__(self, unit: Unit) -> None:
        super().__init__()
        self.unit = unit

    def compose(self) -> ComposeResult:
        with Vertical(id="card"):
            yield Static("The fold test", classes="heading")
            with VerticalScroll(id="how-folded", classes="told", can_focus=False):
                yield Static(told(FOLD, self.unit), markup=False)
            yield from self._fields("stretch", "stretch-along")
            yield Static(told(WASH, self.unit), classes="gap", markup=False)
            yield from self._fields("shrinkage", "shrinkage-across")
            yield Static("", id="fault", classes="wrong", markup=False)
            yield Static(
                "Tab: next · Enter: keep what is filled in · Escape: leave", classes="quiet"
            )

    def _fields(self, *keys: str) -> ComposeResult:
        for key in keys:
            with Horizontal():
                yield Label(told(ASKED[key], self.unit))
                yield Input(placeholder=self.unit.value, compact=True, name=key)

    def _typed(self) -> dict[str, str]:
        return {str(field.name): field.value for field in self.query(Input)}

    @on(Input.Changed)
    def tried(self, event: Input.Changed) -> None:
        try:
            found = cloth_tests.tested(self._typed(), self.unit)
        except TapewiseError:
            found = {}
        said = ", ".join(FOUND[key].format(value) for key, value in found.items())
        self.query_one("#fault", Static).update(f"That is {said}." if said else "")

    @on(Input.Submitted)
    def keep(self, event: Input.Submitted) -> None:
        try:
            found = cloth_tests.tested(self._typed(), self.unit)
        except TapewiseError as error:
            said = Reader(self.unit).spell(error.told)
            self.query_one("#fault", Static).update(f"! {said}")
            return
        self.dismiss(found or None)
