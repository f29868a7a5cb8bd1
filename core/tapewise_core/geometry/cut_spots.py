"""Spots along a stitch line, and how far each is from the cut line round it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.chords import Chords

if TYPE_CHECKING:
    import numpy as np

APART = 10.0
"""The stitch line is measured from at least this often [mm] (our choice)."""

AT_ONCE = 8000
"""So many pairs of a place and a side are reckoned at once: a table of their numbers takes no more
memory than is kept at hand (128 KB), and wakes no threads. Three times as many take twice as
long."""

TINY = 1e-12
"""A side no longer than this has no direction of its own [mm]: any does."""


class Spot(Frozen):
    """A place on an edge [mm]: how far it is from the cut line and from the edge's two ends."""

    x: float
    y: float
    far: float
    from_start: float
    from_end: float


class Spots(Frozen):
    """Spots along the edges of a closed stitch line, how far each is from the cut line and how
    far along the walk [mm]; ``firsts`` says at which each edge's begin.

    Kept in tables: nearly all are looked at only to see that nothing is wrong there.
    """

    at: np.ndarray
    far: np.ndarray
    walked: np.ndarray
    firsts: list[int]

    def worst_first(self, edge: int, width: float) -> Iterator[tuple[float, Spot]]:
        """Yield by how much each spot of an edge is off a width [mm], the worst first, and it."""
        first, end = self.firsts[edge : edge + 2]
        off = abs(self.far[first:end] - width)
        for at in off.argsort()[::-1].tolist():
            yield float(off[at]), self._spot(first + at, first, end - 1)

    def length(self, edge: int) -> float:
        """Return how long the walk along an edge is [mm]."""
        first, end = self.firsts[edge : edge + 2]
        return float(self.walked[end - 1] - self.walked[first])

    def across(self, spot: Spot, edge: int) -> float:
        """Return how far a spot is from another edge [mm]."""
        from shapely import distance, linestrings, points

        first, end = self.firsts[edge : edge + 2]
        return float(distance(points(spot.x, spot.y), linestrings(self.at[first:end])))

    def _spot(self, at: int, first: int, last: int) -> Spot:
        """One of them, on an edge between its first and its last."""
        walked = self.walked
        return Spot(
            float(self.at[at, 0]),
            float(self.at[at, 1]),
            float(self.far[at]),
            float(walked[at] - walked[first]),
            float(walked[last] - walked[at]),
        )


def measured(
    cuts: Sequence[np.ndarray], counts: Sequence[int], stitched: Chords
) -> Iterator[Spots]:
    """Yield the spots of many closed stitch lines, each of so many edges, with a cut line of its
    own: the ends of their chords, and between them at even steps.

    All edges are walked at once, in a quarter of the time that one after another takes.
    """
    at, walked, firsts = _spread(stitched)
    first = 0
    for cut, count in zip(cuts, counts, strict=True):
        starts = firsts[first : first + count + 1]
        one = slice(starts[0], starts[-1])
        yield Spots(at[one], _distances(at[one], cut), walked[one], [n - one.start for n in starts])
        first += count


def _spread(stitched: Chords) -> tuple[np.ndarray, np.ndarray, list[int]]:
    """Spots along chords, how far each is along the walk, and at which each path's begin."""
    import numpy as np

    ends, firsts = stitched
    steps = ends[1:] - ends[:-1]
    long = np.hypot(steps[:, 0], steps[:, 1])
    parts = np.maximum(np.ceil(long / APART), 1).astype(int)
    parts[firsts[1:-1] - 1] = 1  # from one edge to the next
    spot = np.concatenate([[0], np.cumsum(parts)])  # of each end
    on = np.repeat(np.arange(len(parts)), parts)
    share = (np.arange(len(on)) - spot[on]) / parts[on]
    at = np.concatenate([ends[on] + share[:, None] * steps[on], ends[-1:]])
    whole = np.cumsum(long)
    walked = np.concatenate([whole[on] - (1 - share) * long[on], whole[-1:]])
    return at, walked, [*spot[firsts[:-1]].tolist(), len(at)]


def _distances(places: np.ndarray, line: np.ndarray) -> np.ndarray:
    """How far places are from a closed line [mm]: each from the nearest of all its sides.

    How far a place lies along every side from its middle, and across it, are two products of
    matrices.
    """
    import numpy as np

    sides = np.concatenate([line[1:], line[:1]]) - line
    long = np.hypot(sides[:, 0], sides[:, 1])
    half, ways = long / 2, sides / np.maximum(long, TINY)[:, None]
    ways[long <= TINY] = 1.0, 0.0  # of a side that is but a point
    middles = line + sides / 2
    along, across = (_reckoned(middles, way) for way in (ways, ways[:, ::-1] * (1.0, -1.0)))
    places = np.column_stack([places, np.ones(len(places))])
    found, rows = np.empty(len(places)), max(AT_ONCE // len(line), 1)
    for first in range(0, len(places), rows):
        some = places[first : first + rows]
        gone, off = some @ along, some @ across
        np.abs(gone, out=gone)
        gone -= half
        np.maximum(gone, 0.0, out=gone)  # how far beyond the side's ends
        gone *= gone
        off *= off
        gone += off
        gone.min(axis=1, out=found[first : first + rows])
    return np.sqrt(found)


def _reckoned(origins: np.ndarray, ways: np.ndarray) -> np.ndarray:
    """What a place's x, y and 1 are multiplied by for how far it lies that way from each origin."""
    import numpy as np

    return np.column_stack([ways, -(origins * ways).sum(axis=1)]).T
