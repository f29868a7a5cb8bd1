"""The overarm of a grown-on top on its draft: shoulder, lift, and what moves it front or back."""

from __future__ import annotations

import math

from msgspec.structs import replace

from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.drafting.draft import Draft
from tapewise_core.parts.cowl import cowl_steps
from tapewise_core.parts.grown_overarm import MOVED
from tapewise_core.parts.neck_options import own_half_width
from tapewise_core.parts.seam_steps import on_line
from tapewise_core.text.told import Told
from tapewise_core.units import Length, mm

SLOPE_RUN = 200.0
"""How far out a slope is set off, further where the line on it is longer [mm]: any length serves,
and a longer one is surer."""


def back_overarm(draft: Draft, plan: TopPlan) -> Draft:
    """Return the back with its side neck, its shoulder and its overarm."""
    draft = _side_neck(draft, plan)
    raised = plan.room.back_raised
    slope = "the slope: the shoulder's own less 4°, so that the arm can lift"
    fall = plan.shoulder.fall, _shoulder(plan).mm
    draft = _slope(draft, "S", ("K", "L"), fall, slope)
    name = "S1" if raised > MOVED else "P"
    draft = draft.along("S", "L", name, _shoulder(plan), "the shoulder point")
    if raised > MOVED:
        draft = draft.down("S1", "P", mm(raised), "the shoulder point as it would be, not raised")
    draft = _sleeve_slope(draft, plan)
    draft = _moved(draft, plan, "S", -plan.room.back_raised, front=False)
    return _drawn(draft, plan, "S", front=False)


def front_overarm(draft: Draft, plan: TopPlan) -> Draft:
    """Return the front with its side neck and its overarm over the traced back's points."""
    raised, neck = plan.room.raised - plan.room.back_raised, "S"
    if abs(raised) > MOVED:
        verb, neck = (draft.up if raised > 0 else draft.down), "Z"
        draft = verb("S", "Z", mm(abs(raised)), "the front's side neck")
    draft = _moved(draft, plan, neck, plan.room.raised, front=True)
    return _drawn(draft, plan, neck, front=True)


def _side_neck(draft: Draft, plan: TopPlan) -> Draft:
    """Half the neck out and the rise up; a round back has less of a rise, a flat one more."""
    figure, neck = plan.style.figure, plan.style.neck
    own = own_half_width(plan.body, figure)
    base = own if neck.half_width.mm > own.mm else neck.half_width
    rise, lifted = neck.rise, figure.round_back
    called = "the side neck"
    if abs(lifted.mm) > MOVED:
        kind = "round" if lifted.mm > 0 else "flat"
        rise, called = rise - lifted, f"the side neck, its rise changed for a {kind} back"
    if plan.room.back_raised > MOVED:
        rise = rise + mm(plan.room.back_raised).called("longer back")
    return draft.across("N", "X", base, "a corner below the side neck").up("X", "S", rise, called)


def _slope(
    draft: Draft, start: str, names: tuple[str, str], slope: tuple[float, float], called: str
) -> Draft:
    """A slope in degrees, for a line so long [mm]."""
    degrees, length = slope
    run = max(SLOPE_RUN, math.ceil(length / 100) * 100.0)
    working = Length(run * math.tan(math.radians(degrees)), (run, f" × tan {degrees:.2f}°"))
    draft = draft.across(start, names[0], mm(run), "a help for the slope")
    return draft.down(names[0], names[1], working, called)


def _shoulder(plan: TopPlan) -> Length:
    """The shoulder's length, and what a narrower neckline leaves of the neck; what is too little
    to be told is drawn all the same, so that the lines meet."""
    figure, shoulder = plan.style.figure, plan.body["shoulder_length"]
    narrower = (own_half_width(plan.body, figure) - plan.style.neck.half_width).mm
    if narrower <= 0:
        return shoulder
    more = narrower / math.cos(math.radians(plan.shoulder.fall))
    if narrower <= MOVED:
        return replace(shoulder, mm=shoulder.mm + more)
    return shoulder + mm(more).called("narrower neck")


def _sleeve_slope(draft: Draft, plan: TopPlan) -> Draft:
    """The sleeve's end, on the shoulder's own line or on a lifted, flatter one."""
    called: Told = ("the end of the overarm line",)
    by = plan.style.sleeve.length.called("sleeve length")
    longer = plan.grown.cap.longer if plan.grown.cap else 0.0
    if longer > MOVED:
        by = by + mm(longer).called("longer cap")
    drawn = plan.grown.sleeve or plan.grown.cap
    lift = (drawn.lift if drawn else 0.0) + plan.grown.arm.flatter
    fall = math.degrees(math.atan2(plan.along.y, plan.along.x))
    words = "the sleeve's slope, on along the shoulder's"
    if lift > MOVED:
        words = f"the sleeve's slope, {lift:.1f}° flatter, so that the underarm needs no digging"
    draft = _slope(draft, "P", ("L1", "L2"), (fall, by.mm), words)
    return draft.along("P", "L2", "E", by, called)


def _moved(draft: Draft, plan: TopPlan, neck: str, raised: float, *, front: bool) -> Draft:
    """The shoulder's end where it is raised, or goes forward, and the overarm's trued end."""
    overarm = plan.overarms[front]
    if overarm.runs_out is None:
        return draft
    start, half = "P", raised / 2
    if not front and "S1" in draft.paper.points:
        draft, start = draft.down("S1", "S2", mm(-half), "the shoulder's end, half as much"), "S2"
    elif front and abs(half) > MOVED:
        verb = draft.up if half > 0 else draft.down
        draft, start = verb("P", "S2", mm(abs(half)), "the shoulder's end, half as much"), "S2"
    moved = plan.style.figure.forward_shoulder
    if moved.mm > MOVED:
        called = "where the seam of a forward shoulder passes"
        by = moved if front else mm(-moved.mm)
        draft, start = draft.square((neck, "P"), "S3", by, called, at=start), "S3"
    called = "the shoulder's end, so that both shoulder seams are as long"
    draft = draft.along(neck, start, "S4", mm(plan.shoulders[front].length), called)
    by = mm((overarm.path.end - draft["P"]).length())
    return draft.along("P", "E", "E2", by, "the overarm's end, so that both seams are as long")


def _drawn(draft: Draft, plan: TopPlan, neck: str, *, front: bool) -> Draft:
    """Rule or draw the overarm, from where a wider neckline begins."""
    overarm = plan.overarms[front]
    path, wider = overarm.path, wider_of(plan)
    plain = overarm.runs_out is None
    ends = ("P", "E") if plain else ("S4", "E2")
    if wider > MOVED:
        _, path = path.split(wider)
        name = "Z1" if front else "N2"
        draft = on_line(draft, (neck, ends[0]), name, path.start, "where the wider neckline begins")
        neck = name
    if front and plan.style.neck.cowl:
        return cowl_steps(draft, path, (neck, *ends), plan.style.neck.cowl_depth)
    remark = "The overarm line"
    remark += ": along the shoulder and the sleeve, the bend between rounded." if plain else "."
    return draft.curve("shoulder", path, (neck, *ends), remark)


def wider_of(plan: TopPlan) -> float:
    """Return how far along the overarm a neckline that is wider than the neck begins [mm]."""
    own = own_half_width(plan.body, plan.style.figure).mm
    wider = max(plan.style.neck.half_width.mm - own, 0.0)
    return wider / math.cos(math.radians(plan.shoulder.fall))
