"""Small questions: a line of text, or yes or no."""

from __future__ import annotations

from collections.abc import Callable

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.widgets import Input, Static

from tapewise_tui.widgets.dialog import Dialog


class AskDialog(Dialog[str | None]):
    """Returns the line typed, or None if it was left.

    ``fault`` says what is wrong with a line, or nothing; what is wrong stays, to be mended.
    """

    BINDINGS = [Binding("escape", "dismiss(None)", "Leave it")]

    def __init__(
        self,
        title: str,
        says: str,
        value: str = "",
        fault: Callable[[str], str] = lambda text: "",
    ) -> None:
        super().__init__()
        self.heading, self.says, self.value = title, says, value
        self.fault = fault

    def compose(self) -> ComposeResult:
        with Vertical(id="card"):
            yield Static(self.heading, classes="heading", markup=False)
            yield Static(self.says, markup=False)
            yield Input(self.value, compact=True, id="answer")
            yield Static("", id="fault", classes="wrong", markup=False)
            yield Static("Enter keeps it · Escape leaves it", classes="quiet")

    @on(Input.Submitted)
    def answered(self, event: Input.Submitted) -> None:
        event.stop()
        text = " ".join(event.value.split())
        fault = self.fault(text)
        if fault:
            self.query_one("#fault", Static).update(f"! {fault}")
        else:
            self.dismiss(text)


class SureDialog(Dialog[bool]):
    """Returns whether it shall be done; Enter and Escape mean no."""

    BINDINGS = [
        Binding("escape,enter,n", "dismiss(False)", "No"),
        Binding("y,f6", "dismiss(True)", "Yes"),
    ]

    def __init__(self, title: str, says: str) -> None:
        super().__init__()
        self.heading, self.says = title, says

    def compose(self) -> ComposeResult:
        with Vertical(id="card"):
            yield Static(self.heading, classes="heading", markup=False)
            yield Static(self.says, markup=False)
            yield Static("Y: yes · Enter: no", classes="gap")
