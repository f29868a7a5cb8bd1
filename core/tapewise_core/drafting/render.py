"""Turn a piece into a drawing at full size: every line, mark and word on it."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.labels import LabelHead, label_box, label_lines, title
from tapewise_core.drafting.piece import Edge, Notch, Piece
from tapewise_core.drafting.piece_words import Beside, Wish, settled
from tapewise_core.drafting.unfolding import FOLD_WORDS, opened, opens
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Dash, Drawing, Ink, Layer, Stroke, TextLine, extent
from tapewise_core.text.told import LineName

BORDER = 10.0
"""Blank paper kept round a piece [mm]."""

NOTCH_LEAST, NOTCH_APART = 5.0, 4.0
"""A notch's least length and the space between the two strokes of a double one [mm]."""

NAMED_AT = 0.62
"""Where along an edge its name stands: off the middle, where notches like to be."""

LEVEL_WORDS = {"armscye": "armscye line", "waist": "waist line", "hip": "hip line"}


def piece_drawing(piece: Piece, number: int, total: int, heading: LabelHead) -> Drawing:
    """Return one piece at full size, its box round everything with a border."""
    return _drawn(piece, label_lines(piece, number, total, heading), heading)


def whole_drawing(piece: Piece, number: int, total: int, heading: LabelHead) -> Drawing:
    """Return one piece as it is cut from a single layer: a half is opened out about its fold."""
    if not opens(piece):
        return piece_drawing(piece, number, total, heading)
    single = replace(piece, on_fold=False)
    drawn = _drawn(piece, label_lines(single, number, total, heading), heading)
    return opened(piece, drawn, BORDER)


def _drawn(piece: Piece, lines: list[str], heading: LabelHead) -> Drawing:
    marks: tuple[Ink | Wish, ...] = (
        *_levels(piece),
        *_stitch_lines(piece),
        _cut_line(piece),
        *_inner(piece),
        *_darts(piece),
        *_grain(piece),
        *_fold(piece),
        *(ink for notch in piece.notches for ink in _notch(piece, notch)),
        *(words for edge in piece.edges for words in _edge_name(edge, piece.name)),
    )
    inks = settled(piece, marks, lines, label_box(piece))
    name = f"{heading.garment}: {title(piece.name)}"
    return Drawing(name, "; ".join(lines), extent(inks, BORDER), inks)


def _stitch_lines(piece: Piece) -> tuple[Stroke, ...]:
    return tuple(
        Stroke(
            edge.path,
            Layer.STITCH,
            Dash.CHAIN if edge.fold else Dash.DASHED,
            0.35,
            name=f"stitch {edge.name}",
            part=piece.name,
        )
        for edge in piece.edges
    )


def _cut_line(piece: Piece) -> Stroke:
    return Stroke(
        ruled(*piece.cut, piece.cut[0]),
        Layer.CUT,
        width=0.6,
        closed=True,
        name="cut",
        part=piece.name,
    )


def _inner(piece: Piece) -> tuple[Ink | Wish, ...]:
    inks: list[Ink | Wish] = []
    for name, path in piece.inner.items():
        inks.append(Stroke(path, Layer.MARKS, Dash.DOTTED, 0.3, name=name, part=piece.name))
        words = Beside(f"{name.removesuffix('_2')} line", path, 1.2, 2.6, piece.name)
        inks.append(words.at(0.8 if len(path.segments) == 1 else 0.72))
    return tuple(inks)


def _darts(piece: Piece) -> tuple[Stroke, ...]:
    """Darts inside the piece, stitched like its edges."""
    return tuple(
        Stroke(dart.path, Layer.STITCH, Dash.DASHED, 0.35, name=dart.name, part=piece.name)
        for dart in piece.darts
    )


