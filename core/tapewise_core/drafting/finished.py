"""The notches of a piece, and its sizes and its mirrored corner for a dimensioned drawing."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.drafting.marks import (
    Across,
    EdgeLength,
    Finished,
    MirroredCorner,
    NotchMark,
)
from tapewise_core.drafting.piece import Edge, Notch, Piece
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.geometry.cut_ends import folds
from tapewise_core.geometry.outline import box_of
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.units import mm

LEVELS = ("bust", "waist", "hip")
"""Levels across which a finished piece is measured."""

SHORT = 15.0
"""What is shorter is not measured [mm] (our choice)."""

SHARE = 0.8
"""How far down a hem's allowance the mirrored point is shown (our choice)."""


def notch_mark(piece: Piece, notch: Notch) -> NotchMark:
    """Return where a notch lies on its piece."""
    path = piece.edge(notch.edge).path
    at, along = path.at(min(max(notch.distance, 0.0), path.length()))
    return NotchMark(at, -along.square(), notch.strokes, notch.pair)


def finished(piece: Piece) -> Finished:
    """Return what a dimensioned drawing of the piece shows: its height and width, its width at the
    body's levels, the length of each edge, and how a hem's corner is found."""
    sizes = (*_outer(piece), *_across(piece))
    return Finished(sizes, tuple(_edges(piece)), next(_corners(piece), None))


def _outer(piece: Piece) -> Iterator[Across]:
    box = box_of(piece.stitch_line())
    low = Point(box.left, box.bottom)
    yield Across(Point(box.left, box.top), low, mm(box.height), outside=True)
    yield Across(low, Point(box.right, box.bottom), mm(box.width), outside=True)


def _across(piece: Piece) -> Iterator[Across]:
    """Widths from the fold to the side, or from side to side."""
    for level in LEVELS:
        height = piece.levels.get(level)
        if height is None:
            continue
        met = (point_at_height(edge.path, height) for edge in piece.edges)
        ends = sorted((point for point in met if point), key=lambda point: point.x)
        if len(ends) > 1 and ends[-1].x - ends[0].x > SHORT:
            yield Across(ends[0], ends[-1], mm(ends[-1].x - ends[0].x))


def _edges(piece: Piece) -> Iterator[EdgeLength]:
    for edge in piece.edges:
        length = edge.path.length()
        if not edge.fold and edge.mouth is None and length > SHORT:
            yield EdgeLength(*edge.path.at(length / 2), mm(length))


def _corners(piece: Piece) -> Iterator[MirroredCorner]:
    """The corners that are mirrored about a hem, from the first on."""
    edges = piece.edges
    for i, hem in enumerate(edges):
        if hem.turned and hem.allowance:
            before, after = edges[i - 1], edges[(i + 1) % len(edges)]
            for own, beside, neighbour, side in (
                (hem.path, before.path.reversed(), before, 1.0),
                (hem.path.reversed(), after.path, after, -1.0),
            ):
                yield from _mirrored(own, beside, neighbour, hem.allowance, side)


def _mirrored(
    hem: Path, beside: Path, neighbour: Edge, allowance: float, side: float
) -> Iterator[MirroredCorner]:
    """The corner where a hem begins; none beside a fold, another hem or a slant too steep."""
    along, up = hem.leaving(), beside.leaving()
    plain = neighbour.fold or neighbour.turned or not neighbour.allowance
    if plain or not folds(along, up):
        return
    corner = hem.start
    across = (up - along * up.dot(along)).unit()
    out = up.square() * (side * neighbour.allowance)
    above = corner + out + up * ((SHARE * allowance - out.dot(across)) / up.dot(across))
    yield MirroredCorner(corner, along, above, above.mirrored(corner, corner + along))
