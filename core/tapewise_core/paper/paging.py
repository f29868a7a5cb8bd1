"""How one page of many shows its share of a canvas."""

from __future__ import annotations

import math

from tapewise_core.errors import OptionError
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point
from tapewise_core.paper.furniture import STRIP
from tapewise_core.paper.grid import Cell, Grid
from tapewise_core.paper.sheet import Window
from tapewise_core.paper.sizes import PageSize
from tapewise_core.text.amounts import OnPaper, PaperSpan
from tapewise_core.text.told import said

LEAST_OVERLAP = 4.0
"""Less gives nothing to glue on [mm]."""

LEAST_ROOM = 120.0
"""What must be printed of a page across, whatever its margins [mm]: a square to measure."""


class Paging(Frozen):
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
        return Grid(width, height, self.glue, self.margin)

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
