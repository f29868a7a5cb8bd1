"""The app as far as it turns its pages: which one is on show, and what is said there."""

from __future__ import annotations

from textual.app import App
from textual.events import Event, Key

from tapewise_core.errors import TapewiseError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.work import Work
from tapewise_tui import tidying, trouble
from tapewise_tui.desk import Desk
from tapewise_tui.page import Page
from tapewise_tui.turning import PAGE_OF, Way, warm_up
from tapewise_tui.widgets.room import room


class TurningApp(App[None], inherit_bindings=False):
    """One desk, and the page that works at it."""

    HORIZONTAL_BREAKPOINTS = [(0, "-tiny"), (64, "-narrow"), (110, "-wide")]
    VERTICAL_BREAKPOINTS = [(0, "-short"), (20, "-low"), (34, "-tall")]

    def __init__(self, desk: Desk | None = None) -> None:
        super().__init__()
        self.desk = desk or Desk()
        self.way = Way()
        self.warm = self.tidies = False

    @property
    def page(self) -> Page | None:
        """The page on show, whatever dialog lies over it."""
        return next((s for s in reversed(self.screen_stack) if isinstance(s, Page)), None)

    @property
    def at_hand(self) -> Page | None:
        """The page on show, once it stands and while no dialog lies over it."""
        page = self.page
        return page if page is not None and page.stands and self.screen is page else None

    async def on_event(self, event: Event) -> None:
        """Let a number wait that is typed before there is a page to take it."""
        if not (isinstance(event, Key) and self._waits(event)):
            await super().on_event(event)

    def _waits(self, event: Key) -> bool:
        top = self.screen_stack[-1] if self.screen_stack else None
        return isinstance(top, Page) and top.waits(event)

    def go(self, name: str, say: str = "", warn: str = "") -> None:
        """Turn to a page; all but the first need a person."""
        page = self.page
        if page is None or name == page.NAME:
            return
        if name != "start" and self.desk.state.profile is None:
            page.warn("Choose a person first, or press Ctrl+N for a new one.")
            return
        if page.stands and not page.keep_typed():
            return
        self._turn(name, say, warn)

    def _turn(self, name: str, say: str = "", warn: str = "") -> None:
        new = PAGE_OF[name](self.desk)
        if self.page is not None:
            self.page.leave()
        new.first_says, new.first_warns = say, warn
        new.add_class(*self.room)
        self.switch_screen(new)

    @property
    def room(self) -> tuple[str, ...]:
        """The classes that say how much room a page has, so that a new one is laid out once."""
        return room(self.size, self.HORIZONTAL_BREAKPOINTS, self.VERTICAL_BREAKPOINTS)

    def shown(self, page: Page) -> None:
        """Keep a page as the one to go on with, now that it stands on the screen."""
        if self.page is page:
            self.way.stands(page.NAME)
            if page.NAME != "start":  # going back to the people leaves off nowhere
                self.desk.place(page.NAME)
            self._warm_up()
            if self.tidies:
                self.set_timer(tidying.REST, tidying.tidy)

    def _warm_up(self) -> None:
        """Once the first page stands, read what the others need."""
        if not self.warm:
            self.warm = True
            self.run_worker(self._read_ahead, thread=True, group="warm up")

    def _read_ahead(self) -> None:
        warm_up()
        if self.tidies:
            tidying.keep()

    def fall_back(self, page: Page, error: Exception) -> None:
        """Turn to the page before in place of one that cannot be shown, else to a plainer one."""
        if self.page is not page:
            return
        instead = self.way.instead_of(page.NAME)
        if instead is None:
            raise error
        self._turn(instead, warn=trouble.note(error))

    def say(self, sentence: str | TapewiseError, *, wrong: bool = False) -> None:
        """Say something on the page on show, whichever that is by now; one still being made says
        it once it stands."""
        page = self.page
        if page is None:
            return
        told = (
            self.desk.reader.spell(sentence.told)
            if isinstance(sentence, TapewiseError)
            else sentence
        )
        if page.stands:
            (page.warn if wrong else page.tell)(told)
        elif wrong:
            page.first_warns = told
        else:
            page.first_says = told

    def open_person(self, profile: Profile, page: str = "", made: Work | None = None) -> None:
        """Lay a person's measures and a project on the desk, and turn to a page.

        If none is named, it is the latest project and the page where it was left.

        Until that page stands on the screen, the first one is kept as the last: whatever ends
        the program on the way to it, the person can be opened again.
        """
        remark = self.desk.open(profile, made)
        last = page or self.desk.work.page
        self.desk.place("measure")
        self.go("measure" if last == "start" else last, warn=remark)
