"""The block every top is made of: halves drafted, cut, finished at the neck and joined.

A body with one lower shoulder is drafted twice, once for each side, and its
pieces are whole, without a fold.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from types import MappingProxyType

from tapewise_core.blocks.top.cut import cut_half, shoulder_past
from tapewise_core.blocks.top.remarks import remarks
from tapewise_core.blocks.top.seams import body_seams, facts, girths, lengths, side_joins
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.blocks.top.whole import whole_pattern
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.piece import Pattern
from tapewise_core.measures.body import Body
from tapewise_core.parts.figure_style import LowerShoulder
from tapewise_core.parts.hem import lower_of
from tapewise_core.parts.neck_finish import Finish, Halves, finish_neck, head_of

BackOf = Callable[[Body, TopStyle, str], Draft]
FrontOf = Callable[[Draft, TopStyle, str], Draft]


def assemble(
    garment: str, title: str, body: Body, style: TopStyle, back_of: BackOf, front_of: FrontOf
) -> Pattern:
    """Return the pattern of a top; ``back_of`` and ``front_of`` draft its halves."""
    if style.figure.even:
        return _alike(garment, title, body, style, both_halves(body, style, back_of, front_of))
    sides = {
        side: both_halves(body, lowered(style, side), back_of, front_of, f", {side} half")
        for side in (LowerShoulder.LEFT, LowerShoulder.RIGHT)
    }
    return whole_pattern(garment, title, body, style, *sides.values())


def lowered(style: TopStyle, side: LowerShoulder) -> TopStyle:
    """Return the style for one side of the body: its own shoulder drop."""
    if style.figure.lower_shoulder is not side:
        return style
    by = style.figure.lower_shoulder_by.called("lower shoulder")
    drop = style.figure.shoulder_drop + by
    return replace(style, figure=replace(style.figure, shoulder_drop=drop))


def both_halves(
    body: Body, style: TopStyle, back_of: BackOf, front_of: FrontOf, side: str = ""
) -> Halves:
    """Draft and cut back and front of one side."""
    back = back_of(body, style, f"Back{side}")
    front = front_of(back, style, f"Front{side}")
    past = shoulder_past(back)
    pieces = (cut_half(back, "back", past, style), cut_half(front, "front", past, style))
    return Halves((back, front), *pieces)


def _alike(garment: str, title: str, body: Body, style: TopStyle, halves: Halves) -> Pattern:
    """The pattern of a body that is the same on both sides."""
    finish: Finish = finish_neck(halves, style.neck, head=head_of(body))
    back, front = finish.back, finish.front
    pieces = (back, front, *finish.pieces)
    drafts = (*halves.drafts, *finish.drafts)
    lower = lower_of(halves.drafts[0])
    shoulder, *others = body_seams(style, lower=lower)
    return Pattern(
        garment=garment,
        title=title,
        drafts=tuple(map(with_allowances, drafts, pieces)),
        pieces=pieces,
        seams=(shoulder, *finish.seams, *others),
        joins=side_joins(style, lower=lower),
        girths=girths((back, front, back, front), body, style),
        facts=facts(halves.drafts[0], body, style, finish.neck),
        lengths=MappingProxyType(lengths(back, front)),
        remarks=remarks(halves.drafts[0], body, style),
    )
