"""Whole pieces on large sheets, laid by their outlines; nothing to join."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.geometry.outline import Box
from tapewise_core.paper.drawing import TextLine
from tapewise_core.paper.furniture import corner_marks
from tapewise_core.paper.lettering import shortened
from tapewise_core.paper.nesting import nested_pages
from tapewise_core.paper.packing import BORDER, ink_box, joined
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.paper.roll import FOOT, roll_sheet, stacked_pages
from tapewise_core.paper.scale import squares
from tapewise_core.paper.sheet import Prints, Sheet
from tapewise_core.paper.sizes import PageSize
from tapewise_core.paper.turning import rotated, ways

UPRIGHT = (0.0, 90.0)
"""How the squares may lie [degrees]: aslant, paper that a printer pulled one way would still give
all four sides alike."""


def whole_sheets(pattern: PatternSet, page: PageSize, margin: float) -> Prints | None:
    """Return sheets that hold every piece whole, upright or lying, or None if one fits none.

    The squares to measure lie wherever there is room between the pieces.
    """
    tries = [_sheets(pattern, way, margin) for way in (page, page.turned())]
    found = [prints for prints in tries if prints is not None]
    return min(found, key=lambda prints: len(prints.sheets), default=None)


def _sheets(pattern: PatternSet, page: PageSize, margin: float) -> Prints | None:
    usable, longest = page.width - 2 * margin, page.height - 2 * margin - FOOT
    across, down = usable - 2 * BORDER, longest - 2 * BORDER
    fits = []
    upright = [rotated(squares(), degrees) for degrees in UPRIGHT]
    for turns in (*map(ways, pattern.pieces), upright):
        boxes = [(way, ink_box(way)) for way in turns]
        fits.append([way for way, box in boxes if box.width <= across and box.height <= down])
    if not all(fits):
        return None
    stacked, windows = stacked_pages(nested_pages(fits, usable, longest), margin)
    canvas = joined(pattern.title, pattern.description, stacked, BORDER)
    sheets = [
        _marked(roll_sheet(pattern, number, len(windows), window, page.width, margin), page, margin)
        for number, window in enumerate(windows, 1)
    ]
    return Prints(pattern.title, pattern.person, pattern.description, canvas, tuple(sheets))


def _marked(sheet: Sheet, page: PageSize, margin: float) -> Sheet:
    """The page as large as the paper, with corner marks and the paper's name."""
    printed = Box(margin, margin, page.width - margin, page.height - margin)
    words = f"{page.paper} at 100\u00a0% · all four corner marks there?"
    foot = max(ink.at.y for ink in sheet.inks if isinstance(ink, TextLine))
    line = next(ink for ink in sheet.inks if isinstance(ink, TextLine) and ink.bold)
    named = replace(line, text=shortened(words, page.width - line.at.x - margin, 3.0), size=3.0)
    said = replace(named, at=replace(line.at, y=foot + 4.0), bold=False)
    inks = (*sheet.inks, said, *corner_marks(printed))
    return Sheet(sheet.name, page.width, page.height, inks, sheet.window)
