"""What is settled of a straight skirt before the pencil touches the paper."""

from __future__ import annotations

from tapewise_core.blocks.skirt.straight_style import StraightStyle, Vent
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.parts.shape.skirt_side import SkirtSide, SkirtWish, skirt_side
from tapewise_core.units import Length


class StraightPlan(Frozen):
    """A straight skirt on a waist's edge of a length, with the working that a person reads.

    ``further`` back than halfway its side seam lies [mm], to go on from the bodice's; ``shape`` is
    its quarter without that.
    """

    style: StraightStyle
    edge: Length
    hip: Length
    depth: Length
    shape: SkirtSide
    further: float = 0.0

    def half(self, *, front: bool) -> SkirtSide:
        """Return half of the back's lines, or of the front's."""
        return self.shape.moved(self.further if front else -self.further)

    def around(self, depth: float) -> float:
        """Return the skirt's girth at a depth, measured on both halves [mm]."""
        return 2 * sum(self.half(front=front).width(depth) for front in (False, True))

    @property
    def vented(self) -> bool:
        """Whether there is a vent at the centre back."""
        return self.style.vent is Vent.BACK


def plan_straight(
    body: Body, style: StraightStyle, edge: Length, back: float | None = None
) -> StraightPlan:
    """Return the plan of a skirt on a waist edge, ``back`` of which lie between the centre back
    and the side [mm], a quarter where nothing is said."""
    hip, depth = body["hip"] + style.hip_ease, body["hip_depth"]
    high = (body["high_hip"] + style.hip_ease).mm / 4 if "high_hip" in body else 0.0
    wish = SkirtWish(
        edge.mm / 4,
        hip.mm / 4,
        depth.mm,
        style.length.mm,
        style.flare.mm,
        high,
        style.dip.mm,
        style.belly.mm,
    )
    further = 0.0 if back is None else edge.mm / 4 - back
    if abs(further) < HAIR:
        further = 0.0
    return StraightPlan(style, edge, hip, depth, skirt_side(wish), further)
