"""A straight skirt of jersey: pulled on, with an elastic in a casing or a wide band.

The waist's edge passes the hips; the elastic or the band draws it in. See
:mod:`blocks.skirt.straight_draft` for the lettered figure. Numbers without another source are
common practice in the trade.
"""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.blocks.skirt.straight import (
    StraightSkirt,
    hem_of,
    hem_seam,
    skirt_girths,
    skirt_joins,
    skirt_lengths,
    skirt_levels,
    skirt_seams,
    straight_skirt,
)
from tapewise_core.blocks.skirt.straight_options import (
    BELLY,
    HIP_EASE,
    STRAIGHT,
    STRAIGHT_LENGTHS,
    length_agrees,
)
from tapewise_core.blocks.skirt.straight_plan import plan_straight
from tapewise_core.blocks.skirt.straight_style import StraightStyle
from tapewise_core.drafting.facts import Facts
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.straight_skirt import SAYS, TITLE
from tapewise_core.measures.body import Body
from tapewise_core.parts.fitted_options import STRAIGHT_FITTED
from tapewise_core.parts.hanging import hangs
from tapewise_core.parts.waist_held import (
    elastic_lengths,
    elastic_told,
    held_waist,
    holder,
    passed,
    turned_down,
    waist_allowance,
    waist_level,
)
from tapewise_core.parts.waist_options import SEAM, STRAIGHT_WAIST
from tapewise_core.parts.waist_style import WaistStyle
from tapewise_core.proofs.proof import ALWAYS, ProofId
from tapewise_core.style.cloth import CLOTH, WEIGHT
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    wanted, held = StraightStyle.of(style), WaistStyle.of(style)
    skirt = straight_skirt(
        plan_straight(body, wanted, body["waist"] + held.ease),
        waist_allowance(held),
        casing=held.casing,
        marked=not held.casing,
    )
    waist = held_waist(body, held, skirt.runs, skirt.waist, skirt.marks)
    return Pattern(
        garment="straight-skirt",
        title=TITLE,
        drafts=(*skirt.drafts, *waist.drafts),
        pieces=(*skirt.pieces, *waist.pieces),
        seams=(*skirt_seams(skirt), *waist.seams, hem_seam()),
        joins=skirt_joins(skirt),
        girths=skirt_girths(skirt, body),
        facts=_facts(skirt, body, held),
        lengths=MappingProxyType({**skirt_lengths(skirt), **elastic_lengths(body, held)}),
        remarks=(hangs(skirt.grams, holder(held)), *elastic_told(body, held)),
    )


def _facts(skirt: StraightSkirt, body: Body, held: WaistStyle) -> Facts:
    levels = (waist_level(body, held, skirt.waist), *skirt_levels(skirt, body))
    return Facts(
        waist=passed(body, held, skirt.waist),
        casing=turned_down(held, skirt.waist, skirt.turned(waist_allowance(held))),
        hem=hem_of(skirt, body),
        levels=levels,
    )


def agree(body: Body, style: Style) -> tuple[Told, ...]:
    """Return a sentence for every pair of values that disagree; none if all agree."""
    return length_agrees(body, StraightStyle.of(style))


OPTIONS = (
    CLOTH
    + Options.of(WEIGHT)
    + STRAIGHT_LENGTHS
    + Options.of(HIP_EASE)
    + STRAIGHT
    + Options.of(SEAM)
    + STRAIGHT_WAIST
    + Options.of(BELLY)
)

COVERS = ALWAYS | {
    ProofId.WAIST_LEVEL, ProofId.HIP, ProofId.HEM, ProofId.WAIST, ProofId.WAISTBAND,
    ProofId.CASING, ProofId.STRIDE, ProofId.GIRTH, ProofId.LINE,
}  # fmt: skip
"""The proofs that the skirt answers for."""

STRAIGHT_SKIRT = Garment(
    name="straight-skirt",
    title=TITLE,
    says=SAYS,
    needs=("waist", "hip", "hip_depth"),
    helps=("high_hip", "waist_to_knee", "waist_to_floor"),
    measured_only=("high_hip",),
    options=OPTIONS,
    fitted=STRAIGHT_FITTED,
    agree=agree,
    draft=draft,
    covers=COVERS,
    moves=MappingProxyType(
        {
            "waist": (1.0, "round the waist"),
            "hip": (1.0, "round the hip"),
            "hip_depth": (1.0, "the hip line"),
            "high_hip": (1.0, "over the belly"),
            "waist_to_knee": (1.0, "the length"),
        }
    ),
)
