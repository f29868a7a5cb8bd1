"""The room on a piece: what its lines and words leave of it."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, Any

from msgspec.structs import replace

from tapewise_core.drafting.picturing.ground import Place
from tapewise_core.drafting.picturing.words import Words
from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.point import Vector
from tapewise_core.paper.drawing import Stroke, TextLine

if TYPE_CHECKING:
    from shapely import Polygon

CLEAR = 0.4
"""How far words keep from lines and from the edge of the piece [mm] (our choice)."""

BEFORE = {"start": 1.0, "middle": 0.0, "end": -1.0}
"""From where words are set to their middle, in halves of their width."""


def room_of(words: TextLine, more: float = 0.0) -> list[Place]:
    """Return the corners of what words take at most, in common sans-serif faces, and a little
    ``more`` all round [mm]."""
    size = Words.of(words.text, size=words.size, bold=words.bold)
    turn = math.radians(words.angle)
    along = math.cos(turn), math.sin(turn)
    middle = Vector(size.across * BEFORE[words.anchor], -size.drop).turned(words.angle)
    at = words.at + middle
    if more:
        size = replace(size, across=size.across + more, up=size.up + more)
    return list(size.corners((at.x, at.y), along))


class Room:
    """A piece with its lines drawn, while words are set on it."""

    def __init__(self, piece: Piece, strokes: Iterable[Stroke]) -> None:
        import shapely

        self.cut = [(point.x, point.y) for point in piece.cut]
        self.stitched = [(point.x, point.y) for point in piece.stitch_line()]
        self.lines = [[(p.x, p.y) for p in one.path.flattened(0.1)] for one in strokes]
        self._piece = shapely.Polygon(self.cut)
        shapely.prepare(self._piece)
        places = [place for line in self.lines for place in line]
        owners = [i for i, line in enumerate(self.lines) for _ in line]
        drawn: Any = shapely.linestrings(places, indices=owners)
        self._lines = shapely.STRtree(drawn)
        self.words: list[list[Place]] = []
        self._words: list[Polygon] = []

    def clashing(self, words: Sequence[TextLine]) -> set[int]:
        """Return which of some words lie off the piece, over a line, over words that are set or
        over earlier ones of these."""
        import shapely

        boxes = shapely.polygons([room_of(one) for one in words])
        found = {i for i, within in enumerate(self._piece_has(boxes)) if not within}
        found.update(self._lines.query(boxes, predicate="dwithin", distance=CLEAR)[0].tolist())
        for taken in self._words:
            found.update(shapely.intersects(boxes, taken).nonzero()[0].tolist())
        if len(words) > 1:
            pairs = shapely.STRtree(boxes).query(boxes, predicate="intersects").T.tolist()
            found.update(late for late, early in pairs if early < late)
        return found

    def _piece_has(self, boxes: Any) -> list[bool]:
        import shapely

        return list(shapely.contains_properly(self._piece, boxes).tolist())

    def take(self, words: Iterable[TextLine]) -> None:
        """Keep the place of words that are set."""
        from shapely import Polygon

        found = [room_of(one, CLEAR) for one in words]
        self.words += found
        self._words += map(Polygon, found)
