"""The lay plan: the cloth with every piece on it, as the amount to buy is reckoned."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

import numpy as np

from tapewise_core.drafting.cloth import Cloth, Spread
from tapewise_core.drafting.labels import LabelHead, title
from tapewise_core.drafting.picturing.ground import Place
from tapewise_core.drafting.picturing.sheet import Sheet
from tapewise_core.drafting.picturing.signs import arrow
from tapewise_core.drafting.picturing.words import Words, in_lines
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point
from tapewise_core.lay.lay import Lay, folds
from tapewise_core.lay.lying import Floats
from tapewise_core.paper.drawing import Dash, Drawing, Layer
from tapewise_core.units import Unit

WIDE, HIGH = 96.0, 190.0
"""The plan's largest size [mm]: it can be read on a telephone."""

MARGIN = 9.0
"""Room for the sizes beside the cloth [mm]."""

SHARES = (0.5, 0.35, 0.65, 0.2, 0.8)
"""Where across and down a piece its name may stand, best first."""

APART = 0.4
"""Points nearer to each other than this are one on the plan [mm]."""

SIZE, SMALL = 2.8, 2.5
"""Type [mm]: 7 points and more."""


class Shown(NamedTuple):
    """A piece on the plan: its name, and its lines on the cloth [mm]."""

    name: str
    lines: list[Floats]

    @property
    def box(self) -> Box:
        """What it takes of the cloth [mm]."""
        points = np.concatenate(self.lines)
        return Box(*map(float, (*points.min(0), *points.max(0))))


def lay_plan(lay: Lay, cloth: Cloth, label: LabelHead) -> Drawing | None:
    """Return the plan, lengths in its reader's unit; None where a piece is wider than the cloth."""
    if lay.too_wide or not lay.pieces:
        return None
    part = Box(0, 0, cloth.laid_width / cloth.layers, lay.length)
    scale = min((WIDE - 2 * MARGIN) / part.width, (HIGH - 2 * MARGIN) / part.height)
    sheet = Sheet(part, scale, WIDE, part.height * scale + 2 * MARGIN)
    _cloth(sheet, part, cloth)
    pieces = [Shown(title(one.piece.name), one.lines()) for one in lay.pieces]
    for one in pieces:
        for line in one.lines:
            sheet.stroke(_thinned(sheet, line), Layer.CUT, width=0.4)
    _sizes(sheet, part, label.unit)
    _folds(sheet, part, cloth)
    _set(sheet, label.set_words())
    _names(sheet, pieces)
    box = Box(0, 0, sheet.width, sheet.height)
    return Drawing(
        "lay plan", "reduced; the ribs of the cloth run up and down", box, tuple(sheet.placing.inks)
    )


def _thinned(sheet: Sheet, line: Floats) -> list[Place]:
    """A closed line whose points are told apart on the plan; a cut line has many more."""
    places = [sheet.at(Point(x, y)) for x, y in line.tolist()]
    kept = [places[0]]
    for x, y in places[1:]:
        if abs(x - kept[-1][0]) + abs(y - kept[-1][1]) > APART:
            kept.append((x, y))
    return [*kept, places[0]]


def _cloth(sheet: Sheet, part: Box, cloth: Cloth) -> None:
    """Its outline, and a thin line where each selvedge ends."""
    sheet.frame(Box(*sheet.at(Point(0, 0)), *sheet.at(Point(part.right, part.bottom))),
                Layer.GUIDE, 0.4)  # fmt: skip
    edge = cloth.selvedges / 2
    ends = {Spread.OPEN: (edge, part.right - edge), Spread.FOLDED: (part.right - edge,)}
    for x in ends.get(cloth.spread, ()):
        line = (sheet.at(Point(x, 0)), sheet.at(Point(x, part.bottom)))
        sheet.stroke(line, Layer.GUIDE, Dash.DOTTED, 0.15)


def _folds(sheet: Sheet, part: Box, cloth: Cloth) -> None:
    """A word beside each fold of the cloth."""
    for x in folds(cloth):
        ends = sheet.at(Point(x, 0)), sheet.at(Point(x, part.bottom))
        outwards = (-1.0 if x == 0 else 1.0, 0.0)
        sheet.placing.along(Words.of("fold", size=SIZE), *ends, outwards)


def _sizes(sheet: Sheet, part: Box, unit: Unit) -> None:
    """The width of what lies there above it, the length that is laid on beside it."""
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


def _names(sheet: Sheet, pieces: Sequence[Shown]) -> None:
    """A piece's name in its middle, or beside all pieces where it is too small for that."""
    small: list[tuple[Words, Place]] = []
    for one in pieces:
        words = Words.of(one.name, size=SIZE)
        for middle in _inside(sheet, one):
            if rows := sheet.placing.room(words, middle):
                sheet.placing.put(words, middle, rows)
                break
        else:
            box = one.box
            middle = sheet.at(Point((box.left + box.right) / 2, (box.top + box.bottom) / 2))
            small.append((words, middle))
    for one in pieces if small else ():
        sheet.placing.ground.take(sheet.placing.ground.covered(_corners(sheet, one.box)) or [])
    for words, middle in small:
        sheet.placing.beside(words, middle)


def _corners(sheet: Sheet, box: Box) -> tuple[Place, ...]:
    (left, top), (right, low) = (
        sheet.at(Point(box.left, box.top)), sheet.at(Point(box.right, box.bottom))
    )  # fmt: skip
    return (left, top), (right, top), (right, low), (left, low)


def _inside(sheet: Sheet, one: Shown) -> Iterator[Place]:
    """Places inside a piece, its middle first."""
    from shapely import contains_xy, polygons

    box = one.box
    places = [
        (box.left + right * box.width, box.top + down * box.height)
        for down in SHARES
        for right in SHARES
    ]
    xs, ys = np.array(places).T
    within = sum(contains_xy(polygons(line), xs, ys).astype(int) for line in one.lines) % 2
    for x, y in np.array(places)[within == 1].tolist():
        yield sheet.at(Point(x, y))
