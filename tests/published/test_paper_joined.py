"""Pages joined on screen as the first page tells: no line of the pattern is covered.

Renderer: pdfium. Every set of the example people on A4 and on Letter is laid on a table, page by
page and row by row, each trimmed where its trim lines are and nowhere else, blank borders and all.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from functools import cache
from itertools import product

import numpy as np
import pytest
from msgspec.structs import replace
from numpy.typing import NDArray
from paper_pixels import cut_lines, darkness
from shapely import LinearRing, Polygon, unary_union
from shapely import box as square

from tapewise_core.garments.shelf import garments
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Layer, Stroke
from tapewise_core.paper.lettering import ruling
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.paper.sheet import Prints, Sheet, Window
from tapewise_core.paper.sizes import A4, LETTER, PageSize
from tapewise_core.paper.tiling import tiled
from tapewise_core.profiles.examples import example, examples
from tapewise_core.tasks.contents import pattern_set
from tapewise_core.tasks.drafting import draft
from tapewise_core.writers.pdf import pdf

FINE = 2.0
"""Pixels a millimetre: a cut line of 0.4 mm still is one."""

Image = NDArray[np.uint8]
"""How dark each pixel is, from 0 to 255."""

NAMES = [profile.name for _, profile in examples()]
SETS = [(name, page.name) for name in NAMES for page in garments()]


@cache
def made(name: str, garment: str) -> PatternSet:
    """Return one example person's set."""
    return pattern_set(draft(example(name), garment, {}, made=date(2026, 11, 2)))


@dataclass(frozen=True)
class Trimmed:
    """One page as it lies on the table, and what is left of its paper."""

    sheet: Sheet
    number: int
    left: Box


def trimmed(sheet: Sheet, number: int) -> Trimmed:
    """Cut a page along its trim lines, from edge to edge of the paper."""
    strokes = [ink for ink in sheet.inks if isinstance(ink, Stroke)]
    left = top = 0.0
    for line in (ink.path for ink in strokes if ink.name == "trim"):
        if line.start.x == line.end.x:
            left = line.start.x
        else:
            top = line.start.y
    return Trimmed(sheet, number, Box(left, top, sheet.width, sheet.height))


def on_canvas(page: Trimmed, at: Point) -> Point:
    """Where a place of the page lies on the canvas."""
    assert page.sheet.window
    seen, corner = page.sheet.window.seen, page.sheet.window.at
    return Point(at.x - corner.x + seen.left, at.y - corner.y + seen.top)


def pages(prints: Prints) -> list[Trimmed]:
    """Return the pages in the order they are laid: row by row, the later ones on top."""
    return [trimmed(sheet, n) for n, sheet in enumerate(prints.sheets) if sheet.window]


def joined(prints: Prints, data: bytes, edge: float) -> Image:
    """Lay all pages on a table that begins ``edge`` mm before the canvas."""
    box = prints.canvas.box
    size = (round((box.height + 2 * edge) * FINE), round((box.width + 2 * edge) * FINE))
    table = np.zeros(size, np.uint8)
    for page in pages(prints):
        ink, seen = darkness(data, page.number, page.left, FINE)
        ink, at = unstretched(ink, seen), on_canvas(page, Point(seen.left, seen.top))
        x, y = round((at.x - box.left + edge) * FINE), round((at.y - box.top + edge) * FINE)
        place = table[max(y, 0) : y + ink.shape[0], max(x, 0) : x + ink.shape[1]]
        place[:] = ink[max(-y, 0) :, max(-x, 0) :][: place.shape[0], : place.shape[1]]
    return table


def unstretched(ink: Image, seen: Box) -> Image:
    """Return a picture at just so many pixels a millimetre, no ink left out.

    The renderer stretches a page to whole pixels, and what lies at its far side with it: by up to
    a pixel, which is most of a line along a page's edge.
    """
    for way, length in enumerate((seen.height, seen.width)):
        count = round(length * FINE)
        edges = np.floor(np.arange(count + 1) * ink.shape[way] / count + 0.5).astype(np.intp)
        first, last = edges[:-1], edges[1:] - 1
        assert np.all(last - first <= 1)  # two at most, so that both are looked at
        ink = np.maximum(ink.take(first, axis=way), ink.take(last, axis=way))
    return ink


def alone(prints: Prints) -> Image:
    """Return the canvas by itself, on one sheet without anything round it."""
    box = prints.canvas.box
    whole = Sheet("canvas", box.width, box.height, (), Window(box, Point(0, 0)))
    inks = tuple(ink for ink in prints.canvas.inks if ink.layer in (Layer.CUT, Layer.STITCH))
    lines = replace(prints, canvas=replace(prints.canvas, inks=inks), sheets=(whole,))
    return unstretched(*darkness(pdf(lines), 0, Box(0, 0, box.width, box.height), FINE))


