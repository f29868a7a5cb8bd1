"""A neckband that is open at a shoulder placket: a strip with two ends instead of a ring."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.geometry.point import Point
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.strip import draft_strip, folded, rule_strip, strip_edges
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
    allowances = style.allowances
    edges = strip_edges(draft, "neckline", "end", allowances.neck.mm, allowances.seam.mm)
    long = edges[0].path.end.x
    notches = tuple(
        Notch(edge, at if edge == "neckline" else long - at, pair)
        for edge in ("neckline", "neckline_2")
        for at, pair in marks
    )
    points = {pair.replace(" ", "_"): Point(at, 0.0) for at, pair in marks}
    return folded(draft, "neckband", edges, points, notches)
