"""Walking through the app in tests: a pilot at a keyboard, and the screen as text."""

from __future__ import annotations

import contextlib
from collections.abc import Awaitable, Callable
from datetime import date

from quiet import idle, run
from textual.pilot import Pilot
from textual.worker import WorkerCancelled

from tapewise_tui.app import TapewiseApp
from tapewise_tui.desk import Desk
from tapewise_tui.page import Page

TODAY = date(2026, 11, 2)
SMALL, LARGE = (80, 24), (120, 40)

_SIGNS = {" ": "space", ",": "comma", ".": "full_stop", "/": "slash", "-": "minus"}


class Walk:
    """One run of the app, driven by keys."""

    def __init__(self, app: TapewiseApp, pilot: Pilot[None]) -> None:
        self.app, self.pilot = app, pilot

    async def press(self, *keys: str) -> None:
        """Press keys one after another and wait until everything has settled."""
        await self.app._press_keys(keys)
        await self.settle()

    async def type(self, text: str, *after: str) -> None:
        """Type a text, then press further keys."""
        await self.press(*(_SIGNS.get(sign, sign) for sign in text), *after)

    async def settle(self) -> None:
        """Wait until nothing is at work; a page that is left takes its workers with it."""
        for _ in range(2):
            with contextlib.suppress(WorkerCancelled):
                await self.app.workers.wait_for_complete()
            await idle()

    def text(self) -> str:
        """The screen as it is read, trailing blanks cut."""
        lines = (strip.text.rstrip() for strip in self.app.screen._compositor.render_strips())
        return "\n".join(lines) + "\n"

    @property
    def page(self) -> Page:
        found = self.app.page
        assert found is not None
        return found

    @property
    def said(self) -> str:
        """What the page's speaking line says."""
        from tapewise_tui.widgets.saying import Saying

        return self.page.query_one(Saying).says


def walk(
    steps: Callable[[Walk], Awaitable[None]],
    size: tuple[int, int] = SMALL,
    today: date | None = TODAY,
    *,
    judges: bool = False,
) -> None:
    """Run the app and take some steps in it; how sure a garment is costs time and is left out."""

    async def walked() -> None:
        app = TapewiseApp(Desk(today))
        app.desk.judges = judges
        async with app.run_test(size=size) as pilot:
            step = Walk(app, pilot)
            await step.settle()
            await steps(step)

    run(walked())
