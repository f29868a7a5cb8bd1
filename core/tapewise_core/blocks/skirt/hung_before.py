"""What is known of a skirt before it hangs: whether its values agree, and about what it weighs."""

from __future__ import annotations

from tapewise_core.blocks.skirt import gathered
from tapewise_core.blocks.skirt.gathered_options import gathers_agree
from tapewise_core.blocks.skirt.gathered_style import GatheredStyle
from tapewise_core.blocks.skirt.hung import hanging
from tapewise_core.blocks.skirt.hung_options import Skirt
from tapewise_core.blocks.skirt.ring_options import ring, width_agrees
from tapewise_core.blocks.skirt.straight_options import length_agrees
from tapewise_core.blocks.skirt.straight_plan import plan_straight
from tapewise_core.blocks.skirt.straight_style import StraightStyle
from tapewise_core.blocks.skirt.style import SkirtStyle
from tapewise_core.measures.body import Body
from tapewise_core.parts.hanging import weight
from tapewise_core.parts.shape.skirt_side import SkirtSide
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told
from tapewise_core.units import mm


def grams_on(body: Body, style: Style, edge: float) -> float:
    """Return about what the skirt that was chosen weighs on a waist seam [mm], without drawing
    a circle or a gathered one; exact but for the bends of a straight one's waist."""
    match Skirt.of(style):
        case Skirt.CIRCLE:
            round_one = SkirtStyle.of(style)
            return weight(ring(round_one, edge, 0.0).area, round_one.cloth_weight)
        case Skirt.GATHERED:
            strips = GatheredStyle.of(style)
            tiers = gathered.tiers_of(strips, mm(edge))
            covered = sum(tier.upper.mm * tier.height.mm for tier in tiers)
            return weight(covered, strips.cloth_weight)
        case Skirt.STRAIGHT:
            plan = plan_straight(body, hanging(StraightStyle.of(style)), mm(edge))
            return weight(_covered(plan.shape, plan.style.length.mm), plan.style.cloth_weight)


def _covered(shape: SkirtSide, length: float) -> float:
    """Four quarters, each measured at a dozen heights [mm²]."""
    heights = [length * (number + 0.5) / STRIPS for number in range(STRIPS)]
    return 4 * sum(shape.width(height) for height in heights) * length / STRIPS


STRIPS = 12
"""So many strips are as good as the area for a weight told to the gram (our choice)."""


def hung_agrees(body: Body, style: Style, edge: float) -> tuple[Told, ...]:
    """Return a sentence for every pair of the skirt's values that disagree on a waist seam [mm]."""
    match Skirt.of(style):
        case Skirt.CIRCLE:
            wanted = SkirtStyle.of(style)
            return width_agrees(wanted, ring(wanted, edge, wanted.seam.mm))
        case Skirt.GATHERED:
            return gathers_agree(GatheredStyle.of(style), edge)
        case Skirt.STRAIGHT:
            return length_agrees(body, StraightStyle.of(style))
