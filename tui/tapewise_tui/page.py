"""What every page of the wizard has: the tape on top, a line that speaks, keys at the foot."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING, ClassVar, cast

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Container
from textual.screen import Screen
from textual.widget import Widget
from textual.widgets import Footer

from tapewise_core.errors import TapewiseError
from tapewise_tui.desk import Desk
from tapewise_tui.widgets.saying import Saying
from tapewise_tui.widgets.tape import PAGES, Tape

if TYPE_CHECKING:
    from tapewise_tui.app import TapewiseApp

PAGES_KEY = Binding("f9", "app.pages", "Pages", tooltip="turn to any page")
"""Every page's last key."""


class Page(Screen[None]):
    """One page; ``NAME`` is its mark on the tape, ``PURPOSE`` what help says of it."""

    NAME: ClassVar[str] = "start"
    PURPOSE: ClassVar[str] = ""
    HORIZONTAL_BREAKPOINTS = [(0, "-tiny"), (64, "-narrow"), (110, "-wide")]
    VERTICAL_BREAKPOINTS = [(0, "-low"), (34, "-tall")]
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("f1", "app.help", "Help", tooltip="what this page is for, and its keys"),
        Binding("f2", "unit", "cm/in", tooltip="read and type in the other unit"),
        Binding("f3", "back", "Back", tooltip="to the page before"),
        Binding("f4", "on", "On", tooltip="to the next page"),
        Binding("ctrl+z", "app.undo", "Undo", show=False, tooltip="take the last change back"),
        Binding("ctrl+y", "app.redo", "Redo", show=False, tooltip="make it again"),
    ]

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk

    @property
    def tapewise(self) -> TapewiseApp:
        return cast("TapewiseApp", self.app)

    def compose(self) -> ComposeResult:
        yield Tape(self.NAME)
        with Container(id="body"):
            yield from self.parts()
        yield Saying()
        yield Footer(show_command_palette=False, compact=True)

    def parts(self) -> Iterable[Widget]:
        """Return what the page shows between tape and foot."""
        return ()

    def on_mount(self) -> None:
        self.desk.place(self.NAME)
        self.show()

    def show(self) -> None:
        """Draw the page afresh from the desk."""
        self._sign()

    def _sign(self) -> None:
        profile = self.desk.state.profile
        name = profile.name if profile else ""
        self.query_one(Tape).show(name, self.desk.unit.value)
        if self.desk.trouble:
            self.tell("")

    def keep_typed(self) -> None:
        """Keep what is typed but not entered, before the page is left."""

    def tell(self, sentence: str) -> None:
        """Say what happened, or that the disk did not take it."""
        if self.desk.trouble:
            self.warn(f"Kept only until you leave: {self.desk.trouble}")
        else:
            self.query_one(Saying).tell(sentence)

    def warn(self, trouble: str | TapewiseError) -> None:
        """Say what is wrong, an error in the reader's unit."""
        told = trouble.told if isinstance(trouble, TapewiseError) else trouble
        self.query_one(Saying).warn(self.desk.reader.spell(told))

    @on(Tape.Pointed)
    def point(self, event: Tape.Pointed) -> None:
        event.stop()
        self.tapewise.go(event.page)

    def action_unit(self) -> None:
        self.keep_typed()
        self.tapewise.switch_unit()

    def action_back(self) -> None:
        place = PAGES.index(self.NAME)
        self.tapewise.go(PAGES[max(place - 1, 0)])

    def action_on(self) -> None:
        place = PAGES.index(self.NAME)
        self.tapewise.go(PAGES[min(place + 1, len(PAGES) - 1)])
