"""Pieces that lie on pages, moved a few millimetres where that saves a page or a thin one."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

import numpy as np
from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing
from tapewise_core.paper.footing import THIN, Footing, printed_at
from tapewise_core.paper.grid import Cell, Grid, carrying
from tapewise_core.paper.lattice import NEAR, Flags, Floats, Lattice, Whole
from tapewise_core.paper.packing import BORDER, GAP

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

ROUNDS = 2
"""How often every piece may move."""

LOOKS = 60
"""How many places are looked at before a piece stays where it lies."""

Cost = tuple[float, ...]

Steps = tuple[int, int]
"""Steps down and across."""

MIDDLE = (NEAR, NEAR)
"""Where a piece lies before it moves."""


class Layout(Frozen):
    """Where pieces lie, in the order given, the cells printed, and what it costs, least first:
    avoidable splits, pages, thin pages, torn labels, how far down and across all goes."""

    pieces: tuple[Drawing, ...]
    grid: Grid
    cells: tuple[Cell, ...]
    cost: Cost

    @property
    def splits(self) -> int:
        """How many necklines are split that need not be."""
        return int(self.cost[0])

    @property
    def pages(self) -> int:
        """How many pages are printed."""
        return int(self.cost[1])


class Laid(Frozen):
    """A piece turned one way, and the place of its upper left corner [mm]."""

    footing: Footing
    place: Point


def settled(laid: Sequence[Laid]) -> Layout:
    """Return the pieces where they need fewest pages, all within a step of where they lie."""
    near = [_Near.about(one) for one in laid]
    chosen = [MIDDLE] * len(near)
    for _ in range(ROUNDS):
        before = list(chosen)
        for index in range(len(near)):
            chosen[index] = _better(near, chosen, index)
        if chosen == before:
            break
    return _layout(near, chosen)


def _layout(near: Sequence[_Near], chosen: Sequence[Steps]) -> Layout:
    """The pieces at their places, and the pages counted exactly."""
    grid = near[0].footing.lattice.grid
    pieces = tuple(
        one.footing.shape.at(one.place(at)) for one, at in zip(near, chosen, strict=True)
    )
    cells = tuple(carrying([ink for piece in pieces for ink in piece.inks], grid))
    needed, _, thin = _Pages.under(near, chosen).counted()
    rows, columns = np.nonzero(needed[0, 0])
    spread = (int(rows.max(initial=0)), int(rows.sum()), int(columns.sum()))
    splits, torn = (
        sum(int(table[at]) for table, at in zip(tables, chosen, strict=True))
        for tables in ([n.footing.splits for n in near], [n.footing.torn for n in near])
    )
    return Layout(pieces, grid, cells, (splits, len(cells), int(thin[0, 0]), torn, *spread))


class _Near(Frozen):
    """A piece, and what its places near one cost; the tables begin at a cell ``row``, ``column``,
    counted from the one before the canvas's first."""

    footing: Footing
    row: int
    column: int

    @staticmethod
    def about(laid: Laid) -> _Near:
        grid = laid.footing.lattice.grid
        row, column = int(laid.place.y // grid.height), int(laid.place.x // grid.width)
        inside = Point(
            laid.place.x - (column - 1) * grid.width, laid.place.y - (row - 1) * grid.height
        )
        return _Near(replace(laid.footing, lattice=Lattice.about(grid, inside)), row, column)

    def place(self, at: Steps) -> Point:
        """Where the corner lies [mm], so many steps down and across."""
        grid, inside = self.footing.lattice.grid, self.footing.lattice.at(*at)
        return Point(
            inside.x + (self.column - 1) * grid.width, inside.y + (self.row - 1) * grid.height
        )

    def solid(self, at: Steps) -> BaseGeometry:
        """What it takes of the paper."""
        from shapely.affinity import translate

        place = self.place(at)
        return translate(self.footing.shape.solid, place.x, place.y)

    @property
    def part(self) -> tuple[slice, slice]:
        """The cells its tables speak of."""
        rows, columns = self.footing.rows, self.footing.columns
        return slice(self.row, self.row + rows), slice(self.column, self.column + columns)


class _Pages(Frozen):
    """Where ink lies on pages, and what share of each is pattern, for one layout or for many of
    them at once (the first two axes); the first page lies before the canvas's."""

    touched: Flags
    shares: Floats

    @staticmethod
    def under(near: Sequence[_Near], chosen: Sequence[Steps], but: int | None = None) -> _Pages:
        """Return the pages under all pieces, one of them left out if asked."""
        size = tuple(max(one.part[way].stop for one in near) for way in (0, 1))
        pages = _Pages(np.zeros((1, 1, *size, 3, 3), bool), np.zeros((1, 1, *size)))
        for index, (one, at) in enumerate(zip(near, chosen, strict=True)):
            if index != but:
                pages.touched[:, :, *one.part] |= one.footing.touched[at]
                pages.shares[:, :, *one.part] += one.footing.covered[at]
        return pages

    def with_any(self, one: _Near) -> _Pages:
        """Return them with one piece more, at each of its places."""
        steps = one.footing.splits.shape
        touched = np.broadcast_to(self.touched, (*steps, *self.touched.shape[2:])).copy()
        shares = np.broadcast_to(self.shares, (*steps, *self.shares.shape[2:])).copy()
        touched[:, :, *one.part] |= one.footing.touched
        shares[:, :, *one.part] += one.footing.covered
        return _Pages(touched, shares)

    def counted(self) -> tuple[Flags, Whole, Whole]:
        """Return which are printed, how many, and how many of them are thin."""
        needed = printed_at(self.touched)
        thin = needed & (self.shares < THIN)
        return needed, needed.sum(axis=(2, 3)), thin.sum(axis=(2, 3))


def _better(near: Sequence[_Near], chosen: Sequence[Steps], index: int) -> Steps:
    """The cheapest free place near one for a piece; where it lies, if none costs less."""
    one = near[index]
    _, count, thin = _Pages.under(near, chosen, index).with_any(one).counted()
    tables = (one.footing.splits, count, thin, one.footing.torn)
    now = tuple(table[chosen[index]] for table in tables)
    down, across = np.indices(count.shape) - NEAR
    order = np.lexsort([(abs(down) + abs(across)).ravel(), *(t.ravel() for t in tables[::-1])])
    others = [n.solid(at) for i, (n, at) in enumerate(zip(near, chosen, strict=True)) if i != index]
    for step in order[:LOOKS]:
        at = divmod(int(step), one.footing.lattice.across)
        if tuple(table[at] for table in tables) >= now:
            break
        if _free(one, at, others):
            return at
    return chosen[index]


def _free(one: _Near, at: Steps, others: Sequence[BaseGeometry]) -> bool:
    """Say whether a piece lies on the canvas there, and near no other."""
    place = one.place(at)
    if min(place.x, place.y) < BORDER - 1e-6:
        return False
    solid = one.solid(at)
    return all(solid.distance(other) >= GAP for other in others)
