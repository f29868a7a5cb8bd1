"""The app as far as it acts on the page on show, whichever that is: what its own keys do."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from tapewise_core.errors import TapewiseError
from tapewise_core.units import Unit
from tapewise_tui import keys, words
from tapewise_tui.pages.start import StartPage
from tapewise_tui.theme import THEMES
from tapewise_tui.turning_app import TurningApp
from tapewise_tui.widgets.room import cut_short

if TYPE_CHECKING:
    from tapewise_core.tasks.drafted import Drafted


class ActingApp(TurningApp, inherit_bindings=False):
    """Taking back, the other unit, another look, and what is shown over a page."""

    def switch_unit(self, kept: str = "") -> None:
        """Read and type in the other unit, and say what was kept before, if anything was."""
        if self.desk.state.profile is None or self.page is None:
            return
        other = Unit.IN if self.desk.unit is Unit.CM else Unit.CM
        self.desk.change(f"unit {other.value}", self.desk.profile.with_unit(other))
        self.page.show()
        first = f"{words.sentence(kept)} is kept. " if kept else ""
        self.page.tell(f"{first}Lengths are now read and typed in {words.UNITS[other]}.")

    def action_turn(self, name: str) -> None:
        self.go(name)

    def action_undo(self) -> None:
        nothing = "There is nothing to take back."
        if isinstance(self.page, StartPage):
            self._travel(self.desk.undo_any, "Taken back", f"{nothing}{self.page.still_there}")
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
            self.push_screen(Palette())

    def action_help(self) -> None:
        page = self.at_hand
        if page is not None:
            from tapewise_tui.dialogs.help import HelpDialog

            self.push_screen(
                HelpDialog(page.NAME, page.PURPOSE, keys.at_work(page), cut_short(page))
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
