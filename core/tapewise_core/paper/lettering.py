"""Words set within a width, and straight strokes, for what is printed round a pattern."""

from __future__ import annotations

import re
from collections.abc import Sequence

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Dash, Layer, Stroke, TextLine

CHARACTER = 0.56
"""Mean width of a character as a share of the type's height, in running text."""

LEADING = 1.35
"""From baseline to baseline, as a share of the type's height."""


def ruling(
    *points: Point,
    width: float = 0.25,
    layer: Layer = Layer.SCALE,
    dash: Dash = Dash.SOLID,
    name: str = "",
) -> Stroke:
    """Return straight lines through two points or more, as one thin stroke."""
    return Stroke(ruled(*points), layer, dash, width, name=name)


def frame(box: Box, width: float = 0.25, layer: Layer = Layer.SCALE, name: str = "") -> Stroke:
    """Return the outline of a box; its measure is from middle to middle of the line."""
    a, b = Point(box.left, box.top), Point(box.right, box.top)
    c, d = Point(box.right, box.bottom), Point(box.left, box.bottom)
    return Stroke(ruled(a, b, c, d, a), layer, width=width, closed=True, name=name)


_BREAK = re.compile(r"(?<!±) (?!(?<=\d )(?:\d+/\d+|in|cm|mm|%)(?!\w))")
"""A space at which a line may end: none inside an amount, which would be read as another."""


def wrapped(text: str, width: float, size: float) -> list[str]:
    """Return the text in lines that fit a width [mm] when set at a size [mm]."""
    return broken(text, max(4, int(width / (CHARACTER * size))))


def broken(text: str, most: int) -> list[str]:
    """Return the text in lines of so many characters at most.

    Lines break at plain spaces between words and amounts only, and no last line is a single word
    where the line before can spare one.

    >>> broken("as wide as 9 1/2 in, no more", 11)
    ['as wide as', '9 1/2 in,', 'no more']
    >>> broken("as wide as nine inches, no more", 22)
    ['as wide as nine', 'inches, no more']
    """
    lines: list[list[str]] = [[]]
    for word in _BREAK.split(text):
        if lines[-1] and len(" ".join([*lines[-1], word])) > most:
            lines.append([])
        lines[-1].append(word)
    if len(lines) > 1 and len(lines[-1]) == 1 and len(lines[-2]) > 2:
        spared = [lines[-2][-1], *lines[-1]]
        if len(" ".join(spared)) <= most:
            lines[-2:] = [lines[-2][:-1], spared]
    return [" ".join(line) for line in lines]


def shortened(text: str, width: float, size: float) -> str:
    """Return the text, its end replaced by an ellipsis where it would not fit a width [mm]."""
    room = max(4, int(width / (CHARACTER * size)))
    return text if len(text) <= room else f"{text[: room - 1].rstrip()}…"


def lines_at(
    texts: Sequence[str], left: float, top: float, size: float, *, bold: bool = False
) -> list[TextLine]:
    """Return lines of text one under another, the first one's upper edge at ``top`` [mm]."""
    return [
        TextLine(
            text, Point(left, top + size + i * size * LEADING), size, bold=bold, layer=Layer.TEXT
        )
        for i, text in enumerate(texts)
    ]


def block(
    text: str, left: float, top: float, width: float, size: float
) -> tuple[list[TextLine], float]:
    """Return a paragraph set in a width, and where the next one may start [mm]."""
    lines = wrapped(text, width, size)
    return lines_at(lines, left, top, size), top + len(lines) * size * LEADING + size * 0.5
