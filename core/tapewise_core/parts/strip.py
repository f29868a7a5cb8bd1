"""A strip folded along its middle, of which bands and belts are cut.

A, B, E and D are its corners, clockwise from the upper left; M is the fold at its left end.
"""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.geometry.point import Point
from tapewise_core.units import Length


def draft_strip(title: str, lies: str, length: Length, called: str, width: Length) -> Draft:
    """Return a strip's corners and its fold; ``lies`` says how it lies to the grain, ``width`` is
    that of the finished band, half of the strip's."""
    return (
        Draft(title)
        .start("A", f"the upper left corner of a strip {lies} the grain")
        .across("A", "B", length, called)
        .down("A", "D", width * 2, "twice the finished width")
        .down("B", "E", width * 2, "the strip's other end")
        .down("A", "M", width, "the fold along the middle")
    )


def rule_strip(draft: Draft, line: str) -> Draft:
    """Return the draft with the strip ruled all round."""
    return draft.rule(line, "A", "B", "E", "D", "A", remark="the whole strip")


def corners(draft: Draft) -> tuple[Point, Point, Point, Point]:
    """Return the strip's corners, clockwise from the upper left."""
    return draft["A"], draft["B"], draft["E"], draft["D"]
