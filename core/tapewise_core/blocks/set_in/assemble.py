"""A set-in top put together: planned, searched, drawn, cut, and measured again.

A body with one lower shoulder is drafted twice, once for each side, and its pieces are whole,
without a fold; one sleeve goes into both armholes.
"""

from __future__ import annotations

from collections.abc import Iterable
from types import MappingProxyType

from tapewise_core.blocks.set_in.arms import Arms, sleeved, unsleeved
from tapewise_core.blocks.set_in.facts import facts
from tapewise_core.blocks.set_in.ledger import Made, girths, levels_of
from tapewise_core.blocks.set_in.remarks import remarks
from tapewise_core.blocks.set_in.seams import (
    side_joins,
    side_seams,
)
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.whole import PlanOf, Told, Whole, alike, two_sides
from tapewise_core.blocks.set_in.wish import planned
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import Join, Seam
from tapewise_core.measures.body import Body
from tapewise_core.parts.darts import dart_seams
from tapewise_core.parts.neck_finish import Finish, Halves
from tapewise_core.parts.two_sides import WORDS, all_round


def assemble(
    garment: str,
    title: str,
    body: Body,
    style: SetInStyle,
    plan_of: PlanOf = planned,
    told: Told = lambda d: d,
) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    drafter = alike if style.figure.even else two_sides
    whole = drafter(body, style, plan_of, told)
    halves = sorted((half for half, _ in whole.sides), key=lambda half: half.trunk.plan.wish.lower)
    high, low = halves[0], halves[-1]
    arms = sleeved(body, style, high.trunk, whole) if style.bare is None else unsleeved(high, whole)
    levels = levels_of(tuple(half.trunk for half, _ in whole.sides), arms.made, body)
    two = () if style.figure.even else ((WORDS,),)
    band = (arms.bare.told,) if arms.bare and arms.bare.told else ()
    return Pattern(
        garment=garment,
        title=title,
        drafts=(*whole.drafts, *arms.drafts, *_drafts(whole.finish)),
        pieces=(whole.back, whole.front, *arms.pieces, *whole.finish.pieces),
        seams=_seams(whole, style, arms),
        joins=(*_joins(whole), *arms.joins),
        girths=girths(levels),
        facts=facts(low.trunk, body, whole.finish, levels, arms.bare),
        lengths=MappingProxyType(_lengths(low.halves, arms.made, high.trunk.drawn.armhole)),
        remarks=(*two, *remarks(body, high.trunk, arms.length), *band),
    )


def _drafts(finish: Finish) -> Iterable[Draft]:
    return map(with_allowances, finish.drafts, finish.pieces)


def _seams(whole: Whole, style: SetInStyle, arms: Arms) -> tuple[Seam, ...]:
    """The seams in the order in which they are told, each side's beside the other's."""
    sides = [
        side_seams(sewn, style.neck, half.trunk.full, slit=style.hem.split)
        for half, sewn in whole.sides
    ]
    shoulders, seams, ends = zip(*sides, strict=True)
    last = () if style.bodice else tuple(end for both in zip(*ends, strict=True) for end in both)
    darts = (dart for _, sewn in whole.sides for dart in dart_seams(whole.front, sewn))
    neck = whole.finish.seams
    if not style.figure.even:
        neck = tuple(all_round(seam, style.neck) for seam in neck)
    if arms.bare:
        return (*darts, *shoulders, *neck, *seams, *arms.seams, *last)
    return (*darts, *shoulders, *neck, *arms.seams, *seams, *arms.own, *last)


def _joins(whole: Whole) -> tuple[Join, ...]:
    sides = (
        side_joins(half.halves.front, sewn, half.trunk.style.lower) for half, sewn in whole.sides
    )
    return tuple(join for side in sides for join in side)


def _lengths(halves: Halves, made: Made | None, around: float) -> dict[str, float]:
    back, front = halves.back, halves.front
    sleeve = {
        "sleeve cap": made.sleeve.length("cap"),
        "sleeve length": made.sleeve.points["hem_middle"].y,
    } if made else {}  # fmt: skip
    return {
        "centre back length": back.points["centre_hem"].y - back.points["nape"].y,
        "centre front length": front.points["centre_hem"].y - front.points["centre_front"].y,
        "shoulder length": back.length("shoulder"),
        "armhole": around,
        **sleeve,
        "side length": back.length("side"),
        "neckline": 2 * (back.length("neckline") + front.length("neckline")),
    }
