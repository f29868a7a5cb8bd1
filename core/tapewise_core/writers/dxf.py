"""Pieces as DXF, release 12: for cutters, a block a piece; for drawing programs, plain lines."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Dash, Drawing, Layer, Stroke, TextLine, extent
from tapewise_core.paper.packing import filled_strip, ink_box, moved_to
from tapewise_core.paper.pattern_set import piece_name
from tapewise_core.paper.safe import checked, distinct, slug
from tapewise_core.paper.scale import SQUARE, square
from tapewise_core.writers.dxf_pairs import Pairs, at, file_of, polyline, text

TOLERANCE = 0.05
"""How far the straight stretches may be from the true curve [mm]."""

WIDE = 2000.0
"""Pieces lie beside each other up to this width [mm], wider than any table for cutting."""


def plain_dxf(pieces: Sequence[Drawing]) -> bytes:
    """Return the pieces side by side, every line on a layer with a name a person can read."""
    laid = apart([checked(piece) for piece in (*pieces, scale_square())])
    entities: Pairs = []
    for ink in (ink for piece in laid for ink in piece.inks):
        layer = ink.layer.value.upper()
        if isinstance(ink, TextLine):
            entities += text(ink, layer)
        else:
            entities += polyline(ink.path.flattened(TOLERANCE), layer, ink.closed, ink.dash)
    layers = {layer.value.upper(): COLOURS[layer] for layer in Layer}
    return file_of(laid, layers, [], entities)


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
        inserts += [(0, "INSERT"), (8, "0"), (2, name), *at(Point(box.left, box.top))]
    layers = dict.fromkeys(("0", CUT, NOTCH, FOLD, GRAIN, INSIDE, SEW, NOTE), 7)
    return file_of(clean, layers, blocks, inserts)


def apart(pieces: Sequence[Drawing]) -> list[Drawing]:
    """Return the pieces beside each other, none over another."""
    return filled_strip(pieces, max(WIDE, *(ink_box(piece).width + 10 for piece in pieces)))


def scale_square() -> Drawing:
    """Return the square to measure: what is 100 in the file is 100 mm."""
    inks = square(0, 0, SQUARE, "100 mm by 100 mm")
    return Drawing("100 mm square", "", extent(inks), tuple(inks))


def _block(name: str, piece: Drawing) -> Pairs:
    pairs: Pairs = [(0, "BLOCK"), (8, "0"), (2, name), (70, "0"), *at(Point(0, 0)), (3, name)]
    strokes = [ink for ink in piece.inks if isinstance(ink, Stroke)]
    pairs += _outlines(strokes)
    pairs += _marks([stroke for stroke in strokes if stroke.layer is Layer.MARKS])
    for stroke in strokes:
        if stroke.layer is Layer.SCALE:
            pairs += polyline(stroke.path.flattened(TOLERANCE), NOTE, stroke.closed)
    for ink in piece.inks:
        if isinstance(ink, TextLine):
            pairs += text(ink, NOTE)
    return [*pairs, (0, "ENDBLK"), (8, "0")]


def _outlines(strokes: Sequence[Stroke]) -> Pairs:
    pairs: Pairs = []
    for stroke in strokes:
        if stroke.layer is Layer.CUT:
            pairs += polyline(stroke.path.flattened(TOLERANCE), CUT, stroke.closed)
    edges = [stroke for stroke in strokes if stroke.layer is Layer.STITCH]
    for points, closed in _chained(edges):
        pairs += polyline(points, SEW, closed)
    for edge in edges:
        if edge.dash is Dash.CHAIN:
            pairs += polyline([edge.path.start, edge.path.end], FOLD, False)
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
        pairs += polyline([shaft.path.start, shaft.path.end], GRAIN, False)
    for mark in marks:
        if mark.name.startswith("notch"):
            pairs += [(0, "POINT"), (8, NOTCH), *at(mark.path.end)]
        elif not mark.name.startswith(("grain", "fold")):
            pairs += polyline(mark.path.flattened(TOLERANCE), INSIDE, mark.closed)
    return pairs
