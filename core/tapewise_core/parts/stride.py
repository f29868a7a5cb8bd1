"""What a hem must let through: facts for the proof of a stride."""

from __future__ import annotations

from tapewise_core.drafting.piece import Piece
from tapewise_core.measures.body import Body
from tapewise_core.parts.hem_style import HemStyle

FLOOR_TO_ANKLE = 80.0
"""The ankle above the floor [mm] (common practice)."""


def stride_facts(body: Body, below_waist: float, hem: float) -> dict[str, float]:
    """Return the hem's girth and height beside the knee's and the ankle's [mm], where known."""
    if "waist_to_knee" not in body or "waist_to_floor" not in body:
        return {}
    return {
        "hem round": hem,
        "hem below waist": below_waist,
        "knee below waist": body["waist_to_knee"].mm,
        "ankle below waist": body["waist_to_floor"].mm - FLOOR_TO_ANKLE,
    }


def hem_facts(body: Body, style: HemStyle, back: Piece, front: Piece) -> dict[str, float]:
    """Return the same for a top or a dress of back and front, with its slit if it has one [mm]."""
    halves = 1 if back.has_edge("hem_2") else 2
    hem = sum(piece.length("hem", "hem_2") for piece in (back, front)) * halves
    below = back.points["centre_hem"].y - back.levels["waist"]
    found = {"hem girth": hem, **stride_facts(body, below, hem), "option body-length": 1.0}
    if style.split:
        found["slit"] = style.slit.mm
    return found
