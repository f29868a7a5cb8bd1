"""A dress with a circle skirt: the jersey top cut at the waist, a skirt of four fractions joined.

The bodice is the grown-on-sleeve top (:mod:`blocks.top.plan`) that ends at the waist, with one
allowance at the back and two at the front, because the bust lifts it there; the skirt is that of
:mod:`blocks.skirt.ring_piece`, its waist edge as long as the bodice's waist seam. Numbers without
another source are common practice in the trade.
"""

from __future__ import annotations

from dataclasses import replace
from types import MappingProxyType

from tapewise_core.blocks.skirt.ring import Ring
from tapewise_core.blocks.skirt.ring_options import count_of, longest_skirts, ring, width_agrees
from tapewise_core.blocks.skirt.ring_piece import cut_ring, draft_ring, names_of
from tapewise_core.blocks.skirt.ring_seams import panel_seams, waist_runs
from tapewise_core.blocks.skirt.style import SkirtStyle
from tapewise_core.blocks.top.agree import agree as top_agrees
from tapewise_core.blocks.top.assemble import assemble
from tapewise_core.blocks.top.bodice import (
    back_half,
    marked,
    waist_join,
    waist_seam,
)
from tapewise_core.blocks.top.needs import COVERS, LONG_HELPS, MEASURED_ONLY, MOVES, NEEDS, idle
from tapewise_core.blocks.top.plan import TopPlan, plan_of
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.facts import Facts, Passage, Waist
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.piece import EdgeRun, Girth, Pattern, Seam, SeamKind
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.skirted_dress import SAYS, TITLE
from tapewise_core.garments.skirted_dress.marks import notches_on, waist_marks
from tapewise_core.garments.skirted_dress.options import OPTIONS, shortened_by
from tapewise_core.garments.skirted_dress.style import JoinedStyle, bodice_style
from tapewise_core.measures.body import Body
from tapewise_core.parts.fitted_options import BODICE_FITTED
from tapewise_core.parts.hanging import weighs, weight
from tapewise_core.parts.hem import WAIST_SEAM
from tapewise_core.parts.stride import skirt_hem
from tapewise_core.proofs.proof import ProofId
from tapewise_core.sewing.edges import HUNG_HEM
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import mm


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    shorter = shortening(body, style)
    bodice = bodice_of(body, style, shorter)
    wanted = SkirtStyle.of(style)
    skirt = skirt_of(bodice, wanted)
    count = count_of(wanted, skirt)
    marks = waist_marks(skirt, count, back_half(bodice))
    bodice = marked(bodice, marks)
    drawn = draft_ring(
        "Skirt",
        skirt,
        mm(skirt.waist).called("the bodice's waist seam"),
        wanted.length,
        count,
    )
    skirts = tuple(
        cut_ring(drawn, name, skirt, count, casing=False, notches=notches_on(name, drawn, marks))
        for name in names_of(count)
    )
    return replace(
        bodice,
        drafts=(*bodice.drafts, with_allowances(drawn, skirts[0])),
        pieces=(*bodice.pieces, *skirts),
        seams=(*bodice.seams, *_seams(bodice, skirt, count)),
        girths=_girths(bodice, skirt, body),
        facts=_facts(bodice, skirt, body),
        lengths=MappingProxyType({**bodice.lengths, **_lengths(skirt)}),
        remarks=(*bodice.remarks, *_remarks(skirt, wanted, shorter)),
    )


def shortening(body: Body, style: Style) -> float:
    """Return how much shorter the bodice is cut for the skirt's weight [mm]."""
    if not JoinedStyle.of(style).weighed:
        return 0.0
    wanted = SkirtStyle.of(style)
    skirt = ring(wanted, _plain_waist(body, style), wanted.seam.mm)
    return shortened_by(weight(skirt.area, wanted.cloth_weight), body)


def _plain_waist(body: Body, style: Style) -> float:
    """The waist seam of a bodice that allows for no weight [mm], without drawing it."""
    trunk = bodice_style(body, style, 0.0).trunk
    return (body["waist"] + trunk.waist_ease).mm


