"""What is printed round a page's share of the pattern, so that pages find each other."""

from __future__ import annotations

from itertools import product

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import DOWN, RIGHT, Point, Vector
from tapewise_core.paper.drawing import Dash, Ink, Layer, TextLine
from tapewise_core.paper.joins import Neighbours
from tapewise_core.paper.lettering import ruling, shortened
from tapewise_core.paper.scale import MARK, mark

STRIP = 9.0
"""Height of the strip of text at the foot of a page [mm]."""

CORNER, OUTSIDE = 6.0, 0.8
"""Arms of the marks in the four corners, and how far they stand outside what is printed [mm]."""

ARM = 4.0
"""Arm of a cross [mm]."""


class Label(Frozen):
    """What the foot of a page says: its place in the set, and what the set is."""

    place: str
    of: str


def furniture(own: Box, trim: float, glue: float, around: Neighbours, texts: Label) -> list[Ink]:
    """Return all that is printed round one page's own cell; lengths in mm, on the page."""
    inks: list[Ink] = []
    for x, y in product((own.left, own.right), (own.top, own.bottom)):
        inks += _cross(Point(x, y))
    shown = Box(own.left - trim, own.top - trim, own.right + glue, own.bottom + glue + STRIP)
    inks += corner_marks(shown)
    inks += _trim_lines(own, trim, glue, around)
    inks += _glue_zones(own, glue, around)
    inks += _joins(own, around)
    return inks + _foot(own, trim, glue, texts)


def _cross(at: Point) -> list[Ink]:
    """Arms on the grid lines themselves, so that four pages make one cross."""
    return [
        ruling(at + Vector(-ARM, 0), at + Vector(ARM, 0), width=0.3, name="cross"),
        ruling(at + Vector(0, -ARM), at + Vector(0, ARM), width=0.3, name="cross"),
    ]


def corner_marks(printed: Box) -> list[Ink]:
    """Return marks round all that is printed; if one is missing, the paper was too small."""
    box = printed.grown(OUTSIDE)
    inks: list[Ink] = []
    for x, across in ((box.left, CORNER), (box.right, -CORNER)):
        for y, down in ((box.top, CORNER), (box.bottom, -CORNER)):
            at = Point(x, y)
            arms = (at + Vector(across, 0), at, at + Vector(0, down))
            inks.append(ruling(*arms, width=0.5, name="corner"))
    return inks


def _trim_lines(own: Box, trim: float, glue: float, around: Neighbours) -> list[Ink]:
    """Where this page is cut off before it goes on top of the page before it."""
    inks: list[Ink] = []
    size = min(2.2, trim - 0.6)
    if around.trim_left:
        top, bottom = Point(own.left, own.top - trim), Point(own.left, own.bottom + glue)
        inks.append(_cut(top, bottom))
        at = Point(own.left - 0.6, own.bottom - 30)
        inks.append(TextLine("trim along this line", at, size, angle=-90, layer=Layer.GUIDE))
    if around.trim_top:
        left, right = Point(own.left - trim, own.top), Point(own.right + glue, own.top)
        inks.append(_cut(left, right))
        at = Point(own.left + 12, own.top - 0.6)
        inks.append(TextLine("trim along this line", at, size, layer=Layer.GUIDE))
    return inks


def _cut(start: Point, end: Point) -> Ink:
    return ruling(start, end, width=0.25, layer=Layer.GUIDE, dash=Dash.CHAIN, name="trim")


def _glue_zones(own: Box, glue: float, around: Neighbours) -> list[Ink]:
    """Strips beyond the cell that the next page covers: a dotted edge, words, a zigzag."""
    inks: list[Ink] = []
    if around.right:
        top, bottom = Point(own.right, own.top), Point(own.right, own.bottom)
        inks += [_edge(top, bottom), *_sticky(top, RIGHT, DOWN, glue, bottom.y - top.y)]
    if around.below:
        left, right = Point(own.left, own.bottom), Point(own.right, own.bottom)
        inks += [_edge(left, right), *_sticky(left, DOWN, RIGHT, glue, right.x - left.x)]
    return inks


def _edge(start: Point, end: Point) -> Ink:
    """The line that the next page's trimmed edge comes to."""
    return ruling(start, end, width=0.2, layer=Layer.GUIDE, dash=Dash.DOTTED)


def _sticky(corner: Point, across: Vector, along: Vector, glue: float, length: float) -> list[Ink]:
    """Words at the beginning of a strip and one line to and fro over the rest of it."""
    size = min(2.6, glue - 1)
    words = "glue the next page here"
    room = 0.6 * size * len(words) + 12
    at = corner + across * (glue / 2 + size * 0.35 * (1 if along is RIGHT else -1))
    angle = 0.0 if along is RIGHT else 90.0
    inks: list[Ink] = [TextLine(words, at + along * 8, size, angle=angle, layer=Layer.GUIDE)]
    turns = [
        corner + across * (glue * (0.15 if step % 2 else 0.85)) + along * (room + step * 8)
        for step in range(int((length - room - 4) / 8) + 1)
    ]
    if len(turns) > 1:
        inks.append(ruling(*turns, width=0.15, layer=Layer.GRID, name="glue"))
    return inks


def _joins(own: Box, around: Neighbours) -> list[Ink]:
    """The letters this page shares with its neighbours, each by a tick across the edge."""
    inks: list[Ink] = []
    for join, x, inward in ((around.left, own.left, 1), (around.right, own.right, -1)):
        if join:
            at = Point(x, own.top + join.along)
            inks += _letter(join.letter, at, Vector(inward, 0))
    for join, y, inward in ((around.above, own.top, 1), (around.below, own.bottom, -1)):
        if join:
            at = Point(own.left + join.along, y)
            inks += _letter(join.letter, at, Vector(0, inward))
    return inks


def _letter(letter: str, at: Point, inward: Vector) -> list[Ink]:
    """A letter in a half lozenge that its neighbour's half completes."""
    side, reach = inward.square() * 7, inward * 7
    half = ruling(at + side, at + reach, at + -side, width=0.25, name=f"join {letter}")
    middle = at + inward * (2.6 if len(letter) == 1 else 2.4) + Vector(0, 1.2)
    size = 3.6 if len(letter) == 1 else 2.8
    return [half, TextLine(letter, middle, size, "middle", bold=True, layer=Layer.SCALE)]


def _foot(own: Box, trim: float, glue: float, texts: Label) -> list[Ink]:
    """The strip below: the mark to measure, the page's place, and what pattern it belongs to."""
    left, top = own.left - trim, own.bottom + glue
    after = left + MARK + 8
    room = own.right + glue - after
    return [
        *mark(left + 1, top + 5),
        TextLine(
            shortened(f"{texts.place} · all four corner marks there?", room, 3.0),
            Point(after, top + 4.4),
            3.0,
            bold=True,
            layer=Layer.TEXT,
        ),
        TextLine(shortened(texts.of, room, 2.4), Point(after, top + 7.8), 2.4, layer=Layer.TEXT),
    ]
