"""Lines that back and front draw alike: a shoulder raised, turned or lowered, and an armhole."""

from __future__ import annotations

import math

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.wish import Planned
from tapewise_core.drafting.draft import Draft
from tapewise_core.measures.body import Body
from tapewise_core.parts.neck_options import own_half_width
from tapewise_core.parts.shape.armhole import Armhole
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.parts.shape.shoulder_line import HALF, ShoulderLine
from tapewise_core.units import Length, mm

EQUAL = 1e-6
"""Ends nearer than this are one point [mm]."""

ARMHOLE_MANNER = "It bends one way only."


def neck_end(draft: Draft) -> str:
    """Return the point at which a shoulder begins: raised, or where a wider neckline begins."""
    return next(name for name in ("S2", "S1", "S") if name in draft.paper.points)


def end_of_shoulder(draft: Draft) -> str:
    """Return the shoulder point as drafted."""
    return next(name for name in ("Y1", "Y", "L3", "P") if name in draft.paper.points)


def shoulder_ends(
    draft: Draft, plan: Planned, body: Body, style: SetInStyle
) -> tuple[Draft, str, str]:
    """Return the draft with the ends of its shoulder, and their letters."""
    wider = style.neck.half_width.mm - own_half_width(body, style.figure).mm
    start, end = neck_end(draft), end_of_shoulder(draft)
    if wider > 0.05:
        by = mm(wider / math.cos(math.radians(plan.shoulder.falls)))
        draft = draft.along(start, end, "S2", by, "where the wider neckline begins")
        start = "S2"
    return draft, start, end


def underarm_of(draft: Draft) -> str:
    """Return the underarm's point: turned out with a dart, or the side's own."""
    return next(name for name in ("U", "Q1") if name in draft.paper.points)


def raised_line(draft: Draft, raised: float, forward: float) -> Draft:
    """Return the draft with the shoulder's ends moved: the neck point up, the other by half of it
    and forward, square to the line; in the end it is as long as before.
    """
    if abs(raised) < HAIR and abs(forward) < HAIR:
        return draft
    start, aim = "S", "P"
    if abs(raised) >= HAIR:
        verb = draft.up if raised > 0 else draft.down
        draft = verb("S", "S1", mm(abs(raised)), "the neck point, for the length over the front")
        verb = draft.up if raised > 0 else draft.down
        draft = verb("P", "L1", mm(abs(raised) * HALF), "half of that at the shoulder point")
        start, aim = "S1", "L1"
    if abs(forward) >= HAIR:
        called = "for the shoulder that stands forward"
        draft = draft.square((start, "P"), "L2", mm(-forward), called, at=aim)
        aim = "L2"
    called = "the shoulder point, as far from the neck point as before"
    length = (draft["P"] - draft["S"]).length()
    return draft.along(start, aim, "L3", mm(length), called)


def lower_line(draft: Draft, line: ShoulderLine, lower: Length) -> Draft:
    """Return the draft with the shoulder's end of a side that hangs lower, straight down; in the
    end its two shoulder seams are equally long."""
    if lower.mm < HAIR:
        return draft
    end = end_of_shoulder(draft)
    draft = draft.down(end, "Y", lower, "the shoulder point of the side that hangs lower")
    start = "S1" if "S1" in draft.paper.points else "S"
    if abs((draft["Y"] - draft[start]).length() - line.length) < EQUAL:
        return draft
    called = "the shoulder point, so that both shoulder seams are equally long"
    return draft.along(start, "Y", "Y1", mm(line.length), called)


def armhole_line(draft: Draft, drawn: Armhole, level: str, called: str) -> Draft:
    """Return the draft with its armhole, once its side is drawn; ``level`` is on the fold."""
    draft = draft.down("N", level, mm(drawn.across.y), "the level of the armhole's middle")
    middle = f"{level}1"
    draft = draft.across(level, middle, mm(drawn.across.x), called)
    end, under = end_of_shoulder(draft), underarm_of(draft)
    return draft.curve("armhole", drawn.path, (end, middle, under), ARMHOLE_MANNER)
