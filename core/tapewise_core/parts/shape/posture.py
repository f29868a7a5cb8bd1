"""What the measures say of the posture: suggestions with amounts and reasons, never applied."""

from __future__ import annotations

import math
from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Reference
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

ROUND_FROM = 23.0
"""A front shorter than the back by more than this is a round back's: about one woman in seven
[ansur1] [mm]."""

HOLLOW_FROM, HOLLOW_CUP = 15.0, 40.0
"""A front longer by more than this without a full bust is held erect [mm] (our choice)."""

LOWERED_MOST, RAISED_MOST = 20.0, 15.0
"""The front's neck point goes down first, then the back's up, so far at most [mm] (our choice)."""

FORWARD_BACK, FORWARD_FRONT = 30.0, 30.0
"""Forward shoulders: across back so much over 0.35 high bust + 44, 1.6 sd [ansur1], or over
across front [mm] (our choice)."""

FORWARD_LEAST, FORWARD_MOST = 5.0, 10.0
"""The shoulder seam's outer end goes forward by this much [mm] (common practice)."""

SQUARE_UNDER, SLOPING_OVER = 21.0, 31.0
"""A shoulder's angle that one woman in ten falls short of or goes beyond [degrees]; mean 25.7,
sd 3.9 [ansur1]."""


class Posture(StrEnum):
    """What a body's measures show."""

    ROUND = "round back"
    HOLLOW = "hollow back"
    FORWARD = "forward shoulder"
    SQUARE = "square shoulder"
    SLOPING = "sloping shoulder"


class Suggestion(Frozen):
    """What might be done, by how much [mm] (0: nothing to draw), and why."""

    posture: Posture
    amount: float
    why: Told
    back_raise: float = 0.0
    front_lower: float = 0.0


class Figure(Frozen):
    """What the posture is read from [mm]; None where it is not measured.

    ``surplus`` is the front waist length less the back's with its rise.
    """

    bust: float
    high_bust: float
    surplus: float | None = None
    across_back: float | None = None
    across_front: float | None = None
    shoulder_length: float | None = None
    shoulder_drop: float | None = None
    reference: Reference = Reference.NOT_SAID


def suggestions(figure: Figure) -> tuple[Suggestion, ...]:
    """Return what the measures suggest, from the back to the shoulders."""
    found = (_back(figure), _forward(figure), _shoulder(figure))
    return tuple(suggestion for suggestion in found if suggestion)


def _back(figure: Figure) -> Suggestion | None:
    surplus = figure.surplus
    if surplus is None:
        return None
    if surplus < -ROUND_FROM:
        return _round(-surplus)
    if surplus > HOLLOW_FROM and figure.bust - figure.high_bust < HOLLOW_CUP:
        why = said(
            "The front is {} longer than the back without a full bust: an erect or hollow back. "
            "Raise the front's neck point rather than sew a dart.",
            mm(surplus),
        )
        return Suggestion(Posture.HOLLOW, min(surplus, RAISED_MOST), why)
    return None


def _round(short: float) -> Suggestion:
    lower = min(short, LOWERED_MOST)
    up = min(max(short - LOWERED_MOST, 0.0), RAISED_MOST)
    rest = short - lower - up
    why = said("The front is {} shorter than the back: a round back.", mm(short))
    if rest > 1:
        why = (*why, *said(" That is {} more than one draws for: measure again.", mm(rest)))
    return Suggestion(Posture.ROUND, lower + up, why, up, lower)


def _forward(figure: Figure) -> Suggestion | None:
    if figure.across_back is None:
        return None
    wide = figure.across_back - 0.35 * figure.high_bust - 44.0 - FORWARD_BACK
    against = 0.0
    if figure.across_front is not None:
        against = figure.across_back - figure.across_front - FORWARD_FRONT
    if max(wide, against) <= 0:
        return None
    if against >= wide and figure.across_front is not None:
        more = figure.across_back - figure.across_front
        why = said("The back is {} wider across than the front.", mm(more))
    else:
        why = said("The back is {} wider across than its girth says.", mm(wide + FORWARD_BACK))
    amount = min(FORWARD_LEAST + max(wide, against) / 4, FORWARD_MOST)
    return Suggestion(Posture.FORWARD, amount, why)


def shoulder_angle(length: float, drop: float) -> float:
    """Return a shoulder's slope [degrees] from its length and its drop [mm] (exact)."""
    return math.degrees(math.asin(min(max(drop / length, -1.0), 1.0)))


def _shoulder(figure: Figure) -> Suggestion | None:
    """Only a remark: the drop is drafted as measured."""
    if figure.shoulder_length is None or figure.shoulder_drop is None:
        return None
    angle = shoulder_angle(figure.shoulder_length, figure.shoulder_drop)
    if SQUARE_UNDER <= angle <= SLOPING_OVER:
        return None
    posture = Posture.SQUARE if angle < SQUARE_UNDER else Posture.SLOPING
    words = f"The {posture.value} falls {angle:.0f}°, others' 21 to 31°; it is drafted as measured."
    return Suggestion(posture, 0.0, (words,))
