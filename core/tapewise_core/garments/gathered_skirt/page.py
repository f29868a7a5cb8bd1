"""A gathered skirt of jersey: strips across the cloth, drawn in by an elastic or sewn to a band.

See :mod:`blocks.skirt.gathered_piece` for the lettered figure. Numbers without another source are
common practice in the trade.
"""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.blocks.skirt.gathered import (
    GatheredSkirt,
    gathered_skirt,
    hem_seam,
    skirt_seams,
)
from tapewise_core.blocks.skirt.gathered_facts import (
    panels_told,
    skirt_gathers,
    skirt_girths,
    skirt_lengths,
    skirt_levels,
)
from tapewise_core.blocks.skirt.gathered_options import GATHERED, gathers_agree
from tapewise_core.blocks.skirt.gathered_style import GatheredStyle
from tapewise_core.blocks.skirt.lengths import LENGTHS
from tapewise_core.drafting.facts import Facts
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.gathered_skirt import SAYS, TITLE
from tapewise_core.measures.body import Body
from tapewise_core.parts.hanging import hangs
from tapewise_core.parts.stride import skirt_hem
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
from tapewise_core.parts.waist_options import GATHERED_WAIST, SEAM
from tapewise_core.parts.waist_style import WaistStyle
from tapewise_core.proofs.proof import ALWAYS, ProofId
from tapewise_core.style.cloth import CLOTH, WEIGHT
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    wanted, held = GatheredStyle.of(style), WaistStyle.of(style)
    edge = body["waist"] + held.ease
    skirt = gathered_skirt(wanted, edge, waist_allowance(held), casing=held.casing)
    waist = held_waist(body, held, skirt.runs, skirt.top, skirt.marks, wanted.fullness)
    return Pattern(
        garment="gathered-skirt",
        title=TITLE,
        drafts=(*skirt.drafts, *waist.drafts),
        pieces=(*skirt.pieces, *waist.pieces),
        seams=(*skirt_seams(skirt), *waist.seams, hem_seam(skirt)),
        joins=(),
        girths=skirt_girths(skirt, body),
        facts=_facts(skirt, body, held),
        lengths=MappingProxyType({**skirt_lengths(skirt), **elastic_lengths(body, held)}),
        remarks=(
            panels_told(skirt),
            hangs(skirt.grams, holder(held)),
            *elastic_told(body, held),
        ),
    )


def _facts(skirt: GatheredSkirt, body: Body, held: WaistStyle) -> Facts:
    """An elastic lets the whole upper edge open out, a band no more than it is gathered to."""
    length = skirt.style.length.mm
    drawn = waist_level(body, held, skirt.top / skirt.style.fullness)
    return Facts(
        waist=passed(body, held, skirt.top if held.casing else skirt.edge),
        casing=turned_down(held, skirt.top, skirt.top),
        hem=skirt_hem(body, length, skirt.hem),
        levels=(drawn, *skirt_levels(skirt, body)),
        gathers=MappingProxyType(skirt_gathers(skirt)),
    )


def agree(body: Body, style: Style) -> tuple[Told, ...]:
    """Return a sentence for every pair of values that disagree; none if all agree."""
    edge = (body["waist"] + WaistStyle.of(style).ease).mm
    return gathers_agree(GatheredStyle.of(style), edge)


OPTIONS = CLOTH + Options.of(WEIGHT) + LENGTHS + Options.of(SEAM) + GATHERED_WAIST + GATHERED

COVERS = ALWAYS | {
    ProofId.WAIST_LEVEL, ProofId.HEM, ProofId.WAIST, ProofId.WAISTBAND, ProofId.CASING,
    ProofId.GATHERS, ProofId.STRIDE, ProofId.GIRTH,
}  # fmt: skip
"""The proofs that the skirt answers for."""

GATHERED_SKIRT = Garment(
    name="gathered-skirt",
    title=TITLE,
    says=SAYS,
    needs=("waist", "hip"),
    helps=("hip_depth", "high_hip", "waist_to_knee", "waist_to_floor"),
    measured_only=("high_hip",),
    options=OPTIONS,
    agree=agree,
    draft=draft,
    covers=COVERS,
    moves=MappingProxyType(
        {
            "waist": (1.0, "round the waist"),
            "hip": (0.8, "at the upper edge, which passes the hips"),
            "waist_to_knee": (1.0, "the length"),
        }
    ),
)
