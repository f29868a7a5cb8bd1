"""The pattern drawn live: drafted in a worker, shown with how its proofs stand."""

from __future__ import annotations

from collections.abc import Iterable
from typing import ClassVar

from textual import on, work
from textual.containers import Vertical
from textual.message import Message
from textual.widget import Widget
from textual.widgets import Static

from tapewise_core.measures.catalogue import NAMES
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.wizard import Proof
from tapewise_core.tasks.work import Work
from tapewise_tui import drafting, trouble, words
from tapewise_tui.desk import Desk
from tapewise_tui.widgets.passage import Passage
from tapewise_tui.widgets_drawn import PatternView


class LivePattern(Vertical):
    """Shows the latest wish; while one is being drafted, only the last of the others waits."""

    REST: ClassVar[float] = 0.3
    """Seconds after which a draft that still stands is asked how sure it is (our choice)."""

    class Drawn(Message):
        """A worker finished a draft, or has a sentence instead, and what is ``missing``."""

        def __init__(self, result: Drafted | str, missing: tuple[str, ...] = ()) -> None:
            super().__init__()
            self.result, self.missing = result, missing

    class Judged(Message):
        """How the proofs stand, in a sentence."""

        def __init__(self, says: str) -> None:
            super().__init__()
            self.says = says

    def __init__(self, desk: Desk) -> None:
        super().__init__(id="pattern")
        self.desk = desk
        self.draft: Drafted | None = None
        self.busy = False
        self.waiting: Work | None = None

    class Surer(Message):
        """A worker found how sure the draft on show is."""

        def __init__(self, before: Drafted, draft: Drafted) -> None:
            super().__init__()
            self.before, self.draft = before, draft

    def compose(self) -> Iterable[Widget]:
        yield Static("", id="missing", markup=False)
        yield PatternView()
        yield Passage("given")
        yield Static("", id="proofs", markup=False)

    def show(self, wish: Work) -> None:
        """Draft some work, which need not be kept yet, and draw it."""
        if self.busy:
            self.waiting = wish
            return
        self.busy = True
        self._draft(self.desk.profile, wish)

    # described, since Textual else spells out all that it is given: a person, a whole draft
    @work(thread=True, group="draft", description="draft")
    def _draft(self, profile: Profile, wish: Work) -> None:
        result = drafting.of(profile, wish, self.desk)
        missing = drafting.missing(self.desk, wish) if isinstance(result, str) else ()
        self.post_message(self.Drawn(result, missing))

    @on(Drawn)
    def drawn(self, event: Drawn) -> None:
        event.stop()
        self.busy = False
        if self.waiting is not None:
            wish, self.waiting = self.waiting, None
            self.show(wish)
        if not self.query(PatternView):  # the page was left
            return
        if isinstance(event.result, str):
            self._lack(event.result, event.missing)
        else:
            self._picture(event.result)

    def _lack(self, says: str, missing: tuple[str, ...]) -> None:
        """List all that is missing in the pattern's place; without any, say what is wrong."""
        self.draft = None
        self.query_one("#missing").display = bool(missing)
        self.query_one(PatternView).display = not missing
        if not missing:
            self.post_message(self.Judged(f"! {says}"))
            return
        names = [f"{place:>3}  {NAMES[key]}" for place, key in enumerate(missing, start=1)]
        told = ["Still to measure before this garment can be drawn:", "", *names]
        self.query_one("#missing", Static).update("\n".join(told))
        for name in ("#given", "#proofs"):
            self.query_one(name, Static).update("")
        many = words.count(len(missing), "measure")
        self.post_message(self.Judged(f"! {many} still to take. F8 goes to the first of them."))

    def _picture(self, draft: Drafted) -> None:
        self.query_one("#missing").display = False
        view = self.query_one(PatternView)
        view.display = True
        view.show(draft.pattern.pieces, view.selected, self.desk.unit, draft.pattern.facts.levels)
        self.query_one("#given", Passage).update("\n".join(drafting.given(draft, self.desk.unit)))
        self._stand(draft)
        if self.REST:
            self.set_timer(self.REST, lambda: self._rest(draft))
        else:
            self._rest(draft)

    def _stand(self, draft: Drafted) -> None:
        """Say how the proofs stand."""
        self.draft = draft
        room = self.query_one("#proofs").size.height or 8
        self.query_one("#proofs", Static).update(drafting.proof_lines(draft, room), layout=False)
        self.post_message(self.Judged(drafting.verdict(draft)))

    def _rest(self, draft: Drafted) -> None:
        """Ask how sure the draft is, once nothing is typed for a moment."""
        if self.draft is draft and not self.busy:
            self._judge(draft)

    @work(thread=True, exclusive=True, group="how sure", description="judge")
    def _judge(self, draft: Drafted) -> None:
        try:
            self.post_message(self.Surer(draft, drafting.judged(draft, self.desk)))
        except Exception as error:  # the proofs as estimated stay on the page
            trouble.note(error)

    @on(Surer)
    def surer(self, event: Surer) -> None:
        event.stop()
        if event.before is self.draft and self.query(PatternView):
            self._stand(event.draft)

    def mended(self) -> Proof | None:
        """The first failing proof that offers a change."""
        failing = self.draft.failing if self.draft else ()
        return next((proof for proof in failing if proof.mend), None)

    def to_change(self) -> str | None:
        """The option that a failing proof asks to change first, if any does."""
        proof = self.mended()
        return next(iter(proof.mend.settings), None) if proof and proof.mend else None

    def to_measure(self) -> tuple[str, ...]:
        """The measure that would make an uncertain draft surest, if there is one."""
        verdict = self.draft.verdict if self.draft else None
        helps = verdict.helps_most if verdict and verdict.uncertain else None
        return (helps,) if helps else ()

    def next_piece(self) -> None:
        """Choose the next piece; after the last one, none."""
        view = self.query_one(PatternView)
        names = [piece.name for piece in view.pieces]
        place = names.index(view.selected) + 1 if view.selected in names else 0
        chosen = names[place] if place < len(names) else None
        view.show(view.pieces, chosen, self.desk.unit, view.levels)
