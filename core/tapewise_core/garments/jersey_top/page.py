"""The grown-on-sleeve jersey top: dropped shoulder, no closure.

The back (:mod:`blocks.top.back`), the front traced from it (:mod:`blocks.top.front`) and the
neckline's finish (:mod:`parts.neck_finish`).
"""

from __future__ import annotations

from dataclasses import replace

from tapewise_core.blocks.top.agree import agree
from tapewise_core.blocks.top.assemble import assemble
from tapewise_core.blocks.top.needs import (
    COVERS,
    LONG_HELPS,
    MEASURED_ONLY,
    MOVES,
    NEEDS,
    idle,
    idle_below,
)
from tapewise_core.blocks.top.options import TOP
from tapewise_core.blocks.top.plan import plan_of
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.piece import Pattern
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.jersey_top import SAYS, TITLE
from tapewise_core.measures.body import Body
from tapewise_core.parts.fitted_options import GROWN_ON_FITTED
from tapewise_core.parts.stride import body_hem
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    top = TopStyle.of(style)
    pattern = assemble("jersey-top", TITLE, body, top, plan_of)
    hem = body_hem(body, top.hem, *pattern.pieces[:2])
    return replace(pattern, facts=replace(pattern.facts, hem=hem))


def _agree(body: Body, style: Style) -> tuple[Told, ...]:
    return agree(body, TopStyle.of(style))


def _idle(style: Style) -> tuple[str, ...]:
    """What the sleeve makes no use of, and what the hem does not."""
    return (*idle(style), *idle_below(style))


JERSEY_TOP = Garment(
    name="jersey-top",
    title=TITLE,
    says=SAYS,
    needs=NEEDS,
    helps=LONG_HELPS,
    measured_only=MEASURED_ONLY,
    idle=_idle,
    options=TOP,
    fitted=GROWN_ON_FITTED,
    agree=_agree,
    draft=draft,
    covers=COVERS,
    moves=MOVES,
    sources=("ansur1", "ansur2", "iso8559-1"),
)
