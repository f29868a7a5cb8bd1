"""What every page of the wizard has: the tape on top, a line that speaks, keys at the foot."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import ClassVar, Protocol, cast

from textual import on
from textual.app import ComposeResult
from textual.binding import BindingType
from textual.containers import Container
from textual.events import ScreenResume
from textual.widget import Widget

from tapewise_core.errors import TapewiseError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.work import PAGES, Work
from tapewise_core.text.legible import legible
from tapewise_tui import keys
from tapewise_tui.desk import Desk
from tapewise_tui.typed_page import TypedPage
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.foot import Foot
from tapewise_tui.widgets.saying import Saying
from tapewise_tui.widgets.tape import PagesTape

ACTS = frozenset(row.action for row in keys.KEYS.values() if "." not in row.action)
"""What pages do by keys of their own."""


class Wizard(Protocol):
    """What a page asks of the app that turns the pages; the app alone knows which there are."""

    def go(self, name: str, say: str = "") -> None:
        """Turn to a page and say something on it."""

    def say(self, sentence: str | TapewiseError, *, wrong: bool = False) -> None:
        """Say something on the page on show, whichever that is by now."""

    def open_person(self, profile: Profile, page: str = "", made: Work | None = None) -> None:
        """Lay a person's measures and a project on the desk, if none is named the latest, and
        turn to a page, if none is named where it was left."""

    def switch_unit(self, kept: str = "") -> None:
        """Read and type in the other unit, and say what was kept before, if anything was."""

    def ask_which(self, page: Page) -> None:
        """Ask which reading counts, where another window changed the same measure."""

    def shown(self, page: Page) -> None:
        """Hear that a page stands on the screen."""

    def fall_back(self, page: Page, error: Exception) -> None:
        """Turn to another page in place of one that cannot be shown."""


class Page(TypedPage):
    """One page; ``NAME`` is its mark on the tape, ``PURPOSE`` what help says of it."""

    NAME: ClassVar[str] = "start"
    PURPOSE: ClassVar[str] = ""
    BINDINGS: ClassVar[list[BindingType]] = keys.of(*keys.EVERYWHERE)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.first_says = self.first_warns = ""
        self._fault: Exception | None = None

    @property
    def tapewise(self) -> Wizard:
        return cast(Wizard, self.app)

    def compose(self) -> ComposeResult:
        yield PagesTape(self.NAME)
        with Container(id="body"):
            yield from self._parts()
        yield Saying()
        yield Foot()

    def _parts(self) -> Iterable[Widget]:
        try:
            yield from self.parts()
        except Exception as error:  # the page is given up once it is mounted
            self._fault = error

    def parts(self) -> Iterable[Widget]:
        """Return what the page shows between tape and foot."""
        return ()

    def on_mount(self) -> None:
        """Show the page; one that cannot be shown, for whatever reason, makes room for another."""
        try:
            if self._fault is not None:
                raise self._fault
            self.begin()
            self.show()
        except Exception as error:
            self.app.call_later(self.tapewise.fall_back, self, error)
        else:
            self.call_after_refresh(self._stand)

    def on_screen_resume(self, event: ScreenResume) -> None:
        """A page that is only just made has its styles already."""
        event.refresh_styles = event.refresh_styles and self.stands

    def _compositor_refresh(self) -> None:
        """Draw nothing of a page that is still being made: it is drawn once, when it stands."""
        if self.stands:
            super()._compositor_refresh()

    def _stand(self) -> None:
        """Say what led here, what is wrong rather than what is well, now that the page stands."""
        if self.gone:
            return
        self.stands = True
        self.refresh_bindings()
        self.tapewise.shown(self)
        if self.early and self.query(Field):
            self.set_focus(self.query(Field).first())
            self.type_on(self.early)
        if self.first_says:
            self.tell(self.first_says)
        if self.first_warns:
            self.warn(self.first_warns)

    def leave(self) -> None:
        """Do nothing more: another page takes the place, whatever was pressed by then."""
        self.stands, self.gone = False, True

    def check_action(self, action: str, parameters: tuple[object, ...]) -> bool | None:
        """A page that is still being made, or left, does nothing, however fast one types."""
        return None if action in ACTS and not self.stands else True

    def begin(self) -> None:
        """Do what is done once, before the page is shown for the first time."""

    def show(self) -> None:
        """Draw the page afresh from the desk."""
        self._sign()

    def _sign(self) -> None:
        profile = self.desk.state.profile
        name = profile.name if profile else ""
        self.query_one(PagesTape).show(name, self.desk.unit.value)
        if self.desk.trouble or self.desk.asked:
            self.tell("")

    def keep_typed(self) -> bool:
        """Keep what is typed but not entered, before the page is left.

        Returns whether the page may be left: False where that was refused, which is said.
        """
        return True

    def tell(self, sentence: str) -> None:
        """Say what happened, or that the disk did not take it; a page that was left is silent."""
        if self.gone:
            return
        if self.desk.trouble:
            self.warn(f"Kept only until you leave: {self.desk.trouble}")
        elif self.desk.asked:
            self.warn(self.desk.question)
            self.app.call_later(self.tapewise.ask_which, self)
        else:
            self.query_one(Saying).tell(legible(sentence))

    def warn(self, trouble: str | TapewiseError) -> None:
        """Say what is wrong, an error in the reader's unit; a page that was left is silent."""
        if self.gone:
            return
        told = trouble.told if isinstance(trouble, TapewiseError) else trouble
        self.query_one(Saying).warn(legible(self.desk.reader.spell(told)))

    def commands(self) -> Iterable[tuple[str, Callable[[], object]]]:
        """Return what can be done here that has no key of its own, in words, and how."""
        return ()

    @on(PagesTape.Pointed)
    def point(self, event: PagesTape.Pointed) -> None:
        event.stop()
        self.tapewise.go(event.page)

    def action_unit(self) -> None:
        before = self.desk.past
        if self.keep_typed():
            self.tapewise.switch_unit("" if self.desk.past is before else self.desk.state.says)

    def action_back(self) -> None:
        place = PAGES.index(self.NAME)
        self.tapewise.go(PAGES[max(place - 1, 0)])

    def action_on(self) -> None:
        place = PAGES.index(self.NAME)
        self.tapewise.go(PAGES[min(place + 1, len(PAGES) - 1)])
