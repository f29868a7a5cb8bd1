"""Words on a picture: how much room they take, and how they are set."""

from __future__ import annotations

import math
from collections.abc import Iterator
from functools import lru_cache

from tapewise_core.drafting.picturing.ground import Place
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import TextLine

CAPITAL, BELOW, TAIL = 0.76, 0.04, 0.26
"""How far words reach above and below their baseline, and below it where a sign has a tail, as
shares of the type's size: a little more than common sans-serif faces have."""

TAILED = frozenset("Jgjpqy,;()/–Q")
"""Signs that reach below the baseline."""

NARROW, WIDE = frozenset("iljtfI.,;:' "), frozenset("MWmw@")
"""Signs much narrower or wider than others."""

LONG = 14
"""Names of more letters than this are set in two lines."""

LEADING = 1.25
"""From baseline to baseline, as a share of the type's size."""

PLAIN = 0.9
"""How wide plain words are at most, as a share of bold ones."""


def breadth(text: str, size: float, *, bold: bool = False) -> float:
    """How wide words are set at most, in common sans-serif faces [mm]."""
    return size * (1.0 if bold else PLAIN) * _signs(text)


@lru_cache(maxsize=2048)  # the same words are measured in every type that is tried
def _signs(text: str) -> float:
    return sum(map(_sign, text))


def _sign(sign: str) -> float:
    if sign in WIDE:
        return 1.13
    if sign in NARROW:
        return 0.45
    return 0.88 if sign.isupper() else 0.72


def in_lines(text: str) -> tuple[str, ...]:
    """Return words as one line, or as two where they are long.

    >>> in_lines("waist"), in_lines("shoulder seam and crown")
    (('waist',), ('shoulder seam', 'and crown'))
    """
    blanks = [place for place, sign in enumerate(text) if sign == " "]
    if len(text) <= LONG or not blanks:
        return (text,)
    at = min(blanks, key=lambda place: abs(place - len(text) / 2))
    return text[:at], text[at + 1 :]


class Words(Frozen):
    """Words to be placed, in one line or more: their type and half the room they take [mm];
    ``drop`` is from the middle of a line's room down to its baseline."""

    lines: tuple[str, ...]
    size: float
    bold: bool
    across: float
    up: float
    drop: float

    @staticmethod
    def of(*lines: str, size: float, bold: bool = False) -> Words:
        """Measure words."""
        return _measured(lines, size, bold)

    def corners(self, middle: Place, along: Place) -> tuple[Place, ...]:
        """Return the corners of the room they take about a middle, read along a direction."""
        (x, y), (c, s) = middle, along
        return tuple(
            (x + c * across - s * down, y + s * across + c * down)
            for across, down in (
                (-self.across, -self.up), (self.across, -self.up),
                (self.across, self.up), (-self.across, self.up),
            )
        )  # fmt: skip

    def set(self, middle: Place, along: Place = (1.0, 0.0)) -> Iterator[TextLine]:
        """Yield them set about a middle."""
        angle = round(math.degrees(math.atan2(along[1], along[0])), 2)
        for number, line in enumerate(self.lines):
            down = self.drop + self.size * LEADING * (number - (len(self.lines) - 1) / 2)
            at = Point(middle[0] - along[1] * down, middle[1] + along[0] * down)
            yield TextLine(line, at, self.size, "middle", angle, self.bold)


@lru_cache(maxsize=1024)
def _measured(lines: tuple[str, ...], size: float, bold: bool) -> Words:
    """Words as wide and high as they are; the same letters stand in picture after picture."""
    low = TAIL if any(map(TAILED.intersection, lines)) else BELOW
    high = CAPITAL + low + LEADING * (len(lines) - 1)
    across = max(breadth(line, size, bold=bold) for line in lines)
    return Words(lines, size, bold, across / 2, size * high / 2, size * (CAPITAL - low) / 2)
