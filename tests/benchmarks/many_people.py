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
from collections.abc import Callable, Iterator
from pathlib import Path

from tapewise_core.measures.body import Origin
from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.profiles.profile import Profile, Reading
from tapewise_core.tasks import people, work
from tapewise_core.tasks.work_text import text_of
from tapewise_tui.app import TapewiseApp
from tapewise_tui.desk import Desk
from tapewise_tui.widgets.rows import Rows


def store_of(number: int, data: Path) -> None:
    """Put so many people on file with all measures and a project each."""
    measures = {row.key: Reading(value=(row.low + row.high) / 2) for row in CATALOGUE}
    (data / "people").mkdir(parents=True)
    for pupil in range(number):
        made = Profile.of(f"Pupil {pupil:04}").having(measures=measures)
        (data / "people" / f"pupil-{pupil:04}.json").write_text(made.text(), "utf-8")
        folder = data / "projects" / made.id
        folder.mkdir(parents=True)
        text = text_of(work.Work(made.name, when=f"2026-10-01T10:00:{pupil:04}"))
        (folder / "jersey-top.json").write_text(text, "utf-8")


def took(act: Callable[[], object], times: int = 5) -> float:
    """Return what one time costs [s], the first left out."""
    act()
    begun = time.process_time()
    for _ in range(times):
        act()
    return (time.process_time() - begun) / times


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


def figures(number: int) -> Iterator[tuple[str, float]]:
    """Yield what is waited for and how long [s]; writes into a data folder that is empty."""
    few = min(asyncio.run(first_page()) for _ in range(3))
    store_of(number, Path(os.environ["TAPEWISE_DATA"]))
    yield "the list of people", took(people.store.listing)
    yield "the work that changed last", took(work.latest)
    many = min(asyncio.run(first_page()) for _ in range(3))
    yield "first page, beyond one with nobody on file", many - few
    desk = Desk()
    desk.open(people.store.load(f"Pupil {number // 2:04}"))
    yield "one change", took(lambda: change(desk), 20)


def main(number: int) -> None:
    """Print every figure."""
    with tempfile.TemporaryDirectory() as folder:
        os.environ["TAPEWISE_DATA"] = folder
        for name, cost in figures(number):
            print(f"{cost * 1000:8.1f} ms  {name}")


if __name__ == "__main__":
    main(int(sys.argv[1]) if sys.argv[1:] else 1000)
