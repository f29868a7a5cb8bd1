"""Two drafts of one garment laid over each other, piece by piece, to see what a change moved."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from tapewise_core.drafting.labels import title
from tapewise_core.drafting.piece import Piece
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Dash, Drawing, Ink, Layer, Stroke, TextLine, extent

APART = 40.0
"""Pieces lie so far apart [mm] (our choice)."""

SEEN, PLACES = 0.3, 24
"""A line that moved by less is where it was [mm]; lines are looked at in so many places."""

NAME = 16.0
"""The type of a piece's name [mm]: an overlay is looked at much smaller than it is."""


class Overlaid(Frozen):
    """One piece before and after, on the same axes: the centre and the nape, or the piece's own.

    Either is None for a piece that only one of the drafts has.
    """

    name: str
    before: Piece | None
    after: Piece | None

    @property
    def where(self) -> Box | None:
        """The room in which any line lies otherwise than before, None where none does [mm]."""
        if self.before is None or self.after is None:
            return self.box
        before, after = _places(self.before), _places(self.after)
        apart = _far(after, self.before) + _far(before, self.after)
        return box_of(apart) if apart else None

    @property
    def box(self) -> Box:
        """The room that both take [mm]."""
        pieces = [piece for piece in (self.before, self.after) if piece]
        paths = [edge.path for piece in pieces for edge in piece.edges]
        return box_of(point for path in paths for point in path.flattened(1.0))


def _places(piece: Piece) -> list[Point]:
    """Places all along a piece's outline."""
    shares = [place / PLACES for place in range(PLACES + 1)]
    return [edge.path.at(edge.path.length() * t)[0] for edge in piece.edges for t in shares]


def _far(places: Sequence[Point], piece: Piece) -> list[Point]:
    """The places that no line of a piece passes."""
    lines = [leg for edge in piece.edges for leg in pairwise(edge.path.flattened(0.1))]
    return [at for at in places if all(_off(at, *leg) > SEEN for leg in lines)]


def _off(at: Point, start: Point, end: Point) -> float:
    """How far a place lies from a straight line between two ends [mm]."""
    way, to = end - start, at - start
    t = min(max(to.dot(way) / max(way.dot(way), 1e-12), 0.0), 1.0)
    return (to - way * t).length()


def overlaid(before: Sequence[Piece], after: Sequence[Piece]) -> tuple[Overlaid, ...]:
    """Return the pieces of two drafts in pairs, those that only one has by themselves."""
    old, new = ({piece.name: piece for piece in pieces} for pieces in (before, after))
    return tuple(Overlaid(name, old.get(name), new.get(name)) for name in {**new, **old})


def overlay(heading: str, pairs: Sequence[Overlaid]) -> Drawing:
    """Return the pairs beside each other at full size: before dotted and thin, after solid."""
    inks: list[Ink] = []
    left = 0.0
    for pair in pairs:
        box = pair.box
        by = Vector(left - box.left, -box.top)
        inks += [ink.moved(by) for ink in _inks(pair, box)]
        left += box.right - box.left + APART
    key = TextLine("dotted: before; solid: after", Point(0, -APART), NAME)
    whole = (*inks, key)
    return Drawing(heading, "before dotted, after solid", extent(whole, 10.0), whole)


def _inks(pair: Overlaid, box: Box) -> list[Ink]:
    found: list[Ink] = [
        TextLine(title(pair.name), Point(box.left, box.bottom + 2 * NAME), NAME, part=pair.name)
    ]
    for piece, dash, width in ((pair.before, Dash.DOTTED, 0.8), (pair.after, Dash.SOLID, 0.8)):
        edges = piece.edges if piece else ()
        layer = Layer.GUIDE if piece is pair.before else Layer.STITCH
        found += [Stroke(edge.path, layer, dash, width, part=pair.name) for edge in edges]
    return found
