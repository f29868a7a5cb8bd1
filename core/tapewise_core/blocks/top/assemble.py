"""The block every top is made of: halves drafted, cut, finished at the neck and joined.

A body with one lower shoulder is drafted twice, once for each side, and its
pieces are whole, without a fold.
"""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType

from msgspec.structs import replace

from tapewise_core.blocks.top.back import draft_back
from tapewise_core.blocks.top.cut import cut_half, side_marks
from tapewise_core.blocks.top.front import draft_front
from tapewise_core.blocks.top.levels import girths_of, levels_of
from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.blocks.top.remarks import remarks
from tapewise_core.blocks.top.seams import body_seams, facts, lengths, side_joins
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.blocks.top.whole import Side, whole_pattern
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.measures.body import Body
from tapewise_core.parts.darts import dart_seams
from tapewise_core.parts.figure_style import LowerShoulder
from tapewise_core.parts.neck_finish import Finish, Halves, finish_neck, head_of
from tapewise_core.parts.two_sides import ALIKE

PlanOf = Callable[[Body, TopStyle], TopPlan]
"""Settles one half's shapes."""

Told = Callable[[Draft], Draft]
"""Adds a garment's own words to a finished half's draft."""


def assemble(
    garment: str, title: str, body: Body, style: TopStyle, plan_of: PlanOf, told: Told = lambda d: d
) -> Pattern:
    """Return the pattern of a top; ``plan_of`` settles a half, ``told`` is said on the back."""
    if style.figure.even:
        plan = plan_of(body, style)
        return _alike(garment, title, plan, both_halves(plan, told))
    sides = []
    for side in (LowerShoulder.LEFT, LowerShoulder.RIGHT):
        plan = plan_of(body, lowered(style, side))
        sides.append(Side(plan, both_halves(plan, told, f", {side} half")))
    return whole_pattern(garment, title, style, *sides)


def lowered(style: TopStyle, side: LowerShoulder) -> TopStyle:
    """Return the style for one side of the body: its own shoulder drop."""
    if style.figure.lower_shoulder is not side:
        return style
    by = style.figure.lower_shoulder_by.called("lower shoulder")
    drop = style.figure.shoulder_drop + by
    return replace(style, figure=replace(style.figure, shoulder_drop=drop))


def both_halves(plan: TopPlan, told: Told, side: str = "") -> Halves:
    """Draft and cut back and front of one side."""
    back = told(draft_back(plan, f"Back{side}"))
    front = draft_front(back, plan, f"Front{side}")
    marks = side_marks(plan)
    pieces = cut_half(plan, back, marks, front=False), cut_half(plan, front, marks, front=True)
    return Halves((back, front), *pieces)


def _alike(garment: str, title: str, plan: TopPlan, halves: Halves) -> Pattern:
    """The pattern of a body that is the same on both sides."""
    style = plan.style
    finish: Finish = finish_neck(halves, style.neck, head=head_of(plan.body))
    back, front = finish.back, finish.front
    pieces = (back, front, *finish.pieces)
    drafts = (*halves.drafts, *finish.drafts)
    levels = levels_of((back, front, back, front), plan)
    shoulder, *others = body_seams(plan, ALIKE, back.length("underarm"))
    return Pattern(
        garment=garment,
        title=title,
        drafts=tuple(map(with_allowances, drafts, pieces)),
        pieces=pieces,
        seams=(shoulder, *finish.seams, *dart_seams(front), *others),
        joins=side_joins(plan, ALIKE),
        girths=girths_of(levels, plan),
        facts=replace(facts(plan, finish.neck), levels=levels),
        lengths=MappingProxyType(lengths(back, front)),
        remarks=remarks(plan),
    )
