"""The chords of many paths at once, as a table of numbers."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import TYPE_CHECKING, NamedTuple

from tapewise_core.geometry.path import Path

if TYPE_CHECKING:
    import numpy as np


CLOSE = 0.01
"""How near to the true curve a stitch line is measured from [mm]."""


class Chords(NamedTuple):
    """Points along many paths, one path after another, as rows of x and y [mm]; ``firsts`` says at
    which row each path begins, and where the last one ends."""

    rows: np.ndarray
    firsts: np.ndarray

    def split(self, counts: Iterable[int]) -> Iterator[Chords]:
        """Yield so many paths of them after so many, which are all."""
        at = 0
        for count in counts:
            firsts = self.firsts[at : at + count + 1]
            yield Chords(self.rows[firsts[0] : firsts[-1]], firsts - firsts[0])
            at += count

    @property
    def ring(self) -> np.ndarray:
        """Their closed line, where each path begins at the end of the one before."""
        import numpy as np

        kept = np.ones(len(self.rows), bool)
        kept[self.firsts[:-1]] = False
        return self.rows[kept]


def chords(paths: Sequence[Path], tolerance: float) -> Chords:
    """Return the points of each path's :meth:`Path.flattened`, both its ends among them.

    They are the same points, in a quarter of the time.
    """
    import numpy as np

    parts = [part for path in paths for part in path.segments]
    shapes = [number for part in parts for p in part.handles for number in (p.x, p.y)]
    a, b, c, d = np.array(shapes).reshape(len(parts), 4, 2).swapaxes(0, 1)
    steps = np.array([part.steps(tolerance) for part in parts])
    last = np.cumsum([len(path.segments) for path in paths]) - 1
    points = steps.copy()
    points[last] += 1  # a path's end; any other segment's is where the next one begins
    begun = np.concatenate([[0], np.cumsum(points)])
    of = np.repeat(np.arange(len(parts)), points)
    t = ((np.arange(len(of)) - begun[of]) / steps[of])[:, None]
    first, second, third = 3 * (b - a), 3 * (a - 2 * b + c), d - a + 3 * (b - c)
    rows = a[of] + t * (first[of] + t * (second[of] + t * third[of]))
    ends = begun[last + 1]
    rows[ends - 1] = d[last]
    return Chords(rows, np.concatenate([[0], ends]))
