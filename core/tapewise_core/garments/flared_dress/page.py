"""The flared dress: the jersey top with ease all round, longer, flared from waist or hip.

Everything above the level where the flare begins is the top's own draft
(:mod:`blocks.top.plan`); below it see :mod:`garments.flared_dress.flare`.
"""

from __future__ import annotations

from functools import partial
from types import MappingProxyType

from msgspec.structs import replace

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
    idle_across,
)
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import for_pieces, with_allowances
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import Seam
from tapewise_core.garments.flared_dress import SAYS, TITLE
from tapewise_core.garments.flared_dress.flare import flared_plan
from tapewise_core.garments.flared_dress.options import MOST_BANDED, OPTIONS
from tapewise_core.garments.flared_dress.style import FlareFrom, FlareStyle
from tapewise_core.garments.garment import Garment
from tapewise_core.measures.body import Body
from tapewise_core.parts.bare_style import is_bare
from tapewise_core.parts.belt_pocket import (
    belt_seam,
    cut_belt,
    cut_pocket,
    draft_belt,
    draft_pocket,
    marked,
    marks_told,
    pocket_seam,
)
from tapewise_core.parts.belt_pocket_style import BeltPocketStyle
from tapewise_core.parts.centre_seam import with_centre_seams
from tapewise_core.parts.centre_style import CentreStyle
from tapewise_core.parts.end_agree import ends_agree, flare_agrees
from tapewise_core.parts.end_finish import with_ends
from tapewise_core.parts.end_style import EndStyle
from tapewise_core.parts.fitted_options import GROWN_ON_FITTED
from tapewise_core.parts.stride import body_hem
from tapewise_core.proofs.proof import ProofId
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import Length, mm


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    top, more = TopStyle.of(style), BeltPocketStyle.of(style)
    pattern = with_ends(_trunk(body, style, top, more), body, EndStyle.of(style))
    own = marked(pattern, more)
    drafts, pieces, seams = _extras(body["waist"] + top.trunk.waist_ease, more)
    finished = tuple(map(with_allowances, drafts, pieces))
    hem = pattern.facts.hem
    assert hem is not None, "a dress has a hem"
    dress = replace(
        pattern,
        drafts=(*for_pieces(pattern.drafts, own), *finished),
        pieces=(*own, *pieces),
        seams=(*pattern.seams, *seams),
        lengths=MappingProxyType({**pattern.lengths, "hem": hem.round}),
    )
    return with_centre_seams(dress, CentreStyle.of(style))


def _trunk(body: Body, style: Style, top: TopStyle, more: BeltPocketStyle) -> Pattern:
    """The dress with its sleeves, if any, all but its bands and extras."""
    told = partial(marks_told, style=more)
    if is_bare(style):  # another block, which most dresses do without
        from tapewise_core.garments.flared_dress.bare import bare_trunk

        return bare_trunk(body, style, told)
    plan = partial(flared_plan, flared=FlareStyle.of(style))
    pattern = assemble("flared-dress", TITLE, body, top, plan, told)
    hem = body_hem(body, top.hem, *pattern.pieces[:2])
    return replace(pattern, facts=replace(pattern.facts, hem=hem))


def _extras(
    waist: Length, style: BeltPocketStyle
) -> tuple[tuple[Draft, ...], tuple[Piece, ...], tuple[Seam, ...]]:
    """Pockets and belt, where they were asked for."""
    drafts: list[Draft] = []
    pieces: list[Piece] = []
    seams: list[Seam] = []
    if style.pockets:
        drafts.append(draft_pocket(style))
        pieces.append(cut_pocket(drafts[-1], style))
        seams.append(pocket_seam())
    if style.belt:
        drafts.append(draft_belt(waist, style))
        pieces.append(cut_belt(drafts[-1], style))
        seams.append(belt_seam())
    return tuple(drafts), tuple(pieces), tuple(seams)


def agree(body: Body, style: Style) -> tuple[Told, ...]:
    """Return a sentence for every pair of values that disagree; none if all agree."""
    top = TopStyle.of(style)
    own = (
        _pocket(body, top, BeltPocketStyle.of(style)),
        _flare(body, top, FlareStyle.of(style)),
    )
    flared = FlareStyle.of(style)
    ends = (*ends_agree(style), *flare_agrees(style, flared.amount, MOST_BANDED[flared.start]))
    return (*top_agrees(body, top), *ends, *(found for found in own if found))


def _pocket(body: Body, style: TopStyle, more: BeltPocketStyle) -> Told | None:
    """The opening ends above a slit, and 10 cm above the hem."""
    if not more.pockets:
        return None
    below = more.below_waist.mm + more.opening.mm
    slit = style.hem.slit.mm if style.hem.split else 0.0
    room = style.trunk.length.mm - body["back_waist_length"].mm - max(slit, 0.0) - 100
    if below <= room:
        return None
    return said(
        "{} and {} are {} together, and {} allows {} at the most: {} too much.",
        OptionKey("pocket-below-waist"),
        OptionKey("pocket-opening"),
        mm(below),
        OptionKey("body-length"),
        mm(max(room, 0.0)),
        mm(below - room),
    )


def _flare(body: Body, style: TopStyle, flared: FlareStyle) -> Told | None:
    """A side slants by less than half a right angle."""
    start = body["back_waist_length"].mm
    if flared.start is FlareFrom.HIP:
        start += body["hip_depth"].mm
    length, flare = style.trunk.length.mm - start, flared.amount.mm
    limit = 0.7 * length
    if flare <= limit:
        return None
    return said(
        "{} is {}, and {} allows {} at the most: {} too much.",
        OptionKey("flare"),
        mm(flare),
        OptionKey("body-length"),
        mm(max(limit, 0.0)),
        mm(flare - limit),
    )


FLARED_DRESS = Garment(
    name="flared-dress",
    title=TITLE,
    says=SAYS,
    needs=NEEDS,
    helps=(*LONG_HELPS, *ACROSS),
    measured_only=ARMHOLE_MEASURED_ONLY,
    idle=lambda style: (*idle(style), *idle_across(style)),
    options=OPTIONS,
    fitted=GROWN_ON_FITTED,
    agree=agree,
    draft=draft,
    covers=COVERS | BARE_PROOFS | {ProofId.BAND_OVER},
    moves=MappingProxyType({**MOVES, **ACROSS, "waist_to_knee": (1.0, "the length")}),
    apart=lambda style: () if is_bare(style) else ("baldt", "conover"),
    sources=("ansur1", "ansur2", "baldt", "conover", "iso8559-1"),
)
