"""A neckband: a strip across the grain, shorter than the neckline, folded along its middle.

Round a round neckline its ends meet at the centre back; round a V they meet at
the point, sewn at the V's own angle, so that the two lie mitred on the fold.
"""

from __future__ import annotations

import math

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Notch, Piece, make_piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.neck_marks import BACK, FRONT, HALFWAY
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.strip import corners, draft_strip, rule_strip, strip_edges
from tapewise_core.sewing.neck import BAND, BAND_MITRE, BAND_RING, COLLAR, V_BAND
from tapewise_core.sewing.neck_flat import BAND_FLAT
from tapewise_core.units import Length

QUARTERS = (
    "Mark the long edges in quarters: {} at the join, {} in the middle, and halfway round on "
    "either side. {}"
)

SHOULDER = "The halfway marks do not fall on the shoulder seams, which lie further back."
RAGLAN = "The halfway marks do not fall on the raglan seams."
"""Where a band's marks are not, by the seams that cross its neckline."""


def draft_neckband(
    neckline: Length, style: NeckStyle, ratio: float, point: float | None = None,
    crossed: str = SHOULDER,
) -> Draft:  # fmt: skip
    """Return the band as drawn by hand; ``neckline`` is the whole stitched neckline.

    ``ratio`` is the band's length as a share of it; ``point`` is a V's angle to the fold
    [degrees], None for a round neckline; ``crossed`` says which seams across the neckline its marks
    do not fall on.
    """
    width = style.band_width
    called = "the band's length, seam to seam"
    draft = draft_strip(style.strip.capitalize(), "across", neckline * ratio, called, width)
    if point is None:
        return rule_strip(draft, "band").note(QUARTERS.format(BACK, FRONT, crossed))
    return _mitred(draft, width, point).note(QUARTERS.format(FRONT, BACK, crossed))


def _mitred(draft: Draft, width: Length, point: float) -> Draft:
    """The V's angle at both ends: the free edges meet there, shorter than the seam."""
    short = mitre(width.mm, point)
    working = Length(short, ("band width ", width.mm, f" ÷ tan {point:.0f}°"))
    draft = (
        draft.across("M", "F", working, "the mitre: the free edge is so much shorter here")
        .down("B", "K", width, "the middle of the other end")
        .inward("K", "G", working, "the mitre of the other end")
    )
    return (
        rule_strip(draft, "band")
        .rule("mitre", "A", "F", "D", remark="where the ends are joined")
        .rule("other_mitre", "B", "G", "E", remark="where the ends are joined")
        .note("The ends are sewn together along the mitre and trimmed after that.")
    )


def mitre(width: float, point: float) -> float:
    """Return how much shorter a band's free edge is at a V's point [mm]: exact trigonometry."""
    return width / math.tan(math.radians(point))


def cut_neckband(draft: Draft, style: NeckStyle, share: float = 0.5) -> Piece:
    """Return the band as a piece, its long edges marked in quarters.

    ``share`` is the first side's part of the neckline where the two sides differ.
    """
    a, b, c, d = corners(draft)
    pointed = "F" in draft.paper.points
    allowance, join = style.allowances.neck.mm, style.allowances.seam.mm
    edges = strip_edges(draft, "neckline", "join", allowance, join)
    middle, inset = draft["M"].y, draft["F"].x if pointed else 0.0
    inner = {"fold": ruled(Point(inset, middle), Point(b.x - inset, middle))}
    if pointed:
        inner |= {"mitre": ruled(a, draft["F"], d), "mitre_2": ruled(b, draft["G"], c)}
    grain = (Point(b.x * 0.86, middle * 0.4), Point(b.x * 0.86, middle * 1.6))
    at = (FRONT, BACK) if pointed else (BACK, FRONT)
    names = [name.replace(" ", "_") for name in at]
    points = {names[0]: a, names[1]: Point(b.x * share, 0), f"{names[0]}_2": b}
    notches = _quarters(b.x, at[1], share)
    label = Box(inset + 16, 3, max(b.x * 0.56, inset + 80), middle - 2)
    return make_piece(style.strip, edges, points, grain, notches=notches, inner=inner, label=label)


def _quarters(length: float, middle: str, share: float) -> tuple[Notch, ...]:
    """The marks on both long edges; the second is walked the other way."""
    marks = ((share / 2, HALFWAY), (share, middle), ((1 + share) / 2, HALFWAY))
    return tuple(
        Notch(edge, length * (at if edge == "neckline" else 1 - at), pair)
        for edge in ("neckline", "neckline_2")
        for at, pair in marks
    )


def whole_neckline(*parts: float) -> Length:
    """Return the whole stitched neckline from the parts of its half, from the back on [mm]."""
    told = [part for length in parts for part in (length, " + ")][:-1]
    return Length(2 * sum(parts), ("the whole neckline, 2 × (", *told, ")"))


def both_sides(first: float, second: float) -> Length:
    """Return the whole stitched neckline of a body whose sides differ, from the sides [mm]."""
    return Length(first + second, ("the whole neckline, (", first, " + ", second, ")"))


def band_seams(ratio: float, walk: tuple[EdgeRun, ...], style: NeckStyle) -> tuple[Seam, ...]:
    """Return the band's own join and its seam to the neckline, walked from the join."""
    join = (EdgeRun(style.strip, ("join",)),), (EdgeRun(style.strip, ("join_2",)),)
    band = (EdgeRun(style.strip, ("neckline",)),)
    round_it = COLLAR if style.high else BAND
    on = (BAND_FLAT, BAND_FLAT) if style.flat else (BAND_RING, round_it)
    ends, sewn = (BAND_MITRE, V_BAND) if style.pointed else on
    return (
        Seam(SeamKind.BAND_JOIN, *join, making=ends),
        Seam(SeamKind.NECKBAND, band, walk, ratio, sewn),
    )


def free_edge(draft: Draft) -> float:
    """Return the length of a mitred band's free edge [mm]."""
    return (draft["G"] - draft["F"]).length()
