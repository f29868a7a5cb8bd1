"""The front of the grown-on-sleeve jersey top: the back traced, with its own neck and bust room.

The neck point is raised or lowered, the front below the bust is let down for a dart, eased
length or gathers, the centre front's hem may be lower, and the neckline is its own. Z is the
front's side neck, F the neckline on the centre front, O the hem there.
"""

from __future__ import annotations

from tapewise_core.blocks.top.back import hem_steps
from tapewise_core.blocks.top.overarm import front_overarm
from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.blocks.top.sleeve import hem_steps as sleeve_hem
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.parts.dart_steps import eased_side_steps, side_dart_steps, waist_dart_steps
from tapewise_core.parts.grown_overarm import MOVED
from tapewise_core.parts.neckline import front_curve
from tapewise_core.parts.seam_steps import set_off
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.text.told import LineName, said
from tapewise_core.units import mm

KEPT = (*"NAGWJBPEHUMSV", "V1", "H1", "Q1", "Q2", "Q3", "Q4")
"""The back's points that the front may take over; of these it traces what it needs."""


def draft_front(back: Draft, plan: TopPlan, title: str = "Front") -> Draft:
    """Return the front, drafted over the finished back with the centre front on a fold."""
    draft = Draft(title).trace(back.title, _traced(back, plan))
    draft = front_overarm(draft, plan)
    draft = sleeve_hem(draft, plan, front=True)
    draft = _neckline(draft, plan)
    draft, corner = _side(draft, plan)
    if plan.front_dart:
        draft, waist = _waist_fold(draft, plan)
        draft = waist_dart_steps(draft, plan.front_dart, waist)
    return _hem(draft, plan, corner)


def _traced(back: Draft, plan: TopPlan) -> DraftingPaper:
    """What the front takes over from the back: its side too, where the front's is no other."""
    points = [name for name in back.paper.points if name in KEPT]
    lines = [name for name in back.paper.lines if name == "underarm"]
    if plan.front.room.lower < 1e-6:
        lines.append("side")
    return back.paper.only(points, lines)


def _neckline(draft: Draft, plan: TopPlan) -> Draft:
    """The neckline; a cowl's is drawn with its shoulder."""
    if plan.style.neck.cowl:
        return draft
    neck = next(name for name in ("Z1", "Z", "S") if name in draft.paper.points)
    depth = plan.style.neck.depth
    if plan.room.raised < -MOVED:
        depth = depth + mm(-plan.room.raised).called("lower neck point")
    draft = draft.down("N", "F", depth, "the neckline on the centre front")
    overarm = draft.paper.line("shoulder").leaving()
    path, manner = front_curve(plan.style.neck.kind, draft["F"], draft[neck], overarm)
    return draft.curve("neckline", path, ("F", neck), manner)


def _side(draft: Draft, plan: TopPlan) -> tuple[Draft, str]:
    """The front's own side, where it is let down for the bust, and its corner at the hem."""
    front, lower = plan.front.side, plan.front.room.lower
    if lower < 1e-6:
        return draft, "M"
    path = front.lower or front.upper
    called = said("the side at the {}", LineName(plan.lower))
    draft = set_off(draft, "B", "M1", path.end, called)
    top = "Q1" if plan.grown.cap else "U"
    if front.dart:
        return side_dart_steps(draft, front, top, "G", "M1"), "M1"
    fold = "B" if plan.side.bodice else "W"
    return eased_side_steps(draft, front, top, (fold, lower), "M1"), "M1"


def _waist_fold(draft: Draft, plan: TopPlan) -> tuple[Draft, str]:
    """The point on the fold from which the waist dart is set off, let down with the front."""
    fold, lower = "B" if plan.side.bodice else "W", plan.front.room.lower
    if lower < HAIR:
        return draft, fold
    return draft.down(fold, "W1", mm(lower), "the front's waist line, let down"), "W1"


def _hem(draft: Draft, plan: TopPlan, corner: str) -> Draft:
    """The back's lower edge, lower at the centre by what is wanted, running out at the side."""
    drop, centre = mm(plan.front.fold - plan.foot.fold), "B"
    if drop.mm > HAIR:
        called = said("the {} on the centre front", LineName(plan.lower))
        draft, centre = draft.down("B", "O", drop, called), "O"
    return hem_steps(draft, plan, plan.front.fold, centre, corner)
