"""The printed pages drawn small: page numbers, join letters, and which piece lies where."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Ink, Layer, Stroke, TextLine
from tapewise_core.paper.grid import Cell, Grid
from tapewise_core.paper.joins import Border, PageJoin
from tapewise_core.paper.lettering import frame

if TYPE_CHECKING:
    from tapewise_core.paper.word_places import Covered

FIRST = 2
"""The page after the map."""


class Mapped(Frozen):
    """What the map shows: the canvas, its printed cells in order, their joins; overlap in mm."""

    canvas: Drawing
    grid: Grid
    cells: Sequence[Cell]
    pairs: Mapping[Border, PageJoin]
    overlap: float


class _Scaled(Frozen):
    """Where the canvas's corner lies on the map [mm], and how much smaller it is drawn."""

    corner: Point
    scale: float

    def at(self, x: float, y: float) -> Point:
        return Point(self.corner.x + x * self.scale, self.corner.y + y * self.scale)


def small_map(room: Box, mapped: Mapped) -> list[Ink]:
    """Return the map: frames with the numbers of their pages, cut lines, names and letters."""
    grid, cells = mapped.grid, mapped.cells
    columns = 1 + max(column for _, column in cells)
    rows = 1 + max(row for row, _ in cells)
    most = min(room.width / (columns * grid.width), (room.height - 6) / (rows * grid.height), 0.25)
    small = _Scaled(Point(room.left, room.top + 4), most)
    title = "page map: the number of each page, the letters of its joins"
    inks: list[Ink] = [TextLine(title, Point(room.left, room.top - 1.5), 2.4, bold=True)]
    cuts = [ink for ink in mapped.canvas.inks if isinstance(ink, Stroke) and ink.layer is Layer.CUT]
    inks += [_drawn(cut, small) for cut in cuts]
    for number, cell in enumerate(cells, FIRST):
        inks += _page(number, cell, grid, small)
    inks += [_letter(edge, join, grid, small) for edge, join in mapped.pairs.items()]
    return inks + _names([cut for cut in cuts if cut.part], small, inks)


def _page(number: int, cell: Cell, grid: Grid, small: _Scaled) -> list[Ink]:
    """One page's frame, its number in the upper left corner."""
    row, column = cell
    corner = small.at(column * grid.width, row * grid.height)
    width, height = grid.width * small.scale, grid.height * small.scale
    size = min(4.5, width / 3.5)
    box = Box(corner.x, corner.y, corner.x + width, corner.y + height)
    at = Point(corner.x + 0.7, corner.y + size)
    return [frame(box, 0.15, Layer.GUIDE), TextLine(f"{number}", at, size, bold=True)]


def _letter(edge: Border, join: PageJoin, grid: Grid, small: _Scaled) -> Ink:
    """The letter two pages share, beside the edge they share and clear of the page's number."""
    (row, column), (_, after) = edge
    size = min(2.2, grid.width * small.scale / 6)
    if after > column:
        along = max(join.along, 0.55 * grid.height)
        at = small.at(after * grid.width, row * grid.height + along)
        return TextLine(join.letter, Point(at.x + 0.4, at.y + size * 0.36), size)
    along = max(join.along, 0.65 * grid.width)
    at = small.at(column * grid.width + along, (row + 1) * grid.height)
    return TextLine(join.letter, Point(at.x, at.y + size + 0.1), size, "middle")


def _names(cuts: Sequence[Stroke], small: _Scaled, inks: Sequence[Ink]) -> list[Ink]:
    """The pieces' names, each clear of those before it."""
    from tapewise_core.paper.word_places import Covered

    covered, names = Covered.by(inks), []
    for cut in cuts:
        names.append(_named(cut, small, covered))
        covered = covered.with_words(names[-1])
    return [*names]


def _named(cut: Stroke, small: _Scaled, covered: Covered) -> TextLine:
    """A piece's name near its middle, along it where it is long and narrow, clear of numbers,
    letters and lines if there is such a place, beside the piece if that is too narrow."""
    box = box_of(cut.corners())
    first, last = small.at(box.left, box.top), small.at(box.right, box.bottom)
    wide, high = last.x - first.x, last.y - first.y
    name = cut.part.replace("_", " ")
    upright = high > 3 * wide
    size = max(1.8, min(3.0, (max(wide, high) if upright else wide) / (0.6 * len(name))))
    middle = Point((first.x + last.x) / 2, (first.y + last.y) / 2 + size * 0.35)
    beside = 1.5 * size if min(wide, high) < 1.5 * size else 0.0
    reach = (wide / 2 + beside, high / 2 + beside)
    tries = [
        TextLine(name, middle, smaller * size, "middle", angle=90.0 if upright else 0.0)
        for smaller in (1.0, 0.75)
    ]
    return covered.least(tries, reach)


def _drawn(cut: Stroke, small: _Scaled) -> Ink:
    points = [small.at(p.x, p.y) for p in cut.path.flattened(2.0)]
    return replace(cut, path=ruled(*points), width=0.3, name="", part="")
