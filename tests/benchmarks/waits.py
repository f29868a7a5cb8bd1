"""All that somebody waits for, each beside the least that could be done: a table, by hand.

``python tests/benchmarks/waits.py [PEOPLE]`` takes some minutes. Processor time, so that other
work on the machine changes little; nothing is asserted.
"""

from __future__ import annotations

import asyncio
import gc
import os
import re
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import app
import many_people
from floors import by_reportlab, by_svgwrite, here, paths_of, started

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.batch_row import Order, drafted_row
from tapewise_core.tasks.contents import contents
from tapewise_core.tasks.documents import drawings_of
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.judging import judged
from tapewise_core.tasks.people import person
from tapewise_tui.cli import LIBRARIES, SELDOM

WHO = "Marta Lindqvist"
"""One of the examples: she has measures that were not taken."""

SURE = f"""
import time
from tapewise_core.tasks import drafting, how_sure, people
drafted = drafting.draft(people.person({WHO!r}), "jersey-top", {{}})
begun = time.process_time()
how_sure.how_sure(drafted)
print(time.process_time() - begun)
"""

Row = tuple[str, float, float, str]
"""What is waited for, what it takes and its floor [s], and what the floor is."""


def commands(bare: float, folder: str) -> Iterator[Row]:
    """The command line, beside the interpreter that does nothing."""
    told = ("draft", WHO, "jersey-top", "--quiet", "--replace", "--out", f"{folder}/out")
    sure = how_sure_alone()
    for name, arguments, apart in (
        ("tapewise --version", ("--version",), 0.0),
        ("tapewise check", ("check", WHO), 0.0),
        ("tapewise garments", ("garments",), 0.0),
        ("tapewise draft --no-pages, how sure apart", (*told, "--no-pages"), sure),
        ("tapewise draft, with home pages and how sure", told, 0.0),
    ):
        yield name, started("-m", "tapewise_tui", *arguments) - apart, bare, "bare interpreter"


def how_sure_alone() -> float:
    """Return what it takes to say how sure a top's proofs are, the first time in a program [s]."""
    return app.alone(SURE)


def drafts(bare: float) -> Iterator[Row]:
    """Drafting and proving for one body after another, and writing the files."""
    for name in ("jersey-top", "skirted-dress", "set-in-top"):
        bodies = iter([grown(i) for i in range(30)])
        took = here(lambda name=name, bodies=bodies: draft(next(bodies), name, {}), 29)
        yield f"draft and prove, {name}", took, bare, "bare interpreter"
    done = judged(draft(person(WHO), "jersey-top", {}))
    paths, drawings = paths_of(contents(done)), drawings_of(done)
    took, floor = here(lambda: contents(done)), here(lambda: by_svgwrite(paths))
    yield "all files of a draft", took, floor, "svgwrite, same paths"
    pages = pages_of(contents(done, ("pdf-a4",))["pattern-a4.pdf"])
    more = here(lambda: contents(done, ("pdf-a4",))) - took
    floor = here(lambda: by_reportlab(drawings, pages))
    yield f"its {pages} A4 pages", more, floor, "reportlab, same pages"


def grown(millimetres: int) -> Profile:
    """Return the example with so many mm more all round, a body that was never drafted for."""
    found = person(WHO)
    for key in ("bust", "waist", "hip"):
        found = found.with_value(key, found.measures[key].value + millimetres / 10)
    return found


def pages_of(file: bytes) -> int:
    """Return how many pages a PDF file says it has."""
    return max(map(int, re.findall(rb"/Count (\d+)", file)))


def batch(bare: float) -> Row:
    """A thousand tops with their SVG on two cores, reckoned from ten."""
    text = person(WHO).text()
    order = Order(1, "someone", text, "jersey-top", date(2026, 1, 31))
    took = here(lambda: drafted_row(order)) * 500
    return "1,000 tops with SVG, two cores", took, bare, "bare interpreter"


def in_the_app(empty: float, number: int) -> Iterator[Row]:
    """The pages of the app, and a thousand people in it, beside an app that shows nothing."""
    found = {"first screen": app.alone(app.FIRST), **asyncio.run(app.turned())}
    found |= {f"{number} people: {name}": took for name, took in many_people.figures(number)}
    for name, took in found.items():
        yield name, took, empty, "empty Textual app"


def told(rows: Iterator[Row] | tuple[Row, ...]) -> None:
    """Print rows as they come."""
    for what, took, floor, which in rows:
        print(f"{took * 1000:9.1f} ms  {took / floor:7.2f} × {which:21}  {what}", flush=True)


def main(number: int) -> None:
    """Print the table."""
    with tempfile.TemporaryDirectory() as folder:
        data = Path(folder) / "data"
        data.mkdir()
        os.environ["TAPEWISE_DATA"] = str(data)
        os.environ["PYTHONPYCACHEPREFIX"] = f"{folder}/bytecode"
        os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
        gc.set_threshold(*SELDOM)
        app.machines(data)
        bare, empty = started("-c", "pass"), app.alone(app.EMPTY)
        told((("bare interpreter", bare, bare, ""), ("empty Textual app", empty, empty, "")))
        parts: tuple[Callable[[], Iterator[Row]], ...] = (
            lambda: commands(bare, folder),
            lambda: drafts(bare),
            lambda: iter([batch(bare)]),
            lambda: in_the_app(empty, number),
        )
        for part in parts:
            told(part())


if __name__ == "__main__":
    if LIBRARIES.items() <= os.environ.items():
        main(int(sys.argv[1]) if sys.argv[1:] else 1000)
    else:  # libraries look at these when they are imported, as they are by now
        subprocess.run([sys.executable, *sys.argv], env={**os.environ, **LIBRARIES}, check=True)
