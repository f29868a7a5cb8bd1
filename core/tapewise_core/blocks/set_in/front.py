"""The front of a top with set-in sleeves, drafted over the finished back.

Letters as on the back; F is the neckline on the centre front, O the hem there, D1 to D5 a side
dart, U the underarm where it is turned out with the dart.
"""

from __future__ import annotations

from tapewise_core.blocks.set_in.back import (
    dart_levels,
    fold_of,
    hem_line,
    lower_by,
    quarters,
    waist_of,
    with_dart,
    with_shoulder,
)
from tapewise_core.blocks.set_in.lines import (
    armhole_line,
    lower_line,
    neck_end,
    raised_line,
    shoulder_ends,
)
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.trunk import Trunk
from tapewise_core.blocks.set_in.wish import Planned
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.geometry.path import ruled
from tapewise_core.measures.body import Body
from tapewise_core.parts.cowl import cowl_steps
from tapewise_core.parts.dart_steps import eased_side_steps, side_dart_steps
from tapewise_core.parts.hem import mark_corner
from tapewise_core.parts.neckline import front_curve
from tapewise_core.parts.seam_steps import seam_steps, set_off
from tapewise_core.parts.shape.set_in import SetIn
from tapewise_core.parts.shape.waist_darts import WaistDart, front_dart
from tapewise_core.text.told import LineName, said
from tapewise_core.units import mm


def draft_front(back: Draft, body: Body, trunk: Trunk, title: str) -> Draft:
    """Return the front, with the centre front on a fold."""
    style, plan, drawn = trunk.style, trunk.plan, trunk.drawn
    draft = Draft(title).trace(back.title, _traced(back))
    forward = -style.figure.forward_shoulder.mm
    draft = raised_line(draft, plan.room.raised, forward)
    draft = lower_line(draft, plan.wish.front_shoulder, lower_by(plan, style))
    if style.neck.cowl:
        draft = _cowl(draft, body, trunk)
    else:
        draft = _neckline(with_shoulder(draft, plan, body, style), style)
    draft = _side(draft, body, trunk)
    called = "the armhole's middle, on the front"
    draft = armhole_line(draft, drawn.front_armhole, "T", called)
    return _hem(draft, trunk)


def _traced(back: Draft) -> DraftingPaper:
    points = ("N", "S", "X", "A", "E", "W", "J", "B", "K", "P")
    here = [name for name in points if name in back.paper.points]
    return back.paper.only(here, [])


def _cowl(draft: Draft, body: Body, trunk: Trunk) -> Draft:
    """The shoulder and the neckline of a cowl."""
    draft, start, end = shoulder_ends(draft, trunk.plan, body, trunk.style)
    plain = ruled(draft[start], draft[end])
    return cowl_steps(draft, plain, (start, end), trunk.style.neck.cowl_depth)


def _neckline(draft: Draft, style: SetInStyle) -> Draft:
    neck = neck_end(draft)
    depth, shorter = style.neck.depth, max(-style.fitted.front_longer, 0.0)
    if shorter:
        depth = depth + mm(shorter).called("taken up after fittings")
    draft = draft.down("N", "F", depth, "the neckline on the centre front")
    along = draft.paper.line("shoulder").leaving()
    path, manner = front_curve(style.neck.kind, draft["F"], draft[neck], along)
    return draft.curve("neckline", path, ("F", neck), manner)


def is_plain(drawn: SetIn, plan: Planned) -> bool:
    """Whether the front's side is the seam's own tracing."""
    return drawn.front_side.dart is None and not plan.room.lower and not drawn.swing


def _side(draft: Draft, body: Body, trunk: Trunk) -> Draft:
    """The front's own side, wider by the cup; its underarm may be turned out with a dart."""
    plan, drawn = trunk.plan, trunk.drawn
    fold, front = fold_of(draft), trunk.sides.front
    if is_plain(drawn, plan):
        wide = quarters(body, trunk.style, drawn, front=True)
        draft, names = seam_steps(draft, drawn.seam, front.upper, fold, wide)
        draft = mark_corner(draft, front.upper.end, trunk.style.lower)
        return draft.curve("side", front.upper, (*names, "M"))
    called = "the underarm"
    if drawn.swing:
        called = "the underarm, turned out and up about the armhole's middle by the dart's width"
    draft = set_off(draft, fold.underarm, "U", front.upper.start, called)
    end = (front.lower or front.upper).end
    draft = mark_corner(draft, end, trunk.style.lower)
    if front.dart:
        return side_dart_steps(draft, front, "U", "E", "M")
    return eased_side_steps(draft, front, "U", (waist_of(trunk.style), plan.room.lower), "M")


def _hem(draft: Draft, trunk: Trunk) -> Draft:
    plan, style = trunk.plan, trunk.style
    by, centre = plan.room.lower + style.fullness.front_hem_drop.mm, "B"
    if by > 0.05:
        draft, centre = _lower_centre(draft, by, style), "O"
    dart, waist = waist_dart(plan, trunk.drawn), waist_of(style)
    if dart and plan.room.lower > 0.05:
        called = "the waist line of the front, let down"
        draft, waist = draft.down(waist, "W1", mm(plan.room.lower), called), "W1"
    return hem_line(with_dart(draft, dart, waist), centre, style)


def _lower_centre(draft: Draft, by: float, style: SetInStyle) -> Draft:
    called = said("the {} on the centre front", LineName(style.lower))
    return draft.down("B", "O", mm(by), called)


def waist_dart(plan: Planned, drawn: SetIn) -> WaistDart | None:
    """Return the front's waist dart, where the seam leaves something for one."""
    if not drawn.seam.dart:
        return None
    side = drawn.seam.width(drawn.seam.at.waist) + drawn.share.at(drawn.seam.at.waist)
    levels = dart_levels(plan, drawn)
    return front_dart(drawn.seam.dart, levels, side, plan.apex, plan.room.lower)
