"""Pieces as DXF, release 12: for cutters, a block a piece; for drawing programs, plain lines.

Written by hand: the release is a short list of pairs, and the usual library
costs a third of a second to import and leaves the unit out. y runs up, in mm.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Dash, Drawing, Layer, Stroke, TextLine, extent
from tapewise_core.paper.packing import filled_strip, ink_box, moved_to
from tapewise_core.paper.pattern_set import piece_name
from tapewise_core.paper.safe import checked, distinct, slug
from tapewise_core.paper.scale import SQUARE, square
from tapewise_core.writers.numbers import number

TOLERANCE = 0.05
"""How far the straight stretches may be from the true curve [mm]."""

WIDE = 2000.0
"""Pieces lie beside each other up to this width [mm], wider than any table for cutting."""

CAPITALS = 0.72
"""Height of capitals, which DXF sizes type by, as a share of the type's size."""

Pairs = list[tuple[int, str]]
"""Group codes and values, the only thing a DXF file consists of."""


def plain_dxf(pieces: Sequence[Drawing]) -> bytes:
    """Return the pieces side by side, every line on a layer with a name a person can read."""
    laid = apart([checked(piece) for piece in (*pieces, scale_square())])
    entities: Pairs = []
    for ink in (ink for piece in laid for ink in piece.inks):
        layer = ink.layer.value.upper()
        if isinstance(ink, TextLine):
            entities += _text(ink, layer)
        else:
            entities += _polyline(ink.path.flattened(TOLERANCE), layer, ink.closed, ink.dash)
    layers = {layer.value.upper(): COLOURS[layer] for layer in Layer}
    return _file(laid, layers, [], entities)


COLOURS = {
    Layer.GRID: 9,
    Layer.GUIDE: 8,
    Layer.STITCH: 5,
    Layer.CUT: 7,
    Layer.MARKS: 1,
    Layer.TEXT: 7,
    Layer.SCALE: 7,
}
"""Colour numbers of the release; 7 is black on white and white on black."""

CUT, NOTCH, FOLD, GRAIN, INSIDE, SEW, NOTE = "1", "4", "6", "7", "8", "14", "15"
"""Layers of a piece for cutting rooms, from memory of [astm-d6673]."""


def cutter_dxf(pieces: Sequence[Drawing]) -> bytes:
    """Return one block a piece, its lines on the numbered layers that cutting rooms read.

    Cut line and sew line are closed; a notch is a point on the cut line; the
    grain is one line, and so is the edge on the fold, about which a half is mirrored. The
    blocks are put down beside each other, with a square of 100 mm, since the release has no unit
    that every program reads.
    """
    clean = [moved_to(checked(piece), 0, 0) for piece in (*pieces, scale_square())]
    names = distinct(slug(piece_name(piece), "piece").upper() for piece in clean)
    places = [ink_box(piece) for piece in apart(clean)]
    blocks: Pairs = []
    inserts: Pairs = []
    for name, piece, box in zip(names, clean, places, strict=True):
        blocks += _block(name, piece)
        inserts += [(0, "INSERT"), (8, "0"), (2, name), *_at(Point(box.left, box.top))]
    layers = dict.fromkeys(("0", CUT, NOTCH, FOLD, GRAIN, INSIDE, SEW, NOTE), 7)
    return _file(clean, layers, blocks, inserts)


def apart(pieces: Sequence[Drawing]) -> list[Drawing]:
    """Return the pieces beside each other, none over another."""
    return filled_strip(pieces, max(WIDE, *(ink_box(piece).width + 10 for piece in pieces)))


def scale_square() -> Drawing:
    """Return the square to measure: what is 100 in the file is 100 mm."""
    inks = square(0, 0, SQUARE, "100 mm by 100 mm")
    return Drawing("100 mm square", "", extent(inks), tuple(inks))


def _block(name: str, piece: Drawing) -> Pairs:
    pairs: Pairs = [(0, "BLOCK"), (8, "0"), (2, name), (70, "0"), *_at(Point(0, 0)), (3, name)]
    strokes = [ink for ink in piece.inks if isinstance(ink, Stroke)]
    pairs += _outlines(strokes)
    pairs += _marks([stroke for stroke in strokes if stroke.layer is Layer.MARKS])
    for stroke in strokes:
        if stroke.layer is Layer.SCALE:
            pairs += _polyline(stroke.path.flattened(TOLERANCE), NOTE, stroke.closed)
    for ink in piece.inks:
        if isinstance(ink, TextLine):
            pairs += _text(ink, NOTE)
    return [*pairs, (0, "ENDBLK"), (8, "0")]


def _outlines(strokes: Sequence[Stroke]) -> Pairs:
    pairs: Pairs = []
    for stroke in strokes:
        if stroke.layer is Layer.CUT:
            pairs += _polyline(stroke.path.flattened(TOLERANCE), CUT, stroke.closed)
    edges = [stroke for stroke in strokes if stroke.layer is Layer.STITCH]
    for points, closed in _chained(edges):
        pairs += _polyline(points, SEW, closed)
    for edge in edges:
        if edge.dash is Dash.CHAIN:
            pairs += _polyline([edge.path.start, edge.path.end], FOLD, False)
    return pairs


