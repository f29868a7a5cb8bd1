"""The leg below a hem: how far down the knee is, and the knee and ankle a hem lets stride."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.facts import Hem
from tapewise_core.drafting.piece import Piece
from tapewise_core.measures.body import Body
from tapewise_core.parts.hem_style import HemStyle
from tapewise_core.units import Length, cm

USUAL_TO_KNEE = cm(60)
"""From waist to knee where nothing is known of the leg (common practice)."""

FLOOR_TO_ANKLE = 80.0
"""The ankle above the floor [mm] (common practice)."""


def to_knee(body: Body) -> Length:
    """Return the length from waist to knee, the usual one where it is not known."""
    if "waist_to_knee" not in body:
        return USUAL_TO_KNEE
    return body["waist_to_knee"]


def skirt_hem(body: Body, below_waist: float, around: float) -> Hem:
    """Return a hem at its height below the waist, as long as it is round [mm]."""
    knee = body["waist_to_knee"].mm if "waist_to_knee" in body else None
    floor = body["waist_to_floor"].mm if "waist_to_floor" in body else None
    ankle = None if floor is None else floor - FLOOR_TO_ANKLE
    return Hem(around, below_waist, knee=knee, ankle=ankle)


def body_hem(body: Body, style: HemStyle, back: Piece, front: Piece) -> Hem:
    """Return the hem of a top or a dress of back and front, with its slit if it has one."""
    halves = 1 if back.has_edge("hem_2") else 2
    around = sum(piece.length("hem", "hem_2") for piece in (back, front)) * halves
    end = back.points["centre_hem"].y
    hem = skirt_hem(body, end - back.levels["waist"], around)
    slit = style.slit.mm if style.split else 0.0
    return replace(hem, below_nape=end, slit=slit)
