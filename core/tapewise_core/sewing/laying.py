"""Where each piece lies on the cloth: in rows of whole pieces, the tallest first."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from tapewise_core.drafting.extent import lies_across_paper, size_of
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.unfolding import loops, opens
from tapewise_core.geometry.outline import box_of
from tapewise_core.geometry.point import Point
from tapewise_core.sewing.wedges import SPACE


@dataclass(frozen=True, slots=True)
class Lying:
    """A piece on the cloth: how far ``across`` and ``along`` it the place begins that it takes
    [mm]; ``turned`` a quarter, ``upside`` down, or as the ``image`` of the one before."""

    piece: Piece
    across: float = 0.0
    along: float = 0.0
    turned: bool = False
    upside: bool = False
    image: bool = False

    @property
    def size(self) -> tuple[float, float]:
        """How much of the cloth it takes across and along [mm]."""
        across, along = size_of(self.piece)
        return (along, across) if self.turned else (across, along)

    def outlines(self) -> list[list[Point]]:
        """Return its lines to cut along as they lie, x across the cloth and y along it [mm]."""
        lines = [[self._laid(point) for point in line] for line in _whole(self.piece)]
        box = box_of(point for line in lines for point in line)
        x, y = self.across - box.left, self.along - box.top
        return [[Point(point.x + x, point.y + y) for point in line] for line in lines]

    def _laid(self, point: Point) -> Point:
        x, y = (-point.x if self.image else point.x), point.y
        if lies_across_paper(self.piece) != self.turned:
            x, y = -y, x
        return Point(-x, -y) if self.upside else Point(x, y)


def _whole(piece: Piece) -> list[list[Point]]:
    """A piece's lines to cut along, opened out about its fold."""
    fold = next((edge.path for edge in piece.edges if edge.fold), None)
    if fold is None or not opens(piece):
        return [list(piece.cut)]
    return loops(piece.cut, (fold.start, fold.end))


def copies(piece: Piece, usable: float) -> list[Lying]:
    """Return a piece as often as it is cut, turned where that saves length, not yet placed."""
    turned = is_turned(piece, usable)
    return [
        Lying(piece, turned=turned, image=piece.mirrored and number % 2 == 1)
        for number in range(piece.count)
    ]


def is_turned(piece: Piece, usable: float) -> bool:
    """Say whether a piece without a grain of its own lies better across the cloth."""
    across, along = size_of(piece)
    return piece.turnable and along <= usable and (across > usable or across < along)


def in_rows(pieces: Iterable[Lying], usable: float) -> tuple[tuple[Lying, ...], float]:
    """Return pieces in rows on cloth so wide [mm], and the length they take."""
    rows: list[list[Lying]] = []
    for piece in sorted(pieces, key=lambda one: -one.size[1]):
        for row in rows:
            across = _filled(row) + SPACE
            if across + piece.size[0] <= usable:
                row.append(replace(piece, across=across))
                break
        else:
            rows.append([piece])
    placed: list[Lying] = []
    along = 0.0
    for row in rows:
        placed += (replace(piece, along=along) for piece in row)
        along += row[0].size[1] + SPACE
    return tuple(placed), along


def _filled(row: Sequence[Lying]) -> float:
    return row[-1].across + row[-1].size[0]
