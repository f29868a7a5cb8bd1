"""The back of a top with set-in sleeves.

::

          S___P            N  nape, centre back      A  armscye line
      N__/    |            S  side neck              E  bust line
      |       |            P  shoulder point         W  waist line
      T______T1            T  the armhole's middle   J  hip line
      A        \\           K  underarm's line        B  hem
      K_________U          U  underarm               M  side at the hem
      E        Q2          Q1 to Q4 are the side seam's own points at underarm, bust,
      W       Q3           waist and hip
      J         Q4
      B_________M

The armhole passes half the across-back width at its middle [baldt]; how it is made to fit the
arm, and the side seam's two circles, are told in :mod:`parts.shape`.
"""

from __future__ import annotations

import math

from tapewise_core.blocks.set_in.ends import lean
from tapewise_core.blocks.set_in.lines import (
    armhole_line,
    lower_line,
    neck_end,
    raised_line,
    shoulder_ends,
)
from tapewise_core.blocks.set_in.shoulders import base, shoulder_length
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.trunk import Trunk
from tapewise_core.blocks.set_in.wish import Planned
from tapewise_core.drafting.draft import Draft
from tapewise_core.measures.body import Body
from tapewise_core.parts.dart_steps import waist_dart_steps
from tapewise_core.parts.hem import centre_back, curved_hem, hem_path, mark_corner, slit_told
from tapewise_core.parts.neckline import back_neckline, neckline_off
from tapewise_core.parts.seam_steps import Fold, SeamQuarters, seam_steps
from tapewise_core.parts.shape.set_in import SetIn
from tapewise_core.parts.shape.waist_darts import DartLevels, WaistDart, back_dart
from tapewise_core.parts.side_draft import NAPE_AT
from tapewise_core.text.told import LineName, said
from tapewise_core.units import Length, cm, mm

SLOPE_RUN = cm(20)
"""How far out the slope is set off; any length serves."""


def draft_back(body: Body, trunk: Trunk, title: str) -> Draft:
    """Return the back, drafted with the centre back on a fold."""
    style, plan, drawn, sides = trunk.style, trunk.plan, trunk.drawn, trunk.sides
    draft = _levels(body, trunk, title)
    draft = _shoulder(draft, body, style, plan)
    draft = _neckline(draft, style)
    wide = quarters(body, style, drawn, front=False)
    draft, names = seam_steps(draft, drawn.seam, sides.back, fold_of(draft), wide)
    draft = mark_corner(draft, sides.back.end, style.lower)
    draft = slit_told(draft.curve("side", sides.back, (*names, "M")), style.hem)
    draft = armhole_line(draft, drawn.back_armhole, "T", "the armhole's middle, on the back")
    darted = with_dart(draft, waist_dart(plan, drawn), waist_of(style))
    shorter = style.fitted.back_shorter
    return hem_line(*centre_back(darted, style.lower, style.fullness.full_seat, shorter), style)


def waist_of(style: SetInStyle) -> str:
    """The point on the fold at the waist: a bodice's own may be higher than the body's."""
    return "B" if style.bodice else "W"


def waist_dart(plan: Planned, drawn: SetIn) -> WaistDart | None:
    """Return the back's waist dart, where the seam leaves something for one."""
    if not drawn.seam.dart:
        return None
    side = drawn.seam.width(drawn.seam.at.waist) - drawn.share.at(drawn.seam.at.waist)
    return back_dart(drawn.seam.dart, dart_levels(plan, drawn), side)


def dart_levels(plan: Planned, drawn: SetIn) -> DartLevels:
    """The heights between which a waist dart lies."""
    hip = None if plan.wish.hem is None else plan.wish.levels.hip.depth
    return DartLevels(drawn.seam.at.bust, drawn.seam.at.waist, hip)


def _levels(body: Body, trunk: Trunk, title: str) -> Draft:
    style, plan, drawn = trunk.style, trunk.plan, trunk.drawn
    at = plan.wish.levels
    draft = (
        Draft(title)
        .start("N", NAPE_AT)
        .down("N", "A", long(body["armscye_depth"], style), "the armscye line")
        .down("N", "E", mm(drawn.seam.at.bust), said("the bust line, {}", at.bust.how))
        .down("N", "W", long(body["back_waist_length"], style), "the waist line")
    )
    if not style.bodice:
        draft = draft.down("W", "J", long(body["hip_depth"], style), "the hip line")
    draft = draft.down("N", "B", style.trunk.length, said("the {}", LineName(style.lower)))
    drop = drawn.drop + plan.wish.lower
    if drop > 0.05:
        return draft.down("A", "K", mm(drop), "the underarm's level")
    return draft


