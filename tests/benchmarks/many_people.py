"""What waiting costs with a thousand people on file: the list, the first page, one change.

By hand: ``python tests/benchmarks/many_people.py [NUMBER]``; processor time in milliseconds, so
that other work on the machine does not count. Nothing is asserted.
"""

from __future__ import annotations

import asyncio
import os
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from tapewise_core.measures.body import Origin
from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people, work
from tapewise_core.tasks.work_text import text_of
from tapewise_tui.app import TapewiseApp
from tapewise_tui.desk import Desk
from tapewise_tui.widgets.rows import Rows


def store_of(number: int, data: Path) -> None:
    """Put so many people on file with all measures and a project each."""
    measures = {row.key: {"value": (row.low + row.high) / 2} for row in CATALOGUE}
    (data / "people").mkdir(parents=True)
    for pupil in range(number):
        made = Profile.of(f"Pupil {pupil:04}").having(measures=measures)
        (data / "people" / f"pupil-{pupil:04}.json").write_text(made.text(), "utf-8")
        folder = data / "projects" / made.id
        folder.mkdir(parents=True)
        text = text_of(work.Work(made.name, when=f"2026-10-01T10:00:{pupil:04}"))
        (folder / "jersey-top.json").write_text(text, "utf-8")


def told(what: str, act: Callable[[], object], times: int = 5) -> None:
    """Print what one time costs, the first left out."""
    act()
    begun = time.process_time()
    for _ in range(times):
        act()
    print(f"{what}: {(time.process_time() - begun) / times * 1000:.1f} ms")


async def first_page() -> float:
    """Return what the app costs up to a first page with people on it [s]."""
    app = TapewiseApp()
    begun = time.process_time()
    async with app.run_test(size=(100, 30)) as pilot:
        while app.page is None or not app.page.query_one(Rows).row_count:
            await pilot.pause(0)
        return time.process_time() - begun


def change(desk: Desk) -> None:
    """Enter another hip."""
    hip = desk.profile.values()["hip"].cm + 0.1
    desk.value("hip", (hip,), hip, Origin.MEASURED, "hip")
    assert not desk.trouble


def main(number: int) -> None:
    """Print every figure."""
    with tempfile.TemporaryDirectory() as folder:
        os.environ["TAPEWISE_DATA"] = folder
        few = min(asyncio.run(first_page()) for _ in range(3))
        store_of(number, Path(folder))
        told(f"list of {number} people", people.store.listing)
        told("the work that changed last", work.latest)
        many = min(asyncio.run(first_page()) for _ in range(3))
        print(f"first page: {many * 1000:.0f} ms, {few * 1000:.0f} ms of it with nobody on file")
        desk = Desk()
        desk.open(people.store.load(f"Pupil {number // 2:04}"))
        told("one change", lambda: change(desk), 20)


if __name__ == "__main__":
    main(int(sys.argv[1]) if sys.argv[1:] else 1000)
