"""Prove: everything checked before anyone cuts, failing first, each with the change it offers."""

from __future__ import annotations

from collections.abc import Iterable

from textual import on
from textual.binding import Binding
from textual.widget import Widget
from textual.widgets import Static

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks import wizard
from tapewise_core.tasks.drafting import Drafted
from tapewise_core.tasks.wizard import Proof
from tapewise_core.units import Unit
from tapewise_tui import drafting, reviewing, words
from tapewise_tui.page import PAGES_KEY, Page
from tapewise_tui.widgets.rows import Rows


class ProvePage(Page):
    """All proofs."""

    NAME = "prove"
    PURPOSE = (
        "Each line is something that was measured on the finished pattern and compared with a "
        "limit. What fails stands on top. Where a change of style would mend it, F6 makes that "
        "change; ctrl+z takes it back."
    )
    BINDINGS = [
        Binding("f3", "back", "Garment", tooltip="back to the garment"),
        Binding("f4", "on", "Save", tooltip="on to writing the files"),
        Binding("f6", "mend", "Mend", tooltip="make the change that the proof offers"),
        PAGES_KEY,
    ]

    def parts(self) -> Iterable[Widget]:
        yield Static("", id="summary", markup=False)
        yield Rows(id="table")
        yield Static("", id="advice", markup=False)

    def show(self) -> None:
        super().show()
        result = drafting.drafted(self.desk)
        self.draft = result if isinstance(result, Drafted) else None
        proofs = self.draft.proofs if self.draft else ()
        self.proofs = tuple(sorted(proofs, key=lambda proof: proof.holds))
        table = self.query_one(Rows)
        columns = (("", 7), ("Proof", 26), ("What it says", 30))
        rows = [(f"{one.id} {one.of}", _cells(one, self.desk.unit)) for one in self.proofs]
        table.fill(columns, rows)
        said = drafting.count(self.draft) if self.draft else f"! {result}"
        self.query_one("#summary", Static).update(f"{said} {reviewing.warning(self.desk)}")
        table.focus()

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

    def action_mend(self) -> None:
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
        self.tell(f"{words.sentence(said)} set. ctrl+z takes it back.")


def _cells(proof: Proof, unit: Unit) -> tuple[str, str, str]:
    mark = "holds" if proof.holds else "! fails"
    return mark, words.sentence(proof.name), drafting.says(proof, unit)
