"""Rendered pages looked at pixel by pixel, by renderers that know nothing of this project."""

import math
from dataclasses import dataclass
from functools import cache

import numpy as np
import pypdfium2
from numpy.typing import NDArray

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point

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
    """Return the ink in a box of a page [mm], drawn by pdfium at about so many pixels a mm.

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
    pixels = bitmap.to_numpy().astype(float).reshape(bitmap.height, bitmap.width)
    at = Point(edges[0] * wide / across, edges[3] * high / down)
    far = Point(at.x + bitmap.width * wide / across, at.y + bitmap.height * high / down)
    return Patch(1 - pixels / 255, Box(at.x, at.y, far.x, far.y))


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
