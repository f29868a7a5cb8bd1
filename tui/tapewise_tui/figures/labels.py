"""Set the name of a landmark where the drawing leaves room for it."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product

from tapewise_tui.canvas import Canvas, Dot

LABEL = "label"
"""The tone of names, for widgets that colour."""


def label(canvas: Canvas, at: Dot, name: str, side: str) -> None:
    """Name a landmark in the nearest room on one side of it, dots leading there.

    In one line if that fits, else in two; where there is no room, not at all.
    """
    column, row = int(at[0]) // 2, int(at[1]) // 4
    for words, top in product(_wrappings(name), (row, row - 1, row + 1)):
        wide = max(map(len, words))
        for place in _places(canvas, column, wide, side):
            if all(_is_free(canvas, place, top + i, wide) for i in range(len(words))):
                _set(canvas, words, place, top, side)
                if top == row:
                    _lead(canvas, column, place, row, len(words[0]))
                return


def _wrappings(name: str) -> Iterator[list[str]]:
    yield [name]
    first, blank, last = name.rpartition(" ")
    if blank:
        yield [first, last]


def _places(canvas: Canvas, column: int, wide: int, side: str) -> range:
    """Columns to begin in, the nearest first."""
    if side == "right":
        return range(column + 2, canvas.columns - wide + 1)
    return range(column - wide - 1, -1, -1)


def _is_free(canvas: Canvas, place: int, row: int, wide: int) -> bool:
    """Say whether words stand free, with a blank on each side that is not the border."""
    left, right = max(place - 1, 0), min(place + wide + 1, canvas.columns)
    return canvas.is_free(left, row, right - left)


def _set(canvas: Canvas, words: list[str], place: int, row: int, side: str) -> None:
    wide = max(map(len, words))
    for down, word in enumerate(words):
        canvas.text(place, row + down, word if side == "right" else word.rjust(wide), LABEL)


def _lead(canvas: Canvas, column: int, place: int, row: int, wide: int) -> None:
    """Dots over blank characters only, between a landmark and its name."""
    between = (
        range(column + 2, place - 1) if place > column else range(place + wide + 1, column - 1)
    )
    for spot in between:
        if canvas.is_free(spot, row, 1):
            canvas.text(spot, row, "." if canvas.ascii else "·", LABEL)
