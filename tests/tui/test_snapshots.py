"""Every screen as text, at 80 by 24 and at 120 by 40, and the pages at 60 by 15.

After a wanted change renew them with ``RENEW_SNAPSHOTS=1 pytest tests/tui/test_snapshots.py``
and read what the version control shows before you keep it.
"""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from quiet import run

from tapewise_tui.screens import SCENES, SIZES, Scene, own_data, play

FOLDER = Path(__file__).with_name("snapshots")

LEAST = (60, 15)
"""The smallest terminal that is looked after."""

QUESTIONS = ("person", "before")
ALL = [(scene, size) for scene in SCENES for size in SIZES] + [
    (scene, LEAST) for scene in SCENES if not scene.keys or scene.name in QUESTIONS
]


@pytest.mark.parametrize(
    ("scene", "size"), ALL, ids=lambda one: getattr(one, "name", None) or f"{one[0]}x{one[1]}"
)
def test_a_screen_is_as_it_was(scene: Scene, size: tuple[int, int]) -> None:
    """The screen reads exactly as the file kept of it, and fits its terminal."""
    with own_data(scene.page):
        shown = run(play(scene, size)).text
    lines = shown.splitlines()
    assert len(lines) == size[1]
    assert max(map(len, lines)) <= size[0]
    kept = FOLDER / f"{scene.name}-{size[0]}x{size[1]}.txt"
    if os.environ.get("RENEW_SNAPSHOTS"):
        FOLDER.mkdir(exist_ok=True)
        kept.write_text(shown, "utf-8")
    assert shown == kept.read_text("utf-8")
