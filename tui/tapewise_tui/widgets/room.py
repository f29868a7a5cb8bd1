"""How much room a screen has, in the words of the style sheet."""

from __future__ import annotations

from collections.abc import Sequence

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
