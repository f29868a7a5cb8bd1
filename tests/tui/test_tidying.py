"""Pages that were left are let go, with the lines drawn on them."""

from __future__ import annotations

import gc

from textual.strip import Strip
from walking import Walk, walk

from tapewise_core.tasks.people import person, store
from tapewise_tui import tidying


def strips() -> int:
    """Return how many drawn lines there are in memory."""
    return sum(isinstance(one, Strip) for one in gc.get_objects())


def test_turning_pages_for_an_evening_takes_no_more_memory_than_once() -> None:
    """After many turns hardly more lines are remembered than after each page was seen once."""
    store.save(person("Marta Lindqvist"))

    async def steps(at: Walk) -> None:
        at.app.open_person(store.load("Marta Lindqvist"), "table")
        counts = []
        for _ in range(4):
            for page in ("review", "measure", "table"):
                at.app.go(page)
                await at.settle()
            tidying.tidy()
            counts.append(strips())
        assert counts[-1] < counts[0] * 1.2, counts

    walk(steps)
