"""Stitch: one step of the sewing order a page, to be read from the machine's side."""

from __future__ import annotations

from tapewise_core.tasks.chores import FINISH, SEW
from tapewise_core.tasks.drafting import Drafted
from tapewise_tui import keys, words
from tapewise_tui.leaf_page import LeafPage
from tapewise_tui.widgets.leaf import Thing


class StitchPage(LeafPage):
    """The steps of sewing, one after another."""

    NAME = "stitch"
    PURPOSE = (
        "One step of sewing a page. Enter ticks it and goes on to the next; right and left turn to "
        "another step, Home and End to the first and the last. Ctrl+Z opens again what was ticked "
        "too soon."
    )
    BINDINGS = keys.of(back="to cutting out, piece by piece")

    def things(self, draft: Drafted) -> tuple[Thing, ...]:
        found = [one for part in self.chores if part.heading in (SEW, FINISH) for one in part.items]
        return tuple(
            Thing(
                f"Step {number} of {len(found)}",
                (one.says,),
                ((one.key, "done"),),
                find=words.sentence(one.says),
            )
            for number, one in enumerate(found, start=1)
        )

    def ended(self) -> str:
        if self.desk.work.sewn:
            return "All is sewn. F10 shows the whole list and your notes for the next time."
        return "This is the last step; Home goes to the first."

    def action_back(self) -> None:
        self.tapewise.go("cut")

    def action_on(self) -> None:
        self.tell("This is the last page.")
