"""A strip folded along its middle, of which bands and belts are cut.

A, B, E and D are its corners, clockwise from the upper left; M is the fold at its left end.
"""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
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


def strip_edges(
    draft: Draft, edge: str, end: str, along: float, across: float
) -> tuple[Edge, Edge, Edge, Edge]:
    """Return a strip's edges, its long ones and its ends by their names, with their allowances
    [mm]."""
    a, b, c, d = corners(draft)
    return (
        Edge(edge, ruled(a, b), along),
        Edge(end, ruled(b, c), across),
        Edge(f"{edge}_2", ruled(c, d), along),
        Edge(f"{end}_2", ruled(d, a), across),
    )


def folded(
    draft: Draft,
    name: str,
    edges: tuple[Edge, ...],
    points: Mapping[str, Point],
    notches: tuple[Notch, ...],
    count: int = 1,
) -> Piece:
    """Return a strip as a piece, its grain across it, with the fold along its middle."""
    long, middle = draft["B"].x, draft["M"].y
    return make_piece(
        name,
        edges,
        points,
        (Point(long * 0.9, middle * 0.4), Point(long * 0.9, middle * 1.6)),
        notches=notches,
        count=count,
        inner={"fold": ruled(Point(0.0, middle), Point(long, middle))},
        label=Box(16, 3, max(long * 0.6, 80), middle - 2),
    )
