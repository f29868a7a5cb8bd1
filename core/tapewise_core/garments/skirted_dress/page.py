"""A dress of a bodice and a skirt: a jersey top cut at the waist, a skirt sewn to it.

The bodice is the grown-on-sleeve top (:mod:`blocks.top.plan`) that ends at the waist, with one
allowance at the back and two at the front, because the bust lifts it there; the skirt is one of
:mod:`blocks.skirt.hung`, its waist edge as long as the bodice's waist seam or gathered to it.
Numbers without another source are common practice.
"""

from __future__ import annotations

from types import MappingProxyType

from msgspec.structs import replace

from tapewise_core.blocks.set_in.assemble import assemble as assemble_set_in
from tapewise_core.blocks.skirt.hung import Hung, hung
from tapewise_core.blocks.skirt.hung_before import grams_on, hung_agrees
from tapewise_core.blocks.skirt.hung_options import Skirt
from tapewise_core.blocks.skirt.straight_cut import BACK, FRONT
from tapewise_core.blocks.top.agree import agree as top_agrees
from tapewise_core.blocks.top.assemble import assemble
from tapewise_core.blocks.top.needs import (
    ACROSS,
    ARMHOLE_MEASURED_ONLY,
    BARE_PROOFS,
    COVERS,
    LONG_HELPS,
    MOVES,
    NEEDS,
    idle,
)
from tapewise_core.blocks.top.plan import TopPlan, plan_of
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.facts import Facts, Passage, Waist
from tapewise_core.drafting.pattern import Girth, Pattern
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.skirted_dress import SAYS, TITLE
from tapewise_core.garments.skirted_dress.cut_style import SleeveCut
from tapewise_core.garments.skirted_dress.fitted import DRESS_FITTED
from tapewise_core.garments.skirted_dress.options import (
    OPTIONS,
    cut_agrees,
    shortened_by,
)
from tapewise_core.garments.skirted_dress.style import (
    JoinedStyle,
    bodice_style,
    ends_style,
    set_in_style,
)
from tapewise_core.measures.body import Body
from tapewise_core.parts.centre_seam import with_centre_seams
from tapewise_core.parts.centre_style import CentreStyle
from tapewise_core.parts.end_agree import ends_agree
from tapewise_core.parts.end_finish import with_ends
from tapewise_core.parts.hanging import hangs
from tapewise_core.parts.hem import WAIST_SEAM
from tapewise_core.parts.passing_options import OVER_SHOULDERS, drawn_in, drawn_told, way_in
from tapewise_core.parts.waist_seam import back_half, marked, waist_join, waist_seam
from tapewise_core.proofs.proof import ProofId
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import mm


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    shorter = shortening(body, style)
    bodice = bodice_of(body, style, shorter)
    skirt = hung(body, style, waist_seam(bodice), back_half(bodice))
    elastic = drawn_in(body, style, OPTIONS, waist_seam(bodice))
    let_out = (drawn_told(waist_seam(bodice), elastic),) if elastic else ()
    bodice = marked(bodice, skirt.marks)
    dress = replace(
        bodice,
        title=f"Jersey dress with a {Skirt.of(style)} skirt",
        drafts=(*bodice.drafts, *skirt.drafts),
        pieces=(*bodice.pieces, *skirt.pieces),
        seams=(
            *bodice.seams,
            *skirt.seams,
            waist_join(bodice, skirt.runs, skirt.ratio, replace(skirt.way, elastic=elastic)),
            skirt.hem_seam,
        ),
        joins=(*bodice.joins, *skirt.joins),
        girths=_girths(bodice, skirt, body),
        facts=_facts(bodice, skirt, body),
        lengths=MappingProxyType(
            {**bodice.lengths, "waist seam": waist_seam(bodice), **skirt.lengths}
        ),
        remarks=(*bodice.remarks, *let_out, *skirt.remarks, _heavy(skirt.grams, shorter)),
    )
    whole = with_ends(dress, body, ends_style(style), (BACK, FRONT))
    return with_centre_seams(whole, CentreStyle.of(style))


