"""Proof of scale: squares and rules to measure, and what a wrong measure says."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Ink, Layer, TextLine, extent
from tapewise_core.paper.lettering import frame, ruling
from tapewise_core.units import MM_PER_INCH, Unit

SQUARE = 100.0
"""The metric square [mm]."""

INCHES = 101.6
"""The square of four inches [mm]."""

MARK = 50.0
"""The mark on every page [mm]."""

RULE = {Unit.CM: 200.0, Unit.IN: 8 * MM_PER_INCH}
"""The rule that shows one part in a hundred [mm]: 2 mm on it, or nearly 1/8 in."""

_RIGHT = "Right: carry on."
_FITTED = "“Fit to page” was on: choose 100\u00a0% or “actual size”, and print this page again."
_OTHER_PAPER = (
    "Fitted to other paper or a wide border: load the paper named at the foot, choose "
    "100\u00a0% and print this page again."
)
_ANY = "Printed at some other scale: choose 100\u00a0% or “actual size”, and print this page again."
_PULLED = "The printer pulled the paper unevenly: print this page again."

WRONG: Mapping[Unit, tuple[tuple[str, str], ...]] = {
    Unit.CM: (
        ("200 mm", _RIGHT),
        ("194 or 195 mm", _FITTED),
        ("187 to 189 mm", _OTHER_PAPER),
        ("anything else", _ANY),
        ("unlike across and down", _PULLED),
    ),
    Unit.IN: (
        ("8 in", _RIGHT),
        ("about 7 3/4 in", _FITTED),
        ("about 7 1/2 in", _OTHER_PAPER),
        ("anything else", _ANY),
        ("unlike across and down", _PULLED),
    ),
}
"""What the rule says when it is measured, in the reader's unit; a ruler tells each from the others.

Arithmetic of page sizes ([iso216], ANSI/ASME Y14.1): Letter made as narrow as A4 is 210 / 215.9,
A4 inside a border of 3 mm 0.971, both 194 or 195 of 200; A4 made as low as Letter is 279.4 / 297,
A4 inside a border of 6.4 mm 0.939, an SVG read at 90 units an inch 90 / 96, all 187 to 189.
"""


def square(left: float, top: float, side: float, label: str) -> list[Ink]:
    """Return a square to measure, its label above it."""
    box = Box(left, top, left + side, top + side)
    words = TextLine(label, Point(left, top - 1.5), 3.2, bold=True, layer=Layer.SCALE)
    return [frame(box, 0.3, name=label), words]


def rule_across(left: float, y: float, unit: Unit = Unit.CM) -> list[Ink]:
    """Return a rule across the page, in 10 mm or half inches, numbered at every second one."""
    length = RULE[unit]
    inks: list[Ink] = [
        ruling(Point(left, y), Point(left + length, y), name=f"{rule_name(unit)} across")
    ]
    for at, tick, figure in _ticks(unit):
        x = left + at
        inks.append(ruling(Point(x, y), Point(x, y - tick), width=0.2))
        inks += [_figure(figure, Point(x, y + 3.2))] if figure else []
    return inks


def rule_down(x: float, top: float, unit: Unit = Unit.CM) -> list[Ink]:
    """Return the same rule down the page."""
    length = RULE[unit]
    inks: list[Ink] = [
        ruling(Point(x, top), Point(x, top + length), name=f"{rule_name(unit)} down")
    ]
    for at, tick, figure in _ticks(unit):
        y = top + at
        inks.append(ruling(Point(x, y), Point(x - tick, y), width=0.2))
        inks += [_figure(figure, Point(x + 3.4, y + 0.9))] if figure else []
    return inks


def rule_name(unit: Unit) -> str:
    """Return how long the rule is, as its reader says it."""
    return "200 mm" if unit is Unit.CM else "8 in"


def _figure(text: str, at: Point) -> TextLine:
    return TextLine(text, at, 2.4, anchor="middle", layer=Layer.SCALE)


def _ticks(unit: Unit) -> Iterator[tuple[float, float, str]]:
    """Where along the rule a tick stands, its length [mm] and its figure, if it has one."""
    if unit is Unit.CM:
        for at in range(0, 201, 10):
            yield at, 3.0 if at % 50 == 0 else 1.6, "" if at % 20 else f"{at}"
    else:
        for half in range(17):
            yield (
                half * MM_PER_INCH / 2,
                1.6 if half % 2 else 3.0,
                "" if half % 2 else f"{half // 2}",
            )


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
