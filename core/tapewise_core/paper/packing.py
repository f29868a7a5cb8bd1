"""Pieces side by side without overlapping: free places, and a strip filled from one end."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from msgspec.structs import replace

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Drawing, Stroke, TextLine, extent

GAP = 6.0
"""Left between two pieces [mm], enough for scissors and for labels outside a line."""

BORDER = 3.0
"""Left between a piece and the edge of the canvas [mm]."""


def ink_box(drawing: Drawing) -> Box:
    """Return the box round everything drawn; the sheet's own box if that is nothing."""
    return extent(drawing.inks) if drawing.inks else drawing.box


def moved_to(drawing: Drawing, left: float, top: float) -> Drawing:
    """Return the drawing with the upper left corner of its ink at a place [mm]."""
    box = ink_box(drawing)
    return drawing.moved(Vector(left - box.left, top - box.top))


def turned(drawing: Drawing) -> Drawing:
    """Return the drawing turned a quarter clockwise about the origin."""
    return replace(
        drawing,
        box=turned_box(drawing.box),
        inks=tuple(_turned_ink(ink) for ink in drawing.inks),
        whole=tuple(turned_box(box) for box in drawing.whole),
    )


def turned_box(box: Box) -> Box:
    """Return a box turned a quarter clockwise about the origin."""
    return Box(-box.bottom, box.left, -box.top, box.right)


def _turned_point(point: Point) -> Point:
    return Point(-point.y, point.x)


def _turned_ink(ink: Stroke | TextLine) -> Stroke | TextLine:
    if isinstance(ink, TextLine):
        return replace(ink, at=_turned_point(ink.at), angle=ink.angle + 90)
    return replace(ink, path=ink.path.placed(_turned_point))


def overlaps(box: Box, others: Iterable[Box]) -> bool:
    """Say whether a box comes nearer than the gap to any other."""
    return any(
        box.left < other.right + GAP
        and other.left < box.right + GAP
        and box.top < other.bottom + GAP
        and other.top < box.bottom + GAP
        for other in others
    )


def filled_strip(drawings: Sequence[Drawing], width: float) -> list[Drawing]:
    """Return the drawings laid out in a strip [mm], every one as near its beginning as it goes.

    Each must fit the width. Largest first, tallest first and widest first are
    tried, and the shortest strip taken. The result keeps the order given.
    """
    boxes = [ink_box(drawing) for drawing in drawings]
    rules = (lambda box: box.width * box.height, _height, _width)
    tries = [_strip(boxes, width, rule) for rule in rules]
    best = min(tries, key=lambda places: max((box.bottom for box in places), default=0.0))
    return [
        moved_to(drawing, box.left, box.top) for drawing, box in zip(drawings, best, strict=True)
    ]


def _height(box: Box) -> float:
    return box.height


def _width(box: Box) -> float:
    return box.width


def _strip(boxes: Sequence[Box], width: float, size: Callable[[Box], float]) -> list[Box]:
    """Where the boxes go, taken in order of a size from the greatest down."""
    placed: dict[int, Box] = {}
    for index in sorted(range(len(boxes)), key=lambda i: (-size(boxes[i]), i)):
        placed[index] = _first_free(boxes[index], list(placed.values()), width)
    return [placed[index] for index in range(len(boxes))]


def _first_free(box: Box, placed: Sequence[Box], width: float) -> Box:
    """The free place whose lower edge is nearest the beginning, then nearest the left."""
    across = [BORDER, *(other.right + GAP for other in placed)]
    down = [BORDER, *(other.bottom + GAP for other in placed)]
    free = [
        at
        for x in across
        if x + box.width <= width - BORDER + 1e-6 or x == BORDER
        for y in down
        if not overlaps(at := Box(x, y, x + box.width, y + box.height), placed)
    ]
    return min(free, key=lambda at: (at.bottom, at.left))


def joined(title: str, description: str, drawings: Sequence[Drawing], border: float) -> Drawing:
    """Return several placed drawings as one canvas whose sheet has a border round the ink [mm]."""
    inks = tuple(ink for drawing in drawings for ink in drawing.inks)
    whole = tuple(box for drawing in drawings for box in drawing.whole)
    box = extent(inks, border) if inks else Box(0, 0, 2 * border, 2 * border)
    return Drawing(title, description, box, inks, whole)
