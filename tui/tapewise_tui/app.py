"""The terminal app: one desk, and the pages that work at it."""

from __future__ import annotations

import contextlib
import sys
from collections.abc import Callable, Iterable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, ClassVar

from textual.app import App, SystemCommand
from textual.binding import Binding, BindingType
from textual.screen import Screen

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people
from tapewise_core.tasks.settings import found, settings
from tapewise_core.tasks.work import PLACES, Work
from tapewise_core.units import Unit
from tapewise_tui import keys, tidying, trouble, words
from tapewise_tui.desk import Desk
from tapewise_tui.exits import BROKEN, WRONG
from tapewise_tui.page import Page, Wizard
from tapewise_tui.pages.start import StartPage
from tapewise_tui.terminal import PlainFilter, ascii_only, has_terminal, let_signs_pass, on_hang_up
from tapewise_tui.theme import THEMES
from tapewise_tui.turning import PAGE_OF, Way, warm_up

if TYPE_CHECKING:
    from tapewise_core.tasks.drafting import Drafted


class TapewiseApp(App[None], inherit_bindings=False):
    """Tapewise at a terminal."""

    TITLE = "Tapewise"
    CSS_PATH = Path(__file__).with_name("look.tcss")
    HORIZONTAL_BREAKPOINTS = [(0, "-tiny"), (64, "-narrow"), (110, "-wide")]
    VERTICAL_BREAKPOINTS = [(0, "-short"), (20, "-low"), (34, "-tall")]
    BINDINGS: ClassVar[list[BindingType]] = [
        *keys.of_the_app(),
        Binding("ctrl+c", "help_quit", show=False, system=True),
    ]

    def __init__(self, desk: Desk | None = None) -> None:
        super().__init__()
        self.desk = desk or Desk()
        self.way = Way()
        self.warm = self.tidies = False
        for theme in THEMES:
            self.register_theme(theme)
        self._first_look()
        if ascii_only():
            self._filters.append(PlainFilter())

    def _first_look(self) -> None:
        """Begin in the first look, so that the style sheet is read once, not twice."""
        self.set_reactive(App.theme, THEMES[0].name)
        self.stylesheet.set_variables(self.get_css_variables())

    def on_mount(self) -> None:
        on_hang_up(self._hang_up)
        self.push_screen(StartPage(self.desk))
        self.run_worker(self._tell_spoilt, thread=True, group="spoilt files")

    def _tell_spoilt(self) -> None:
        """Look at all files beside the work, and say on the first page which cannot be used."""
        says = _spoilt()
        if says:
            self.call_from_thread(self._warn_first, says)

    def _warn_first(self, says: str) -> None:
        if isinstance(self.page, StartPage):
            self.page.warn(says)

    def _hang_up(self) -> None:
        if self.page is not None and self.page.stands:
            with contextlib.suppress(TapewiseError):
                self.page.keep_typed()
        self.exit()

    def get_key_display(self, binding: Binding) -> str:
        return keys.shown(binding.key)

    @property
    def page(self) -> Page | None:
        """The page on show, whatever dialog lies over it."""
        return next((s for s in reversed(self.screen_stack) if isinstance(s, Page)), None)

    @property
    def at_hand(self) -> Page | None:
        """The page on show, once it stands and while no dialog lies over it."""
        page = self.page
        return page if page is not None and page.stands and self.screen is page else None

    def _handle_exception(self, error: Exception) -> None:
        """Show a person one sentence, never a traceback with her measures in it."""
        if self.is_headless:
            super()._handle_exception(error)
            return
        self._return_code = BROKEN
        self.panic(f"tapewise: {trouble.note(error)}")

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
        new.add_class(*self._room())
        self.switch_screen(new)

    def _room(self) -> frozenset[str]:
        """The classes that say how much room a screen has, so that a new page is laid out once."""
        names = {name for _, name in (*self.HORIZONTAL_BREAKPOINTS, *self.VERTICAL_BREAKPOINTS)}
        return self.screen.classes & names

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

    def ask_which(self, page: Page) -> None:
        """Ask which reading counts, where another window changed the same measure; one by one."""
        from tapewise_tui.dialogs.clash import ClashDialog

        desk = self.desk
        if desk.asked and self.screen is page:
            dialog = ClashDialog(desk.asked[0], desk.profile.name, desk.unit)

            def answered(mine: bool | None) -> None:
                self._answered(page, mine=bool(mine))
                page.type_on(dialog.typed)

            self.push_screen(dialog, answered)

    def _answered(self, page: Page, *, mine: bool) -> None:
        name = NAMES[self.desk.asked[0].key]
        self.desk.settle(mine=mine)
        page.show_again()
        page.tell(f"{name}: {'what was entered here' if mine else 'what is on file'} counts.")

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

    def action_turn(self, name: str) -> None:
        self.go(name)

    async def action_quit(self) -> None:
        """Keep what is typed and leave."""
        self._hang_up()

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

    def switch_unit(self) -> None:
        """Read and type in the other unit."""
        if self.desk.state.profile is None or self.page is None:
            return
        other = Unit.IN if self.desk.unit is Unit.CM else Unit.CM
        self.desk.change(f"unit {other.value}", self.desk.profile.with_unit(other))
        self.page.show()
        self.page.tell("Lengths are now read and typed in " + words.UNITS[other] + ".")

    def action_undo(self) -> None:
        nothing = "There is nothing to take back."
        if isinstance(self.page, StartPage):
            self._travel(self.page.undo, "Taken back", f"{nothing}{self.page.still_there}")
        else:
            self._travel(self.desk.undo, "Taken back", nothing)

    def action_redo(self) -> None:
        self._travel(self.desk.redo, "Made again", "There is nothing to make again.")

    def _travel(self, way: Callable[[], str | None], done: str, nothing: str) -> None:
        page = self.at_hand
        if page is None:
            return
        try:
            says = way()
        except TapewiseError as error:
            page.warn(error)
            return
        page.show()
        page.tell(f"{done}: {says}." if says else nothing)

    def action_command_palette(self) -> None:
        from tapewise_tui.dialogs.palette import Palette

        if not isinstance(self.screen, Palette):
            self.push_screen(Palette(id="--command-palette"))

    def action_help(self) -> None:
        page = self.at_hand
        if page is not None:
            from tapewise_tui.dialogs.help import HelpDialog

            self.push_screen(
                HelpDialog(page.NAME, page.PURPOSE, keys.at_work(page), page.cut_short())
            )

    def action_pages(self) -> None:
        if self.at_hand is not None:
            from tapewise_tui.dialogs.pages import PagesDialog

            self.push_screen(PagesDialog(), self._pointed)

    def _pointed(self, name: str | None) -> None:
        if name:
            self.go(name)

    def action_steps(self) -> None:
        """Show how to draft by hand what lies on the desk, page by page."""
        from tapewise_core.tasks.by_hand import hand_steps
        from tapewise_tui.dialogs.steps import StepsDialog

        made = self._drafted()
        if made is not None:
            self.push_screen(StepsDialog(hand_steps(made), self.desk.unit))

    def action_cloth(self) -> None:
        """Show how the pieces of what lies on the desk lie on the cloth."""
        from tapewise_tui.dialogs.lay import LayDialog

        if self._drafted() is not None:
            self.push_screen(LayDialog(self.desk), self._shown_again)

    def action_fitting(self) -> None:
        """Say what is seen when it is tried on, and keep what that changes."""
        from tapewise_tui.dialogs.fitting import FittingDialog

        if self.desk.state.profile is not None and self._drafted() is not None:
            self.push_screen(FittingDialog(self.desk), self._shown_again)

    def _drafted(self) -> Drafted | None:
        """What lies on the desk, drafted, if a page stands; where it can't be, the page says why.

        What is typed on the page is kept first.
        """
        from tapewise_tui import drafting

        page = self.at_hand
        if page is None:
            return None
        page.keep_typed()
        made = drafting.drafted(self.desk)
        if isinstance(made, str):
            page.warn(made)
            return None
        return made

    def _shown_again(self, _: object) -> None:
        """Draw the page anew once a dialog that may change what lies on the desk is closed."""
        if self.page is not None and self.page.stands:
            self.page.show()

    def action_look(self) -> None:
        """Change between chalk on cloth and ink on paper."""
        names = [theme.name for theme in THEMES]
        self.theme = names[(names.index(self.theme) + 1) % len(names)]
        self.desk.usual("look", self.theme)

    async def _act_on(self, screen: Screen[object], action: str) -> None:
        """Do something that was chosen for a page, if that stands."""
        if not isinstance(screen, Page) or screen.stands:
            await self.run_action(action, screen)

    def get_system_commands(self, screen: Screen[object]) -> Iterable[SystemCommand]:
        for name in PLACES:
            yield SystemCommand(f"Page: {name}", "Turn to this page", partial(self.go, name))
        if self.desk.state.profile is not None:
            says = words.sentence(keys.KEYS["fitting"].says)
            yield SystemCommand("Trying on", says, self.action_fitting)
        if isinstance(screen, Page):
            for name, do in screen.commands():
                yield SystemCommand(name, "", do)
        for row, says in keys.at_work(screen):
            act = partial(self._act_on, screen, row.action)
            yield SystemCommand(f"{row.word} ({keys.both(row)})", words.sentence(says), act)


_WIZARD: type[Wizard] = TapewiseApp
"""The app is what its pages expect; the type checker holds it."""


def _spoilt() -> str:
    """Say briefly which projects and settings cannot be used; the list tells of people's files."""
    from tapewise_core.tasks import damaged

    try:
        told = [f"“{one.title}” of {one.person or 'nobody here'}" for one in damaged.projects()]
        told += ["what is set once for all"] if found().fault else []
    except TapewiseError:  # the list of people says what is wrong
        return ""
    if not told:
        return ""
    more = f" and {len(told) - 2} more" if told[2:] else ""
    return f"Cannot be used: {', '.join(told[:2])}{more}. “tapewise doctor” says what would help."


def run() -> int:
    """Run the app in this terminal; return the exit code."""
    if not has_terminal():
        said = "The app needs a terminal; “tapewise --help” lists what works without."
        print(f"tapewise: {said}", file=sys.stderr)
        return WRONG
    let_signs_pass()
    with contextlib.suppress(TapewiseError):  # the first page says what is wrong
        people.store.tidy()
    app = TapewiseApp()
    app.tidies = True
    app.theme = settings().look or app.theme
    app.run()
    return app.return_code or 0
