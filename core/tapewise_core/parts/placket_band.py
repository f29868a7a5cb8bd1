"""A neckband that is open at a shoulder placket: a strip with two ends instead of a ring."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.strip import corners, draft_strip, rule_strip
from tapewise_core.units import Length

MARKS = (
    "Mark both long edges at centre front and centre back. One end goes to the front's edge at the "
    "placket, the other to the underlap's fold; the last button sits in the middle of an end."
)


def draft_open_band(edge: Length, style: NeckStyle, ratio: float) -> Draft:
    """Return the band as drawn by hand; ``edge`` is all that it is sewn to."""
    called = "the band's length, end to end"
    draft = draft_strip("Neckband", "across", edge * ratio, called, style.band_width)
    return rule_strip(draft, "band").note(MARKS)


def cut_open_band(draft: Draft, style: NeckStyle, marks: Sequence[tuple[float, str]]) -> Piece:
    """Return the band as a piece; ``marks`` are places along it [mm], with their pairs."""
    a, b, c, d = corners(draft)
    allowance, end = style.allowances.neck.mm, style.allowances.seam.mm
    edges = (
        Edge("neckline", ruled(a, b), allowance),
        Edge("end", ruled(b, c), end),
        Edge("neckline_2", ruled(c, d), allowance),
        Edge("end_2", ruled(d, a), end),
    )
    middle = draft["M"].y
    notches = tuple(
        Notch(edge, at if edge == "neckline" else b.x - at, pair)
        for edge in ("neckline", "neckline_2")
        for at, pair in marks
    )
    points = {pair.replace(" ", "_"): Point(at, 0.0) for at, pair in marks}
    return make_piece(
        "neckband",
        edges,
        points,
        (Point(b.x * 0.9, middle * 0.4), Point(b.x * 0.9, middle * 1.6)),
        notches=notches,
        inner={"fold": ruled(Point(0.0, middle), Point(b.x, middle))},
        label=Box(16, 3, max(b.x * 0.6, 80), middle - 2),
    )
