"""A raglan top put together: a set-in body, parted along its raglan lines, and its sleeves."""

from __future__ import annotations

import math
from types import MappingProxyType

from tapewise_core.blocks.set_in.facts import facts
from tapewise_core.blocks.set_in.ledger import girths, levels_of
from tapewise_core.blocks.set_in.remarks import remarks
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.trunk import WITHIN
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.facts import Level
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.garments.raglan_top.block import Block, block
from tapewise_core.garments.raglan_top.body import parted, with_line
from tapewise_core.garments.raglan_top.plan import Plan, held_back, planned
from tapewise_core.garments.raglan_top.seams import joins, seams
from tapewise_core.garments.raglan_top.sleeve import cut_half, draft_half
from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import arm_at
from tapewise_core.parts.darts import dart_seams
from tapewise_core.parts.neck_finish import Halves, finish_neck, head_of
from tapewise_core.parts.shape.curves import least_radii
from tapewise_core.parts.trunk_levels import sleeve_level
from tapewise_core.parts.two_sides import ALIKE
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import mm


def assemble(garment: str, title: str, body: Body, style: SetInStyle) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    found = block(body, style)
    plan = planned(body, style, found.lines)
    allowance = _allowance(found, plan)
    halves = _halves(found, plan, allowance)
    finish = finish_neck(halves, style.neck, head=head_of(body))
    pieces = (finish.back, finish.front, *(finish.between or halves.between))
    levels = (*levels_of((found.trunk,), None, body), *_sleeve_levels(body, style, plan, pieces))
    drafts = (*halves.drafts, *_sleeves(plan))
    return Pattern(
        garment=garment,
        title=title,
        drafts=(*map(with_allowances, drafts, pieces),
                *map(with_allowances, finish.drafts, finish.pieces)),
        pieces=(*pieces, *finish.pieces),
        seams=seams(style.neck, finish.seams, dart_seams(finish.front, ALIKE), found.trunk.full),
        joins=joins(finish.front),
        girths=girths(levels),
        facts=facts(found.trunk, body, finish, levels),
        lengths=MappingProxyType(_lengths(pieces, plan)),
        remarks=(*remarks(body, found.trunk, None), *_told(body, style, plan, allowance)),
    )  # fmt: skip


def _allowance(found: Block, plan: Plan) -> float:
    """The raglan seams' allowance [mm]: as asked, or what their tightest bend takes."""
    sleeve = plan.sleeve
    paths = (
        *(line.whole for line in found.lines),
        *(half.seam for half in (sleeve.back, sleeve.front)),
    )
    tightest = min(min(least_radii(path)) for path in paths)
    return min(found.trunk.style.allowances.seam.mm, math.floor(tightest * WITHIN))


def _sleeves(plan: Plan) -> tuple[Draft, Draft]:
    sleeve = plan.sleeve
    return draft_half(plan, sleeve.back, front=False), draft_half(plan, sleeve.front, front=True)


def _halves(found: Block, plan: Plan, allowance: float) -> Halves:
    """Back and front parted along their raglan lines, and the sleeve's halves between them."""
    own = found.halves
    back, front = (
        parted(piece, line, allowance)
        for piece, line in zip((own.back, own.front), found.lines, strict=True)
    )
    one, other = map(with_line, own.drafts, found.lines)
    sleeve = plan.sleeve
    between = tuple(
        cut_half(draft, half, found.trunk.style, allowance)
        for draft, half in zip(_sleeves(plan), (sleeve.back, sleeve.front), strict=True)
    )
    return Halves((one, other), back, front, between)


def _sleeve_levels(
    body: Body, style: SetInStyle, plan: Plan, pieces: tuple[Piece, ...]
) -> tuple[Level, Level]:
    """The sleeve's girths as measured on its pieces."""
    arm, halves = body["upper_arm"].mm, pieces[2:]
    wide = sum(abs(one.points["underarm"].x - one.points["hem_overarm"].x) for one in halves)
    told, asked = held_back(plan, arm), plan.sleeve.asked - arm
    wrist = arm_at(body, style.sleeve.length.mm).mm
    hem = sum(one.length("sleeve_hem") for one in halves)
    return (
        sleeve_level("upper_arm", arm, asked, wide, told),
        sleeve_level("sleeve_hem", wrist, plan.hem - wrist, hem, SLANT),
    )


SLANT = said("the sleeve's seams may slant no more than they do")


def _lengths(pieces: tuple[Piece, ...], plan: Plan) -> dict[str, float]:
    back, front, *_ = pieces
    return {
        "centre back length": back.points["centre_hem"].y - back.points["nape"].y,
        "centre front length": front.points["centre_hem"].y - front.points["centre_front"].y,
        "shoulder length": plan.sleeve.back.line.shoulder.length,
        "back raglan seam": back.length("raglan_line"),
        "front raglan seam": front.length("raglan_line"),
        "sleeve length": plan.length.mm,
        "side length": back.length("side"),
        "neckline": 2 * sum(piece.length("neckline") for piece in pieces),
    }


def _told(body: Body, style: SetInStyle, plan: Plan, allowance: float) -> tuple[Told, ...]:
    """What the drafter should read of the sleeve."""
    return tuple(
        words
        for words in (
            held_back(plan, body["upper_arm"].mm),
            STEEP if plan.sleeve.stiff else (),
            _longer(style, plan),
            said(NARROW, mm(allowance)) if allowance < style.allowances.seam.mm else (),
        )
        if words
    )


STEEP = said(
    "The sleeves hang steeply: the arm will not lift freely. More sleeve ease, or a higher "
    "underarm, helps."
)

NARROW = (
    "The raglan seams bend too tightly for a wider allowance than {}, so that is what they get."
)


def _longer(style: SetInStyle, plan: Plan) -> Told:
    by = plan.length.mm - style.sleeve.length.mm
    if by <= 0.5:
        return ()
    words = "The sleeve is longer than {} says by {}, to leave an underarm seam below the raglan's."
    return said(words, OptionKey("sleeve-length"), mm(by))
