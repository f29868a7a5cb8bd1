"""The hand that a sleeve is pulled over."""

from __future__ import annotations

from tapewise_core.measures.body import Body
from tapewise_core.parts.shape.band import hand_girth
from tapewise_core.parts.sleeve_options import ELBOW_AT, USUAL_ARM
from tapewise_core.units import Length


def hand_of(body: Body, sleeve: Length) -> float | None:
    """Return the girth of the hand, the thumb laid in [mm], that has to pass a sleeve's hem.

    None for a sleeve that ends above the elbow, and where the wrist is not known.
    """
    arm = body["arm_length"].mm if "arm_length" in body else USUAL_ARM
    if "wrist" not in body or sleeve.mm < ELBOW_AT * arm:
        return None
    return hand_girth(body["wrist"].mm, body.reference, thumb=True)
