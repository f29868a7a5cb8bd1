"""Garment: style, cloth and machines, with the pattern drawn live beside them."""

from __future__ import annotations

import contextlib
from collections.abc import Iterable, Sequence

from msgspec.structs import replace
from textual import on
from textual.containers import Horizontal
from textual.events import DescendantFocus, Key
from textual.widget import Widget

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks import ticking, wizard, work
from tapewise_core.tasks.settings import settings
from tapewise_core.tasks.work import Work
from tapewise_tui import choosing, drafting, keys, liking, noting, reviewing, words
from tapewise_tui.desk import Desk
from tapewise_tui.dialogs.fold import FoldDialog
from tapewise_tui.dialogs.machines import MachinesDialog
from tapewise_tui.line import Line
from tapewise_tui.page import Page
from tapewise_tui.widgets.choices import MOVES, Choices
from tapewise_tui.widgets.find import FindDialog
from tapewise_tui.widgets.live import LivePattern
from tapewise_tui.widgets.passage import Passage
from tapewise_tui.widgets_drawn import PatternView

ON_PATTERN = "Left and right mark a piece of the pattern; any other key goes back to the choices."
"""What is said while the pattern has the keyboard."""


class GarmentPage(Page):
    """Options and their pattern."""

    NAME = "garment"
    PURPOSE = (
        "Change what you like; the pattern beside is drawn afresh as you type, and so are the "
        "proofs below it. Left and right take another word, Enter lists them all; a number is "
        "typed where the cursor stands, and Backspace or Delete goes back to the usual value. A "
        "star marks what you chose. Letters go to a line; Ctrl+L shows every choice."
    )
    BINDINGS = keys.of(
        "piece",
        "find",
        "steps",
        "cloth",
        "all",
        on="on to the proofs",
        take="make the change that a failing proof offers",
        change="go to what is missing or fails, to change it",
    )

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.rows: tuple[wizard.OptionRow, ...] = ()
        self.every = self.offers = False
        self.told = ""

    def parts(self) -> Iterable[Widget]:
        with Horizontal(id="sheet"):
            yield Choices(self.take)
            yield LivePattern(self.desk)
        yield Passage("verdict")

    def show(self) -> None:
        super().show()
        made = self.desk.work
        self.rows = wizard.option_rows(self.desk.profile, made.garment, made.asked, self.desk.unit)
        lines = choosing.lines(self.desk, self.rows, self.every)
        self.query_one(Choices).fill(lines)
        self.query_one(LivePattern).show(made)

    def begin(self) -> None:
        self.query_one(Choices).focus()
        self.first_says = self.first_says or noting.told(self.desk)
        if self.desk.marked:
            self.call_after_refresh(self.found, self.desk.marked)
            self.desk.marked = ""
        if not self.desk.asked_machines and not settings().machines:
            self.desk.asked_machines = True
            self.app.call_later(self._machines)

    @on(LivePattern.Judged)
    def judged(self, event: LivePattern.Judged) -> None:
        """Say how the proofs stand, or what is missing."""
        if self.gone:
            return
        self.query_one("#verdict", Passage).update(event.says)
        offers = self.query_one(LivePattern).mended() is not None
        if offers is not self.offers:
            self.offers = offers
            self.refresh_bindings()

    def check_action(self, action: str, parameters: tuple[object, ...]) -> bool | None:
        """What is not offered now has no key in the footer."""
        if action == "take" and self.stands:
            return self.offers
        return super().check_action(action, parameters)

    @on(DescendantFocus)
    def focus_moved(self, event: DescendantFocus) -> None:
        """Say how one gets away again, where the pattern has the keyboard."""
        if isinstance(event.widget, PatternView) and self.stands:
            self.tell(ON_PATTERN)

    def on_key(self, event: Key) -> None:
        """Whatever the pattern has no use for goes back to the choices."""
        choices = self.query_one(Choices)
        if isinstance(self.focused, PatternView) and (event.is_printable or event.key in MOVES):
            event.stop()
            choices.catch(event)

    @on(Choices.Marked)
    def about(self, event: Choices.Marked) -> None:
        """Say what the line with the cursor is about; on arrival, what led here comes first."""
        arrived, self.told = not self.told, event.key
        if not (arrived and (self.first_warns or self.first_says)):
            self.tell(choosing.about(event.key, self.rows, self.desk.work.garment))

    @on(Choices.Opened)
    def opened(self, event: Choices.Opened) -> None:
        """Open what a line is for: a question, or a list of words."""
        ways = {
            choosing.MACHINES: self._machines,
            choosing.FOLD: self._fold,
            choosing.LIKE: lambda: liking.begin(self, self._kept),
            choosing.BUY: self._cloth,
            choosing.ALL: self.action_all,
        }
        line = self.query_one(Choices).at
        if event.key in ways:
            ways[event.key]()
        elif line is not None and line.words:
            self._list(event.key, line.words, line.value)

    def _list(self, key: str, choices: tuple[str, ...], at: str) -> None:
        title, lines = choosing.words_of(key, choices, self.rows)

        def take(word: str | None) -> None:
            if word is not None and word != at:
                self.take(key, word)

        self.app.push_screen(FindDialog(title, lines, at), take)

    def take(self, key: str, text: str) -> bool:
        """Keep a word or what was typed for a line, an empty text for the usual.

        Says why not and returns False where it cannot be kept.
        """
        if key != choosing.GARMENT:
            return self._settle(key, text)
        name = next(page.name for page in wizard.garments() if page.title == text)
        self.desk.change(name, made=work.of_garment(self.desk.work, name))
        self.show()
        self.tell(noting.told(self.desk) or choosing.about(key, self.rows, name))
        return True

    @on(Choices.Tried)
    def typed(self, event: Choices.Tried) -> None:
        """Try what is typed on the pattern, without keeping it yet."""
        event.stop()
        with contextlib.suppress(TapewiseError):
            self.query_one(LivePattern).show(self._tried(event.key, event.text))

    def _tried(self, key: str, text: str) -> Work:
        made = self.desk.work
        if not text:
            return made.with_option(key, None)
        plain = wizard.plainly(made.garment, key, text, self.desk.unit)
        return made.with_option(key, plain)

    def _settle(self, key: str, text: str) -> bool:
        """Keep what was typed for an option; say why not and return False if it cannot be."""
        row = next((row for row in self.rows if row.key == key), None)
        if row is None or text == row.value:  # a line of no option, which came under what was typed
            self.show()
            return True
        try:
            return self._kept(f"{row.label} {text or 'as usual'}", self._tried(key, text))
        except TapewiseError as error:
            self.warn(error)
            return False

    def keep_typed(self) -> bool:
        return self.query_one(Choices).end()

    def _kept(self, says: str, made: Work) -> bool:
        """Keep a choice with which the garment can be drafted, or which is not to blame."""
        result = drafting.of(self.desk.profile, made, self.desk)
        if isinstance(result, str) and not drafting.missing(self.desk, made):
            self.warn(f"{result} Not kept.")
            self.query_one(LivePattern).show(self.desk.work)
            return False
        try:
            if isinstance(result, str):
                wizard.refuse_wrong(self.desk.profile, made.garment, made.asked)
        except TapewiseError as error:
            self.warn(error)
            return False
        self.desk.change(says, made=made)
        self.show()
        self.tell(f"{words.sentence(says)} is kept.")
        return True

    def findable(self) -> tuple[Sequence[Line], str | None]:
        """Every option that has something to do, those not shown too."""
        at = self.query_one(Choices).at
        return choosing.findable(self.rows), at.key if at else None

    def found(self, key: str) -> None:
        if not self.keep_typed():
            return
        if all(line.key != key for line in self.query_one(Choices).lines):
            self.every = True
            self.show()
        self.query_one(Choices).to(key)

    def action_all(self) -> None:
        """Show every choice, or those most people decide."""
        self.every = not self.every
        self.show()

    def action_piece(self) -> None:
        self.query_one(LivePattern).next_piece()

    def action_change(self) -> None:
        """Go to the first measure missing, else to the choice that a failing proof hangs on, else
        to the measure that would make an unsure one surest, else to those that look unlikely."""
        live = self.query_one(LivePattern)
        missing = drafting.missing(self.desk, self.desk.work)
        wanted = live.to_change()
        measures = missing or (() if wanted else live.to_measure())
        if measures:
            self.desk.place(measure=measures[0])
            self.tapewise.go("measure")
        elif wanted:
            self.found(wanted)
        elif reviewing.warning(self.desk):
            self.tapewise.go("review")
        elif live.draft is None:
            self.tell("It cannot be drafted so: change one of the choices named above.")
        else:
            self.tell("Nothing is missing, and no proof asks for a change.")

    def action_take(self) -> None:
        """Make the change that the first failing proof with one offers."""
        proof = self.query_one(LivePattern).mended()
        if proof is None:
            self.warn("No proof offers a change.")
            return
        made = drafting.with_mend(self.desk.work, proof)
        self._kept(drafting.mend_words(proof, self.desk.unit), made)

    def _cloth(self) -> None:
        self.app.call_later(self.run_action, "app.cloth")

    def _fold(self) -> None:
        self.app.push_screen(FoldDialog(self.desk.unit), self._folded)

    def _folded(self, found: dict[str, str] | None) -> None:
        if found is None:
            return
        before = drafting.drafted(self.desk)
        cloth = None if isinstance(before, str) else before.cloth
        made = ticking.found_out(self.desk.work, found, cloth)
        told = ", ".join(f"{key.replace('-', ' ')} {value} %" for key, value in found.items())
        self._kept(told, made)

    def _machines(self) -> None:
        """Ask for the machines; none is ticked until somebody has said which there are."""
        known = settings().machines or self.desk.work.machines != Work("").machines
        there = self.desk.work.machines if known else ()
        self.app.push_screen(MachinesDialog(there), self._machined)

    def _machined(self, machines: tuple[str, ...] | None) -> None:
        if machines is None:
            return
        self.desk.usual("machines", ", ".join(machines))
        if machines != self.desk.work.machines:
            made = replace(self.desk.work, machines=machines)
            self._kept(f"machines {words.listed(machines)}", made)
        else:
            self.show()
