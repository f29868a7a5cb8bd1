"""The other process of a closer lay: reads one task, says how it goes, and where pieces lie.

Run as a module, since the library keeps one whole processor busy and ends the process it runs in
where a shape cannot be laid at all.
"""

from __future__ import annotations

import json
import sys
import threading
import time
from typing import Any

FIRST, EVERY = 0.2, 1.0
"""When it is said first how it goes, and how often from then on [s]."""


def main() -> None:
    """Solve the task on standard input; one line of JSON for each report, the last with places."""
    import spyrrow

    task = json.load(sys.stdin)
    items = [
        spyrrow.Item(str(number), _closed(item["points"]), 1, item["turns"])
        for number, item in enumerate(task["items"])
    ]
    field = spyrrow.StripPackingInstance("lay", task["wide"], items)
    config = spyrrow.StripPackingConfig(
        total_computation_time=task["seconds"],
        seed=task["seed"],
        num_workers=1,
        min_items_separation=task["gap"],
    )
    heard, began, done = spyrrow.ProgressQueue(), time.monotonic(), threading.Event()
    told = threading.Thread(target=_tell, args=(heard, began, done))
    told.start()
    found = field.solve(config, progress=heard)
    done.set()
    told.join()
    placed = [(int(one.id), one.rotation, *one.translation) for one in found.placed_items]
    _say(began, found.width, placed=placed)


def _closed(points: list[list[float]]) -> list[tuple[float, float]]:
    return [(x, y) for x, y in (*points, points[0])]


def _tell(heard: Any, began: float, done: threading.Event) -> None:
    """Say now and then how long the best lay is."""
    pause = FIRST
    while not done.wait(pause):
        pause = EVERY
        reports = heard.drain()
        if reports:
            _say(began, min(solution.width for _, solution in reports))


def _say(began: float, length: float, **more: object) -> None:
    report = {"seconds": round(time.monotonic() - began, 1), "length": length, **more}
    print(json.dumps(report), flush=True)


if __name__ == "__main__":
    main()
