"""The grown-on-sleeve jersey top: dropped shoulder, no closure.

The back (:mod:`blocks.top.back`), the front traced from it (:mod:`blocks.top.front`) and the
neckline's finish (:mod:`parts.neck_finish`).
"""

from __future__ import annotations

from types import MappingProxyType

from msgspec.structs import replace

from tapewise_core.blocks.top.agree import agree
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
    idle_below,
)
from tapewise_core.blocks.top.options import TOP
from tapewise_core.blocks.top.plan import plan_of
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.jersey_top import BARE_TITLE, SAYS, TITLE
from tapewise_core.measures.body import Body
from tapewise_core.parts.bare_options import BARE_OR_GROWN_ON
from tapewise_core.parts.bare_style import is_bare
from tapewise_core.parts.centre_options import CENTRE
from tapewise_core.parts.centre_seam import with_centre_seams
from tapewise_core.parts.centre_style import CentreStyle
from tapewise_core.parts.end_agree import ends_agree
from tapewise_core.parts.end_finish import with_ends
from tapewise_core.parts.end_options import ENDS
from tapewise_core.parts.end_style import EndStyle
from tapewise_core.parts.fitted_options import GROWN_ON_FITTED
from tapewise_core.parts.placket import with_placket
from tapewise_core.parts.placket_options import PLACKET, placket_agrees
from tapewise_core.parts.sleeve_style import WITH_SLEEVE, SleeveKind
from tapewise_core.parts.stride import body_hem
from tapewise_core.proofs.proof import ProofId
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    pattern = with_placket(with_ends(_drafted(body, style), body, EndStyle.of(style)), style)
    return with_centre_seams(pattern, CentreStyle.of(style))


def _drafted(body: Body, style: Style) -> Pattern:
    """The body with its sleeves, if any, all but its bands."""
    if is_bare(style):  # another block, which most tops do without
        from tapewise_core.blocks.set_in.assemble import assemble as set_in
        from tapewise_core.blocks.set_in.style import SetInStyle

        return set_in("jersey-top", BARE_TITLE, body, SetInStyle.of(style))
    top = TopStyle.of(style)
    pattern = assemble("jersey-top", TITLE, body, top, plan_of)
    hem = body_hem(body, top.hem, *pattern.pieces[:2])
    return replace(pattern, facts=replace(pattern.facts, hem=hem))


def _agree(body: Body, style: Style) -> tuple[Told, ...]:
    return (*agree(body, TopStyle.of(style)), *ends_agree(style), *placket_agrees(body, style))


def _idle(style: Style) -> tuple[str, ...]:
    """What the sleeve makes no use of, and what the hem does not."""
    return (*idle(style), *idle_below(style), *idle_across(style))


OPTIONS = (
    TOP.changed("sleeve", choices=(SleeveKind.NONE, *WITH_SLEEVE))
    + BARE_OR_GROWN_ON
    + ENDS
    + PLACKET
    + CENTRE
)


JERSEY_TOP = Garment(
    name="jersey-top",
    title=TITLE,
    says=SAYS,
    needs=NEEDS,
    helps=(*LONG_HELPS, *ACROSS),
    measured_only=ARMHOLE_MEASURED_ONLY,
    idle=_idle,
    options=OPTIONS,
    fitted=GROWN_ON_FITTED,
    agree=_agree,
    draft=draft,
    covers=COVERS | BARE_PROOFS | {ProofId.BAND_OVER},
    moves=MappingProxyType({**MOVES, **ACROSS}),
    apart=lambda style: () if is_bare(style) else ("baldt", "conover"),
    sources=("ansur1", "ansur2", "baldt", "conover", "iso8559-1"),
)
