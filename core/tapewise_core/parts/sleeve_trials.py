"""Grown-on sleeves tried on a body before any is drawn: which it can have, and how long it gets."""

from __future__ import annotations

from functools import cached_property

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import arm_length, past_elbow
from tapewise_core.parts.figure_style import FigureStyle
from tapewise_core.parts.grown_arm import Had, SleeveWish, arm_of, had
from tapewise_core.parts.grown_body import BodyShoulder, SideOf
from tapewise_core.parts.sleeve_style import SleeveKind
from tapewise_core.units import Length, mm

SLEEVES = {
    SleeveKind.SHORT: 0.32,
    SleeveKind.ELBOW: 0.56,
    SleeveKind.THREE_QUARTER: 0.78,
    SleeveKind.LONG: 1.0,
}
"""A named sleeve's length as a share of the arm's (common practice)."""

SHORTEST_CAP = 80.0
"""A cap sleeve's length past the shoulder point [mm] (common practice)."""

WRIST_EASE = 3.0
"""What is left of the sleeve's ease at the wrist, so that a hand passes [cm] (common practice)."""

LONGER = (0.0, 20.0, 40.0, 60.0)
"""By so much a short sleeve may be longer than usual where that lets it meet the body [mm]."""


class Trials(Frozen, dict=True):
    """Sleeves tried on one body, which the options above the sleeve's settle; each is tried once.

    ``bust_ease`` is the body's at the bust [mm].
    """

    body: Body
    figure: FigureStyle
    shoulder: BodyShoulder
    side: SideOf
    bust_ease: float

    def had(self, kind: SleeveKind, ease: float, *, widened: bool) -> float | None:
        """Return how long a sleeve of a kind gets [mm], or None where it cannot be had.

        A cap or a short sleeve may be up to 6 cm longer than usual.
        """
        usual = kind_length(self.body, kind).mm
        tried = LONGER if kind is SleeveKind.SHORT else LONGER[:1]
        lengths = (self.length(usual + more, ease, widened=widened) for more in tried)
        return next((length for length in lengths if length), None)

    def length(self, length: float, ease: float, *, widened: bool = True) -> float | None:
        """Return how long a sleeve of a length [mm] and an ease [cm] gets, or None."""
        if (length, ease) not in self._made:
            self._made[length, ease] = self._try(length, ease)
        found = self._made[length, ease]
        return found.length if found and (widened or not found.widened) else None

    @cached_property
    def _made(self) -> dict[tuple[float, float], Had | None]:
        """What each length [mm] with each ease [cm] came to."""
        return {}

    def _try(self, length: float, ease: float) -> Had | None:
        wish = SleeveWish(length, ease * 10, hem_ease(self.body, length, ease) * 10)
        arm = arm_of(self.body, self.figure, self.shoulder, wish)
        return had(arm, self.side, self.bust_ease)


def kind_length(body: Body, kind: SleeveKind) -> Length:
    """Return a kind's usual length; no sleeve is shorter than a cap."""
    share = SLEEVES.get(kind)
    if share is None:
        return mm(SHORTEST_CAP)
    arm = arm_length(body) if share == 1 else arm_length(body) * share
    return arm if arm.mm > SHORTEST_CAP else mm(SHORTEST_CAP)


def hem_ease(body: Body, length: float, full: float) -> float:
    """Return the ease at a hem [cm] for a sleeve's length [mm], from its ease at the arm [cm]."""
    past = past_elbow(body, length)
    if not past or full <= WRIST_EASE:
        return full
    return full + (WRIST_EASE - full) * past
