"""A pattern over many pages of a home printer, and the sheets they are printed from."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from tapewise_core.errors import OptionError
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point
from tapewise_core.paper.furniture import STRIP, Label, furniture
from tapewise_core.paper.grid import Cell, Grid, carrying
from tapewise_core.paper.joins import Border, Neighbours, PageJoin, crossed, letters
from tapewise_core.paper.packing import ink_box, joined
from tapewise_core.paper.page_map import page_map
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.paper.placing import Layout, placed
from tapewise_core.paper.scale import squares
from tapewise_core.paper.shapes import Shape
from tapewise_core.paper.sheet import Prints, Sheet, Window
from tapewise_core.paper.sizes import PageSize
from tapewise_core.text.told import OnPaper, PaperSpan, said

OVERLAP = 12.0
"""How much two neighbours print twice [mm], unless asked otherwise."""

LEAST_OVERLAP = 4.0
"""Less gives nothing to glue on [mm]."""

LEAST_ROOM = 120.0
"""What must be printed of a page across, whatever its margins [mm]: a square to measure."""


@dataclass(frozen=True, slots=True)
class Paging:
    """How one page shows its share of the canvas; lengths in mm.

    From the left: margin, a strip to trim off, the page's own cell, the zone
    to glue on, margin. From the top the same, with a strip of text below.
    """

    page: PageSize
    margin: float
    overlap: float

    @property
    def trim(self) -> float:
        """Printed before the page's own cell and cut off where a neighbour lies below."""
        return self.overlap / 4

    @property
    def glue(self) -> float:
        """Printed beyond the page's own cell, for the next page to be glued on."""
        return self.overlap - self.trim

    def grid(self) -> Grid:
        """Return the grid of cells; raises OptionError where the page leaves no room."""
        width = self.page.width - 2 * self.margin - self.overlap
        height = self.page.height - 2 * self.margin - self.overlap - STRIP
        most = min(self.page.width, self.page.height) - 2 * self.margin
        self._refuse(most)
        return Grid(width, height, self.glue)

    def _refuse(self, room: float) -> None:
        if room < LEAST_ROOM:
            most = (min(self.page.width, self.page.height) - LEAST_ROOM) / 2
            raise OptionError(
                said(
                    "Margins of {} leave {} of a page of {}, and {} are needed; choose margins up "
                    "to {}.",
                    OnPaper(self.margin),
                    OnPaper(max(room, 0)),
                    self.page.name,
                    OnPaper(LEAST_ROOM),
                    OnPaper(math.floor(most), "down"),
                )
            )
        if not LEAST_OVERLAP <= self.overlap <= room / 2:
            raise OptionError(
                said(
                    "An overlap of {} does not suit pages on which {} are printed; choose one from "
                    "{}.",
                    OnPaper(self.overlap),
                    OnPaper(room),
                    PaperSpan(LEAST_OVERLAP, int(room / 2)),
                )
            )

    def window(self, cell: Cell, shown: Box) -> Window:
        """Return the part of the canvas one page shows, and where.

        ``shown`` says how far it reaches beyond the cell, side by side [mm].
        """
        row, column = cell
        grid = self.grid()
        left, top = column * grid.width, row * grid.height
        seen = Box(
            left - shown.left,
            top - shown.top,
            left + grid.width + shown.right,
            top + grid.height + shown.bottom,
        )
        own = self.own()
        return Window(seen, Point(own.left - shown.left, own.top - shown.top))

    def own(self) -> Box:
        """Return the page's own cell, on the page."""
        grid, corner = self.grid(), self.margin + self.trim
        return Box(corner, corner, corner + grid.width, corner + grid.height)


def tiled(pattern: PatternSet, page: PageSize, margin: float, overlap: float) -> Prints:
    """Return a map page and the pages of a pattern, upright or lying, whichever are fewer."""
    ways = [Paging(size, margin, overlap) for size in (page, page.turned())]
    shapes = [Shape(piece) for piece in pattern.pieces]
    tries = [(way, placed(shapes, way.grid())) for way in ways]
    paging, layout = min(tries, key=lambda found: (found[1].splits, found[1].pages))
    prints, cells = _prints(pattern, paging, layout)
    map_page = page_map(pattern, page, prints.canvas, paging.grid(), cells, overlap)
    return replace(prints, sheets=(map_page, *prints.sheets))


def large(pattern: PatternSet, page: PageSize, margin: float, overlap: float) -> Prints:
    """Return large sheets; a piece is split only if it is larger than the sheet."""
    paging = Paging(page, margin, overlap)
    pieces = [replace(piece, whole=(ink_box(piece),)) for piece in (*pattern.pieces, squares())]
    shapes = [Shape(piece) for piece in pieces]
    return _prints(pattern, paging, placed(shapes, paging.grid(), thorough=True), apart=True)[0]


def _prints(
    pattern: PatternSet, paging: Paging, layout: Layout, *, apart: bool = False
) -> tuple[Prints, Sequence[Cell]]:
    """The canvas and its pages, and their cells; ``apart`` joins only those that share a piece."""
    grid, pieces = paging.grid(), layout.pieces()
    canvas = joined(pattern.title, pattern.description, pieces, paging.overlap)
    cells = carrying(canvas.inks, grid)
    pairs = letters(canvas, grid, cells)
    if apart:
        pairs = crossed(pairs, pieces, grid)
    sheets = _sheets(pattern, paging, cells, pairs)
    return Prints(pattern.title, pattern.person, pattern.description, canvas, sheets), cells


def _sheets(
    pattern: PatternSet, paging: Paging, cells: Sequence[Cell], pairs: Mapping[Border, PageJoin]
) -> tuple[Sheet, ...]:
    sheets = []
    for number, cell in enumerate(cells, 1):
        row, column = cell
        name = f"row {row + 1}, column {column + 1}"
        place = f"{name} · page {number} of {len(cells)} · print at 100 %"
        label = Label(place, pattern.label())
        around = Neighbours.of(cell, pairs)
        inks = furniture(paging.own(), paging.trim, paging.glue, around, label)
        window = paging.window(cell, _shown(cell, cells, around, paging))
        page = paging.page
        sheets.append(Sheet(name, page.width, page.height, tuple(inks), window))
    return tuple(sheets)


def _shown(cell: Cell, cells: Sequence[Cell], around: Neighbours, paging: Paging) -> Box:
    """How far a page shows ink beyond its cell: nothing of a neighbour it is not joined to."""
    row, column = cell

    def reach(length: float, join: PageJoin | None, neighbour: Cell) -> float:
        return 0.0 if join is None and neighbour in cells else length

    return Box(
        reach(paging.trim, around.left, (row, column - 1)),
        reach(paging.trim, around.above, (row - 1, column)),
        reach(paging.glue, around.right, (row, column + 1)),
        reach(paging.glue, around.below, (row + 1, column)),
    )
