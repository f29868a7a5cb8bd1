"""A DXF file of release 12, which is a list of pairs: its lines, words, layers and sections.

Written by hand: the usual library costs a third of a second to import and leaves the unit out.
y runs up, in mm.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Dash, Drawing, TextLine, extent
from tapewise_core.writers.numbers import number

CAPITALS = 0.72
"""Height of capitals, which DXF sizes type by, as a share of the type's size."""

Pairs = list[tuple[int, str]]
"""Group codes and values, the only thing a DXF file consists of."""


def polyline(points: Sequence[Point], layer: str, closed: bool, dash: Dash = Dash.SOLID) -> Pairs:
    """Return a line through points, none of them twice in a row."""
    if closed and (points[-1] - points[0]).length() < 1e-6:
        points = points[:-1]
    kept = [points[0], *(b for a, b in pairwise(points) if (b - a).length() > 1e-6)]
    pairs: Pairs = [(0, "POLYLINE"), (8, layer)]
    if dash is not Dash.SOLID:
        pairs.append((6, dash.value.upper()))
    pairs += [(66, "1"), *at(Point(0, 0)), (70, "1" if closed else "0")]
    for point in kept:
        pairs += [(0, "VERTEX"), (8, layer), *at(point)]
    return [*pairs, (0, "SEQEND"), (8, layer)]


def text(words: TextLine, layer: str) -> Pairs:
    """Return words where they stand, in the letters the release has."""
    place = {"start": "0", "middle": "1", "end": "2"}[words.anchor]
    pairs = [(0, "TEXT"), (8, layer), *at(words.at), (40, number(words.size * CAPITALS))]
    pairs += [(1, ascii_words(words.text)), (50, number(-words.angle % 360)), (72, place)]
    return pairs if place == "0" else [*pairs, *at(words.at, 1)]


def ascii_words(text: str) -> str:
    """Return the text in the letters the release has, other scripts by their sound.

    >>> ascii_words("Zoë Œhler – 袖")
    'Zoe Oehler - Xiu'
    """
    from anyascii import anyascii

    return "".join(letter if " " <= letter <= "~" else " " for letter in anyascii(text))


def at(point: Point, group: int = 0) -> Pairs:
    """Return where something is; a second place has its group codes one higher."""
    return [
        (10 + group, number(point.x)),
        (20 + group, number(-point.y)),
        (30 + group, "0"),
    ]


def file_of(
    pieces: Sequence[Drawing], layers: dict[str, int], blocks: Pairs, entities: Pairs
) -> bytes:
    """Return the whole file, with the colour number of each layer and how far the pieces reach."""
    box = extent([ink for piece in pieces for ink in piece.inks] or [TextLine("", Point(0, 0))])
    corner, far = Point(box.left, box.bottom), Point(box.right, box.top)
    header: Pairs = [(9, "$ACADVER"), (1, "AC1009"), (9, "$INSUNITS"), (70, "4")]
    header += [(9, "$EXTMIN"), *at(corner), (9, "$EXTMAX"), *at(far)]
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
