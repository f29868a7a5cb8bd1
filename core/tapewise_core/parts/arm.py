"""The arm in a sleeve: how it slopes, how long it is, and how thick along its length."""

from __future__ import annotations

import math

from tapewise_core.measures.body import Body
from tapewise_core.units import Length, mm, named

UPPER_ARM_AT, FOREARM_AT = 0.3, 0.65
"""Where along the arm, shoulder point to wrist, it is as thick as measured and at its forearm.

The standard's upper arm lies midway between shoulder and elbow [iso8559-1]; the
forearm is thickest just below the elbow (common practice).
"""

FOREARM_OF_UPPER_ARM, FOREARM_OF_WRIST = 0.31, 1.07
"""Fullest forearm = 0.31 upper arm + 1.07 wrist; 2,208 women, residual 0.8 cm [ansur1]."""

USUAL_ARM = mm(580)
"""An arm's length where it is not known (common practice)."""

ELBOW_AT = 0.56
"""Down to here along the arm a sleeve keeps its ease, then it tapers (common practice)."""

GENTLER = 4.0
"""The overarm falls this much less than the shoulder, so that the arm can lift [degrees]."""

LEAST_FALL = 4.0
"""A very square shoulder still falls this much [degrees]."""


def overarm_fall(shoulder: float, drop: float) -> float:
    """Return how steeply the overarm falls [degrees]: the shoulder's own slope, less 4.

    ``shoulder`` is the shoulder's length and ``drop`` how far its point lies
    below the side neck [mm].
    """
    slope = math.degrees(math.asin(min(drop / shoulder, 0.95)))
    return max(slope - GENTLER, LEAST_FALL)


def arm_length(body: Body) -> Length:
    """Return the arm's length, the usual one where it is not known."""
    if "arm_length" not in body:
        return USUAL_ARM
    return body["arm_length"]


def past_elbow(body: Body, length: float) -> float:
    """Return how far a sleeve of a length [mm] is on its way from elbow to wrist, 0 to 1."""
    past = (length / arm_length(body).mm - ELBOW_AT) / (1 - ELBOW_AT)
    return min(max(past, 0.0), 1.0)


def arm_at(body: Body, distance: float) -> Length:
    """Return the arm's girth at a distance [mm] below the shoulder point, straight in between."""
    upper = body["upper_arm"]
    if "wrist" not in body or "arm_length" not in body:
        return upper
    wrist, whole = body["wrist"], body["arm_length"].mm
    forearm = FOREARM_OF_UPPER_ARM * upper.mm + FOREARM_OF_WRIST * wrist.mm
    share = distance / whole
    if share <= UPPER_ARM_AT:
        return upper
    if share >= 1:
        return wrist
    if share <= FOREARM_AT:
        girth = _between(upper.mm, forearm, (share - UPPER_ARM_AT) / (FOREARM_AT - UPPER_ARM_AT))
    else:
        girth = _between(forearm, wrist.mm, (share - FOREARM_AT) / (1 - FOREARM_AT))
    return named("arm at the sleeve's hem", girth)


def _between(a: float, b: float, share: float) -> float:
    return a + (b - a) * share
