"""What is open, and how sure the garment is by now: worked out aside, while the person types."""

from __future__ import annotations

import time
from dataclasses import dataclass

from textual import on, work
from textual.message import Message
from textual.widgets import Static
from textual.worker import get_current_worker

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.work import Work
from tapewise_tui import drafting
from tapewise_tui.desk import Desk

PAUSE = 0.4
"""So long nothing is worked out after a change, in case another follows [s] (our choice)."""


class SureLine(Static):
    """A line that says something at once, and how sure the garment is a moment later."""

    @dataclass
    class Judged(Message):
        """A worker found how sure a garment is, for what the line said then."""

        said: tuple[str, str]
        sure: str

    def __init__(self, id: str) -> None:
        super().__init__("", id=id, markup=False)
        self.said = ("", "")

    def show(self, first: str, then: str, desk: Desk) -> None:
        """Say two things at once, and let what comes between them be worked out."""
        self.said = (first, then)
        self._say("")
        if desk.judges:
            self._judge(self.said, desk, desk.profile, desk.work)

    def _say(self, sure: str) -> None:
        first, then = self.said
        self.update(" ".join(filter(None, (first, sure, then))))

    @work(thread=True, exclusive=True, group="how sure", description="judge")
    def _judge(self, said: tuple[str, str], desk: Desk, profile: Profile, made: Work) -> None:
        time.sleep(PAUSE)
        if not get_current_worker().is_cancelled:
            self.post_message(self.Judged(said, drafting.sureness(profile, made, desk)))

    @on(Judged)
    def judged(self, event: Judged) -> None:
        event.stop()
        if event.said == self.said:
            self._say(event.sure)
