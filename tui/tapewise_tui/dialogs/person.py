"""Who is being measured: name, unit, and whose bodies estimates are drawn from."""

from __future__ import annotations

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical, VerticalScroll
from textual.widgets import Input, Label, Static

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.body import Reference
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people import store
from tapewise_core.tasks.people_changes import aged
from tapewise_core.tasks.settings import settings
from tapewise_core.units import Unit
from tapewise_tui import words
from tapewise_tui.widgets.dialog import Dialog
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.toggles import OneOf, Radios

BUILDS = {
    Reference.WOMEN: "women's bodies",
    Reference.MEN: "men's bodies",
    Reference.NOT_SAID: "either: I'd rather not say",
}


class PersonDialog(Dialog[Profile | None]):
    """Asks for a new person, or changes what is known of one."""

    VERTICAL_BREAKPOINTS = [(0, "-short"), (22, "-low")]
    BINDINGS = [
        Binding("escape", "dismiss(None)", "Leave it"),
        Binding("f4,ctrl+s", "keep", "Keep"),
    ]

    def __init__(self, profile: Profile | None = None) -> None:
        super().__init__()
        self.profile = profile

    def compose(self) -> ComposeResult:
        unit = self.profile.unit if self.profile else Unit(settings().unit or Unit.CM)
        build = self.profile.reference if self.profile else Reference.NOT_SAID
        with Vertical(id="card"):
            yield Static("Who is measured?", classes="heading")
            with VerticalScroll(id="questions", can_focus=False):
                yield Label("Name, as it shall stand on the pattern")
                yield Field(self.named, id="name")
                yield Label("Lengths are typed in")
                yield Radios(
                    *(OneOf(word, one is unit) for one, word in words.UNITS.items()),
                    id="unit",
                    compact=True,
                )
                yield Label("Where a measure is missing, estimate it from")
                yield Radios(
                    *(OneOf(word, one is build) for one, word in BUILDS.items()),
                    id="build",
                    compact=True,
                )
                yield Label("Age in years, which sharpens estimates; leave it empty if you like")
                yield Field(self.aged, id="age")
            yield Static("", id="fault", classes="wrong", markup=False)
            yield Static("Enter: next · arrows: choose · F4: keep · Escape: leave", classes="quiet")

    def on_mount(self) -> None:
        self.query_one("#name", Field).put(self.profile.name if self.profile else "")
        self.query_one("#age", Field).put(self._age())

    def _age(self) -> str:
        known = self.profile.age if self.profile else None
        return "" if known is None else f"{known:g}"

    def named(self, _: str) -> None:
        """A name alone makes nobody: unit, bodies and age are asked too, each once."""
        try:
            self._named()
        except TapewiseError as error:
            self.query_one("#fault", Static).update(f"! {error}")
            return
        self.query_one("#fault", Static).update("")
        self.focus_next()

    def aged(self, _: str) -> None:
        """The last question is answered."""
        self.action_keep()

    def action_keep(self) -> None:
        """Make or change the person, or say what is wrong with name or age."""
        field = "#name"
        try:
            name = self._named()
            field = "#age"
            self.dismiss(self._made(name))
        except TapewiseError as error:
            self.query_one("#fault", Static).update(f"! {error}")
            self.query_one(field, Input).focus()
            if field == "#age":
                self.query_one("#age", Field).refused()

    def _made(self, name: str) -> Profile:
        age = self.query_one("#age", Input).value
        unit = list(words.UNITS)[self.query_one("#unit", Radios).chosen]
        build = list(BUILDS)[self.query_one("#build", Radios).chosen]
        if self.profile is None:
            return aged(Profile.of(name, unit=unit, reference=build), age)
        changed = aged(self.profile.with_unit(unit).with_reference(build), age)
        return changed if name == self.profile.name else changed.with_name(name)

    def _named(self) -> str:
        """The name typed; raises TapewiseError for what is none, or somebody else's."""
        name = " ".join(self.query_one("#name", Input).value.split())
        if self.profile is None or name != self.profile.name:
            Profile.of(name)
            self._refuse_twice(name)
        return name

    def _refuse_twice(self, name: str) -> None:
        if any(entry.name.casefold() == name.casefold() for entry in store.listing()):
            raise TapewiseError(f"There is somebody called {name} already; add a second name.")
