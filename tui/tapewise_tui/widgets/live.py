"""The pattern drawn live: drafted in a worker, shown with how its proofs stand."""

from __future__ import annotations

from collections.abc import Iterable

from textual import on, work
from textual.containers import Vertical
from textual.message import Message
from textual.widget import Widget
from textual.widgets import Static

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.drafting import Drafted
from tapewise_core.tasks.work import Work
from tapewise_tui import drafting
from tapewise_tui.desk import Desk
from tapewise_tui.widgets_drawn import PatternView


class LivePattern(Vertical):
    """Shows the latest wish; while one is being drafted, only the last of the others waits."""

    class Drawn(Message):
        """A worker finished a draft, or has a sentence instead."""

        def __init__(self, result: Drafted | str) -> None:
            super().__init__()
            self.result = result

    def __init__(self, desk: Desk) -> None:
        super().__init__(id="pattern")
        self.desk = desk
        self.draft: Drafted | None = None
        self.busy = False
        self.waiting: Work | None = None

    def compose(self) -> Iterable[Widget]:
        yield PatternView()
        yield Static("", id="verdict", markup=False)
        yield Static("", id="given", markup=False)
        yield Static("", id="proofs", markup=False)

    def show(self, wish: Work) -> None:
        """Draft some work, which need not be kept yet, and draw it."""
        if self.busy:
            self.waiting = wish
            return
        self.busy = True
        self._draft(self.desk.profile, wish)

    @work(thread=True, group="draft")
    def _draft(self, profile: Profile, wish: Work) -> None:
        self.post_message(self.Drawn(drafting.of(profile, wish, self.desk)))

    @on(Drawn)
    def drawn(self, event: Drawn) -> None:
        event.stop()
        self.busy = False
        if self.waiting is not None:
            wish, self.waiting = self.waiting, None
            self.show(wish)
        if isinstance(event.result, str):
            self.query_one("#verdict", Static).update(f"! {event.result}")
        else:
            self._picture(event.result)

    def _picture(self, draft: Drafted) -> None:
        self.draft = draft
        view = self.query_one(PatternView)
        view.show(draft.pattern.pieces, view.selected, self.desk.unit, draft.pattern.facts.levels)
        self.query_one("#verdict", Static).update(drafting.verdict(draft))
        self.query_one("#given", Static).update("\n".join(drafting.given(draft, self.desk.unit)))
        self.query_one("#proofs", Static).update(drafting.proof_lines(draft))

    def next_piece(self) -> None:
        """Choose the next piece; after the last one, none."""
        view = self.query_one(PatternView)
        names = [piece.name for piece in view.pieces]
        place = names.index(view.selected) + 1 if view.selected in names else 0
        chosen = names[place] if place < len(names) else None
        view.show(view.pieces, chosen, self.desk.unit, view.levels)
