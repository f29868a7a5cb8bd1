"""A piece where it lies on the cloth."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from tapewise_core.drafting.extent import lies_across_paper
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.unfolding import NEAR, opens
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point

Floats = NDArray[np.float64]


class Way(Frozen):
    """How a piece is turned: as its ``image`` first, then so many ``quarters``."""

    image: bool = False
    quarters: int = 0

    def laid(self, points: Floats) -> Floats:
        """Return points of the paper, turned this way."""
        x, y = (-points[:, 0] if self.image else points[:, 0]), points[:, 1]
        for _ in range(self.quarters % 4):
            x, y = -y, x
        return np.column_stack([x, y])


class Lying(Frozen):
    """A piece on the cloth: how far ``across`` and ``along`` it the place begins that it takes
    [mm], and which ``way`` it lies; as a ``half`` whose fold is on the fold of the cloth, or whole.
    """

    piece: Piece
    across: float = 0.0
    along: float = 0.0
    way: Way = Way()
    half: bool = False

    def lines(self) -> list[Floats]:
        """Return its lines to cut along as they lie, x across the cloth and y along it, a row for
        each point [mm]."""
        lines = [self.way.laid(line) for line in lines_of(self.piece, half=self.half)]
        corner = np.min([line.min(0) for line in lines], 0)
        return [line - corner + (self.across, self.along) for line in lines]

    def outlines(self) -> list[list[Point]]:
        """Return the same as points."""
        return [[Point(float(x), float(y)) for x, y in line] for line in self.lines()]

    @property
    def turned(self) -> bool:
        """Whether its grain arrow lies across the cloth."""
        return lies_across_paper(self.piece) != bool(self.way.quarters % 2)

    @property
    def box(self) -> Box:
        """The place that it takes [mm]."""
        points = np.concatenate(self.lines())
        return Box(*map(float, (*points.min(0), *points.max(0))))


def lines_of(piece: Piece, *, half: bool = False) -> list[Floats]:
    """Return a piece's lines to cut along, a row of x and y for each point [mm]: its half's, or
    opened out about its fold."""
    cut = np.array([(point.x, point.y) for point in piece.cut])
    fold = next((edge.path for edge in piece.edges if edge.fold), None)
    return [cut] if half or fold is None or not opens(piece) else _opened(cut, fold)


def _opened(cut: Floats, fold: Path) -> list[Floats]:
    """The lines that a half's and its image make, the fold left out."""
    at = np.array((fold.start.x, fold.start.y))
    along = np.array((fold.end.x, fold.end.y)) - at
    along = along / np.hypot(*along)
    off = (cut - at) @ np.array((-along[1], along[0]))
    image = 2 * (np.outer((cut - at) @ along, along) + at) - cut
    on = np.abs(off) < NEAR
    count, found = len(cut), []
    for start in np.flatnonzero(on & ~np.roll(on, -1)):
        after = np.roll(on, -(start + 1))
        chain = (start + np.arange(int(after.argmax()) + 2)) % count
        found.append(np.concatenate([cut[chain], image[chain[-2:0:-1]]]))
    return found
