"""How much room a screen has, in the words of the style sheet."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence
from typing import Any

from textual.screen import Screen
from textual.widgets import Static

Bounds = Sequence[tuple[int, str]] | None
"""From how many columns or rows on which class holds, if that is told apart."""


def room(size: tuple[int, int], across: Bounds, down: Bounds) -> tuple[str, ...]:
    """Return the classes of a screen of so many columns and rows.

    Whoever has them from the start is laid out once.

    >>> room((80, 24), [(0, "-tiny"), (64, "-narrow")], [(0, "-short"), (20, "-low")])
    ('-narrow', '-low')
    """
    sides = zip(size, (across, down), strict=True)
    return tuple(max(b for b in bounds if b[0] <= side)[1] for side, bounds in sides if bounds)


def cut_short(screen: Screen[Any]) -> list[str]:
    """Return the texts on a screen that have less room than they need."""
    lines = (line for line in screen.query(Static) if isinstance(line.content, str))
    return [str(line.content) for line in lines if line.is_on_screen and _is_cut(line)]


def _is_cut(line: Static) -> bool:
    """Whether a line of text has more rows than are shown."""
    text, (width, height) = str(line.content), line.size
    rows = (max(len(textwrap.wrap(part, max(width, 1))), 1) for part in text.splitlines())
    return bool(text) and sum(rows) > height