def _levels(piece: Piece) -> tuple[Ink | Wish, ...]:
    """Thin lines across at the body's levels, with short names beside the centre."""
    inks: list[Ink | Wish] = []
    for level, words in LEVEL_WORDS.items():
        height = piece.levels.get(level)
        ends = [] if height is None else _sides_at(piece, height)
        if height is None or not ends:
            continue
        left, right = min(ends, key=_across), max(ends, key=_across)
        start = left if len(ends) > 1 and left.x < 0 else Point(0, height)
        line = ruled(start, right)
        inks.append(Stroke(line, Layer.GUIDE, Dash.DOTTED, 0.2, part=piece.name))
        own = TextLine(words, Point(26, height - 1.5), 2.8, layer=Layer.GUIDE, part=piece.name)
        beside = Beside(words, line, 1.5, 2.8, piece.name, Layer.GUIDE)
        inks.append(Wish(own, beside.at(0.1).others))
    return tuple(inks)


def _across(point: Point) -> float:
    return point.x


def _sides_at(piece: Piece, height: float) -> list[Point]:
    """Where a level meets the piece's sides."""
    sides = ("side", "split", "underarm", "sleeve_hem")
    edges = [edge for edge in piece.edges if edge.name.removesuffix("_2") in sides]
    return [p for edge in edges if (p := point_at_height(edge.path, height)) is not None]


EITHER_WAY = "grain: along the cloth or across"
"""Said beside the arrow of a piece that has no grain of its own."""


def _grain(piece: Piece) -> tuple[Ink | Wish, ...]:
    start, end = piece.grain
    along = (end - start).unit()
    length = (end - start).length()
    head = min(6.0, length / 5)
    strokes = [ruled(start, end)]
    for tip, way in ((start, along), (end, -along)):
        strokes += [ruled(tip + way.turned(angle) * head, tip) for angle in (25, -25)]
    inks: list[Ink | Wish] = [
        Stroke(path, Layer.MARKS, width=0.4, name="grain", part=piece.name) for path in strokes
    ]
    if length > 40:
        says = EITHER_WAY if piece.turnable else "grain"
        inks.append(Beside(says, ruled(start, end), 1.5, 3.0, piece.name).at(0.5))
    return tuple(inks)


def _fold(piece: Piece) -> tuple[Ink | Wish, ...]:
    """Brackets whose arrows touch the edges that lie on the fold."""
    return tuple(ink for edge in piece.edges if edge.fold for ink in _bracket(piece, edge))


def _bracket(piece: Piece, edge: Edge) -> tuple[Ink | Wish, ...]:
    length = edge.path.length()
    inks: list[Ink] = []
    inner: list[Point] = []
    for share in (0.15, 0.85):
        at, along = edge.path.at(length * share)
        inside = at + along.square() * 12
        inner.append(inside)
        inks += [
            Stroke(path, Layer.MARKS, width=0.4, name="fold", part=piece.name)
            for path in (ruled(inside, at), *_head(at, (at - inside).unit()))
        ]
    inks.append(Stroke(ruled(*inner), Layer.MARKS, width=0.4, name="fold", part=piece.name))
    return (*inks, Beside(FOLD_WORDS, ruled(*inner), 1.8, 3.5, piece.name).at(0.5))


def _head(tip: Point, along: Vector) -> tuple[Path, ...]:
    return tuple(ruled(tip + (-along).turned(angle) * 4, tip) for angle in (25, -25))


def _notch(piece: Piece, notch: Notch) -> tuple[Stroke, ...]:
    """Strokes from the stitch line outwards to the cut line, one or two side by side."""
    edge = piece.edge(notch.edge)
    offsets = (0.0,) if notch.strokes == 1 else (-NOTCH_APART / 2, NOTCH_APART / 2)
    strokes = []
    for offset in offsets:
        at, along = edge.path.at(min(max(notch.distance + offset, 0.0), edge.path.length()))
        out = -along.square() * max(edge.allowance, NOTCH_LEAST)
        path = ruled(at, at + out) if edge.allowance else ruled(at, at + -out)
        strokes.append(
            Stroke(path, Layer.MARKS, width=0.5, name=f"notch {notch.pair}", part=piece.name)
        )
    return tuple(strokes)


def _edge_name(edge: Edge, part: str) -> tuple[Wish, ...]:
    if edge.fold or edge.mouth or edge.path.length() < 25:
        return ()
    return (Beside(str(LineName(edge.name)), edge.path, -4.6, 2.8, part).at(NAMED_AT),)