def long(length: Length, style: SetInStyle) -> Length:
    """A length as the cloth needs it: longer where a close fit stretches it across."""
    return length * (1 + style.trunk.lengthened) if style.trunk.lengthened else length


def fold_of(draft: Draft) -> Fold:
    """The points on the fold from which the side seam is set off."""
    underarm = "K" if "K" in draft.paper.points else "A"
    if "J" not in draft.paper.points:
        return Fold(underarm, "E", "B", None)
    return Fold(underarm, "E", "W", "J")


def quarters(body: Body, style: SetInStyle, drawn: SetIn, *, front: bool) -> SeamQuarters:
    """Return the quarters of bust and hip, and what the cup gives the front and takes the back."""
    trunk, sign = style.trunk, 1.0 if front else -1.0
    bust, hip = (body["bust"] + trunk.bust_ease) / 4, (body["hip"] + trunk.hip_ease) / 4
    return SeamQuarters(bust, hip, (sign * drawn.share.bust, sign * drawn.share.hip))


def _shoulder(draft: Draft, body: Body, style: SetInStyle, plan: Planned) -> Draft:
    """From the side neck along the shoulder's own slope to the shoulder point."""
    tan = math.tan(math.radians(plan.shoulder.slope))
    fall = Length(SLOPE_RUN.mm * tan, (SLOPE_RUN.mm, f" × tan {plan.shoulder.slope:.2f}°"))
    whole = shoulder_length(body, style)
    called = said("the shoulder point")
    if plan.shoulder.out > 0.05:
        whole = whole + mm(plan.shoulder.out)
        called = said("the shoulder point, carried out for the width across")
    if plan.shoulder.out < -0.05:
        whole = whole - mm(-plan.shoulder.out)
        narrow = said("the shoulder point, further in because the body is narrow under the arm")
        called = said("the shoulder point, further in without a sleeve") if style.bare else narrow
    draft = (
        draft.across("N", "X", base(body, style), "a corner below the side neck")
        .up("X", "S", style.neck.rise - style.figure.round_back, "the side neck")
        .across("S", "H", SLOPE_RUN, "a help for the slope")
        .down("H", "L", fall, "the slope, the shoulder's own")
        .along("S", "L", "P", whole, called)
    )
    forward = style.figure.forward_shoulder.mm
    draft = raised_line(draft, plan.room.back_raised, forward)
    draft = lower_line(draft, plan.wish.back_shoulder, lower_by(plan, style))
    return with_shoulder(draft, plan, body, style)


def lower_by(plan: Planned, style: SetInStyle) -> Length:
    """Return how much lower this side's shoulder hangs."""
    return style.figure.lower_shoulder_by if plan.wish.lower else mm(0)


def with_shoulder(draft: Draft, plan: Planned, body: Body, style: SetInStyle) -> Draft:
    """Rule the shoulder, from where a wider neckline begins."""
    draft, start, end = shoulder_ends(draft, plan, body, style)
    return draft.rule("shoulder", start, end)


def _neckline(draft: Draft, style: SetInStyle) -> Draft:
    depth, start = style.neck.back_depth, "N"
    if abs(depth.mm) > 0.05:
        draft, start = neckline_off(draft, depth), "N1"
    neck = neck_end(draft)
    path = back_neckline(draft[start], draft[neck], draft.paper.line("shoulder").leaving())
    return draft.curve("neckline", path, (start, neck))


def with_dart(draft: Draft, dart: WaistDart | None, waist: str) -> Draft:
    """Return the draft with its waist dart, where it has one."""
    return waist_dart_steps(draft, dart, waist) if dart else draft


def hem_line(draft: Draft, centre: str, style: SetInStyle) -> Draft:
    """Return the draft with its hem, from a point on the fold to M at the side."""
    lines = draft.paper.lines
    side = lines.get("side_2", lines["side"])
    path = (curved_hem if style.hem.curved else hem_path)(draft[centre], side.end, lean(side))
    return draft.curve(style.lower, path, (centre, "M"))
