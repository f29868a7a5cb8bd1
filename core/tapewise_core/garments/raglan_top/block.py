"""The set-in body that a raglan top is cut from, with an underarm that its sleeves can have."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.trunk import Trunk, trunk_of
from tapewise_core.blocks.set_in.whole import half_of
from tapewise_core.blocks.set_in.wish import Planned, planned
from tapewise_core.frozen import Frozen
from tapewise_core.garments.raglan_top.body import line_of
from tapewise_core.garments.raglan_top.plan import Lines, width_asked
from tapewise_core.measures.body import Body
from tapewise_core.parts.neck_finish import Halves
from tapewise_core.parts.shape.raglan_sleeve import reach
from tapewise_core.parts.shape.set_in import SetIn, set_in
from tapewise_core.parts.shape.underarm import SHALLOWEST, deepened


class Block(Frozen):
    """The body as drafted, back and front, and their raglan lines."""

    trunk: Trunk
    halves: Halves
    lines: Lines


def block(body: Body, style: SetInStyle) -> Block:
    """Return the body; its underarm is moved until the sleeve asked for can be had, where nobody
    asked for its depth."""
    plan = planned(body, style)
    first = _drawn(body, style, plan, None)
    width = width_asked(body, style)
    least, widest = reach(*first.lines, LEAN)
    if style.armhole.drop is not None or least - 1 <= width <= widest + 1:
        return first
    drop = first.trunk.drawn.drop

    def at(drop: float) -> tuple[float, float]:
        return reach(*_drawn(body, style, plan, drop).lines, LEAN)

    if width > widest:
        drop = deepened(lambda low: at(low)[1], drop, width, plan.wish.fit.deepest)
    elif drop > SHALLOWEST:
        up = deepened(lambda up: -at(drop - up)[0], 0.0, -width, drop - SHALLOWEST)
        drop -= up
    return _drawn(body, style, plan, drop)


LEAN = 0.05
"""A usual slant of the underarm seams, for what widths can be had (our choice)."""


def _drawn(body: Body, style: SetInStyle, plan: Planned, drop: float | None) -> Block:
    """The body with its underarm so deep below the armscye line [mm], or where it finds it."""
    wish = plan.wish if drop is None else replace(plan.wish, drop=drop)
    trunk = trunk_of(plan, _own(set_in(wish), body), style, style.allowances.along("armhole"))
    half = half_of(body, trunk)
    back, front = map(line_of, half.halves.drafts)
    return Block(trunk, half.halves, (back, front))


def _own(drawn: SetIn, body: Body) -> SetIn:
    """The body without what its set-in sleeve says of itself."""
    if drawn.cap is None:
        return drawn
    height = drawn.seam.at.underarm - drawn.back_armhole.shoulder.y
    caps = drawn.cap.held_back(body["upper_arm"].mm), drawn.cap.stiff(height)
    return replace(drawn, told=tuple(words for words in drawn.told if words not in caps))
