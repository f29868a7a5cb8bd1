"""Prove: everything checked before anyone cuts, failing first, each with the change it offers."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from textual import on, work
from textual.message import Message
from textual.widget import Widget
from textual.widgets import Static

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks import verdicts, wizard
from tapewise_core.tasks.drafting import Drafted
from tapewise_core.tasks.how_sure import how_sure
from tapewise_core.tasks.wizard import Proof
from tapewise_core.units import Unit
from tapewise_tui import drafting, keys, reviewing, trouble, words
from tapewise_tui.line import Line
from tapewise_tui.page import Page
from tapewise_tui.widgets.rows import Rows


class ProvePage(Page):
    """All proofs."""

    NAME = "prove"
    PURPOSE = (
        "Each line is something that was measured on the finished pattern and compared with a "
        "limit. What fails stands on top, then what is uncertain: it holds as estimated, but for "
        "fewer than 8 in 10 of the bodies that your measures leave open. Where a change of style "
        "would mend it, F6 makes that change; Ctrl+Z takes it back."
    )
    BINDINGS = keys.of(
        "find",
        "steps",
        back="back to the garment",
        on="on to writing the files",
        take="make the change that the proof offers",
    )

    def parts(self) -> Iterable[Widget]:
        yield Static("", id="summary", markup=False)
        yield Rows(id="table")
        yield Static("", id="advice", markup=False)

    class Judged(Message):
        """A worker found how sure a draft is."""

        def __init__(self, before: Drafted, draft: Drafted) -> None:
            super().__init__()
            self.before, self.draft = before, draft

    def show(self) -> None:
        super().show()
        result = drafting.drafted(self.desk)
        if isinstance(result, Drafted):
            self._fill(result, drafting.stands(result))
            self._judge(result)
        else:
            self._fill(None, f"! {result}")
        self.query_one(Rows).focus()

    def _fill(self, draft: Drafted | None, said: str) -> None:
        """Show the proofs as they stand, and the verdict."""
        self.draft = draft
        self.proofs = tuple(verdicts.in_order(draft.proofs if draft else ()))
        columns = (("", 9), ("Proof", 26), ("What it says", 30))
        rows = [(f"{one.id} {one.of}", _cells(one, self.desk.unit)) for one in self.proofs]
        self.query_one(Rows).fill(columns, rows)
        self.query_one("#summary", Static).update(f"{said} {reviewing.warning(self.desk)}")

    @work(thread=True, exclusive=True, group="how sure")
    def _judge(self, draft: Drafted) -> None:
        try:
            self.post_message(self.Judged(draft, how_sure(draft)))
        except Exception as error:  # the proofs as estimated stay on the page
            trouble.note(error)

    @on(Judged)
    def judged(self, event: Judged) -> None:
        event.stop()
        if event.before is self.draft:
            self._fill(event.draft, drafting.stands(event.draft))

    @on(Rows.RowHighlighted)
    def advise(self) -> None:
        at = self.query_one(Rows).cursor_row
        if at >= len(self.proofs):
            return
        proof = self.proofs[at]
        said = drafting.says(proof, self.desk.unit)
        if proof.mend:
            said += f" F6 sets {drafting.mend_words(proof.mend, self.desk.unit)}."
        self.query_one("#advice", Static).update(said)

    def findable(self) -> tuple[Sequence[Line], str | None]:
        table = self.query_one(Rows)
        return table.lines(), table.at

    def found(self, key: str) -> None:
        self.query_one(Rows).to(key)

    def action_take(self) -> None:
        table = self.query_one(Rows)
        proof = self.proofs[table.cursor_row] if table.row_count else None
        if proof is None or not proof.mend:
            self.warn("This proof offers no change; F3 goes back to the garment.")
            return
        made = self.desk.work
        try:
            for key, text in (proof.settings or {}).items():
                made = made.with_option(key, wizard.plainly(made.garment, key, text, Unit.CM))
        except TapewiseError as error:
            self.warn(error)
            return
        said = drafting.mend_words(proof.mend, self.desk.unit)
        self.desk.change(said, made=made)
        self.show()
        self.tell(f"{words.sentence(said)} set. Ctrl+Z takes it back.")


def _cells(proof: Proof, unit: Unit) -> tuple[str, str, str]:
    stands = verdicts.outcome(proof)
    mark = {"fails": "! fails", "uncertain": "? unsure"}.get(stands, "holds")
    says = drafting.says(proof, unit)
    if proof.holds and stands != "holds":
        says = f"{stands.capitalize()}. {says}"
    return mark, words.sentence(proof.name), says
