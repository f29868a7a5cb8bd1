"""The first page of a set: proof of scale, how the pages lie, and how to join them."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Ink, Layer, TextLine
from tapewise_core.paper.furniture import corner_marks
from tapewise_core.paper.grid import Cell, Grid
from tapewise_core.paper.lettering import CHARACTER, block, lines_at, shortened, wrapped
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.paper.scale import (
    INCHES,
    RULE,
    SQUARE,
    WRONG,
    rule_across,
    rule_down,
    rule_name,
    square,
)
from tapewise_core.paper.sheet import Sheet
from tapewise_core.paper.sizes import MARGIN, PageSize
from tapewise_core.paper.small_map import Mapped, small_map
from tapewise_core.text.amounts import OnPaper
from tapewise_core.text.told import Reader, Told, said
from tapewise_core.units import Unit

_LEFT, _TOP = 26.0, 56.0
"""Where the first square begins [mm]."""


def page_map(pattern: PatternSet, page: PageSize, mapped: Mapped) -> Sheet:
    """Return the page to print and measure before all others."""
    lower = _TOP + SQUARE + 9
    beside = _LEFT + INCHES + 6
    room = Box(_LEFT + 4, lower + 4, _LEFT + INCHES - 3, 0)
    unit = pattern.reader.unit
    steps = _steps(mapped.grid, _longest_row(mapped.cells), mapped.overlap)
    inks = [
        *corner_marks(Box(0, 0, page.width, page.height).grown(-MARGIN)),
        *_title(pattern, page, len(mapped.cells)),
        *rule_across((page.width - RULE[unit]) / 2, 40.0, unit),
        *rule_down(15.0, _TOP, unit),
        *square(_LEFT, _TOP, SQUARE, "100 mm by 100 mm"),
        *_wrong(Box(_LEFT + 4, _TOP + 4, _LEFT + SQUARE - 3, 0), unit),
        *square(_LEFT, lower, INCHES, "4 in by 4 in"),
        *_joining(room, steps, pattern.reader),
        *small_map(Box(beside, _TOP, page.width - 10, page.height - 14), mapped),
    ]
    return Sheet("page map and proof of scale", page.width, page.height, tuple(inks))


def _title(pattern: PatternSet, page: PageSize, pages: int) -> list[Ink]:
    room = page.width - 24
    number = "1 page" if pages == 1 else f"{pages} pages"
    below = (
        f"page 1 of {pages + 1}: this page and {number} of {page.name}. Print this one first, at "
        "100 % or “actual size”."
    )
    rule = f"{rule_name(pattern.reader.unit)}, across and down"
    title, made = pattern.headline()
    size = min(5.0, room / (CHARACTER * len(title)))
    return [
        TextLine(shortened(title, room, max(size, 3.2)), Point(12, 15), max(size, 3.2), bold=True),
        *lines_at([shortened(made, room, 3.0)], 12, 16.2, 3.0),
        *lines_at([shortened(below, room, 3.0)], 12, 20.4, 3.0),
        *lines_at(wrapped(pattern.note, room, 2.8)[:2], 12, 24.2, 2.8),
        TextLine(rule, Point(12, 35), 3.2, bold=True, layer=Layer.SCALE),
    ]


def _wrong(room: Box, unit: Unit) -> list[Ink]:
    """The table of what a rule says that measures wrong."""
    inks: list[Ink] = []
    intro = (
        "Measure the long rules, across above and down at the left, with the ruler you will cut "
        "by. They say:"
    )
    words, y = block(intro, room.left, room.top, room.width, 3.2)
    inks += words
    for measured, meaning in WRONG[unit]:
        lines = wrapped(meaning, room.width - 29, 2.8)
        inks += lines_at(wrapped(measured, 27, 2.8), room.left, y, 2.8, bold=True)
        inks += lines_at(lines, room.left + 29, y, 2.8)
        y += max(2, len(lines)) * 2.8 * 1.35 + 1.6
    advice = (
        "One page can be wrong when the others are right: look for the four corner marks of every "
        "page, and measure the 50 mm mark at its foot."
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
        "1. Trim each page along its trim lines, on the left and at the top, from edge to edge of "
        "the paper; leave the rest.",
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
