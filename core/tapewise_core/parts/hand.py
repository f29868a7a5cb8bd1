"""The hand that a sleeve is pulled over."""

from __future__ import annotations

from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import ELBOW_AT, arm_length
from tapewise_core.parts.shape.band import hand_girth
from tapewise_core.units import Length


def hand_of(body: Body, sleeve: Length) -> float | None:
    """Return the girth of the hand, the thumb laid in [mm], that has to pass a sleeve's hem.

    None for a sleeve that ends above the elbow, and where the wrist is not known.
    """
    if "wrist" not in body or sleeve.mm < ELBOW_AT * arm_length(body).mm:
        return None
    return hand_girth(body["wrist"].mm, body.reference, thumb=True)
