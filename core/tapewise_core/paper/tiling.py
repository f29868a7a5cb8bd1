"""A pattern over many pages of a home printer, and the sheets they are printed from."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from typing import TYPE_CHECKING

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.paper.drawing import Drawing
from tapewise_core.paper.furniture import Label, furniture
from tapewise_core.paper.grid import Cell, Grid
from tapewise_core.paper.joins import Border, Neighbours, PageJoin, crossed, letters, spans
from tapewise_core.paper.packing import ink_box, joined
from tapewise_core.paper.page_map import page_map
from tapewise_core.paper.paging import Paging
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.paper.scale import squares
from tapewise_core.paper.sheet import Prints, Sheet
from tapewise_core.paper.sizes import PageSize
from tapewise_core.paper.small_map import Mapped

if TYPE_CHECKING:
    from tapewise_core.paper.settling import Layout


def tiled(pattern: PatternSet, page: PageSize, margin: float, overlap: float) -> Prints:
    """Return a map page and the pages of a pattern, upright or lying, whichever are fewer."""
    ways = [Paging(size, margin, overlap) for size in (page, page.turned())]
    layout = _placed(pattern.pieces, *(way.grid() for way in ways))
    paging = next(way for way in ways if way.grid() == layout.grid)
    laid = _laid(pattern, paging, layout)
    mapped = Mapped(laid.canvas, paging.grid(), laid.cells, laid.pairs, overlap)
    first = page_map(pattern, page, mapped)
    return _bound(pattern, laid, (first, *_sheets(pattern, laid, before=1)))


def large(pattern: PatternSet, page: PageSize, margin: float, overlap: float) -> Prints:
    """Return large sheets; a piece is split only if it is larger than the sheet."""
    paging = Paging(page, margin, overlap)
    pieces = [replace(piece, whole=(ink_box(piece),)) for piece in (*pattern.pieces, squares())]
    layout = _placed(pieces, paging.grid())
    laid = _laid(pattern, paging, layout, apart=True)
    return _bound(pattern, laid, _sheets(pattern, laid))


def _placed(pieces: Sequence[Drawing], *grids: Grid) -> Layout:
    """Where the pieces lie; numpy is loaded for nothing less."""
    from tapewise_core.paper.placing import placed
    from tapewise_core.paper.shapes import Shape

    return placed([Shape(piece) for piece in pieces], *grids)


class _Laid(Frozen):
    """A canvas, the cells of it that are printed, and how they are joined.

    ``near`` are, for each cell, the pages it becomes one sheet with.
    """

    paging: Paging
    canvas: Drawing
    cells: tuple[Cell, ...]
    pairs: Mapping[Border, PageJoin]
    near: Mapping[Cell, Collection[Cell]]


def _laid(pattern: PatternSet, paging: Paging, layout: Layout, *, apart: bool = False) -> _Laid:
    """The canvas and its pages; ``apart`` joins only those that share a piece."""
    grid, pieces, cells = layout.grid, layout.pieces, layout.cells
    canvas = joined(pattern.title, pattern.description, pieces, paging.overlap)
    pairs = letters(canvas, grid, cells)
    if not apart:
        return _Laid(paging, canvas, cells, pairs, dict.fromkeys(cells, cells))
    over = spans(pieces, grid)
    near = {
        cell: {other for span in over if cell in span for other in span if other in cells}
        for cell in cells
    }
    return _Laid(paging, canvas, cells, crossed(pairs, over), near)


def _bound(pattern: PatternSet, laid: _Laid, sheets: tuple[Sheet, ...]) -> Prints:
    return Prints(pattern.title, pattern.person, pattern.description, laid.canvas, sheets)


def _sheets(pattern: PatternSet, laid: _Laid, before: int = 0) -> tuple[Sheet, ...]:
    """The pages with ink, numbered on from the pages that are printed before them."""
    paging, sheets = laid.paging, []
    total = before + len(laid.cells)
    for number, cell in enumerate(laid.cells, before + 1):
        row, column = cell
        name = f"row {row + 1}, column {column + 1}"
        place = f"page {number} of {total} · {name} · {paging.page.paper} at 100 %"
        around = Neighbours.of(cell, laid.pairs, laid.near[cell])
        label = Label(place, pattern.label())
        inks = furniture(paging.own(), paging.trim, paging.glue, around, label)
        window = paging.window(cell, _shown(cell, laid.cells, around, paging))
        sheets.append(Sheet(name, paging.page.width, paging.page.height, tuple(inks), window))
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
