"""The sleeve of a grown-on top on its draft: its hem, and how it meets the body."""

from __future__ import annotations

from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.guide_steps import Beside, off_line
from tapewise_core.parts.grown_arm import SleeveWish, hem_girth
from tapewise_core.parts.seam_steps import set_off
from tapewise_core.parts.shape.grown_drawn import PLACE_ROOM, Sleeve
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.units import Length, mm


def sleeve_steps(draft: Draft, plan: TopPlan, level: str) -> Draft:
    """Return the back with its sleeve; ``level`` is the point on the fold at the underarm."""
    sleeve = plan.grown.sleeve
    if sleeve is None:
        return hem_steps(draft, plan, front=False)
    return _underarm(_sleeve(draft, plan, sleeve), plan, sleeve, level)


def _sleeve(draft: Draft, plan: TopPlan, sleeve: Sleeve) -> Draft:
    """Both ends of the hem, and a long sleeve's width where the arm is fullest."""
    half = _hem_half(plan)
    if sleeve.wider > HAIR:
        half = half + mm(sleeve.wider).called("width to meet the body")
    draft = draft.square(("P", "E"), "H", half, "the end of the sleeve's hem")
    if plan.grown.arm.is_long:
        at = plan.grown.arm.place + PLACE_ROOM
        draft = draft.along("P", "E", "R", mm(at), "just below the upper arm's fullest")
        half = _corrected(_upper_half(plan), plan.grown.arm.upper / 2)
        called = "half the sleeve at the upper arm; the under-seam bends beside it"
        draft = draft.square(("P", "E"), "T", half, called, at="R")
    return draft


def _hem_half(plan: TopPlan) -> Length:
    if not plan.grown.arm.is_long:
        return _upper_half(plan)
    sleeve = plan.style.sleeve
    wish = SleeveWish(sleeve.length.mm, sleeve.ease.mm, sleeve.hem_ease.mm)
    return _corrected(hem_girth(plan.body, wish) / 2, plan.grown.arm.hem / 2)


def _corrected(half: Length, drawn: float) -> Length:
    """What a line's bend changes is made up for, so that the finished width is as asked."""
    more = drawn - half.mm
    return half + mm(more).called("bend") if abs(more) > HAIR else half


def _upper_half(plan: TopPlan) -> Length:
    """Half the sleeve where the arm is fullest."""
    room = plan.style.figure.full_arm.called("full arm")
    return (plan.body["upper_arm"] + plan.style.sleeve.ease + room) / 2


def _underarm(draft: Draft, plan: TopPlan, sleeve: Sleeve, level: str) -> Draft:
    """The hem, and the under-seam from its corner to halfway round the underarm's curve."""
    lines = plan.grown.lines
    assert lines is not None, "a sleeve has lines"
    draft = set_off(draft, level, "U", lines.under.end, "the underarm point")
    draft = _hem(draft, plan, sleeve)
    first = "H1" if "H1" in draft.paper.points else "H"
    return draft.curve("underarm", lines.under, (first, "U"))


def _hem(draft: Draft, plan: TopPlan, sleeve: Sleeve) -> Draft:
    """The hem's corner, moved along the under-seam where the sleeve narrows, and the hem."""
    end = plan.grown.hem.end
    if (end - sleeve.corner).length() >= HAIR:
        corner = off_line("H1", end, draft["E"], draft["H"])
        draft = draft.then(Beside("E", "H", "sleeve_hem", (corner,)))
    return hem_steps(draft, plan, front=False)


def hem_steps(draft: Draft, plan: TopPlan, *, front: bool) -> Draft:
    """Return the draft of back or front with half the sleeve's hem."""
    moved = plan.overarms[front].runs_out is not None
    path, plain = plan.hem(front=front), plan.grown.hem
    start, end = "E2" if moved else "E", "H1" if "H1" in draft.paper.points else "H"
    if plan.grown.cap:
        return draft.curve("sleeve_hem", path, (start, "Q1"))
    if len(plain.segments) == 1 and not moved:
        return draft.rule("sleeve_hem", start, end)
    return draft.curve("sleeve_hem", path, (start, end))