def lost(prints: Prints) -> float:
    """How much ink of the cut and stitch lines is not seen on the joined pages [mm²].

    The pages are laid without what is printed round their share: a trim line is no cut line.
    """
    edge = 60.0
    bare = tuple(replace(sheet, inks=()) for sheet in prints.sheets)
    table, lines = joined(prints, pdf(replace(prints, sheets=bare)), edge), alone(prints)
    down, across = np.nonzero(lines > 127)
    near = sorted(range(-2, 3), key=abs)
    for y, x in product(near, near):
        unseen = table[down + (round(edge * FINE) + y), across + (round(edge * FINE) + x)] < 64
        down, across = down[unseen], across[unseen]
    return float(len(down)) / FINE**2


def thin(prints: Prints) -> list[str]:
    """Return the pages of which less than a fiftieth is pattern though no join needs them."""
    solids = [Polygon([(p.x, p.y) for p in cut.path.flattened(0.2)]) for cut in cut_lines(prints)]
    cells = {sheet.name: own(sheet) for sheet in prints.sheets if sheet.window}
    lines = [solid.exterior for solid in solids]
    return [
        name
        for name, cell in cells.items()
        if sum(solid.intersection(cell).area for solid in solids) < 0.02 * cell.area
        and not any(runs_on(line, cell, cells.values()) for line in lines)
    ]


def own(sheet: Sheet) -> Polygon:
    """Return the page's own cell, between its crosses, on the canvas."""
    arms = [ink for ink in sheet.inks if isinstance(ink, Stroke) and ink.name == "cross"]
    cell = box_of(arm.path.start.toward(arm.path.end, 0.5) for arm in arms)
    at = on_canvas(Trimmed(sheet, 0, cell), Point(cell.left, cell.top))
    return square(at.x, at.y, at.x + cell.width, at.y + cell.height)


def runs_on(line: LinearRing, cell: Polygon, cells: Iterable[Polygon]) -> bool:
    """Say whether a cut line comes into a page from one neighbour and leaves it for another."""
    inside = line.intersection(cell)
    parts = inside.geoms if hasattr(inside, "geoms") else [inside]
    near = [other for other in cells if other is not cell and other.distance(cell) < 1]
    ends = unary_union([part.boundary for part in parts if not part.is_empty]).buffer(0.5)
    return sum(other.intersects(ends) and other.intersects(line) for other in near) > 1


@pytest.mark.parametrize("page", [A4, LETTER], ids=lambda page: page.name)
@pytest.mark.parametrize(("name", "garment"), SETS)
def test_pages_lose_nothing_when_joined_and_none_is_nearly_empty(
    name: str, garment: str, page: PageSize
) -> None:
    """No line is covered, overlaps, blank borders and pages left out taken into account; and a
    page of which less than 2 % is pattern is printed only where a cut line runs on through it."""
    prints = tiled(made(name, garment), page, 10.0, 12.0)
    assert lost(prints) == 0.0
    assert thin(prints) == []


def test_a_page_left_out_too_many_is_noticed() -> None:
    """The look sees a page that is missing and a border that is not cut off."""
    prints = tiled(made(NAMES[0], "jersey-top"), A4, 10.0, 12.0)
    assert lost(replace(prints, sheets=prints.sheets[:3] + prints.sheets[4:])) > 5
    kept = tuple(
        replace(sheet, inks=tuple(i for i in sheet.inks if getattr(i, "name", "") != "trim"))
        for sheet in prints.sheets
    )
    assert lost(replace(prints, sheets=kept)) > 5


def test_a_line_along_the_edge_of_two_pages_is_seen() -> None:
    """A cut line that crosses a page's edge so slowly that it lies on it in every way stays in
    sight; where the page stops half a millimetre short of its edges, the look sees that."""
    prints = tiled(made(NAMES[0], "jersey-top"), A4, 10.0, 12.0)
    page = next(sheet for sheet in prints.sheets if sheet.name == "row 2, column 4")
    left, top, right, bottom = own(page).bounds
    upright = Point(right - 0.7, top), Point(right + 0.7, bottom)
    level = Point(left, bottom - 0.7), Point(right, bottom + 0.7)
    lines = [ruling(*line, width=0.6, layer=Layer.CUT) for line in (upright, level)]
    drawn = replace(prints, canvas=replace(prints.canvas, inks=(*prints.canvas.inks, *lines)))
    assert {"row 2, column 5", "row 3, column 4"} < {sheet.name for sheet in prints.sheets}
    assert lost(drawn) == lost(showing(drawn, page, right, bottom)) == 0.0
    assert lost(showing(drawn, page, right - 0.5, bottom - 0.5)) > 1


def showing(prints: Prints, page: Sheet, right: float, bottom: float) -> Prints:
    """The prints with one page that shows the canvas only so far right and down [mm]."""
    assert page.window
    window = replace(page.window, seen=replace(page.window.seen, right=right, bottom=bottom))
    less = [replace(one, window=window) if one is page else one for one in prints.sheets]
    return replace(prints, sheets=tuple(less))
