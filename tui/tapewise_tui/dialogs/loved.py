"""A garment that fits: its name and what it measures flat, each asked once."""

from __future__ import annotations

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical, VerticalScroll
from textual.widgets import Input, Label, Static

from tapewise_core.errors import TapewiseError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.loved.flat import FLAT
from tapewise_core.tasks.loved.keeping import called, loved_of, with_loved
from tapewise_core.tasks.loved.noticing import odd
from tapewise_core.tasks.people import body_of
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui.widgets.dialog import Dialog
from tapewise_tui.widgets.field import Field

STRETCH = "How far its cloth stretches across, in %"


class LovedDialog(Dialog[tuple[str, Profile] | None]):
    """Returns the garment's name and the person who has it; nothing where it was left.

    What is unlikely is told once; kept again, it stays as it was typed.
    """

    AUTO_FOCUS = ""
    VERTICAL_BREAKPOINTS = [(0, "-short"), (22, "-low")]
    BINDINGS = [
        Binding("escape", "dismiss(None)", "Leave it"),
        Binding("f4,ctrl+s", "keep", "Keep"),
    ]

    def __init__(self, profile: Profile, unit: Unit) -> None:
        super().__init__()
        self.profile, self.unit = profile, unit
        self.told: tuple[str, ...] = ()

    def compose(self) -> ComposeResult:
        with Vertical(id="card", classes="tall"):
            yield Static("A garment that fits", classes="heading")
            with VerticalScroll(id="questions", can_focus=False):
                yield Label("What it is called; then lay it flat, closed, without stretching")
                yield Field(self._next, id="name")
                for row in FLAT:
                    asked = f"{row.name.capitalize()} [{self.unit.value}]: {row.says}"
                    yield Label(asked, markup=False)
                    yield Field(self._next, id=row.key)
                yield Label(STRETCH)
                yield Field(self._last, id="stretch")
            yield Static("", id="fault", classes="wrong", markup=False)
            yield Static(
                "Enter: next, leave empty what you like · F4: keep · Escape: leave",
                classes="quiet",
            )

    def on_mount(self) -> None:
        """Begin at the top: brought into sight before it is laid out, its label would not be."""
        self.set_focus(self.query_one("#name", Field), scroll_visible=False)

    def _next(self, _: str) -> None:
        """On to the next question, unless what was typed cannot be read."""
        at = self.focused.id if self.focused else None
        if at is not None and self._reads(at):
            self._say("")
            self.focus_next()

    def _last(self, _: str) -> None:
        self.action_keep()

    def _reads(self, key: str) -> bool:
        """Whether one answer can be read; says what is wrong where it cannot, and stays there."""
        trial = [] if key in ("name", "bust") else ["bust=1"]
        settings = [*trial, f"{key}={self._typed(key)}"]
        try:
            if key == "name":
                called(self._typed(key))
            elif self._typed(key):
                with_loved(self.profile, "trial", settings, self.unit)
        except TapewiseError as error:
            self._say(Reader(self.unit).spell(error.told))
            field = self.query_one(f"#{key}", Field)
            field.focus()
            if key != "name":
                field.refused()
            return False
        return True

    def action_keep(self) -> None:
        """Keep it, or say what is wrong, or once what is unlikely."""
        name = self._typed("name")
        try:
            profile = self._made(name)
        except TapewiseError as error:
            self._say(Reader(self.unit).spell(error.told))
            return
        doubts = odd(loved_of(profile, name), body_of(profile)[0])
        told = tuple(Reader(self.unit).spell(one.says) for one in doubts)
        if doubts and told != self.told:
            self.told = told
            self._say(f"{told[0]} F4 again keeps it so.")
            self.query_one(f"#{doubts[0].key}", Input).focus()
            return
        self.dismiss((name, profile))

    def _made(self, name: str) -> Profile:
        """The person with it; raises TapewiseError for the first thing that is wrong."""
        rows = ("stretch", *(row.key for row in FLAT))
        typed = [(key, self._typed(key)) for key in rows]
        settings = [f"{key}={text}" for key, text in typed if text]
        return with_loved(self.profile, name, settings, self.unit)

    def _typed(self, key: str) -> str:
        return " ".join(self.query_one(f"#{key}", Input).value.split())

    def _say(self, says: str) -> None:
        self.query_one("#fault", Static).update(f"! {says}" if says else "")
