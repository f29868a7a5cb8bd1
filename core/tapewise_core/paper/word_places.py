"""Where words cover least of what is drawn already."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.point import Vector
from tapewise_core.paper.drawing import Ink, Layer, Stroke, TextLine

SHIFT, MOST = 1.0, 15.0
"""How far apart places for words are, and how far off they are looked for [mm] (our choice)."""

WORDS, SMALLER = 8.0, 3.0
"""Words under words count as so many millimetres of a line, and so does a smaller size."""


def least_covering(
    tries: Sequence[TextLine], reach: tuple[float, float], inks: Sequence[Ink]
) -> TextLine:
    """Return the words, moved no further than so much across and down [mm], where they cover
    least of cut lines and other words; of several sizes, the first if it lies as free."""
    found = [_best(words, reach, inks) for words in tries]
    least = min(range(len(found)), key=lambda n: (found[n][0] + SMALLER * n, n))
    return found[least][1]


def _best(
    words: TextLine, reach: tuple[float, float], inks: Sequence[Ink]
) -> tuple[float, TextLine]:
    """The best place of all, and how much is covered there."""
    import numpy as np

    across, down = (
        np.arange(-int(most / SHIFT), int(most / SHIFT) + 1) * SHIFT
        for most in (min(length, MOST) for length in reach)
    )
    x, y = (shift.ravel() for shift in np.meshgrid(across, down))
    box = box_of(words.corners())
    left, right, top, bottom = box.left + x, box.right + x, box.top + y, box.bottom + y
    count = np.hypot(x, y) / 1000
    for other in _boxes(inks):
        beside = (left < other.right) & (right > other.left)
        count += WORDS * (beside & (top < other.bottom) & (bottom > other.top))
    points = np.array(_points(inks)).reshape(-1, 2).T[:, :, None]
    inside = (left < points[0]) & (points[0] < right) & (top < points[1]) & (points[1] < bottom)
    count += inside.sum(axis=0)
    best = int(count.argmin())
    by = Vector(float(x[best]), float(y[best]))
    return float(count[best]), replace(words, at=words.at + by)


def _boxes(inks: Sequence[Ink]) -> list[Box]:
    return [box_of(ink.corners()) for ink in inks if isinstance(ink, TextLine)]


def _points(inks: Sequence[Ink]) -> list[tuple[float, float]]:
    """Points of cut lines, a millimetre apart."""
    cuts = [ink for ink in inks if isinstance(ink, Stroke) and ink.layer is Layer.CUT]
    found = []
    for start, end in (pair for ink in cuts for pair in pairwise(ink.corners())):
        steps = int((end - start).length()) + 1
        between = (start.toward(end, n / steps) for n in range(steps))
        found += [(point.x, point.y) for point in between]
    return found