def bodice_of(body: Body, style: Style, shorter: float) -> Pattern:
    """Return the top that ends at the waist, shorter by an amount [mm]."""
    return assemble("skirted-dress", TITLE, body, bodice_style(body, style, shorter), bodice_plan)


def bodice_plan(body: Body, style: TopStyle) -> TopPlan:
    """Return the plan of a half whose lower edge is the waist seam."""
    return plan_of(body, style, lower=WAIST_SEAM)


def skirt_of(bodice: Pattern, style: SkirtStyle) -> Ring:
    """Return the skirt's ring on the bodice's waist seam."""
    return ring(style, waist_seam(bodice), style.seam.mm)


def _seams(bodice: Pattern, skirt: Ring, count: int) -> tuple[Seam, ...]:
    runs = waist_runs(count)
    hems = tuple(EdgeRun(run.piece, ("hem",), run.times) for run in runs)
    panels = () if skirt.seamless(count) else panel_seams(count)
    hem = Seam(SeamKind.HEM, hems, (), making=HUNG_HEM)
    return (*panels, waist_join(bodice, runs), hem)


def _girths(bodice: Pattern, skirt: Ring, body: Body) -> tuple[Girth, ...]:
    """The bodice's own girths, the waist at its seam, and the skirt's at the hip line."""
    own = tuple(girth for girth in bodice.girths if girth.name not in ("waist", "hip"))
    waist = Girth("waist", skirt.waist, body["waist"].mm)
    if body["hip_depth"].mm > skirt.length:
        return (*own, waist)
    return (*own, waist, Girth("hip", skirt.around(body["hip_depth"].mm), body["hip"].mm))


def _facts(bodice: Pattern, skirt: Ring, body: Body) -> Facts:
    """The bodice's own facts, the waist that the wearer gets through, and the skirt's hem."""
    way_in = body["hip"].mm
    if OVER_SHOULDERS in body:
        way_in = min(way_in, body[OVER_SHOULDERS].mm * SHOULDERS_YIELD)
    waist = Waist(Passage.JOINED, skirt.waist, way_in, skirt.waist)
    return replace(bodice.facts, waist=waist, hem=skirt_hem(body, skirt.length, skirt.hem))


OVER_SHOULDERS = "over_shoulder_girth"
"""Where it was taken, the dress may also be got into from above."""

SHOULDERS_YIELD = 0.95
"""Shoulders fold together a little as a dress is pulled over them (common practice)."""


def _lengths(skirt: Ring) -> dict[str, float]:
    return {"waist seam": skirt.waist, "skirt length": skirt.length, "hem round": skirt.hem}


def _remarks(skirt: Ring, style: SkirtStyle, shorter: float) -> tuple[Told, ...]:
    grams = weight(skirt.area, style.cloth_weight)
    heavy = weighs(grams)
    if shorter > 0.5:
        because = said(
            "The bodice is cut {} shorter, because the jersey grows by as much under that weight; "
            "{} no switches this off.",
            mm(shorter),
            OptionKey("weight-allowance"),
        )
        heavy = (*heavy, " ", *because)
    return (longest_skirts(style, skirt), heavy)


def agree(body: Body, style: Style) -> tuple[Told, ...]:
    """Return a sentence for every pair of values that disagree; none if all agree."""
    faults = top_agrees(body, bodice_style(body, style, 0.0))
    if faults:
        return faults
    wanted, seam = SkirtStyle.of(style), _plain_waist(body, style)
    return width_agrees(wanted, ring(wanted, seam, wanted.seam.mm))


SKIRTED_DRESS = Garment(
    name="skirted-dress",
    title=TITLE,
    says=SAYS,
    needs=NEEDS,
    helps=(*LONG_HELPS, OVER_SHOULDERS),
    measured_only=(*MEASURED_ONLY, OVER_SHOULDERS),
    idle=idle,
    options=OPTIONS,
    fitted=BODICE_FITTED,
    agree=agree,
    draft=draft,
    covers=(COVERS - {ProofId.HIP}) | {ProofId.WAIST},
    moves=MappingProxyType({**MOVES, "waist_to_knee": (1.0, "the length")}),
    sources=("ansur1", "ansur2", "iso8559-1"),
)
