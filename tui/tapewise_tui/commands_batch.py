"""What ``tapewise batch`` does: a garment for everyone in a table."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import date
from typing import TYPE_CHECKING

from tapewise_core.errors import OptionError
from tapewise_core.profiles.files import typed_path
from tapewise_tui import trouble
from tapewise_tui.exits import FINE, LOOK
from tapewise_tui.printing import complain, print_json, say
from tapewise_tui.settings_asked import asked, usual_machines

if TYPE_CHECKING:
    from tapewise_core.tasks.batch import Batch
    from tapewise_core.tasks.batch_row import Order, Result

Tell = Callable[[int, int, str], object]


def batch(options: argparse.Namespace) -> int:
    """Draft for everyone in a table; exit 1 when a row failed."""
    from tapewise_core.tasks.batch import SUMMARY, orders, run
    from tapewise_core.tasks.class_table import read_table

    jobs = _jobs(options.jobs)
    table, out = read_table(typed_path(options.people)), typed_path(options.out)
    wanted = orders(table, _usual(options))
    with _progress(quiet=options.quiet or options.json) as tell:
        work = _cluster(options.cluster) if options.cluster else None
        made = run(table, wanted, out, jobs=jobs, work=work, tell=tell)
    for trace in filter(None, (one.trace for one in made.results)):
        trouble.keep(trace)
    if options.json:
        print_json(_json(made, options.out))
    else:
        _tell(made, options, str(out / SUMMARY))
    return LOOK if made.failed else FINE


def _cluster(address: str) -> Callable[..., Iterator[Result]]:
    from tapewise_core.tasks.batch_cluster import results

    return results(address)


def _jobs(jobs: int | None) -> int:
    there = os.cpu_count() or 1
    if jobs is not None and not 1 <= jobs <= 256:
        raise OptionError(f"--jobs is a number from 1 to 256, not {jobs}.")
    return jobs or there


def _usual(options: argparse.Namespace) -> Order:
    from tapewise_core.tasks.asked_paper import Paper
    from tapewise_core.tasks.batch_row import Order

    return Order(
        row=0,
        folder="",
        person="",
        garment=options.garment,
        made=date.today(),
        asked=tuple(asked(options.set).items()),
        formats=tuple(dict.fromkeys(options.format)),
        machines=options.machines or usual_machines(),
        unit=options.unit or "",
        paper=Paper(options.overlap, options.roll_width, options.page_margin),
        steps=options.steps,
    )


@contextmanager
def _progress(*, quiet: bool) -> Iterator[Tell]:
    """Show a bar on a terminal, and nothing where nobody looks."""
    if quiet or not sys.stderr.isatty():
        yield lambda done, total, name: None
        return
    from rich.console import Console
    from rich.markup import escape
    from rich.progress import Progress

    with Progress(console=Console(stderr=True), transient=True) as bar:
        task = bar.add_task("drafting", total=None)
        yield lambda done, total, name: bar.update(
            task, completed=done, total=total, description=escape(name[:24]) or "drafting"
        )


def _tell(made: Batch, options: argparse.Namespace, summary: str) -> None:
    for one in made.failed:
        complain(f"row {one.row}, {one.name or 'nobody'}: {one.says or ' '.join(one.failing)}")
    if options.quiet:
        return
    new = len(made.results) - made.skipped - sum(one.result == "failed" for one in made.results)
    before = f", {made.skipped} were there already" if made.skipped else ""
    look = sum(not one.ready for one in made.results)
    say(f"{new} drafted{before}, {look} to look at; {summary} lists them all.")


def _json(made: Batch, out: str) -> dict[str, object]:
    rows = [
        {
            "row": one.row,
            "name": one.name,
            "folder": one.folder,
            "result": one.result,
            "sure": one.sure,
            "failing": list(one.failing),
            "unlikely": list(one.unlikely),
            "estimated": list(one.estimated),
            "says": one.says,
        }
        for one in made.results
    ]
    return {"folder": out, "skipped": made.skipped, "failed": len(made.failed), "rows": rows}
