"""A circle skirt of any of four fractions, with an elastic in a casing or a wide band.

The waist's edge is larger than the waist, so that it passes the hips; the elastic
or the band draws it in. See :mod:`blocks.skirt.ring_piece` for the lettered figure. Numbers
without another source are common practice in the trade.
"""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.blocks.skirt.ring import Ring
from tapewise_core.blocks.skirt.ring_options import (
    SKIRT,
    circle,
    count_of,
    longest_skirts,
    ring,
    width_agrees,
)
from tapewise_core.blocks.skirt.ring_piece import cut_ring, draft_ring, names_of
from tapewise_core.blocks.skirt.ring_seams import (
    panel_seams,
    waist_marks,
    waist_notches,
    waist_runs,
)
from tapewise_core.blocks.skirt.style import SkirtStyle
from tapewise_core.drafting.facts import Facts
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.pattern import Girth, Pattern
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.garments.circle_skirt import SAYS, TITLE
from tapewise_core.garments.garment import Garment
from tapewise_core.measures.body import Body
from tapewise_core.parts.fitted_options import SKIRT_FITTED
from tapewise_core.parts.hanging import hangs, weight
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
from tapewise_core.parts.waist_options import SEAM, WAIST
from tapewise_core.parts.waist_style import WaistStyle
from tapewise_core.proofs.proof import ALWAYS, ProofId
from tapewise_core.sewing.edges import HUNG_HEM
from tapewise_core.style.cloth import CLOTH, WEIGHT
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import mm


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    wanted, held = SkirtStyle.of(style), WaistStyle.of(style)
    edge = body["waist"] + held.ease
    skirt = skirt_of(body, wanted, held)
    count = count_of(wanted, skirt)
    drawn = draft_ring("Skirt", skirt, edge, wanted.length, count)
    skirts = tuple(
        cut_ring(
            drawn,
            name,
            skirt,
            count,
            casing=held.casing,
            notches=waist_notches(name, drawn, not held.casing),
        )
        for name in names_of(count)
    )
    waist = held_waist(body, held, waist_runs(count), skirt.waist, waist_marks(count))
    return Pattern(
        garment="circle-skirt",
        title=TITLES[wanted.named],
        drafts=(with_allowances(drawn, skirts[0]), *waist.drafts),
        pieces=(*skirts, *waist.pieces),
        seams=_seams(skirt, count, waist.seams),
        joins=(),
        girths=_girths(skirt, body),
        facts=_facts(skirt, body, held),
        lengths=MappingProxyType(_lengths(skirt, body, held)),
        remarks=_remarks(skirt, body, wanted, held),
    )


TITLES = {
    "1": "Full circle skirt",
    "3/4": "Three-quarter circle skirt",
    "1/2": "Half circle skirt",
    "1/4": "Quarter circle skirt",
}


def skirt_of(body: Body, wanted: SkirtStyle, held: WaistStyle) -> Ring:
    """Return the skirt's ring: the waist's edge, and what is added inside and outside it."""
    waist = (body["waist"] + held.ease).mm
    return ring(wanted, waist, waist_allowance(held))


def _seams(skirt: Ring, count: int, waist: tuple[Seam, ...]) -> tuple[Seam, ...]:
    hems = tuple(EdgeRun(run.piece, ("hem",), run.times) for run in waist_runs(count))
    panels = () if skirt.seamless(count) else panel_seams(count)
    return (*panels, *waist, Seam(SeamKind.HEM, hems, (), making=HUNG_HEM))


def _girths(skirt: Ring, body: Body) -> tuple[Girth, ...]:
    """The skirt at the hip line, where it reaches that far."""
    if "hip_depth" not in body or body["hip_depth"].mm > skirt.length:
        return ()
    return (Girth("hip", skirt.around(body["hip_depth"].mm), body["hip"].mm),)


def _facts(skirt: Ring, body: Body, held: WaistStyle) -> Facts:
    edge = skirt.waist
    turned = edge * (skirt.radius - skirt.waist_allowance) / skirt.radius
    return Facts(
        waist=passed(body, held, edge),
        casing=turned_down(held, edge, turned),
        hem=skirt_hem(body, skirt.length, skirt.hem),
        levels=(waist_level(body, held, edge),),
    )


def _lengths(skirt: Ring, body: Body, held: WaistStyle) -> dict[str, float]:
    lengths = {"skirt length": skirt.length, "waist edge": skirt.waist, "hem round": skirt.hem}
    return {**lengths, **elastic_lengths(body, held)}


def _remarks(skirt: Ring, body: Body, wanted: SkirtStyle, held: WaistStyle) -> tuple[Told, ...]:
    grams = weight(skirt.area, wanted.cloth_weight)
    heavy = hangs(grams, holder(held))
    return (longest_skirts(wanted, skirt), heavy, *elastic_told(body, held))


def agree(body: Body, style: Style) -> tuple[Told, ...]:
    """Return a sentence for every pair of values that disagree; none if all agree."""
    wanted = SkirtStyle.of(style)
    skirt = skirt_of(body, wanted, WaistStyle.of(style))
    if skirt.radius < skirt.waist_allowance + LEAST_HOLE:
        return (
            said(
                "The waist's radius is {}, and {} inside it for the casing leaves no hole; take a "
                "smaller {}, {} band or a smaller circle.",
                mm(skirt.radius),
                mm(skirt.waist_allowance),
                OptionKey("elastic-width"),
                OptionKey("waist-finish"),
            ),
        )
    return width_agrees(wanted, skirt)


LEAST_HOLE = 20.0
"""What must be left of the radius inside the waist's allowance [mm] (common practice)."""

OPTIONS = CLOTH + Options.of(WEIGHT, circle("1")) + SKIRT + Options.of(SEAM) + WAIST

COVERS = ALWAYS | {
    ProofId.WAIST_LEVEL, ProofId.WAIST, ProofId.WAISTBAND, ProofId.CASING, ProofId.STRIDE,
    ProofId.GIRTH,
}  # fmt: skip
"""The proofs that the skirt answers for."""

CIRCLE_SKIRT = Garment(
    name="circle-skirt",
    title=TITLE,
    says=SAYS,
    needs=("waist", "hip"),
    helps=("hip_depth", "waist_to_knee", "waist_to_floor"),
    options=OPTIONS,
    fitted=SKIRT_FITTED,
    agree=agree,
    draft=draft,
    covers=COVERS,
    moves=MappingProxyType(
        {
            "waist": (1.0, "round the waist"),
            "hip": (0.8, "at the waist's edge, which passes the hips"),
            "waist_to_knee": (1.0, "the length"),
        }
    ),
)
