"""A waistband: a strip across the grain, folded along its middle, sewn to the waist's edge."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.strip import corners, draft_strip, rule_strip
from tapewise_core.parts.waist_style import WaistStyle

Marks = tuple[tuple[float, str], ...]
"""Where along a band its marks stand, as shares of its length, and what they meet."""


def draft_waistband(style: WaistStyle, marks: Marks) -> Draft:
    """Return the band as drawn by hand, to be marked in equal parts where its marks are so."""
    called = "the band's length, seam to seam"
    strip = draft_strip("Waistband", "across", style.band_length, called, style.band_width)
    return rule_strip(strip, "waistband").note(
        f"{_dividing(marks)}; the join goes to the centre back. The marks meet those of the "
        "skirt, and the band is stretched between."
    )


def _dividing(marks: Marks) -> str:
    """How the long edges get their marks."""
    parts = len(marks) + 1
    equal = (abs(share - number / parts) < EVEN for number, (share, _) in enumerate(marks, 1))
    if all(equal):
        return f"Divide both long edges into {parts} equal parts and mark them"
    return "Mark the long edges alike, as the notches below say"


EVEN = 1e-6
"""Shares that differ by less are the same."""


def cut_waistband(draft: Draft, style: WaistStyle, marks: Marks) -> Piece:
    """Return the band as a piece."""
    a, b, c, d = corners(draft)
    allowance, length = style.seam.mm, b.x
    edges = (
        Edge("waist", ruled(a, b), allowance),
        Edge("join", ruled(b, c), allowance),
        Edge("waist_2", ruled(c, d), allowance),
        Edge("join_2", ruled(d, a), allowance),
    )
    notches = tuple(
        Notch(edge, length * share, pair) for edge in ("waist", "waist_2") for share, pair in marks
    )
    middle = draft["M"].y
    fold = ruled(Point(0, middle), Point(length, middle))
    grain = (Point(length * 0.94, middle * 0.4), Point(length * 0.94, middle * 1.6))
    points = {"centre_back": a, "centre_front": Point(length / 2, 0), "centre_back_2": b}
    room = Box(length * 0.04, 3, length * 0.72, middle - 3)
    return make_piece(
        "waistband", edges, points, grain, notches=notches, inner={"fold": fold}, label=room
    )
