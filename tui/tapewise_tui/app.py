"""The terminal app: one desk, and the pages that work at it."""

from __future__ import annotations

import contextlib
import sys
from collections.abc import Iterable
from functools import partial
from pathlib import Path
from typing import ClassVar

from textual.app import App, SystemCommand
from textual.binding import Binding, BindingType
from textual.screen import Screen

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.tasks import people
from tapewise_core.tasks.settings import found, settings
from tapewise_core.tasks.work import PLACES
from tapewise_tui import keys, trouble, words
from tapewise_tui.acting_app import ActingApp
from tapewise_tui.desk import Desk
from tapewise_tui.exits import BROKEN, WRONG
from tapewise_tui.page import Page, Wizard
from tapewise_tui.pages.start import StartPage
from tapewise_tui.terminal import PlainFilter, ascii_only, has_terminal, let_signs_pass, on_hang_up
from tapewise_tui.theme import THEMES


class TapewiseApp(ActingApp, inherit_bindings=False):
    """Tapewise at a terminal."""

    TITLE = "Tapewise"
    CSS_PATH = Path(__file__).with_name("look.tcss")
    BINDINGS: ClassVar[list[BindingType]] = [
        *keys.of_the_app(),
        Binding("ctrl+c", "help_quit", show=False, system=True),
    ]

    def __init__(self, desk: Desk | None = None) -> None:
        super().__init__(desk)
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
        first = StartPage(self.desk)
        first.add_class(*self.room)
        self.push_screen(first)
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

    def _handle_exception(self, error: Exception) -> None:
        """Show a person one sentence, never a traceback with her measures in it."""
        if self.is_headless:
            super()._handle_exception(error)
            return
        self._return_code = BROKEN
        self.panic(f"tapewise: {trouble.note(error)}")

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

    async def action_quit(self) -> None:
        """Keep what is typed and leave."""
        self._hang_up()

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
