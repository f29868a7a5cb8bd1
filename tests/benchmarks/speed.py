"""How long a person waits: medians in milliseconds, printed, never asserted.

Run as ``.venv/bin/python tests/benchmarks/speed.py``.
"""

from __future__ import annotations

import statistics
import sys
import time
from collections.abc import Callable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from making import MIDDLE, person, top

from tapewise_core.tasks.contents import contents
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.people import body_of, check
from tapewise_tui.canvas import Canvas
from tapewise_tui.pattern_canvas import draw_pattern
from tapewise_tui.pattern_places import placed

RUNS = 30


def median_ms(act: Callable[[], object]) -> float:
    """Time an act over many runs after one that warms up."""
    act()
    times = []
    for _ in range(RUNS):
        start = time.perf_counter()
        act()
        times.append((time.perf_counter() - start) * 1000)
    return statistics.median(times)


def preview(drafted: Drafted) -> None:
    """Draw a pattern as the app does on a large terminal."""
    canvas = Canvas(120, 40)
    draw_pattern(canvas, placed(drafted.pattern.pieces, canvas.width, canvas.height), "back")
    canvas.lines()


def main() -> None:
    """Print a line for each thing a person waits for."""
    some = person({key: MIDDLE[key] for key in ("height", "bust", "waist", "hip")})
    whole, drafted = person(), top()
    for name, act in (
        ("draft and prove a top, all measured", lambda: top()),
        ("draft and prove a top, sleeve to the wrist", lambda: top({"sleeve-length": "55"})),
        ("draw the preview at 120 by 40", lambda: preview(drafted)),
        ("estimate all but four measures", lambda: body_of(some)),
        ("judge a whole form", lambda: check(whole)),
        ("every file of a draft", lambda: contents(drafted)),
        ("every file and A4 pages", lambda: contents(drafted, ("pdf-a4",))),
    ):
        print(f"{median_ms(act):8.1f} ms  {name}")


if __name__ == "__main__":
    main()
