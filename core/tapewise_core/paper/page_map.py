"""The first page of a set: proof of scale, how the pages lie, and how to join them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Ink, Layer, Stroke, TextLine
from tapewise_core.paper.grid import Cell, Grid
from tapewise_core.paper.lettering import block, frame, lines_at, shortened, wrapped
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.paper.scale import INCHES, SQUARE, WRONG, rule_across, rule_down, square
from tapewise_core.paper.sheet import Sheet
from tapewise_core.paper.sizes import PageSize
from tapewise_core.text.told import OnPaper, Reader, Told, said

_LEFT, _TOP = 26.0, 56.0
"""Where the first square begins [mm]."""


def page_map(
    pattern: PatternSet,
    page: PageSize,
    canvas: Drawing,
    grid: Grid,
    cells: Sequence[Cell],
    overlap: float,
) -> Sheet:
    """Return the page to print and measure before all others."""
    lower = _TOP + SQUARE + 9
    beside = _LEFT + INCHES + 6
    room = Box(_LEFT + 4, lower + 4, _LEFT + INCHES - 3, 0)
    inks = [
        *_title(pattern, page, len(cells)),
        *rule_across((page.width - 200) / 2, 40.0),
        *rule_down(15.0, _TOP),
        *square(_LEFT, _TOP, SQUARE, "100 mm by 100 mm"),
        *_wrong(Box(_LEFT + 4, _TOP + 4, _LEFT + SQUARE - 3, 0)),
        *square(_LEFT, lower, INCHES, "4 in by 4 in"),
        *_joining(room, _steps(grid, _longest_row(cells), overlap), pattern.reader),
        *_map(Box(beside, _TOP, page.width - 10, page.height - 14), canvas, grid, cells),
    ]
    return Sheet("page map and proof of scale", page.width, page.height, tuple(inks))


def _title(pattern: PatternSet, page: PageSize, pages: int) -> list[Ink]:
    room = page.width - 20
    number = "1 page" if pages == 1 else f"{pages} pages"
    below = (
        f"This page and {number} of {page.name}. Print this one first, at 100 % or “actual size”."
    )
    return [
        TextLine(shortened(pattern.label(), room, 5), Point(10, 15), 5, bold=True),
        *lines_at([shortened(below, room, 3.2)], 10, 17.5, 3.2),
        *lines_at(wrapped(pattern.note, room, 2.8)[:2], 10, 22.5, 2.8),
        TextLine("200 mm, across and down", Point(10, 34), 3.2, bold=True, layer=Layer.SCALE),
    ]


def _wrong(room: Box) -> list[Ink]:
    """The table of what a square says that measures wrong."""
    inks: list[Ink] = []
    intro = "Measure this square across and down with the ruler you will cut by. It says:"
    words, y = block(intro, room.left, room.top, room.width, 3.2)
    inks += words
    for measured, meaning in WRONG:
        lines = wrapped(meaning, room.width - 29, 2.8)
        inks += lines_at(wrapped(measured, 27, 2.8), room.left, y, 2.8, bold=True)
        inks += lines_at(lines, room.left + 29, y, 2.8)
        y += max(2, len(lines)) * 2.8 * 1.35 + 1.6
    advice = (
        "One page can be wrong when the others are right: measure the 50 mm mark at the foot of "
        "every page."
    )
    return inks + block(advice, room.left, y + 1, room.width, 2.8)[0]


def _joining(room: Box, steps: Sequence[str | Told], reader: Reader) -> list[Ink]:
    """How the pages become one sheet."""
    inks: list[Ink] = []
    y = room.top
    for step in steps:
        words, y = block(reader.spell(step), room.left, y, room.width, 3.0)
        inks += words
        y += 0.8
    return inks


def _longest_row(cells: Sequence[Cell]) -> int:
    """How many pages side by side the longest unbroken row has."""
    best = run = 0
    before = (-1, -1)
    for row, column in cells:
        run = run + 1 if (row, column - 1) == before else 1
        best, before = max(best, run), (row, column)
    return best


def _steps(grid: Grid, longest: int, overlap: float) -> list[str | Told]:
    steps: list[str | Told] = [
        "1. Trim each page along its trim lines, on the left and at the top; leave the rest.",
        said(
            "2. Pages overlap by {}. Lay the trimmed edge on the zigzag strip of the page before "
            "it: cross on cross, letter beside the same letter.",
            OnPaper(overlap),
        ),
        "3. Join the pages of a row first, then the rows.",
    ]
    if longest > 1:
        sizes = (grid.width, grid.height, longest * grid.width)
        wide, high, whole = (OnPaper(size, tenths=True) for size in sizes)
        template = (
            "4. Small errors add up. From cross to cross a page is {} wide and {} high, so a row "
            "of {} measures {} from its first cross to its last. Measure it before you join rows."
        )
        steps.append(said(template, wide, high, str(longest), whole))
    return [
        *steps,
        "Pages that would be empty are left out; the map shows which are printed. Where one is "
        "missing inside a piece, lay a blank sheet there.",
        "Mind the blade: cut on a mat, away from your fingers, and follow your local rules.",
    ]


def _map(room: Box, canvas: Drawing, grid: Grid, cells: Sequence[Cell]) -> list[Ink]:
    """The printed cells with their places, the cut lines drawn small inside."""
    columns = 1 + max(column for _, column in cells)
    rows = 1 + max(row for row, _ in cells)
    scale = min(room.width / (columns * grid.width), (room.height - 6) / (rows * grid.height), 0.25)
    corner = Point(room.left, room.top + 4)
    inks: list[Ink] = [
        TextLine("page map: row.column", Point(room.left, room.top - 1.5), 3.2, bold=True)
    ]
    inks += [_small(ink, corner, scale) for ink in canvas.inks if _shown(ink)]
    for row, column in cells:
        left, top = corner.x + column * grid.width * scale, corner.y + row * grid.height * scale
        box = Box(left, top, left + grid.width * scale, top + grid.height * scale)
        inks.append(frame(box, 0.15, Layer.GUIDE))
        size = min(3.2, grid.width * scale / 4)
        at = Point(left + 0.8, top + size + 0.4)
        inks.append(TextLine(f"{row + 1}.{column + 1}", at, size, bold=True))
    return inks


def _shown(ink: Ink) -> bool:
    return isinstance(ink, Stroke) and ink.layer is Layer.CUT


def _small(ink: Ink, corner: Point, scale: float) -> Ink:
    assert isinstance(ink, Stroke)
    points = [
        Point(corner.x + p.x * scale, corner.y + p.y * scale) for p in ink.path.flattened(2.0)
    ]
    return replace(ink, path=ruled(*points), width=0.3, name="")
