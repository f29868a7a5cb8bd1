"""What pages share on which one measure is at hand: all or few of them, taking what is offered."""

from __future__ import annotations

from collections.abc import Callable

from textual import work

from tapewise_core.errors import TapewiseError
from tapewise_tui import keys, measuring, progress, saving, trouble
from tapewise_tui.page import Page


class MeasuresPage(Page):
    """One measure has the cursor; what is done goes for that one."""

    BINDINGS = keys.of("sheet")
    TURNS = tuple(keys.KEYS[name].key for name in ("back", "on", "table"))

    @property
    def key(self) -> str:
        """The measure at hand."""
        raise NotImplementedError

    def done(self, says: str) -> None:
        """Go on once something was done about the measure at hand, and say what."""
        self.show()
        self.tell(says)

    @property
    def is_short(self) -> bool:
        """Whether there are too few rows for long words."""
        return self.has_class("-short")

    def act(self, act: Callable[[], str]) -> None:
        """Do something that may be refused with a sentence."""
        try:
            says = act()
        except TapewiseError as error:
            self.warn(error)
            return
        self.done(says)

    def action_all(self) -> None:
        """Go through all measures, or through the garment's alone again."""
        if not self.keep_typed():
            return
        self.desk.all_measures = not self.desk.all_measures
        self.show()
        self.tell(progress.scope(self.desk))

    def action_take(self) -> None:
        """Take the value proposed for a slip; with nothing measured, leave it to the estimate."""
        if self.keep_typed():
            self.act(lambda: measuring.take_offered(self.desk, self.key))

    def action_sheet(self) -> None:
        """Write the measuring sheet of what is gone through here, beside where the app began."""
        garment = None if self.desk.all_measures else self.desk.work.garment
        self.tell("Writing the measuring sheet …")
        self._write_sheet(garment)

    @work(thread=True, exclusive=True, group="sheet")
    def _write_sheet(self, garment: str | None) -> None:
        try:
            says: str | TapewiseError = saving.sheet(garment, self.desk.unit)
            wrong = False
        except TapewiseError as error:
            says, wrong = error, True
        except Exception as error:  # what is at fault must not take the page down with it
            says, wrong = trouble.note(error), True
        self.app.call_from_thread(self.tapewise.say, says, wrong=wrong)
