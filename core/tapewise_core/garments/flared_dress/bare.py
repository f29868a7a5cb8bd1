"""A flared dress without sleeves: the armholes of a set-in body over the same flare."""

from __future__ import annotations

from functools import partial

from msgspec.structs import replace

from tapewise_core.blocks.set_in.assemble import assemble
from tapewise_core.blocks.set_in.ends import levelled_ends
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.whole import Told
from tapewise_core.blocks.set_in.wish import Planned, planned
from tapewise_core.blocks.top.foot import too_short
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.garments.flared_dress import BARE_TITLE
from tapewise_core.garments.flared_dress.flare import flared_side
from tapewise_core.garments.flared_dress.style import FlareStyle
from tapewise_core.measures.body import Body
from tapewise_core.parts.shape.set_in_drawn import seam_at
from tapewise_core.style.style import Style


def bare_trunk(body: Body, style: Style, told: Told) -> Pattern:
    """Return the dress without its extras; ``told`` adds words to its back."""
    plan_of = partial(bare_plan, flared=FlareStyle.of(style))
    return assemble("flared-dress", BARE_TITLE, body, SetInStyle.of(style), plan_of, told)


def bare_plan(body: Body, style: SetInStyle, lower: float, *, flared: FlareStyle) -> Planned:
    """Return the plan of a side that is lower by so much [mm]; raises DraftError for too much
    flare."""
    plan = planned(body, style, lower)
    wish, fold = plan.wish, style.trunk.length.mm
    if fold <= wish.levels.hip.depth + 1:
        raise too_short(fold, wish.levels.hip.depth)
    wide, side = flared_side(
        wish.levels, (wish.quarters, wish.side), flared, fold,
        lambda: seam_at(wish, wish.fit.drop),
    )  # fmt: skip
    return replace(plan, wish=replace(wish, quarters=wide, side=side), ends=levelled_ends)
