"""A circle skirt of any of four fractions, with an elastic in a casing or a wide band.

The waist's edge is larger than the waist, so that it passes the hips; the elastic
or the band draws it in. See :mod:`blocks.skirt.ring_piece` for the lettered figure. Numbers
without another source are common practice in the trade.
"""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.blocks.skirt.ring import Ring, weight
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
from tapewise_core.drafting.facts import Casing, Facts, Level, Passage, Waist
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.making import Elastic, How, Making
from tapewise_core.drafting.piece import EdgeRun, Girth, Pattern, Piece, Seam, SeamKind
from tapewise_core.garments.circle_skirt import SAYS, TITLE
from tapewise_core.garments.garment import Garment
from tapewise_core.measures.body import Body
from tapewise_core.parts.stride import skirt_hem
from tapewise_core.parts.waist_finish import casing_of, elastic_length
from tapewise_core.parts.waist_options import WAIST
from tapewise_core.parts.waist_style import WaistStyle
from tapewise_core.parts.waistband import cut_waistband, draft_waistband
from tapewise_core.proofs.proof import ALWAYS, ProofId
from tapewise_core.style.cloth import CLOTH, WEIGHT
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import mm


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    wanted, held = SkirtStyle.of(style), WaistStyle.of(style)
    edge = body["waist"] + held.ease
    skirt = skirt_of(body, wanted, held)
    count, casing = count_of(wanted, skirt), held.casing
    marks = not casing
    drawn = draft_ring("Skirt", skirt, edge, wanted.length, count)
    skirts = tuple(
        cut_ring(
            drawn, name, skirt, count, casing=casing, notches=waist_notches(name, drawn, marks)
        )
        for name in names_of(count)
    )
    drafts = [with_allowances(drawn, skirts[0])]
    bands: tuple[Piece, ...] = ()
    if not casing:
        band = draft_waistband(held, max(count, 4))
        bands = (cut_waistband(band, held, waist_marks(count)),)
        drafts.append(with_allowances(band, bands[0]))
    return Pattern(
        garment="circle-skirt",
        title=TITLES[wanted.named],
        drafts=tuple(drafts),
        pieces=(*skirts, *bands),
        seams=_seams(skirt, count, bands, _casing(body, held)),
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
    inside = casing_of(held).mm if held.casing else wanted.seam.mm
    return ring(wanted, waist, inside)


def _casing(body: Body, held: WaistStyle) -> Making:
    return Making(How.CASING, Elastic(elastic_length(body).mm, held.elastic_width.mm))


def _seams(skirt: Ring, count: int, bands: tuple[Piece, ...], casing: Making) -> tuple[Seam, ...]:
    runs = waist_runs(count)
    hems = tuple(EdgeRun(run.piece, ("hem",), run.times) for run in runs)
    panels = () if skirt.seamless(count) else panel_seams(count)
    hem = Seam(SeamKind.HEM, hems, (), making=Making(How.HUNG_HEM))
    if not bands:
        return (*panels, Seam(SeamKind.CASING, runs, (), making=casing), hem)
    band = (EdgeRun("waistband", ("waist",)),)
    ratio = bands[0].length("waist") / skirt.waist
    first, last = (EdgeRun("waistband", (name,)) for name in ("join", "join_2"))
    return (
        *panels,
        Seam(SeamKind.BAND_JOIN, (first,), (last,), making=Making(How.WAISTBAND_RING)),
        Seam(SeamKind.WAISTBAND, band, runs, ratio, Making(How.WAISTBAND)),
        hem,
    )


def _girths(skirt: Ring, body: Body) -> tuple[Girth, ...]:
    """The skirt at the hip line, where it reaches that far."""
    if "hip_depth" not in body or body["hip_depth"].mm > skirt.length:
        return ()
    return (Girth("hip", skirt.around(body["hip_depth"].mm), body["hip"].mm),)


def _facts(skirt: Ring, body: Body, held: WaistStyle) -> Facts:
    hem, way_in, edge = skirt_hem(body, skirt.length, skirt.hem), body["hip"].mm, skirt.waist
    levels = (_waist_level(skirt, body, held),)
    if held.casing:
        casing = Casing(edge * (skirt.radius - skirt.waist_allowance) / skirt.radius, edge)
        waist = Waist(Passage.EDGE, edge, way_in, edge)
        return Facts(waist=waist, casing=casing, hem=hem, levels=levels)
    band = held.band_length.mm
    waist = Waist(Passage.BAND, min(band, edge), way_in, edge, band)
    return Facts(waist=waist, hem=hem, levels=levels)


def _waist_level(skirt: Ring, body: Body, held: WaistStyle) -> Level:
    """The waist's edge, before an elastic or a band draws it in; a skirt knows no nape."""
    waist = body["waist"].mm
    asked = waist + held.ease.mm
    return Level("waist", None, waist, held.ease.mm, asked, skirt.waist)


def _lengths(skirt: Ring, body: Body, held: WaistStyle) -> dict[str, float]:
    lengths = {"skirt length": skirt.length, "waist edge": skirt.waist, "hem round": skirt.hem}
    if held.casing:
        lengths["elastic"] = elastic_length(body).mm
        lengths["elastic width"] = held.elastic_width.mm
    return lengths


def _remarks(skirt: Ring, body: Body, wanted: SkirtStyle, held: WaistStyle) -> tuple[Told, ...]:
    grams = weight(skirt.area, wanted.cloth_weight)
    heavy: Told = (f"The skirt weighs about {grams:.0f} g.",)
    elastic = (said("Cut the elastic: {}.", elastic_length(body)),) if held.casing else ()
    return (longest_skirts(wanted, skirt), heavy, *elastic)


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

SEAM = Option(
    key="seam-allowance",
    group=Group.ALLOWANCES,
    says=said("at seams and band"),
    default=0.8,
    low=0,
    high=3,
)
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
