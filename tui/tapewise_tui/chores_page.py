"""What the checklist and its one-thing pages share: the draft, and what there is to do for it."""

from __future__ import annotations

from tapewise_core.tasks import ticking
from tapewise_core.tasks.chores import Chores, chores
from tapewise_core.tasks.drafted import Drafted
from tapewise_tui import drafting
from tapewise_tui.page import Page


class ChoresPage(Page):
    """A page about what there is to do for the draft on the desk, where it can be drafted."""

    draft: Drafted | None = None
    chores: tuple[Chores, ...] = ()

    def begin(self) -> None:
        self.first_says = self.first_says or drafting.assumed(self.desk)

    def show(self) -> None:
        super().show()
        result = drafting.drafted(self.desk)
        draft = result if isinstance(result, Drafted) else None
        if draft is not self.draft:
            self.draft = draft
            self.chores = chores(draft, ticking.known_as(self.desk.work)) if draft else ()
        if isinstance(result, str):
            self.first_says = ""  # what is wrong comes before which machines are assumed
            self.warn(result)

    @property
    def fingerprint(self) -> str:
        """The draft's fingerprint, which ticks belong to; nothing without a draft."""
        return self.draft.fingerprint if self.draft else ""

    @property
    def done(self) -> tuple[str, ...]:
        """The keys of what is done for this draft."""
        return ticking.done(self.desk.work, self.chores, self.fingerprint)
