"""Stitch: one step of the sewing order a page, to be read from the machine's side."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from tapewise_core.tasks.chores import FINISH, SEW, Chore
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.sewing import SewingStep, Shown, sewing_steps, step_shown
from tapewise_core.tasks.work import PAGES
from tapewise_tui import keys, noting
from tapewise_tui.leaf_page import LeafPage
from tapewise_tui.meeting_canvas import draw_meeting
from tapewise_tui.widgets.leaf import Thing


class StitchPage(LeafPage):
    """The steps of sewing, one after another."""

    NAME = "stitch"
    PURPOSE = (
        "One step of sewing a page, with the edges that meet drawn heavy. Enter ticks it and goes "
        "on to the next; right and left turn to another step, Home and End to the first and the "
        "last; down shows words that have no room. Ctrl+Z opens again what was ticked too soon."
    )
    BINDINGS = keys.of("fitting", back="to cutting out, piece by piece")

    def things(self, draft: Drafted) -> tuple[Thing, ...]:
        found, listed = (
            sewing_steps(draft, self.desk.reader),
            {part.heading: part.items for part in self.chores},
        )
        ended = listed[FINISH]
        total = len(found) + len(ended)
        mind = self.minds(SEW)  # with the first step alone
        steps = (
            _thing(one, chore, f"Step {at + 1} of {total}", step_shown(draft, found, at), mind[at:])
            for at, (one, chore) in enumerate(zip(found, listed[SEW], strict=True))
        )
        last = (
            _last(chore, f"Step {at} of {total}", self.minds(FINISH))
            for at, chore in enumerate(ended, start=len(found) + 1)
        )
        return (*steps, *last, self._notes())

    def _notes(self) -> Thing:
        """The last page: what to change the next time."""
        notes = self.desk.work.notes.strip() or "Nothing is noted yet."
        return Thing(noting.SAYS, (notes,), ((noting.KEY, "write them down"),), find=noting.SAYS)

    def opened(self, key: str) -> bool:
        if key == noting.KEY:
            noting.begin(self)
        return key == noting.KEY

    def action_back(self) -> None:
        self.tapewise.go("cut")

    def action_on(self) -> None:
        after = PAGES[PAGES.index("sew") + 1 :]
        if after:
            self.tapewise.go(after[0])
        else:
            self.tell("This is the last page.")


def _thing(
    one: SewingStep, chore: Chore, place: str, pieces: Sequence[Shown], mind: tuple[str, ...]
) -> Thing:
    facts = dict(one.facts)
    return Thing(
        f"{place}: {one.title}",
        (one.says, *(facts[label] for label in ("press", "look") if label in facts)),
        ((chore.key, "done"),),
        (*(facts[label] for label in ("or",) if label in facts), *mind),
        partial(draw_meeting, pieces=pieces) if pieces else None,
        one.title,
    )


def _last(chore: Chore, place: str, mind: tuple[str, ...]) -> Thing:
    boxes = ((chore.key, "done"),)
    return Thing(f"{place}: at the end", (chore.says,), boxes, mind, find=chore.says)
