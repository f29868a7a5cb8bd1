"""A band round an armhole without a sleeve: a strip across the grain, shorter than the armhole,
folded along its middle and joined under the arm."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, EdgeRun, Notch, Piece, Seam, SeamKind, make_piece
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.bare_style import BareStyle
from tapewise_core.parts.bare_ways import ARMBAND, ARMBAND_RING
from tapewise_core.parts.shape.band import Band, armband
from tapewise_core.parts.strip import corners, draft_strip, rule_strip
from tapewise_core.units import Length

NAME = "armband"

MARKS = (
    "Mark both long edges where the armhole is marked: the shoulder's seam, two strokes at the "
    "back, one in front. The join goes to the side seam."
)

DIGITS = 2
"""A ratio is worked out to so many digits, so that it reads as it is used (our choice)."""


def ratio_of(armhole: float, style: BareStyle) -> Band:
    """Return a band's ratio for a whole armhole [mm]: as chosen, or as it is worked out."""
    if style.ratio is not None:
        return Band(style.ratio, ())
    found = armband(armhole, style.width.mm, style.stretch)
    return Band(round(found.ratio, DIGITS), found.held_back)


def draft_armband(armhole: Length, style: BareStyle, ratio: float) -> Draft:
    """Return the band as drawn by hand; ``armhole`` is the whole stitched one."""
    called = "the band's length, seam to seam"
    draft = draft_strip("Armhole band", "across", armhole * ratio, called, style.width)
    return rule_strip(draft, "band").note(MARKS)


def cut_armband(draft: Draft, style: BareStyle, marks: tuple[tuple[float, str, int], ...]) -> Piece:
    """Return the band as a piece to cut twice; ``marks`` are shares of the armhole, walked from the
    back's underarm, each with the pair it belongs to and its strokes."""
    a, b, c, d = corners(draft)
    edges = (
        Edge("armhole", ruled(a, b), style.allowance.mm),
        Edge("join", ruled(b, c), style.seam.mm),
        Edge("armhole_2", ruled(c, d), style.allowance.mm),
        Edge("join_2", ruled(d, a), style.seam.mm),
    )
    middle = draft["M"].y
    notches = tuple(
        Notch(edge, b.x * (share if edge == "armhole" else 1 - share), pair, strokes)
        for edge in ("armhole", "armhole_2")
        for share, pair, strokes in marks
    )
    points = {"underarm": a, "underarm_2": b}
    return make_piece(
        NAME,
        edges,
        points,
        (Point(b.x * 0.9, middle * 0.4), Point(b.x * 0.9, middle * 1.6)),
        notches=notches,
        count=2,
        inner={"fold": ruled(Point(0.0, middle), Point(b.x, middle))},
        label=Box(16, 3, max(b.x * 0.6, 80), middle - 2),
    )


def armband_join() -> Seam:
    """Return the seam that makes a ring of the band."""
    ends = (EdgeRun(NAME, ("join",)),), (EdgeRun(NAME, ("join_2",)),)
    return Seam(SeamKind.BAND_JOIN, *ends, making=ARMBAND_RING, where="armhole")


def armband_seam(armhole: tuple[EdgeRun, ...], ratio: float, where: str = "") -> Seam:
    """Return the band's seam into an armhole, walked from the back's underarm."""
    band = (EdgeRun(NAME, ("armhole",)),)
    return Seam(SeamKind.ARMBAND, band, armhole, ratio, ARMBAND, where)
