"""Garment: style, cloth and machines, with the pattern drawn live beside them."""

from __future__ import annotations

import contextlib
from collections.abc import Iterable, Sequence
from dataclasses import replace

from textual import on
from textual.containers import Horizontal, Vertical
from textual.widget import Widget
from textual.widgets import Select

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks import wizard, work
from tapewise_core.tasks.work import Work
from tapewise_tui import drafting, keys, words
from tapewise_tui.desk import Desk
from tapewise_tui.dialogs.fold import FoldDialog
from tapewise_tui.dialogs.machines import MachinesDialog
from tapewise_tui.line import Line
from tapewise_tui.page import Page
from tapewise_tui.widgets.live import LivePattern
from tapewise_tui.widgets.options import OptionLine, Options


class GarmentPage(Page):
    """Options and their pattern."""

    NAME = "garment"
    PURPOSE = (
        "Change what you like; the pattern beside is drawn afresh as you type, and so are the "
        "proofs below it. An empty field goes back to the usual value; a star marks what you "
        "chose. Left and right take another word where there are some to choose from. Ctrl+B "
        "works out how far your cloth stretches, Ctrl+R says which machines you have."
    )
    BINDINGS = keys.of("fold", "machines", "piece", "find", on="on to the proofs")

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.rows: tuple[wizard.OptionRow, ...] = ()
        self.on_show = ""

    def _rows(self) -> tuple[wizard.OptionRow, ...]:
        work_ = self.desk.work
        return wizard.option_rows(self.desk.profile, work_.garment, work_.asked, self.desk.unit)

    def parts(self) -> Iterable[Widget]:
        self.on_show = self.desk.work.garment
        with contextlib.suppress(TapewiseError):
            self.rows = self._rows()
        with Horizontal(id="sheet"):
            with Vertical(id="choices"):
                yield Select(
                    [(page.title, page.name) for page in wizard.garments()],
                    value=self.desk.work.garment,
                    allow_blank=False,
                    id="garment",
                    compact=True,
                )
                yield Options(self.rows)
            yield LivePattern(self.desk)

    def show(self) -> None:
        super().show()
        try:
            rows = self._rows()
        except TapewiseError as error:
            self.warn(error)
            return
        here = (self.on_show, [row.key for row in self.rows])
        if (self.desk.work.garment, [row.key for row in rows]) != here:
            self.app.switch_screen(GarmentPage(self.desk))
            return
        self.rows = rows
        self.query_one(Options).show(rows)
        self.query_one(LivePattern).show(self.desk.work)

    def begin(self) -> None:
        if self.rows:
            self.query_one(Options).line(self.rows[0].key).field.focus()

    @on(Options.Entered)
    def about(self, event: Options.Entered) -> None:
        """Say what the option with the cursor is; on arrival, what led here comes first."""
        if self.first_warns:
            self.warn(self.first_warns)
            self.first_warns = ""
            return
        row = event.row
        way = "one of" if row.choices else "from"
        self.tell(f"{words.sentence(row.says)}: {way} {row.limits}; usually {row.usual}.")

    @on(OptionLine.Typed)
    def typed(self, event: OptionLine.Typed) -> None:
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

    @on(OptionLine.Settled)
    def settled(self, event: OptionLine.Settled) -> None:
        event.stop()
        if not self._settle(event.key, event.text) and event.left:
            self.query_one(Options).put_back(event.key)

    def _settle(self, key: str, text: str) -> bool:
        """Keep what was typed for an option; say why not and return False if it cannot be."""
        row = next(row for row in self.rows if row.key == key)
        if text == row.value:
            return True
        try:
            self._kept(f"{row.label} {text or 'as usual'}", self._tried(key, text))
        except TapewiseError as error:
            self.warn(error)
            return False
        return True

    def keep_typed(self) -> None:
        line = self.query_one(Options).at if self.rows else None
        if line is not None:
            self._settle(line.row.key, line.text)

    def _kept(self, says: str, made: Work) -> None:
        result = drafting.of(self.desk.profile, made, self.desk)
        if isinstance(result, str):
            self.warn(f"{result} Not kept.")
            self.show()
            return
        self.desk.change(says, made=made)
        self.tell(f"{words.sentence(says)} is kept.")
        self.show()

    @on(Select.Changed, "#garment")
    def garment(self, event: Select.Changed) -> None:
        event.stop()
        name = str(event.value)
        if name != self.desk.work.garment:
            self.desk.change(name, made=work.of_garment(self.desk.work, name))
            self.app.switch_screen(GarmentPage(self.desk))

    def action_piece(self) -> None:
        self.query_one(LivePattern).next_piece()

    def findable(self) -> tuple[Sequence[Line], str | None]:
        at = self.query_one(Options).at if self.rows else None
        lines = [Line(row.key, f"{row.group}: {row.label} {row.value}") for row in self.rows]
        return lines, at.row.key if at else None

    def found(self, key: str) -> None:
        self.query_one(Options).line(key).field.focus()

    def action_fold(self) -> None:
        self.app.push_screen(FoldDialog(self.desk.unit), self._folded)

    def _folded(self, stretch: float | None) -> None:
        if stretch is not None:
            self._kept(
                f"stretch {stretch:g} %", self.desk.work.with_option("stretch", f"{stretch:g}")
            )

    def action_machines(self) -> None:
        self.app.push_screen(MachinesDialog(self.desk.work.machines), self._machined)

    def _machined(self, machines: tuple[str, ...] | None) -> None:
        if machines is not None and machines != self.desk.work.machines:
            made = replace(self.desk.work, machines=machines)
            self._kept(f"machines {words.listed(machines)}", made)
