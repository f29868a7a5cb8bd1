"""Where words cover least of what is drawn already."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

import numpy as np
from msgspec.structs import replace
from numpy.typing import NDArray

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.point import Vector
from tapewise_core.paper.drawing import Ink, Layer, Stroke, TextLine

SHIFT, MOST = 1.0, 15.0
"""How far apart places for words are, and how far off they are looked for [mm] (our choice)."""

WORDS, SMALLER = 8.0, 3.0
"""Words under words count as so many millimetres of a line, and so does a smaller size."""


class Covered(Frozen, eq=False):
    """What is drawn already: boxes of words, and points of cut lines, a millimetre apart."""

    words: tuple[Box, ...]
    points: NDArray[np.float64]

    @staticmethod
    def by(inks: Sequence[Ink]) -> Covered:
        """Return what would be covered of some inks."""
        words = tuple(box_of(ink.corners()) for ink in inks if isinstance(ink, TextLine))
        points = np.array(list(_points(inks))).reshape(-1, 2)
        return Covered(words, points)

    def with_words(self, words: TextLine) -> Covered:
        """Return it with words more."""
        return Covered((*self.words, box_of(words.corners())), self.points)

    def least(self, tries: Sequence[TextLine], reach: tuple[float, float]) -> TextLine:
        """Return words, moved no further than so much across and down [mm], where they cover
        least; of several sizes, the first if it lies as free."""
        found = [self._best(words, reach) for words in tries]
        least = min(range(len(found)), key=lambda n: (found[n][0] + SMALLER * n, n))
        return found[least][1]

    def _best(self, words: TextLine, reach: tuple[float, float]) -> tuple[float, TextLine]:
        """The best place of all, and how much is covered there."""
        across, down = (
            np.arange(-int(most / SHIFT), int(most / SHIFT) + 1) * SHIFT
            for most in (min(length, MOST) for length in reach)
        )
        x, y = (shift.ravel() for shift in np.meshgrid(across, down))
        box = box_of(words.corners())
        left, right, top, bottom = box.left + x, box.right + x, box.top + y, box.bottom + y
        count = np.hypot(x, y) / 1000
        for other in self.words:
            beside = (left < other.right) & (right > other.left)
            count += WORDS * (beside & (top < other.bottom) & (bottom > other.top))
        px, py = self._near(box).T[:, :, None]
        count += ((left < px) & (px < right) & (top < py) & (py < bottom)).sum(axis=0)
        best = int(count.argmin())
        by = Vector(float(x[best]), float(y[best]))
        return float(count[best]), replace(words, at=words.at + by)

    def _near(self, box: Box) -> NDArray[np.float64]:
        """The points that the words can come to lie on."""
        low, high = (box.left - MOST, box.top - MOST), (box.right + MOST, box.bottom + MOST)
        return self.points[((self.points > low) & (self.points < high)).all(axis=1)]


def _points(inks: Sequence[Ink]) -> Iterator[tuple[float, float]]:
    cuts = [ink for ink in inks if isinstance(ink, Stroke) and ink.layer is Layer.CUT]
    for start, end in (pair for ink in cuts for pair in pairwise(ink.corners())):
        steps = int((end - start).length()) + 1
        for step in range(steps):
            point = start.toward(end, step / steps)
            yield point.x, point.y
