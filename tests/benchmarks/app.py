"""What somebody waits for in the app, as shares of what an empty Textual app takes, by hand.

Processor time, measured beside each other, so that a busy machine changes little. A page is turned
from rest, its memory tidied up, as the app does by itself once a page is read:
``python tests/benchmarks/app.py``.
"""

from __future__ import annotations

import asyncio
import contextlib
import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from statistics import median

from textual.worker import WorkerCancelled

from tapewise_core.tasks.people import person
from tapewise_tui import tidying
from tapewise_tui.app import TapewiseApp
from tapewise_tui.widgets.choices import Choices
from tapewise_tui.widgets.live import LivePattern

EMPTY = """
import time
from textual.app import App
from textual.widgets import Static
class Empty(App):
    def compose(self): yield Static("empty")
    def on_ready(self):
        print(time.process_time())
        self.exit()
Empty().run(headless=True)
"""

FIRST = """
import time
from tapewise_tui import tidying
tidying.later()
from tapewise_tui import app
class First(app.TapewiseApp):
    def shown(self, page):
        print(time.process_time())
        self.exit()
First().run(headless=True)
"""

PAGES = ("table", "review", "garment", "prove", "save", "sew", "measure")


def alone(code: str) -> float:
    """Return what a program takes from the start of the interpreter to its first screen [s]."""
    done = [
        subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
        for _ in range(5)
    ]
    return median(float(one.stdout) for one in done)


async def settled(app: TapewiseApp) -> None:
    """Wait for all that is worked on, also for what takes the place of work that was called off."""
    while True:
        with contextlib.suppress(WorkerCancelled):
            await app.workers.wait_for_complete()
            return


async def turned() -> dict[str, float]:
    """Return what each page takes until it stands, and a key until its preview is drawn [s]."""
    LivePattern.REST = 60.0
    tidying.later()
    app, found = TapewiseApp(), {name: [0.0] * 0 for name in (*PAGES, "a key in the garment")}
    async with app.run_test(size=(120, 40)) as pilot:
        app.open_person(person("Marta Lindqvist"), "measure")
        await settled(app)
        tidying.keep()

        async def timed(name: str) -> None:
            await settled(app)
            await pilot.pause()
            found[name].append(time.process_time() - began)

        for _ in range(5):
            for name in PAGES:
                tidying.tidy()
                began = time.process_time()
                app.go(name)
                await timed(name)
        app.go("garment")
        await settled(app)
        await pilot.pause()
        app.screen.query_one(Choices).to("body-length")
        for sign in "60616263":
            began = time.process_time()
            await pilot.press(sign)
            await timed("a key in the garment")
            await pilot.press("escape")
    return {name: median(times) for name, times in found.items()}


def machines(data: Path) -> None:
    """Settle the machines, which the app would ask for first."""
    (data / "settings.json").write_text('{"machines": "overlocker, coverstitch"}')


def main() -> None:
    """Print a line for each, in milliseconds and as a share of the empty app."""
    with tempfile.TemporaryDirectory() as folder:
        os.environ["TAPEWISE_DATA"] = folder
        machines(Path(folder))
        empty = alone(EMPTY)
        rows = {"an empty app": empty, "first screen": alone(FIRST), **asyncio.run(turned())}
    for name, took in rows.items():
        print(f"{took * 1000:8.0f} ms  {took / empty:5.2f} × an empty app  {name}")


if __name__ == "__main__":
    main()
