"""Prove: everything checked before anyone cuts, failing first, each with the change it offers."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from textual import on, work
from textual.message import Message
from textual.widget import Widget
from textual.widgets import Static

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.wizard import Proof
from tapewise_tui import drafting, keys, proving, reviewing, trouble, words
from tapewise_tui.line import Line
from tapewise_tui.page import Page
from tapewise_tui.widgets.rows import Rows

NAMES = ((110, 34), (64, 26), (0, 16))
"""From how many columns on the proofs' names are how wide."""


class ProvePage(Page):
    """All proofs."""

    NAME = "prove"
    PURPOSE = (
        "Each line is something that was measured on the finished pattern and compared with a "
        "limit. What fails stands on top, then what is uncertain: it holds as estimated, but for "
        "fewer than 8 in 10 of the bodies that your measures leave open. Where a change of style "
        "would mend it, F6 makes that change, and the line below says what it changes; Ctrl+Z "
        "takes it back. F8 goes to the choice or the measure that a line hangs on. Remarks stand "
        "last."
    )
    BINDINGS = keys.of(
        "find",
        "steps",
        "cloth",
        back="back to the garment",
        on="on to writing the files",
        take="make the change that the proof offers",
        change="go to the choice or the measure that the line marked hangs on",
    )

    class Judged(Message):
        """A worker found how sure a draft is, and what its mends change."""

        def __init__(self, before: Drafted, draft: Drafted, mends: Mapping[str, str]) -> None:
            super().__init__()
            self.before, self.draft, self.mends = before, draft, mends

    def parts(self) -> Iterable[Widget]:
        yield Static("", id="summary", markup=False)
        yield Rows(id="table")
        yield Static("", id="advice", markup=False)

    def show(self) -> None:
        super().show()
        result = drafting.drafted(self.desk)
        self.mends: Mapping[str, str] = {}
        if isinstance(result, Drafted):
            self._fill(result, drafting.stands(result))
            self._judge(result)
        else:
            self._fill(None, f"! {result}")
        self.query_one(Rows).focus()

    def _fill(self, draft: Drafted | None, said: str) -> None:
        """Show the proofs as they stand, and the verdict."""
        self.draft = draft
        self.rows = proving.rows(draft, self.desk) if draft else ()
        named = next(wide for room, wide in NAMES if self.app.size.width >= room)
        columns = (("", 9), ("Proof", named), ("What it says", 20))
        self.query_one(Rows).fill(columns, [(row.key, row.cells) for row in self.rows])
        self.query_one("#summary", Static).update(f"{said} {reviewing.warning(self.desk)}")
        self.refresh_bindings()

    @on(Rows.Resized)
    def resized(self) -> None:
        """Set the columns to the room there is now."""
        if self.stands and self.draft is not None:
            self._fill(self.draft, drafting.stands(self.draft))

    @property
    def proofs(self) -> tuple[Proof, ...]:
        """The proofs in the order of their rows."""
        return tuple(row.proof for row in self.rows if row.proof)

    @work(thread=True, exclusive=True, group="how sure", description="judge")
    def _judge(self, draft: Drafted) -> None:
        try:
            after = drafting.judged(draft, self.desk)
            mended = [one for one in proving.rows(after, self.desk) if one.proof and one.proof.mend]
            mends = {one.key: proving.changed(one.proof, self.desk) for one in mended if one.proof}
            self.post_message(self.Judged(draft, after, mends))
        except Exception as error:  # the proofs as estimated stay on the page
            trouble.note(error)

    @on(Judged)
    def judged(self, event: Judged) -> None:
        event.stop()
        if event.before is self.draft and not self.gone:
            self.mends = event.mends
            self._fill(event.draft, drafting.stands(event.draft))
            self.advise()

    @property
    def row(self) -> proving.Row | None:
        """The row marked."""
        key = self.query_one(Rows).at
        return next((row for row in self.rows if row.key == key), None)

    @on(Rows.RowHighlighted)
    def advise(self) -> None:
        """Say all that the row marked says, what would mend it, and where it is changed."""
        row = self.row
        if row is None or self.draft is None:
            return
        place = proving.where(row, self.draft, self.desk.work.garment)
        said = (row.says, self.mends.get(row.key, ""), proving.named(*place))
        self.query_one("#advice", Static).update(" ".join(filter(None, said)))
        self.refresh_bindings()

    def check_action(self, action: str, parameters: tuple[object, ...]) -> bool | None:
        """What a row does not offer has no key in the footer."""
        if action == "take" and self.stands:
            row = self.row
            return bool(row and row.proof and row.proof.mend)
        return super().check_action(action, parameters)

    def findable(self) -> tuple[Sequence[Line], str | None]:
        table = self.query_one(Rows)
        return table.lines(), table.at

    def found(self, key: str) -> None:
        self.query_one(Rows).to(key)

    def action_take(self) -> None:
        row = self.row
        if row is None or row.proof is None or not row.proof.mend:
            return
        try:
            made = drafting.with_mend(self.desk.work, row.proof)
        except TapewiseError as error:
            self.warn(error)
            return
        said = drafting.mend_words(row.proof, self.desk.unit)
        self.desk.change(said, made=made)
        self.show()
        self.tell(f"{words.sentence(said)} set. Ctrl+Z takes it back.")

    def action_change(self) -> None:
        """Go to the choice or the measure that the row marked hangs on."""
        row = self.row
        if row is None or self.draft is None:
            self.tapewise.go("garment")
            return
        page, key = proving.where(row, self.draft, self.desk.work.garment)
        if page == "measure":
            self.desk.place(measure=key)
        else:
            self.desk.marked = key
        self.tapewise.go(page)

    @on(Rows.RowSelected)
    def opened(self) -> None:
        """Enter does what F8 does."""
        self.action_change()
