"""Proof of scale: squares and rules to measure, and what a wrong measure says."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Ink, Layer, TextLine, extent
from tapewise_core.paper.lettering import frame, ruling

SQUARE = 100.0
"""The metric square [mm]."""

INCHES = 101.6
"""The square of four inches [mm]."""

MARK = 50.0
"""The mark on every page [mm]."""

WRONG: tuple[tuple[str, str], ...] = (
    ("100 mm", "Right: carry on."),
    ("97.3 mm", "A Letter page shrunk to A4: print again at 100 %."),
    (
        "94.0 to 97.1 mm",
        "“Fit to page” was on with A4: switch it off, choose 100 % or actual size.",
    ),
    ("94.1 mm", "An A4 page shrunk to Letter: print the file made for Letter, or for both."),
    ("93.75 mm", "A program read 96 units an inch as 90: open the file in another one."),
    ("unlike across and down", "The printer pulled the paper unevenly: print the page again."),
)
"""What a 100 mm square says when it is measured.

Arithmetic of page sizes ([iso216], ANSI/ASME Y14.1): 210 / 215.9 = 0.973, 279.4 / 297 = 0.941,
90 / 96 = 0.9375; "fit to page" shrinks A4 by its unprinted border of 3 to 6.4 mm a side.
"""


def square(left: float, top: float, side: float, label: str) -> list[Ink]:
    """Return a square to measure, its label above it."""
    box = Box(left, top, left + side, top + side)
    words = TextLine(label, Point(left, top - 1.5), 3.2, bold=True, layer=Layer.SCALE)
    return [frame(box, 0.3, name=label), words]


def rule_across(left: float, y: float, length: float = 200.0) -> list[Ink]:
    """Return a rule across the page, a tick every 10 mm and a number every 20."""
    inks: list[Ink] = [
        ruling(Point(left, y), Point(left + length, y), name=f"{length:g} mm across")
    ]
    for at, tick in _ticks(length):
        x = left + at
        inks.append(ruling(Point(x, y), Point(x, y - tick), width=0.2))
        if not at % 20:
            inks.append(_figure(f"{at}", Point(x, y + 3.2)))
    return inks


def rule_down(x: float, top: float, length: float = 200.0) -> list[Ink]:
    """Return a rule down the page, a tick every 10 mm and a number every 20."""
    inks: list[Ink] = [ruling(Point(x, top), Point(x, top + length), name=f"{length:g} mm down")]
    for at, tick in _ticks(length):
        y = top + at
        inks.append(ruling(Point(x, y), Point(x - tick, y), width=0.2))
        if not at % 20:
            inks.append(_figure(f"{at}", Point(x + 3.4, y + 0.9)))
    return inks


def _figure(text: str, at: Point) -> TextLine:
    return TextLine(text, at, 2.4, anchor="middle", layer=Layer.SCALE)


def _ticks(length: float) -> Iterator[tuple[int, float]]:
    for at in range(0, int(length) + 1, 10):
        yield at, 3.0 if at % 50 == 0 else 1.6


def mark(left: float, y: float) -> list[Ink]:
    """Return the short mark that every page carries: 50 mm between the outer edges' middles."""
    right = left + MARK
    return [
        ruling(Point(left, y), Point(right, y), width=0.3, name="50 mm"),
        ruling(Point(left, y - 2), Point(left, y + 2), width=0.3),
        ruling(Point(right, y - 2), Point(right, y + 2), width=0.3),
        TextLine("50 mm", Point(left + MARK / 2, y - 0.9), 2.8, anchor="middle", layer=Layer.SCALE),
    ]


def squares() -> Drawing:
    """Return both squares side by side, to lie among the pieces on a long page."""
    inks = [
        *square(0, 0, SQUARE, "100 mm by 100 mm"),
        *square(SQUARE + 8, 0, INCHES, "4 in by 4 in"),
        TextLine("Measure me before you cut.", Point(6, 12), 4, layer=Layer.SCALE),
    ]
    return Drawing("Proof of scale", "Two squares to measure", extent(inks, 2), tuple(inks))
