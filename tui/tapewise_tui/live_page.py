"""A page with the pattern drawn live: how its proofs stand, and what mends them."""

from __future__ import annotations

from textual import on
from textual.events import DescendantFocus

from tapewise_core.tasks.work import Work
from tapewise_tui import drafting, reviewing
from tapewise_tui.desk import Desk
from tapewise_tui.page import Page
from tapewise_tui.widgets.live import LivePattern
from tapewise_tui.widgets.passage import Passage
from tapewise_tui.widgets_drawn import PatternView

ON_PATTERN = "Left and right mark a piece of the pattern; any other key goes back to the choices."
"""What is said while the pattern has the keyboard."""


class LivePage(Page):
    """Says how the proofs of the pattern stand, makes the change that one offers, and goes to where
    what is missing or fails is changed."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.offers = False

    def kept(self, says: str, made: Work) -> bool:
        """Keep a changed project, and say so or why not."""
        raise NotImplementedError

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
        self.kept(drafting.mend_words(proof, self.desk.unit), made)
