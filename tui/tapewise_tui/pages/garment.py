"""Garment: style, cloth and machines, with the pattern drawn live beside them."""

from __future__ import annotations

import contextlib
from collections.abc import Iterable, Sequence

from textual import on
from textual.containers import Horizontal
from textual.events import Key
from textual.widget import Widget

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks import wizard, work
from tapewise_core.tasks.work import Work
from tapewise_tui import choosing, keys, noting, settling, words
from tapewise_tui.desk import Desk
from tapewise_tui.garment_asks import GarmentAsks
from tapewise_tui.line import Line
from tapewise_tui.live_page import LivePage
from tapewise_tui.widgets.choices import MOVES, Choices
from tapewise_tui.widgets.find import FindDialog
from tapewise_tui.widgets.live import LivePattern
from tapewise_tui.widgets.passage import Passage
from tapewise_tui.widgets_drawn import PatternView


class GarmentPage(LivePage):
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
        self.every = False
        self.told = ""
        self.asks = GarmentAsks(self, self.kept)

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
        self.asks.machines_once()

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
        line = self.query_one(Choices).at
        if event.key == choosing.ALL:
            self.action_all()
        elif event.key in self.asks.ways:
            self.asks.ways[event.key]()
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
        self.desk.change(text, made=work.of_garment(self.desk.work, name))
        self.show()
        self.tell(noting.told(self.desk) or choosing.about(key, self.rows, name))
        return True

    @on(Choices.Tried)
    def typed(self, event: Choices.Tried) -> None:
        """Try what is typed on the pattern, without keeping it yet."""
        event.stop()
        with contextlib.suppress(TapewiseError):
            self.query_one(LivePattern).show(settling.tried(self.desk, event.key, event.text))

    def _settle(self, key: str, text: str) -> bool:
        """Keep what was typed for an option; say why not and return False if it cannot be."""
        row = next((row for row in self.rows if row.key == key), None)
        if row is None or text == row.value:  # a line of no option, which came under what was typed
            self.show()
            return True
        try:
            return self.kept(
                f"{row.label} {text or 'as usual'}", settling.tried(self.desk, key, text)
            )
        except TapewiseError as error:
            self.warn(error)
            return False

    def keep_typed(self) -> bool:
        return self.query_one(Choices).end()

    def kept(self, says: str, made: Work) -> bool:
        """Keep a choice with which the garment can be drafted, or which is not to blame."""
        try:
            refused = settling.refusal(self.desk, made)
        except TapewiseError as error:
            self.warn(error)
            return False
        if refused:
            self.warn(refused)
            self.query_one(LivePattern).show(self.desk.work)
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
