"""Back and front in one piece each, for a body whose sides differ."""

from __future__ import annotations

from types import MappingProxyType

from msgspec.structs import replace

from tapewise_core.blocks.top.levels import girths_of, levels_of
from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.blocks.top.remarks import remarks
from tapewise_core.blocks.top.seams import body_seams, facts, lengths, side_joins
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import Seam
from tapewise_core.frozen import Frozen
from tapewise_core.parts.darts import dart_seams
from tapewise_core.parts.figure_style import LowerShoulder
from tapewise_core.parts.neck_finish import Finish, Halves, finish_neck, head_of
from tapewise_core.parts.two_sides import WORDS, Sewn, all_round, closed_drafts, joined_halves


class Side(Frozen):
    """One side of the body: its plan, and its back and front."""

    plan: TopPlan
    halves: Halves


def whole_pattern(
    garment: str, title: str, style: TopStyle, left_side: Side, right_side: Side
) -> Pattern:
    """Return the pattern of a top whose left and right halves were drafted apart."""
    left, right = left_side.halves, right_side.halves
    finish = finish_neck(left, style.neck, right, head=head_of(left_side.plan.body))
    joined = joined_halves(left, right, finish)
    finished = tuple(map(with_allowances, finish.drafts, finish.pieces))
    lower_left = style.figure.lower_shoulder is LowerShoulder.LEFT
    low, high = (left_side, right_side) if lower_left else (right_side, left_side)
    quarters = tuple(half for side in (low, high) for half in (side.halves.back, side.halves.front))
    levels = levels_of(quarters, low.plan)
    sides = (left_side, joined.left), (right_side, joined.right)
    return Pattern(
        garment=garment,
        title=title,
        drafts=(*closed_drafts(left, right, joined), *finished),
        pieces=(joined.back, joined.front, *finish.pieces),
        seams=_seams(style, finish, joined.front, sides),
        joins=tuple(join for side, sewn in sides for join in side_joins(side.plan, sewn)),
        girths=girths_of(levels, low.plan),
        facts=replace(facts(low.plan, finish.neck), levels=levels),
        lengths=MappingProxyType(lengths(low.halves.back, low.halves.front)),
        remarks=((WORDS,), *remarks(low.plan)),
    )


def _seams(
    style: TopStyle, finish: Finish, front: Piece, sides: tuple[tuple[Side, Sewn], ...]
) -> tuple[Seam, ...]:
    left, right = (
        body_seams(side.plan, sewn, side.halves.back.length("underarm")) for side, sewn in sides
    )
    darts = tuple(seam for _, sewn in sides for seam in dart_seams(front, sewn))
    pairs = zip(left[1:], right[1:], strict=True)
    others = tuple(seam for pair in pairs for seam in pair)
    around = (all_round(seam, style.neck) for seam in finish.seams)
    return (left[0], right[0], *around, *darts, *others)
