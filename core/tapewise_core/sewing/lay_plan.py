"""The lay plan: the cloth with every piece on it, as the amount to buy is reckoned."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from tapewise_core.drafting.cloth import SELVEDGES, Cloth
from tapewise_core.drafting.labels import LabelHead, title
from tapewise_core.drafting.picturing.ground import Place
from tapewise_core.drafting.picturing.sheet import Flattened, Sheet
from tapewise_core.drafting.picturing.signs import arrow
from tapewise_core.drafting.picturing.words import Words, in_lines
from tapewise_core.drafting.piece import Pattern, Piece
from tapewise_core.geometry.outline import Box, box_of, polygon
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Dash, Drawing, Layer
from tapewise_core.sewing.cloth_needed import cloth_needed
from tapewise_core.sewing.laying import Lying, copies, in_rows
from tapewise_core.sewing.wedges import Ranks, best, is_wedge
from tapewise_core.units import Unit

WIDE, HIGH = 96.0, 190.0
"""The plan's largest size [mm]: it can be read on a telephone."""

MARGIN = 9.0
"""Room for the sizes beside the cloth [mm]."""

SHARES = (0.5, 0.35, 0.65, 0.2, 0.8)
"""Where across and down a piece its name may stand, best first."""

APART = 4.0
"""Points nearer to each other than this are one on the plan [mm]: a fifth of one on paper."""

SIZE, SMALL = 2.8, 2.5
"""Type [mm]: 7 points and more."""


def lay_plan(pattern: Pattern, cloth: Cloth, label: LabelHead) -> Drawing | None:
    """Return the plan, lengths in its reader's unit; None where a piece is wider than the cloth."""
    needed = cloth_needed(pattern, cloth)
    if needed.too_wide:
        return None
    part = Box(0, 0, cloth.width, needed.length)
    scale = min((WIDE - 2 * MARGIN) / part.width, (HIGH - 2 * MARGIN) / part.height)
    sheet = Sheet(part, scale, WIDE, part.height * scale + 2 * MARGIN)
    _cloth(sheet, part)
    pieces = tuple(lying(pattern, cloth))
    flat = Flattened()
    for one in pieces:
        for line in one.outlines():
            sheet.draw(ruled(*_thinned([*line, line[0]])), flat, Layer.CUT, width=0.4)
    _sizes(sheet, part, label.unit)
    _set(sheet, label.set_words())
    _names(sheet, pieces)
    box = Box(0, 0, sheet.width, sheet.height)
    return Drawing(
        "lay plan", "reduced; the ribs of the cloth run up and down", box, tuple(sheet.placing.inks)
    )


def _thinned(line: Sequence[Point]) -> list[Point]:
    """A line whose points are told apart on the plan; a cut line has many more."""
    kept = [line[0]]
    for point in line[1:-1]:
        if (point - kept[-1]).length() > APART:
            kept.append(point)
    return [*kept, line[-1]]


def lying(pattern: Pattern, cloth: Cloth) -> Iterator[Lying]:
    """Yield every piece where it lies, from the cloth's corner [mm]."""
    usable, edge = cloth.usable_width, SELVEDGES / 2
    others = [piece for piece in pattern.pieces if not is_wedge(piece)]
    placed, along = in_rows((one for piece in others for one in copies(piece, usable)), usable)
    yield from (replace(one, across=one.across + edge) for one in placed)
    for piece in filter(is_wedge, pattern.pieces):
        ranks = best(piece, usable)
        yield from _head_to_tail(piece, ranks, edge, along)
        along += ranks.length


def _head_to_tail(piece: Piece, ranks: Ranks, edge: float, along: float) -> Iterator[Lying]:
    for number in range(piece.count):
        x, y = ranks.place(piece, number)
        upside = number % ranks.many % 2 == 1
        yield Lying(piece, x + edge, y + along, turned=ranks.turned, upside=upside)


def _cloth(sheet: Sheet, part: Box) -> None:
    """Its outline, and a thin line where each selvedge ends."""
    corners = [Point(x, y) for x, y in ((0, 0), (part.right, 0), (part.right, part.bottom),
                                        (0, part.bottom), (0, 0))]  # fmt: skip
    sheet.stroke([sheet.at(corner) for corner in corners], Layer.GUIDE, width=0.4)
    for x in (SELVEDGES / 2, part.right - SELVEDGES / 2):
        ends = (sheet.at(Point(x, 0)), sheet.at(Point(x, part.bottom)))
        sheet.stroke(ends, Layer.GUIDE, Dash.DOTTED, 0.15)


def _sizes(sheet: Sheet, part: Box, unit: Unit) -> None:
    """The cloth's width above it, the length that is laid on beside it."""
    left, top = sheet.at(Point(0, 0))
    right, low = sheet.at(Point(part.right, part.bottom))
    across = ((left, top - 3), (right, top - 3))
    along = ((left - 3, top), (left - 3, low))
    for ends, mm in ((across, part.width), (along, part.height)):
        arrow(sheet, *ends)
        sheet.placing.along(Words.of(unit.spell(mm), size=SIZE), *ends)


def _set(sheet: Sheet, told: str) -> None:
    """Which set the plan belongs to, below the cloth."""
    words = Words.of(told, size=SIZE)
    if words.across * 2 > sheet.width:
        words = Words.of(*in_lines(told), size=SMALL)
    if told:
        middle = (sheet.width / 2, sheet.height - MARGIN / 2 + 0.5)
        sheet.placing.put(words, middle, sheet.placing.room(words, middle) or [])


def _names(sheet: Sheet, pieces: tuple[Lying, ...]) -> None:
    """A piece's name in its middle, or beside all pieces where it is too small for that."""
    small: list[tuple[Words, Place]] = []
    for one in pieces:
        words = Words.of(title(one.piece.name), size=SIZE)
        for middle in map(sheet.at, _inside(one)):
            if rows := sheet.placing.room(words, middle):
                sheet.placing.put(words, middle, rows)
                break
        else:
            small.append((words, sheet.at(_middle(one))))
    for one in pieces if small else ():
        x, y = sheet.at(_middle(one))
        across, along = (size * sheet.scale / 2 for size in one.size)
        corners = ((x - across, y - along), (x + across, y - along),
                   (x + across, y + along), (x - across, y + along))  # fmt: skip
        sheet.placing.ground.take(sheet.placing.ground.covered(corners) or [])
    for words, middle in small:
        sheet.placing.beside(words, middle)


def _inside(one: Lying) -> Iterator[Point]:
    """Places inside a piece, its middle first."""
    from shapely import contains_xy

    lines = one.outlines()
    shapes = [polygon(line) for line in lines]
    box = box_of(point for line in lines for point in line)
    for down in SHARES:
        for right in SHARES:
            at = Point(box.left + right * box.width, box.top + down * box.height)
            if sum(contains_xy(shape, at.x, at.y) for shape in shapes) % 2:
                yield at


def _middle(one: Lying) -> Point:
    box = box_of(point for line in one.outlines() for point in line)
    return Point((box.left + box.right) / 2, (box.top + box.bottom) / 2)
