"""Pieces drawn larger, for a cloth that shrinks after it is cut."""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType

from msgspec.structs import replace

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.extent import lies_across_paper
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Dart, Edge, Notch, Piece
from tapewise_core.drafting.seam import Seam
from tapewise_core.geometry.outline import Box, Margin
from tapewise_core.geometry.point import Point

Place = Callable[[Point], Point]


def as_cut(pattern: Pattern, cloth: Cloth) -> Pattern:
    """Return a pattern as it is cut: larger than it is worn where the cloth shrinks only later."""
    if cloth.washed:
        return pattern
    ways = cloth.shrinkage, cloth.shrinkage_across
    pieces = tuple(larger(piece, *ways) for piece in pattern.pieces)
    return replace(pattern, pieces=pieces, seams=tuple(_fuller(s, ways[0]) for s in pattern.seams))


def _fuller(seam: Seam, along: float) -> Seam:
    """A seam whose first side has more on the way, all of it along the cloth."""
    full = seam.fullness
    if full is None:
        return seam
    down = 1 / (1 - along)
    more = replace(full, more=full.more * down, start=full.start * down, end=full.end * down)
    return replace(seam, fullness=more)


def larger(piece: Piece, along: float, across: float) -> Piece:
    """Return a piece that is as it was drawn once the cloth has shrunk, both ways as fractions.

    Allowances stay: they are sewn before the cloth shrinks. Notches stay where they were on their
    edges.
    """
    down, beside = 1 / (1 - along), 1 / (1 - across)
    if lies_across_paper(piece):
        down, beside = beside, down

    def placed(point: Point) -> Point:
        return Point(point.x * beside, point.y * down)

    start, end = map(placed, piece.grain)
    return replace(
        piece,
        edges=tuple(_edge(edge, placed) for edge in piece.edges),
        points=MappingProxyType({name: placed(point) for name, point in piece.points.items()}),
        notches=tuple(_notch(notch, piece, placed) for notch in piece.notches),
        grain=(start, end),
        levels=MappingProxyType({name: y * down for name, y in piece.levels.items()}),
        inner=MappingProxyType({name: path.placed(placed) for name, path in piece.inner.items()}),
        label=_box(piece.label, placed),
        darts=tuple(_dart(dart, placed, beside) for dart in piece.darts),
        cut_as=None if piece.cut_as is None else tuple(map(placed, piece.cut_as)),
    )


def _edge(edge: Edge, placed: Place) -> Edge:
    mouth = edge.mouth
    if mouth is not None:
        mouth = Margin(mouth.path.placed(placed), mouth.width, mouth.turned, mouth.fold)
    return replace(edge, path=edge.path.placed(placed), mouth=mouth)


def _notch(notch: Notch, piece: Piece, placed: Place) -> Notch:
    path = piece.edge(notch.edge).path
    if not 0 < notch.distance < path.length():
        whole = path.placed(placed).length() / path.length()
        return replace(notch, distance=notch.distance * whole)
    return replace(notch, distance=path.split(notch.distance)[0].placed(placed).length())


def _dart(dart: Dart, placed: Place, beside: float) -> Dart:
    """A dart's mouth is measured across the cloth."""
    return replace(dart, path=dart.path.placed(placed), intake=dart.intake * beside)


def _box(box: Box | None, placed: Place) -> Box | None:
    if box is None:
        return None
    corner, other = placed(Point(box.left, box.top)), placed(Point(box.right, box.bottom))
    return Box(corner.x, corner.y, other.x, other.y)
