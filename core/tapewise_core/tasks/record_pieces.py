"""The pieces of a draft as the record keeps them: x out from the centre, y down from the nape."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from tapewise_core.drafting.piece import Dart, Edge, Notch, Piece
from tapewise_core.geometry.point import Point
from tapewise_core.tasks.shapes import (
    NUMBER,
    POINT,
    TEXT,
    WHOLE,
    YES_OR_NO,
    Key,
    Shape,
    by_name,
    listed,
)


class Located(NamedTuple):
    """A notch and the piece it is on."""

    piece: Piece
    notch: Notch


def _points(points: Iterable[Point]) -> list[list[float]]:
    return [_pair(point) for point in points]


def _pair(point: Point) -> list[float]:
    return [in_cm(point.x), in_cm(point.y)]


def in_cm(mm: float) -> float:
    """Return a length [mm] in cm, to the thousandth of a millimetre."""
    return round(mm / 10, 4) + 0.0


EDGE: Shape[Edge] = Shape(
    "one edge of a piece, walked clockwise",
    (
        Key("name", TEXT, lambda edge: edge.name),
        Key("points", listed(POINT), lambda edge: _points(edge.path.flattened())),
        Key("length", NUMBER, lambda edge: in_cm(edge.path.length())),
        Key("allowance", NUMBER, lambda edge: in_cm(edge.allowance)),
        Key("turned", YES_OR_NO, lambda edge: edge.turned, "turned up along the stitch line"),
        Key("fold", YES_OR_NO, lambda edge: edge.fold, "lies on the fold of the cloth"),
    ),
)

NOTCH: Shape[Located] = Shape(
    "a mark across a stitch line",
    (
        Key("edge", TEXT, lambda one: one.notch.edge),
        Key("pair", TEXT, lambda one: one.notch.pair, "what it is laid on"),
        Key("distance", NUMBER, lambda one: in_cm(one.notch.distance), "walked along the edge"),
        Key("at", POINT, lambda one: _pair(_spot(one))),
        Key("strokes", WHOLE, lambda one: one.notch.strokes),
    ),
)


def _spot(one: Located) -> Point:
    return one.piece.edge(one.notch.edge).path.at(one.notch.distance)[0]


DART: Shape[Dart] = Shape(
    "a dart inside a piece",
    (
        Key("name", TEXT, lambda dart: dart.name),
        Key("points", listed(POINT), lambda dart: _points(dart.path.flattened())),
        Key("intake", NUMBER, lambda dart: in_cm(dart.intake), "what it takes up"),
    ),
)

CUT: Shape[Piece] = Shape(
    "how to cut a piece",
    (
        Key("count", WHOLE, lambda piece: piece.count),
        Key("on_fold", YES_OR_NO, lambda piece: piece.on_fold),
        Key("mirrored", YES_OR_NO, lambda piece: piece.mirrored),
    ),
)

PIECE: Shape[Piece] = Shape(
    "one piece of the pattern; x out from the centre, y down from the nape",
    (
        Key("name", TEXT, lambda piece: piece.name),
        Key("cut", CUT.kind, CUT.of),
        Key("stitch_line", listed(POINT), lambda piece: _points(piece.stitch_line())),
        Key("cut_line", listed(POINT), lambda piece: _points(piece.cut)),
        Key("edges", listed(EDGE.kind), lambda piece: [EDGE.of(edge) for edge in piece.edges]),
        Key("points", by_name(POINT), lambda piece: {k: _pair(p) for k, p in piece.points.items()}),
        Key("notches", listed(NOTCH.kind), lambda piece: _notches(piece)),
        Key("darts", listed(DART.kind), lambda piece: [DART.of(dart) for dart in piece.darts]),
        Key("grain", listed(POINT), lambda piece: _points(piece.grain)),
    ),
)


def _notches(piece: Piece) -> list[dict[str, object]]:
    return [NOTCH.of(Located(piece, notch)) for notch in piece.notches]
