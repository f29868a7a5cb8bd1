"""The body of a set-in top: back and front of both sides, drafted alike or apart.

Sides that differ are drafted twice, once for each, and their pieces are whole, without a fold.
"""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.blocks.set_in.back import draft_back
from tapewise_core.blocks.set_in.cut import cut_half, side_marks
from tapewise_core.blocks.set_in.front import draft_front
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.trunk import Trunk, armhole_allowance, trunk_of
from tapewise_core.blocks.set_in.wish import Planned
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.piece import Piece
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.figure_style import LowerShoulder
from tapewise_core.parts.neck_finish import Finish, Halves, finish_neck, head_of
from tapewise_core.parts.shape.lower_side import lowered
from tapewise_core.parts.shape.set_in import set_in
from tapewise_core.parts.two_sides import ALIKE, Sewn, closed_drafts, joined_halves

PlanOf = Callable[[Body, SetInStyle, float], Planned]
"""Settles what one side is drawn from; how much lower it is comes last [mm]."""

Told = Callable[[Draft], Draft]
"""Adds a garment's own words to a finished back's draft."""


class Half(Frozen):
    """One side of the body: as drawn, and its back and front."""

    trunk: Trunk
    halves: Halves


class Whole(Frozen):
    """Back and front as they are cut, each side with its seams' names, and the neck's finish."""

    back: Piece
    front: Piece
    drafts: tuple[Draft, ...]
    sides: tuple[tuple[Half, Sewn], ...]
    finish: Finish


def alike(body: Body, style: SetInStyle, plan_of: PlanOf, told: Told) -> Whole:
    """Both sides of the body alike: halves on the fold."""
    plan = plan_of(body, style, 0.0)
    drawn = set_in(plan.wish)
    half = half_of(body, trunk_of(plan, drawn, style, armhole_allowance((drawn,), style)), told)
    finish = finish_neck(half.halves, style.neck, head=head_of(body))
    drafts = map(with_allowances, half.halves.drafts, (finish.back, finish.front))
    return Whole(finish.back, finish.front, tuple(drafts), ((half, ALIKE),), finish)


def two_sides(body: Body, style: SetInStyle, plan_of: PlanOf, told: Told) -> Whole:
    """One side drafted, and the other as much lower as its shoulder hangs."""
    plan = plan_of(body, style, 0.0)
    drawn = set_in(plan.wish)
    below = plan_of(body, style, style.figure.lower_shoulder_by.mm)
    low_left = style.figure.lower_shoulder is LowerShoulder.LEFT
    low = lowered(drawn, below.wish)
    takes = armhole_allowance((drawn, low), style)
    trunks = [trunk_of(plan, drawn, style, takes), trunk_of(below, low, style, takes)]
    left, right = (
        half_of(body, trunk, told, f", {name} half")
        for trunk, name in zip(trunks[:: -1 if low_left else 1], LEFT_RIGHT, strict=True)
    )
    finish = finish_neck(left.halves, style.neck, right.halves, head=head_of(body))
    joined = joined_halves(left.halves, right.halves, finish)
    drafts = closed_drafts(left.halves, right.halves, joined)
    sides = (left, joined.left), (right, joined.right)
    return Whole(joined.back, joined.front, drafts, sides, finish)


LEFT_RIGHT = (LowerShoulder.LEFT, LowerShoulder.RIGHT)
"""The sides in the order in which they are named."""


def half_of(body: Body, trunk: Trunk, told: Told = lambda d: d, side: str = "") -> Half:
    """Return back and front of one side, drafted and cut."""
    back = told(draft_back(body, trunk, f"Back{side}"))
    front = draft_front(back, body, trunk, f"Front{side}")
    marks = side_marks(trunk)
    pieces = cut_half(back, trunk, marks, front=False), cut_half(front, trunk, marks, front=True)
    return Half(trunk, Halves((back, front), *pieces))
