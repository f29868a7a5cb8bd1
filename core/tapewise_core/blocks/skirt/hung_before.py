"""What is known of a skirt before it hangs: whether its values agree, and about what it weighs."""

from __future__ import annotations

from tapewise_core.blocks.skirt import gathered
from tapewise_core.blocks.skirt.gathered_options import gathers_agree
from tapewise_core.blocks.skirt.gathered_style import GatheredStyle
from tapewise_core.blocks.skirt.hung import hanging
from tapewise_core.blocks.skirt.hung_options import Skirt
from tapewise_core.blocks.skirt.ring_options import ring, width_agrees
from tapewise_core.blocks.skirt.straight_options import length_agrees
from tapewise_core.blocks.skirt.straight_plan import StraightPlan, plan_straight
from tapewise_core.blocks.skirt.straight_style import StraightStyle, Vent
from tapewise_core.blocks.skirt.style import SkirtStyle
from tapewise_core.measures.body import Body
from tapewise_core.parts.end_agree import flare_agrees
from tapewise_core.parts.end_style import hem_band
from tapewise_core.parts.hanging import weight
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
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
            return weight(_covered(plan), plan.style.cloth_weight)


def _covered(plan: StraightPlan) -> float:
    """Four quarters, each measured at a dozen heights, and a hem band, folded [mm²]."""
    shape, length = plan.shape, plan.style.length.mm
    heights = [length * (number + 0.5) / STRIPS for number in range(STRIPS)]
    band = 2 * plan.style.band.mm * shape.width(length)
    return 4 * (sum(shape.width(height) for height in heights) * length / STRIPS + band)


STRIPS = 12
"""So many strips are as good as the area for a weight told to the gram (our choice)."""


def hung_agrees(body: Body, style: Style, edge: float) -> tuple[Told, ...]:
    """Return a sentence for every pair of the skirt's values that disagree on a waist seam [mm]."""
    return _band_agrees(style) or _skirt_agrees(body, style, edge)


def _band_agrees(style: Style) -> tuple[Told, ...]:
    """A hem band is for a straight skirt that is closed and does not flare far."""
    if not hem_band(style).mm:
        return ()
    if Skirt.of(style) is not Skirt.STRAIGHT:
        return (BALLOON,)
    wanted = StraightStyle.of(style)
    return flare_agrees(style, wanted.flare) if wanted.vent is Vent.NONE else (CLOSED,)


BALLOON = said(
    "A hem band holds a hem in near the legs, and that of a circle or a gathered skirt is so much "
    "wider that a band would gather it up like a balloon; set {} to straight, or {} to turned.",
    OptionKey("skirt"), OptionKey("hem-finish"),
)  # fmt: skip

CLOSED = said(
    "A hem band goes all round and would close what opens there; set {} to none, or {} to turned.",
    OptionKey("vent"), OptionKey("hem-finish"),
)  # fmt: skip


def _skirt_agrees(body: Body, style: Style, edge: float) -> tuple[Told, ...]:
    match Skirt.of(style):
        case Skirt.CIRCLE:
            wanted = SkirtStyle.of(style)
            return width_agrees(wanted, ring(wanted, edge, wanted.seam.mm))
        case Skirt.GATHERED:
            return gathers_agree(GatheredStyle.of(style), edge)
        case Skirt.STRAIGHT:
            return length_agrees(body, StraightStyle.of(style))
