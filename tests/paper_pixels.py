"""Rendered pages looked at pixel by pixel, by renderers that know nothing of this project."""

import math
import re
from dataclasses import dataclass
from functools import cache

import numpy as np
import pypdfium2
from numpy.typing import NDArray
from scipy import ndimage
from shapely.geometry import Polygon

from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Layer, Stroke
from tapewise_core.paper.sheet import Prints

Ink = NDArray[np.float64]
"""How dark each pixel is, from 0 to 1; rows down, columns across."""


PRINTER = 300 / 25.4
"""Pixels a millimetre of a usual printer."""


@cache
def opened(data: bytes) -> pypdfium2.PdfDocument:
    """Return a PDF file opened by pdfium."""
    return pypdfium2.PdfDocument(data)


@dataclass(frozen=True)
class Patch:
    """Ink in a part of a page, and exactly which part its pixels cover [mm]."""

    ink: Ink
    box: Box

    def upright(self) -> float:
        """Return the x of the middle of an unbroken upright line [mm], the only ink."""
        assert self.ink.sum(axis=1).min() > 0.5, "the line is broken or not there"
        share = middle(self.ink.sum(axis=0)) / self.ink.shape[1]
        return self.box.left + share * self.box.width

    def level(self) -> float:
        """Return the y of the middle of an unbroken level line [mm], the only ink."""
        assert self.ink.sum(axis=0).min() > 0.5, "the line is broken or not there"
        share = middle(self.ink.sum(axis=1)) / self.ink.shape[0]
        return self.box.top + share * self.box.height


def ink_of(data: bytes, page: int, box: Box, per_mm: float) -> Patch:
    """Return the ink in a box of a page [mm], drawn by pdfium at about so many pixels a mm."""
    dark, seen = darkness(data, page, box, per_mm)
    return Patch(dark / 255, seen)


def darkness(data: bytes, page: int, box: Box, per_mm: float) -> tuple[NDArray[np.uint8], Box]:
    """Return how dark a box of a page is, from 0 to 255, and exactly which part was drawn [mm].

    The page is stretched to whole pixels, and the box taken to the nearest ones.
    """
    sheet = opened(data)[page]
    scale = per_mm * 25.4 / 72
    wide, high = page_size(data, page)
    across, down = math.ceil(wide * per_mm - 1e-6), math.ceil(high * per_mm - 1e-6)
    left, right = (round(x * across / wide) for x in (box.left, box.right))
    top, bottom = (round(y * down / high) for y in (box.top, box.bottom))
    edges = (max(left, 0), max(down - bottom, 0), max(across - right, 0), max(top, 0))
    crop = tuple(max(edge - 0.01, 0) / scale for edge in edges)
    bitmap = sheet.render(scale=scale, crop=crop, grayscale=True)
    pixels = bitmap.to_numpy().reshape(bitmap.height, bitmap.width)
    at = Point(edges[0] * wide / across, edges[3] * high / down)
    far = Point(at.x + bitmap.width * wide / across, at.y + bitmap.height * high / down)
    return 255 - pixels, Box(at.x, at.y, far.x, far.y)


def page_size(data: bytes, page: int) -> tuple[float, float]:
    """Return a page's width and height [mm] as pdfium reads them."""
    width, height = opened(data)[page].get_size()
    return width * 25.4 / 72, height * 25.4 / 72


def middle(profile: Ink) -> float:
    """Return where the ink of a row of pixels has its centre, in pixels from the edge."""
    return float((profile * (np.arange(len(profile)) + 0.5)).sum() / profile.sum())


def upright(
    data: bytes, page: int, near: float, top: float, bottom: float, reach: float = 1.5
) -> float:
    """Return the x of the upright line [mm] that lies within a reach of a place."""
    return ink_of(data, page, Box(near - reach, top, near + reach, bottom), PRINTER).upright()


def level(
    data: bytes, page: int, near: float, left: float, right: float, reach: float = 1.5
) -> float:
    """Return the y of the level line [mm] that lies within a reach of a place."""
    return ink_of(data, page, Box(left, near - reach, right, near + reach), PRINTER).level()


GLUE = 9.0
"""What a page shows beyond its cell where 12 mm overlap [mm]."""

PER_MM = 6.0
"""Pixels a millimetre when pages are put together."""


