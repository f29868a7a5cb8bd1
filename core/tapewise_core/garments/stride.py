"""What a hem must let through: facts for the proof of a stride."""

from __future__ import annotations

from tapewise_core.measures.body import Body

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