def _chained(edges: Sequence[Stroke]) -> Iterable[tuple[list[Point], bool]]:
    """Edges that follow one another joined into lines, and whether each line is closed."""
    lines: list[list[Point]] = []
    for edge in edges:
        points = edge.path.flattened(TOLERANCE)
        if lines and (lines[-1][-1] - points[0]).length() < 0.01:
            lines[-1] += points[1:]
        else:
            lines.append(points)
    for line in lines:
        yield line, len(line) > 3 and (line[-1] - line[0]).length() < 0.01


def _marks(marks: Sequence[Stroke]) -> Pairs:
    """Notches as points, the longest grain stroke as a line, brackets left out, all else inside."""
    pairs: Pairs = []
    grain = [mark for mark in marks if mark.name.startswith("grain")]
    if grain:
        shaft = max(grain, key=lambda mark: mark.path.length())
        pairs += _polyline([shaft.path.start, shaft.path.end], GRAIN, False)
    for mark in marks:
        if mark.name.startswith("notch"):
            pairs += [(0, "POINT"), (8, NOTCH), *_at(mark.path.end)]
        elif not mark.name.startswith(("grain", "fold")):
            pairs += _polyline(mark.path.flattened(TOLERANCE), INSIDE, mark.closed)
    return pairs


def _polyline(points: Sequence[Point], layer: str, closed: bool, dash: Dash = Dash.SOLID) -> Pairs:
    if closed and (points[-1] - points[0]).length() < 1e-6:
        points = points[:-1]
    kept = [points[0], *(b for a, b in pairwise(points) if (b - a).length() > 1e-6)]
    pairs: Pairs = [(0, "POLYLINE"), (8, layer)]
    if dash is not Dash.SOLID:
        pairs.append((6, dash.value.upper()))
    pairs += [(66, "1"), *_at(Point(0, 0)), (70, "1" if closed else "0")]
    for point in kept:
        pairs += [(0, "VERTEX"), (8, layer), *_at(point)]
    return [*pairs, (0, "SEQEND"), (8, layer)]


def _text(words: TextLine, layer: str) -> Pairs:
    place = {"start": "0", "middle": "1", "end": "2"}[words.anchor]
    pairs = [(0, "TEXT"), (8, layer), *_at(words.at), (40, number(words.size * CAPITALS))]
    pairs += [(1, ascii_words(words.text)), (50, number(-words.angle % 360)), (72, place)]
    return pairs if place == "0" else [*pairs, *_at(words.at, 1)]


def ascii_words(text: str) -> str:
    """Return the text in the letters the release has, other scripts by their sound.

    >>> ascii_words("Zoë Œhler – 袖")
    'Zoe Oehler - Xiu'
    """
    from anyascii import anyascii

    return "".join(letter if " " <= letter <= "~" else " " for letter in anyascii(text))


def _at(point: Point, group: int = 0) -> Pairs:
    return [
        (10 + group, number(point.x)),
        (20 + group, number(-point.y)),
        (30 + group, "0"),
    ]


def _file(
    pieces: Sequence[Drawing], layers: dict[str, int], blocks: Pairs, entities: Pairs
) -> bytes:
    box = extent([ink for piece in pieces for ink in piece.inks] or [TextLine("", Point(0, 0))])
    corner, far = Point(box.left, box.bottom), Point(box.right, box.top)
    header: Pairs = [(9, "$ACADVER"), (1, "AC1009"), (9, "$INSUNITS"), (70, "4")]
    header += [(9, "$EXTMIN"), *_at(corner), (9, "$EXTMAX"), *_at(far)]
    pairs = [
        *_section("HEADER", header),
        *_section("TABLES", [*_line_types(), *_layer_table(layers)]),
        *_section("BLOCKS", blocks),
        *_section("ENTITIES", entities),
        (0, "EOF"),
    ]
    return "".join(f"{code:3d}\r\n{value}\r\n" for code, value in pairs).encode("ascii")


def _section(name: str, content: Pairs) -> Pairs:
    return [(0, "SECTION"), (2, name), *content, (0, "ENDSEC")]


def _layer_table(layers: dict[str, int]) -> Pairs:
    rows: Pairs = [(0, "TABLE"), (2, "LAYER"), (70, str(len(layers)))]
    for name, colour in layers.items():
        rows += [(0, "LAYER"), (2, name), (70, "0"), (62, str(colour)), (6, "CONTINUOUS")]
    return [*rows, (0, "ENDTAB")]


_TYPES: dict[str, tuple[float, ...]] = {
    "CONTINUOUS": (),
    Dash.DASHED.value.upper(): (6.0, -3.0),
    Dash.DOTTED.value.upper(): (1.0, -2.0),
    Dash.CHAIN.value.upper(): (12.0, -2.5, 2.0, -2.5),
}


def _line_types() -> Pairs:
    """The broken lines of this file, in drawing units; a negative length is a gap."""
    rows: Pairs = [(0, "TABLE"), (2, "LTYPE"), (70, str(len(_TYPES)))]
    for name, lengths in _TYPES.items():
        rows += [(0, "LTYPE"), (2, name), (70, "0"), (3, name.lower()), (72, "65")]
        rows += [(73, str(len(lengths))), (40, number(sum(map(abs, lengths))))]
        rows += [(49, number(length)) for length in lengths]
    return [*rows, (0, "ENDTAB")]
