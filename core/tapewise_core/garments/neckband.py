"""A neckband: a strip across the grain, shorter than the neckline, folded along its middle."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.garments.option import Style
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.units import Length


def draft_neckband(neckline: Length, style: Style) -> Draft:
    """Return the band as drawn by hand; ``neckline`` is the whole stitched neckline."""
    width = style.length("band-width")
    return (
        Draft("Neckband")
        .start("a", "the upper left corner of a strip across the grain")
        .across("a", "b", neckline * style.number("band-ratio"), "the band's length, seam to seam")
        .down("a", "d", width * 2, "twice the finished width")
        .down("b", "c", width * 2, "the strip's other end")
        .down("a", "m", width, "the fold along the middle")
        .rule("band", "a", "b", "c", "d", "a", remark="the whole strip")
        .note(
            "Mark the long edges in quarters: centre back at the join, centre front in the middle, "
            "and halfway round on either side. The halfway marks do not fall on the shoulder "
            "seams, which lie further back."
        )
    )


def cut_neckband(draft: Draft, style: Style, halfway: str, front: str) -> Piece:
    """Return the band as a piece; ``halfway`` and ``front`` name its notches' partners."""
    a, b, c, d = (draft[name] for name in "abcd")
    length, allowance = b.x, style.length("neck-allowance").mm
    join = style.length("seam-allowance").mm
    edges = (
        Edge("neckline", ruled(a, b), allowance),
        Edge("join", ruled(b, c), join),
        Edge("neckline_2", ruled(c, d), allowance),
        Edge("join_2", ruled(d, a), join),
    )
    marks = ((0.25, halfway), (0.5, front), (0.75, halfway))
    notches = tuple(
        Notch(edge, length * share, pair)
        for edge in ("neckline", "neckline_2")
        for share, pair in marks
    )
    middle = draft["m"].y
    fold = ruled(Point(0, middle), Point(length, middle))
    grain = (Point(length * 0.94, middle * 0.4), Point(length * 0.94, middle * 1.6))
    points = {
        "centre_back": a,
        "centre_front": Point(length / 2, 0),
        "centre_back_2": b,
    }
    return make_piece("neckband", edges, points, grain, notches=notches, inner={"fold": fold})


def whole_neckline(back: float, front: float) -> Length:
    """Return the whole stitched neckline from its two halves [mm]."""
    return Length(2 * (back + front), ("the whole neckline, 2 × (", back, " + ", front, ")"))
