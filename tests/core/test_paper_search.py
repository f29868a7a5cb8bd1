"""The search for places on pages: its tables say of all places at once what each would."""

from itertools import product

import numpy as np
import pytest
import shapely
from paper_samples import pattern

from tapewise_core.paper.begun import Beginning, Begun, Tries, joined
from tapewise_core.paper.footing import THIN, Footing, printed_at
from tapewise_core.paper.grid import Cell, Near, Touched, printed
from tapewise_core.paper.lattice import WARY, Lattice
from tapewise_core.paper.paging import Paging
from tapewise_core.paper.shapes import Shape
from tapewise_core.paper.sizes import A4
from tapewise_core.paper.solid import inside

GRID = Paging(A4, 10.0, 12.0).grid()
SHAPES = [Shape(piece) for piece in pattern().pieces]


def footings() -> list[Footing]:
    """Return each sample piece, upright and turned."""
    lattice = Lattice.over(GRID)
    return [Footing(way, bool(n), lattice) for one in SHAPES for n, way in enumerate(one.ways)]


def looked_up(footing: Footing, down: int, across: int) -> Touched:
    """Return where a piece has ink, spot by spot, if it lies so many steps down and across."""
    corner = footing.lattice.at(down, across)
    touched: Touched = {}
    for x, y in footing.shape.spots:
        column, left = divmod(corner.x + x, GRID.width)
        row, above = divmod(corner.y + y, GRID.height)
        near = (near_of(above), near_of(left))
        touched.setdefault((int(row), int(column)), set()).add(near)
    return touched


def near_of(beyond: float) -> Near:
    """Return where ink lies so many mm beyond a grid line, strips taken warily."""
    if beyond < GRID.reach - WARY:
        return Near.STRIP
    return Near.BORDER if beyond < GRID.reach + GRID.border else Near.OPEN


@pytest.mark.parametrize("number", range(2 * len(SHAPES)))
def test_tables_of_ink_agree_with_a_look_at_every_spot(number: int) -> None:
    """At places all over a page a piece touches the pages, strips and borders its spots lie on."""
    footing = footings()[number]
    lattice = footing.lattice
    for down, across in product(range(0, lattice.down, 7), range(0, lattice.across, 5)):
        found: Touched = {}
        for row, column, above, left in np.argwhere(footing.touched[down, across]).tolist():
            found.setdefault((row, column), set()).add((Near(above), Near(left)))
        assert found == looked_up(footing, down, across)


def test_tables_of_pages_agree_with_the_rule_for_one_layout() -> None:
    """Of many layouts at once, by chance with and without gaps, those pages are needed that would
    be printed of each alone."""
    many = np.random.default_rng(1).random((20, 20, 4, 3, 3, 3)) < 0.12
    needed = printed_at(many)
    for place in product(range(20), range(20)):
        touched: Touched = {}
        for row, column, above, left in np.argwhere(many[place]).tolist():
            touched.setdefault((row, column), set()).add((Near(above), Near(left)))
        assert [tuple(cell) for cell in np.argwhere(needed[place]).tolist()] == printed(touched)


def tried(first: Footing, second: Footing) -> Begun:
    """Return two pieces on pages, the second at places all over those of the first and beyond."""
    lattice = first.lattice
    nothing = Begun.nothing(8, 8)
    one = nothing.then(0, Tries(first, np.array([0, 0]), np.array([[0, 0], [9, 5]])))
    down, across = range(0, 2 * lattice.down, 11), range(0, 2 * lattice.across, 5)
    at = np.array(list(product(down, across)))
    many = [Tries(second, np.full(len(at), after), at) for after in (0, 1)]
    return joined([one.then(1, tries) for tries in many])


def cells(footing: Footing, at: tuple[int, int], table: np.ndarray) -> dict[Cell, float]:
    """Return what a table of a piece's pages has for each, the piece lying at a place."""
    lattice = footing.lattice
    (row, down), (column, across) = divmod(at[0], lattice.down), divmod(at[1], lattice.across)
    return {
        (row + r, column + c): float(own)
        for (r, c), own in np.ndenumerate(table[down, across])
        if own
    }


def counted(beginning: Beginning) -> tuple[set[Cell], int]:
    """Return the pages under some pieces, counted one by one, and how many of them are thin."""
    pages: set[Cell] = set()
    shares: dict[Cell, float] = {}
    for one in beginning.placed:
        pages |= cells(one.footing, one.at, one.footing.needed).keys()
        for cell, share in cells(one.footing, one.at, one.footing.covered).items():
            shares[cell] = shares.get(cell, 0.0) + share
    more = {cell for one in beginning.placed for cell in leaning(one.footing, one.at, pages)}
    pages |= more
    return pages, sum(shares.get(cell, 0.0) < THIN for cell in pages)


def leaning(footing: Footing, at: tuple[int, int], pages: set[Cell]) -> set[Cell]:
    """Return the pages a piece needs since another follows in the same row, or column."""
    right, below = (cells(footing, at, table) for table in footing.leaning)
    return {
        *(c for c in right if any(row == c[0] and column > c[1] for row, column in pages)),
        *(c for c in below if any(column == c[1] and row > c[0] for row, column in pages)),
    }


@pytest.mark.parametrize(("first", "second"), [(0, 1), (2, 5), (4, 7)])
def test_beginnings_cost_what_their_pages_do(first: int, second: int) -> None:
    """Pages and thin pages of many beginnings at once are those counted one by one."""
    known = footings()
    for beginning in tried(known[first], known[second]):
        pages, thin = counted(beginning)
        rows, columns = zip(*pages, strict=True)
        spread = max(rows), sum(rows), sum(columns)
        turned = sum(one.footing.turned for one in beginning.placed)
        assert beginning.cost[1:3] == (len(pages), thin)
        assert beginning.cost[4:] == (turned, *spread)


def test_the_cheapest_beginnings_go_on() -> None:
    """Those that go on are no dearer than any left out, and no two need the same pages."""
    known = footings()
    begun = tried(known[0], known[1])
    kept = list(begun.best(25))
    pages = [frozenset(counted(one)[0]) for one in kept]
    assert len(set(pages)) == 25
    known_by = [(frozenset(counted(one)[0]), one.cost) for one in begun]
    left = [cost for own, cost in known_by if own not in pages]
    for one, own in zip(kept, pages, strict=True):
        assert one.cost == min(cost for other, cost in known_by if other == own)
    assert max(one.cost for one in kept) <= min(left)
    assert [one.cost for one in kept] == sorted(one.cost for one in kept)


def test_places_inside_a_shape_are_those_a_library_finds() -> None:
    """A ring, a piece beside it and a line: what is looked up row by row agrees with shapely."""
    ring = shapely.Point(40.3, 40.7).buffer(37.1).difference(shapely.Point(44.2, 38.9).buffer(20.3))
    apart = shapely.Polygon([(90.1, 3.2), (119.7, 80.4), (84.6, 71.3)])
    shape = shapely.union_all([ring, apart, shapely.LineString([(0, 90), (120, 95)])])
    across, down = np.arange(-5.0, 130.0, 1.7), np.arange(-5.0, 100.0, 1.3)
    found = inside(shape, across, down)
    assert found.any()
    assert not found.all()
    assert (found == shapely.contains_xy(shape, *np.meshgrid(across, down))).all()
