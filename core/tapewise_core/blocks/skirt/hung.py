"""A skirt hung from a bodice's waist seam: circle, gathered or straight, all handed on alike."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec import field
from msgspec.structs import replace

from tapewise_core.blocks.skirt import gathered, gathered_facts, straight
from tapewise_core.blocks.skirt.gathered_piece import SEAM
from tapewise_core.blocks.skirt.gathered_style import GatheredStyle
from tapewise_core.blocks.skirt.hung_options import Skirt
from tapewise_core.blocks.skirt.ring import Ring
from tapewise_core.blocks.skirt.ring_marks import notches_on, waist_marks
from tapewise_core.blocks.skirt.ring_options import count_of, longest_skirts, ring
from tapewise_core.blocks.skirt.ring_piece import cut_ring, draft_ring, names_of
from tapewise_core.blocks.skirt.ring_seams import panel_seams, waist_runs
from tapewise_core.blocks.skirt.straight_plan import plan_straight
from tapewise_core.blocks.skirt.straight_style import StraightStyle
from tapewise_core.blocks.skirt.style import SkirtStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.facts import Hem, Level
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.pattern import Girth
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import EdgeRun, Join, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.hanging import weight
from tapewise_core.parts.stride import skirt_hem
from tapewise_core.parts.waist_seam import Mark
from tapewise_core.sewing.edges import HUNG_HEM
from tapewise_core.sewing.gathers import GATHERED_WAIST
from tapewise_core.sewing.waist import STAYED_WAIST
from tapewise_core.sewing.way import Way
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told
from tapewise_core.units import Length, mm


class Hung(Frozen, kw_only=True):
    """What a bodice needs to know of its skirt.

    ``runs`` is its waist, walked from the centre back, ``ratio`` what that is gathered by and
    ``way`` how it is sewn on; ``marks`` are those the bodice gets too. ``seams`` are its own, its
    ``hem_seam`` comes last of all. ``grams`` is its weight.
    """

    drafts: tuple[Draft, ...]
    pieces: tuple[Piece, ...]
    seams: tuple[Seam, ...]
    hem_seam: Seam
    runs: tuple[EdgeRun, ...]
    marks: tuple[Mark, ...]
    hem: Hem
    grams: float
    lengths: Mapping[str, float]
    girths: tuple[Girth, ...] = ()
    levels: tuple[Level, ...] = ()
    joins: tuple[Join, ...] = ()
    gathers: Mapping[str, float] = field(default_factory=dict)
    ratio: float = 1.0
    way: Way = STAYED_WAIST
    remarks: tuple[Told, ...] = ()


def hung(body: Body, style: Style, edge: float, back: float) -> Hung:
    """Return the skirt that was chosen on a waist seam [mm], ``back`` of which lie between the
    centre back and a side of the bodice."""
    seam = mm(edge).called("the bodice's waist seam")
    match Skirt.of(style):
        case Skirt.CIRCLE:
            return _circle(body, SkirtStyle.of(style), seam, back)
        case Skirt.GATHERED:
            return _gathered(body, GatheredStyle.of(style), seam)
        case Skirt.STRAIGHT:
            return _straight(body, hanging(StraightStyle.of(style)), seam, back)


def hanging(style: StraightStyle) -> StraightStyle:
    """Return the style of a straight skirt under a bodice, which has the lengths over seat and
    belly itself."""
    return replace(style, dip=mm(0), belly=mm(0))


def _circle(body: Body, style: SkirtStyle, edge: Length, back: float) -> Hung:
    skirt = ring(style, edge.mm, style.seam.mm)
    count = count_of(style, skirt)
    marks = waist_marks(skirt, count, back)
    drawn = draft_ring("Skirt", skirt, edge, style.length, count)
    pieces = tuple(
        cut_ring(drawn, name, skirt, count, casing=False, notches=notches_on(name, drawn, marks))
        for name in names_of(count)
    )
    runs = waist_runs(count)
    hems = tuple(EdgeRun(run.piece, ("hem",), run.times) for run in runs)
    return Hung(
        drafts=(with_allowances(drawn, pieces[0]),),
        pieces=pieces,
        seams=() if skirt.seamless(count) else panel_seams(count),
        hem_seam=Seam(SeamKind.HEM, hems, (), making=HUNG_HEM),
        runs=runs,
        marks=marks,
        hem=skirt_hem(body, skirt.length, skirt.hem),
        grams=weight(skirt.area, style.cloth_weight),
        lengths={"skirt length": skirt.length, "hem round": skirt.hem},
        girths=_at_hip(body, skirt),
        remarks=(longest_skirts(style, skirt),),
    )


def _at_hip(body: Body, skirt: Ring) -> tuple[Girth, ...]:
    depth = body["hip_depth"].mm
    if depth > skirt.length:
        return ()
    return (Girth("hip", skirt.around(depth), body["hip"].mm),)


def _gathered(body: Body, style: GatheredStyle, edge: Length) -> Hung:
    skirt = gathered.gathered_skirt(style, edge, style.seam.mm, casing=False)
    places = (place for place in skirt.places if place <= 0.5)
    return Hung(
        drafts=skirt.drafts,
        pieces=skirt.pieces,
        seams=gathered.skirt_seams(skirt),
        hem_seam=gathered.hem_seam(skirt),
        runs=skirt.runs,
        marks=tuple(Mark(edge.mm * place, SEAM) for place in places),
        hem=skirt_hem(body, style.length.mm, skirt.hem),
        grams=skirt.grams,
        lengths=_but_waist(gathered_facts.skirt_lengths(skirt)),
        girths=gathered_facts.skirt_girths(skirt, body),
        levels=gathered_facts.skirt_levels(skirt, body),
        gathers=gathered_facts.skirt_gathers(skirt),
        ratio=style.fullness,
        way=GATHERED_WAIST,
        remarks=(gathered_facts.panels_told(skirt),),
    )


def _straight(body: Body, style: StraightStyle, edge: Length, back: float) -> Hung:
    plan = plan_straight(body, style, edge, back)
    skirt = straight.straight_skirt(plan, style.seam.mm, casing=False, marked=True)
    side = Mark(skirt.back.length("waist"), straight.SIDE, 2)
    return Hung(
        drafts=skirt.drafts,
        pieces=skirt.pieces,
        seams=straight.skirt_seams(skirt),
        hem_seam=straight.hem_seam(),
        runs=skirt.runs,
        marks=(side, Mark(edge.mm / 2, straight.FRONT_MARK)),
        hem=straight.hem_of(skirt, body),
        grams=skirt.grams,
        lengths=_but_waist(straight.skirt_lengths(skirt)),
        girths=straight.skirt_girths(skirt, body),
        levels=straight.skirt_levels(skirt, body),
        joins=straight.skirt_joins(skirt)[1:],
    )


def _but_waist(lengths: dict[str, float]) -> dict[str, float]:
    """A skirt's lengths but for its waist, which is the bodice's seam."""
    return {name: length for name, length in lengths.items() if name != "waist edge"}