def crosses_at(data: bytes, number: int, own: Box) -> Box:
    """Return where on a page its crosses are found [mm], near where they should be.

    Each side of the cell has four arms on it; the one with least ink about it is
    measured, because the pattern may run along another.
    """
    downs = [y + step for y in (own.top, own.bottom) for step in (-3.5, 1.5)]
    acrosses = [x + step for x in (own.left, own.right) for step in (-3.5, 1.5)]

    def clearest(boxes: list[Box]) -> Patch:
        return min((ink_of(data, number, box, 12) for box in boxes), key=lambda one: one.ink.sum())

    left, right = (
        clearest([Box(x - 0.6, y, x + 0.6, y + 2) for y in downs]).upright()
        for x in (own.left, own.right)
    )
    top, bottom = (
        clearest([Box(x, y - 0.6, x + 2, y + 0.6) for x in acrosses]).level()
        for y in (own.top, own.bottom)
    )
    return Box(left, top, right, bottom)


def cells_found(prints: Prints, data: bytes) -> list[tuple[int, int, int, Box]]:
    """Return page, row and column of each cell, and where on its page its crosses are found."""
    places = []
    for number, sheet in enumerate(prints.sheets):
        if sheet.window:
            crosses = [ink for ink in sheet.inks if isinstance(ink, Stroke) and ink.name == "cross"]
            own = box_of(ink.path.start.toward(ink.path.end, 0.5) for ink in crosses)
            row, column = (int(n) - 1 for n in re.findall(r"\d+", sheet.name))
            places.append((number, row, column, crosses_at(data, number, own)))
    return places


def reassembled(prints: Prints, data: bytes) -> Ink:
    """Return all pages laid cross on cross, as ink a pixel.

    Each page is cut along its crosses as they are found in the picture, and put
    where its row and column say, so an error of scale or place shows as a step.
    The last page of a row or column keeps what it shows beyond its crosses.
    """
    places = cells_found(prints, data)
    width, height = places[0][3].width, places[0][3].height
    filled = {(row, column) for _, row, column, _ in places}
    rows, columns = 1 + max(p[1] for p in places), 1 + max(p[2] for p in places)
    whole = np.zeros((round(rows * height * PER_MM) + 40, round(columns * width * PER_MM) + 40))
    for number, row, column, cell in places:
        right = 0 if (row, column + 1) in filled else GLUE
        below = 0 if (row + 1, column) in filled else GLUE
        shown = Box(cell.left, cell.top, cell.right + right, cell.bottom + below)
        patch = ink_of(data, number, shown, PER_MM)
        y = round((row * height + patch.box.top - cell.top) * PER_MM)
        x = round((column * width + patch.box.left - cell.left) * PER_MM)
        part = whole[y : y + patch.ink.shape[0], x : x + patch.ink.shape[1]]
        np.maximum(part, patch.ink[: part.shape[0], : part.shape[1]], out=part)
    return whole


def areas_put_together(prints: Prints, data: bytes) -> dict[str, tuple[float, float]]:
    """Return for each piece its area on the joined pages [mm²] and its cut line's length [mm].

    What floods of paint from places 6 mm inside the cut line cover, marks painted
    over, and half the line's own width.
    """
    whole = reassembled(prints, data) > 0.5
    found = {}
    for cut in cut_lines(prints):
        length = cut.path.length()
        found[cut.part] = (_painted(whole, cut) + length * cut.width / 2, length)
    return found


def _painted(whole: NDArray[np.bool_], cut: Stroke) -> float:
    """How much paint covers [mm²], looked at 10 mm round the cut line and no further."""
    near = box_of(cut.corners()).grown(10)
    left, top = max(round(near.left * PER_MM), 0), max(round(near.top * PER_MM), 0)
    part = whole[top : round(near.bottom * PER_MM), left : round(near.right * PER_MM)]
    ink = ndimage.binary_closing(part, iterations=4)
    paper, count = ndimage.label(~ink)
    wet = np.zeros(count + 1, bool)
    wet[[paper[round(y * PER_MM) - top, round(x * PER_MM) - left] for x, y in _inside(cut)]] = True
    wet[0] = False
    painted = ndimage.binary_closing(wet[paper], iterations=3)
    return float(ndimage.binary_fill_holes(painted).sum()) / PER_MM**2


def _inside(cut: Stroke) -> list[tuple[float, float]]:
    """Places all round a cut line, 6 mm inside it."""
    edge = Polygon([(p.x, p.y) for p in cut.path.flattened(0.5)]).buffer(-6).exterior
    return [edge.interpolate(at).coords[0] for at in np.arange(0, edge.length, 10.0)]


def cut_lines(prints: Prints) -> list[Stroke]:
    """Return the lines to cut along, where they lie on the canvas."""
    return [ink for ink in prints.canvas.inks if isinstance(ink, Stroke) and ink.layer is Layer.CUT]
