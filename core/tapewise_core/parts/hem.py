"""The lower side seam and the hem of a top: straight, curved or split, at any length."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge
from tapewise_core.geometry.path import Path, curved
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.parts.hem_style import HemStyle
from tapewise_core.parts.seam_steps import set_off
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.text.told import LineName, said
from tapewise_core.units import Length, mm

CURVED_PART = 0.3
"""The share of the hem's width, next to the side, over which it rises to meet the seam square."""

SPLIT = 15.0
"""The allowance turned back along a slit or a vent [mm] (common practice)."""

HEM, WAIST_SEAM = "hem", "waist_seam"
"""What a body's lower edge is: its line's name, by which every step calls it."""

EDGE_OF = {HEM: "hem", WAIST_SEAM: "waist"}
"""Such a line's name to that of the edge which the pieces have there."""


def lower_of(draft: Draft) -> str:
    """Return the name of the line at which a finished draft of the body ends."""
    return WAIST_SEAM if WAIST_SEAM in draft.paper.lines else HEM


def centre_back(draft: Draft, line: str, seat: Length, shorter: float) -> tuple[Draft, str]:
    """Return the draft with its lower edge marked on the centre back, and the mark's letter: lower
    for a full seat, or by what fittings found it ``shorter`` higher [mm]."""
    lower = seat - mm(shorter).called("shorter after fittings") if shorter else seat
    if abs(lower.mm) <= HAIR:
        return draft, "B"
    if lower.mm < 0:
        called = said("the {} on the centre back, shorter after fittings", LineName(line))
        return draft.up("B", "B1", mm(-lower.mm), called), "B1"
    why = "longer over a full seat" if seat.mm > HAIR else "longer after fittings"
    return draft.down(
        "B", "B1", lower, said("the {} on the centre back, {}", LineName(line), why)
    ), "B1"


def slit_told(draft: Draft, style: HemStyle) -> Draft:
    """Return the draft with a word on where the side seam ends, if it has a slit."""
    if not style.split:
        return draft
    return draft.note(
        "Mark the top of the slit: from M measure ",
        style.slit,
        " up along the side. The side seam is sewn down to there.",
    )


def slit_edges(side: Edge, length: float) -> tuple[Edge, Edge]:
    """Return the side seam, and the slit below it [mm], its edge turned back."""
    above, below = side.path.split(side.path.length() - length)
    return Edge(side.name, above, side.allowance), Edge("split", below, SPLIT)


def hem_path(centre: Point, side: Point, lean: float) -> Path:
    """Return a hem square to the centre and to a side seam that leans outwards by ``lean``."""
    run = side.x * CURVED_PART
    return curved(centre, Point(side.x * 0.5, centre.y), side + Vector(-run, run * lean), side)


def curved_hem(centre: Point, side: Point, lean: float) -> Path:
    """Return a hem that rises to the side in one swing and ends square to both."""
    run = side.x * 0.32
    return curved(centre, Point(side.x * 0.55, centre.y), side + Vector(-run, run * lean), side)


def mark_corner(draft: Draft, end: Point, lower: str) -> Draft:
    """Return the draft with the side's end at its lower edge, told from the centre back."""
    corner = said("the side at the {}", LineName(lower))
    return set_off(draft, "B", "M", end, corner)
