"""The readings of one measure in one row: those kept as text, the one at hand in a field."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Horizontal
from textual.widgets import Label

from tapewise_tui.widgets.field import Field

NAMES = ("1st", "2nd", "3rd", "4th", "5th")


class Readings(Horizontal):
    """Up and down go to the reading before and after; an emptied one is taken off."""

    BINDINGS = [
        Binding("up", "step(-1)", "Reading before", tooltip="to the reading before", show=False),
        Binding("down", "step(1)", "Next reading", tooltip="to the next reading", show=False),
    ]

    def __init__(self, entered: Callable[[int, str], None]) -> None:
        super().__init__()
        self._entered = entered
        self.index = 0
        self.spelt: tuple[str, ...] = ()
        self.unit = ""

    def compose(self) -> ComposeResult:
        yield Label("", id="before", markup=False)
        yield Field(lambda text: self._entered(self.index, text), id="reading")
        yield Label("", id="behind", markup=False)

    def show(self, spelt: Sequence[str], unit: str, at: int = 0) -> None:
        """Show readings as they are typed, one of them, or a new one behind them, in the field."""
        self.spelt, self.unit = tuple(spelt), unit
        self.index = min(at, len(self.spelt))
        self.field.put(self._at_hand)
        before = [f"{name} {text}" for name, text in self._named if name in NAMES[: self.index]]
        behind = [f"{name} {text}" for name, text in self._named[self.index + 1 :]]
        self.query_one("#before", Label).update("  ".join([*before, NAMES[self.index]]))
        self.query_one("#behind", Label).update("  ".join([unit, *behind]))

    @property
    def field(self) -> Field:
        """What is typed into."""
        return self.query_one(Field)

    @property
    def typed(self) -> str | None:
        """What was typed and not entered yet; None if the field is as it was shown."""
        field = self.field
        return field.value.strip() if field.value.strip() and field.touched else None

    @property
    def _at_hand(self) -> str:
        return self.spelt[self.index] if self.index < len(self.spelt) else ""

    @property
    def _named(self) -> list[tuple[str, str]]:
        return list(zip(NAMES, self.spelt, strict=False))

    def action_step(self, by: int) -> None:
        """Go to another reading; what is typed counts first."""
        wanted = self.index + by
        if self.typed is not None:
            self._entered(self.index, self.typed)
        elif 0 <= wanted <= min(len(self.spelt), len(NAMES) - 1):
            self.show(self.spelt, self.unit, wanted)
