"""Spots along a stitch line, and how far each is from the cut line round it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, NamedTuple

from tapewise_core.frozen import dataclass
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.point import Point

if TYPE_CHECKING:
    import numpy as np

APART = 10.0
"""The stitch line is measured from at least this often [mm] (our choice)."""

NEAR = 0.01
"""How near to the true curve the stitch line is measured from [mm]."""

AT_ONCE = 5000
"""So many pairs of a place and a side are reckoned at once: their numbers take no more memory than
is kept at hand (128 KB). Four times as many have to be given it anew, in three times the time."""

TINY = 1e-12
"""A side no longer than this has no direction [mm]."""


class Spot(NamedTuple):
    """A place on an edge [mm]: how far it is from the cut line and from the edge's two ends."""

    x: float
    y: float
    far: float
    from_start: float
    from_end: float


@dataclass(frozen=True, slots=True)
class Spots:
    """Spots along a closed stitch line; each edge's begin at its one of ``firsts``.

    Kept by columns: nearly all are looked at only to see that nothing is wrong there.
    """

    columns: tuple[list[float], ...]
    firsts: list[int]

    def worst_first(self, edge: int, width: float) -> Iterator[tuple[float, Spot]]:
        """Yield by how much each spot of an edge is off a width [mm], the worst first, and it."""
        places, far = range(*self.firsts[edge : edge + 2]), self.columns[2]
        off = {at: abs(far[at] - width) for at in places}
        for at in sorted(places, key=off.__getitem__, reverse=True):
            yield off[at], Spot(*(column[at] for column in self.columns))


def measured(cut: Sequence[Point], margins: Sequence[Margin]) -> Spots:
    """Return spots along all edges: the ends of their chords, and between them at even steps.

    All are measured at once, in a third of the time that one edge after another takes.
    """
    import numpy as np

    chords = [edge.path.flattened(NEAR) for edge in margins]
    ends = _rows([point for line in chords for point in line])
    lasts = np.cumsum([len(line) for line in chords])[:-1] - 1
    steps = np.diff(ends, axis=0)
    long = np.hypot(*steps.T)
    parts = np.maximum(np.ceil(long / APART), 1).astype(int)
    parts[lasts] = 1  # from one edge to the next
    begun = np.cumsum(parts) - parts
    on = np.repeat(np.arange(len(parts)), parts)
    share = (np.arange(len(on)) - begun[on]) / parts[on]
    at = np.append(ends[on] + share[:, None] * steps[on], ends[-1:], axis=0)
    walked = np.append((np.cumsum(long) - long)[on] + share * long[on], long.sum())
    firsts = np.concatenate([[0], begun[lasts] + 1, [len(at)]])
    counts = np.diff(firsts)
    from_start = walked - np.repeat(walked[firsts[:-1]], counts)
    from_end = np.repeat(walked[firsts[1:] - 1], counts) - walked
    columns = (*at.T, _distances(at, _rows([*cut, cut[0]])), from_start, from_end)
    return Spots(tuple(column.tolist() for column in columns), firsts.tolist())


def distance(spot: Spot, edge: Margin) -> float:
    """Return how far a spot is from another edge [mm]."""
    import numpy as np

    return float(_distances(np.array([spot[:2]]), _rows(edge.path.flattened(NEAR)))[0])


def _rows(points: Sequence[Point]) -> np.ndarray:
    """Places as rows of x and y."""
    import numpy as np

    return np.array([(p.x, p.y) for p in points])


def _distances(places: np.ndarray, line: np.ndarray) -> np.ndarray:
    """How far places are from a line [mm]: each from the nearest of all its sides.

    How far a place lies along and across every side are two products of matrices.
    """
    import numpy as np

    starts, sides = line[:-1], np.diff(line, axis=0)
    long = np.hypot(*sides.T)
    ways = sides / np.maximum(long, TINY)[:, None]
    squares = ways[:, ::-1] * (1.0, -1.0)
    begun, level = (starts * ways).sum(axis=1), (starts * squares).sum(axis=1)
    found, rows = [], max(AT_ONCE // len(sides), 1)
    for first in range(0, len(places), rows):
        some = places[first : first + rows]
        along, across = some @ ways.T, some @ squares.T
        along -= begun
        across -= level
        along -= np.minimum(np.maximum(along, 0.0), long)  # how far beyond the side's ends
        along *= along
        across *= across
        along += across
        found.append(along.min(axis=1))
    nearest: np.ndarray = np.sqrt(np.concatenate(found))
    return nearest