def shortening(body: Body, style: Style) -> float:
    """Return how much shorter the bodice is cut for the skirt's weight [mm]."""
    if not JoinedStyle.of(style).weighed:
        return 0.0
    return shortened_by(grams_on(body, style, _plain_waist(body, style)), body)


def _plain_waist(body: Body, style: Style) -> float:
    """The waist seam of a bodice that allows for no weight [mm], without drawing it."""
    trunk = bodice_style(body, style, 0.0).trunk
    return (body["waist"] + trunk.waist_ease).mm


def bodice_of(body: Body, style: Style, shorter: float) -> Pattern:
    """Return the top that ends at the waist, shorter by an amount [mm]."""
    if SleeveCut.of(style) is SleeveCut.SET_IN:
        return assemble_set_in("skirted-dress", TITLE, body, set_in_style(body, style, shorter))
    return assemble("skirted-dress", TITLE, body, bodice_style(body, style, shorter), bodice_plan)


def bodice_plan(body: Body, style: TopStyle) -> TopPlan:
    """Return the plan of a half whose lower edge is the waist seam."""
    return plan_of(body, style, lower=WAIST_SEAM)


def _girths(bodice: Pattern, skirt: Hung, body: Body) -> tuple[Girth, ...]:
    """The bodice's own girths, the waist at its seam, and the skirt's below it."""
    own = tuple(girth for girth in bodice.girths if girth.name not in ("waist", "hip"))
    waist = Girth("waist", waist_seam(bodice), body["waist"].mm)
    return (*own, waist, *skirt.girths)


def _facts(bodice: Pattern, skirt: Hung, body: Body) -> Facts:
    """The bodice's own facts, the waist that the wearer gets through, and what the skirt has."""
    seam = waist_seam(bodice)
    return replace(
        bodice.facts,
        waist=Waist(Passage.JOINED, seam, way_in(body), seam),
        hem=skirt.hem,
        levels=(*bodice.facts.levels, *skirt.levels),
        gathers=skirt.gathers,
    )


def _heavy(grams: float, shorter: float) -> Told:
    """What hangs from the waist seam, and what was done about it."""
    heavy = hangs(grams, "the waist seam")
    if shorter <= 0.5:
        return heavy
    because = said(
        "The bodice is cut {} shorter, because the jersey grows by as much under that weight; "
        "{} no switches this off.",
        mm(shorter),
        OptionKey("weight-allowance"),
    )
    return (*heavy, " ", *because)


def agree(body: Body, style: Style) -> tuple[Told, ...]:
    """Return a sentence for every pair of values that disagree; none if all agree."""
    faults = cut_agrees(style) or top_agrees(body, bodice_style(body, style, 0.0))
    faults = faults or ends_agree(style)
    return faults or hung_agrees(body, style, _plain_waist(body, style))


ARMHOLES = BARE_PROOFS | {ProofId.CAP, ProofId.CAP_HEIGHT}
"""What set-in sleeves, and armholes without any, answer for besides."""


def idle_for(style: Style) -> tuple[str, ...]:
    """Return the measures that a style makes no use of: only armholes ask for the widths across."""
    across = tuple(ACROSS) if SleeveCut.of(style) is SleeveCut.GROWN_ON else ()
    return (*idle(style), *across)


SKIRTED_DRESS = Garment(
    name="skirted-dress",
    title=TITLE,
    says=SAYS,
    needs=NEEDS,
    helps=(*LONG_HELPS, *ACROSS, OVER_SHOULDERS),
    measured_only=(*ARMHOLE_MEASURED_ONLY, OVER_SHOULDERS),
    idle=idle_for,
    options=OPTIONS,
    fitted=DRESS_FITTED,
    agree=agree,
    draft=draft,
    covers=COVERS | ARMHOLES | {ProofId.WAIST, ProofId.GATHERS, ProofId.HEM, ProofId.BAND_OVER},
    moves=MappingProxyType({**MOVES, **ACROSS, "waist_to_knee": (1.0, "the length")}),
    sources=("ansur1", "ansur2", "baldt", "conover", "iso8559-1"),
)
