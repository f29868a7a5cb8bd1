"""Waiting until the app has nothing left to do, told by its event loop instead of by a clock.

Textual's own pilot sleeps 20 ms after each key, twice, and then looks whether the processor has
rested: more than half of what a walk through the app took. Here the loop itself says when it would
go to sleep, which is sooner and does not depend on how busy the machine is. The style sheet, which
every app reads anew, is read once, and how sure a garment is is worked out without a pause before.
"""

from __future__ import annotations

import asyncio
import selectors
from collections.abc import Coroutine
from typing import Any, TypeVar
from unittest.mock import patch

from textual._context import active_app
from textual._wait import wait_for_idle
from textual.app import App
from textual.css.model import RuleSet
from textual.css.stylesheet import Stylesheet

Found = TypeVar("Found")

SOON = 0.005
"""A timer that is due within this time [s] is waited for, as “at once” is told to a timer too."""


class _Watch(selectors.DefaultSelector):  # type: ignore[misc, valid-type]
    """What a loop sleeps in; tells whoever waits for it that it is about to."""

    def __init__(self) -> None:
        super().__init__()
        self.waiting: list[asyncio.Future[None]] = []

    def select(self, timeout: float | None = None) -> list[Any]:
        """Return what has come in, at once where someone waits for the loop to rest."""
        if not self.waiting or (timeout is not None and timeout <= SOON):
            return super().select(timeout)
        found = super().select(0)
        while self.waiting and not found:
            self.waiting.pop().set_result(None)
        return found


class QuietLoop(asyncio.SelectorEventLoop):
    """An event loop that can be asked when it has nothing to do."""

    def __init__(self) -> None:
        self.watch = _Watch()
        super().__init__(self.watch)

    async def rest(self) -> None:
        """Wait until nothing is ready to run and nothing is due soon."""
        waiting = self.create_future()
        self.watch.waiting.append(waiting)
        await waiting


async def idle(min_sleep: float = 0.0, max_sleep: float = 1.0) -> None:
    """Wait until every message is dealt with and the screen is drawn.

    Called in place of Textual's function of this form; while a thread is at work, that is asked.
    """
    loop, app = asyncio.get_running_loop(), active_app.get()
    assert isinstance(loop, QuietLoop)
    await loop.rest()
    while _drawn(app):
        await loop.rest()
    if any(worker.is_running for worker in app.workers):
        await wait_for_idle(min_sleep, max_sleep)


def _drawn(app: App[Any]) -> bool:
    """Draw what is waiting to be drawn sixty times a second, if anything is."""
    if not app.screen_stack or not app.screen._update_timer._active.is_set():
        return False
    app.screen._on_timer_update()
    return True


_read = Stylesheet._parse_rules
_known: dict[object, list[RuleSet]] = {}


def _parsed(sheet: Stylesheet, css: str, *place: Any, **more: Any) -> list[RuleSet]:
    """Return the rules of a style sheet in its colours, read by an earlier app if one has."""
    key = css, place, tuple(more.items()), tuple(sheet._variables.items())
    if key not in _known:
        _known[key] = _read(sheet, css, *place, **more)
    return _known[key]


def run(work: Coroutine[Any, Any, Found]) -> Found:
    """Run work that drives an app with a pilot, and wait in it as :func:`idle` does."""
    with (
        patch("textual.app.wait_for_idle", idle),
        patch("textual.pilot.wait_for_idle", idle),
        patch.object(Stylesheet, "_parse_rules", _parsed),
        patch("tapewise_tui.widgets.sure.PAUSE", 0.0),
        asyncio.Runner(loop_factory=QuietLoop) as runner,
    ):
        return runner.run(work)
