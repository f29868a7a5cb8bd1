"""The sleeve of a grown-on top on its draft: its hem, and how it meets the body."""

from __future__ import annotations

from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.passing import Passing
from tapewise_core.parts.grown_arm import SleeveWish, hem_girth
from tapewise_core.parts.shape.grown_cap import Cap
from tapewise_core.parts.shape.grown_lines import STRAIGHT_HEM
from tapewise_core.parts.shape.grown_sleeve import PLACE_ROOM, Sleeve
from tapewise_core.text.told import Told, said
from tapewise_core.units import Length, mm

HAIR = 0.05
"""Nobody draws less [mm]."""


def sleeve_steps(draft: Draft, plan: TopPlan) -> Draft:
    """Return the back with its sleeve; the side's own points are on the paper."""
    if plan.grown.cap:
        return _cap(draft, plan, plan.grown.cap)
    sleeve = plan.grown.sleeve
    assert sleeve is not None, "a grown-on sleeve is either a sleeve or a cap"
    return _underarm(_sleeve(draft, plan, sleeve), plan, sleeve)


def _sleeve(draft: Draft, plan: TopPlan, sleeve: Sleeve) -> Draft:
    """Both ends of the hem, and a long sleeve's width where the arm is fullest."""
    called = "the end of the sleeve's hem"
    half = _hem_half(plan)
    if sleeve.wider > HAIR:
        half = half + mm(sleeve.wider).called("what lets it meet the body")
    draft = draft.square(("P", "E"), "H", half, called)
    if plan.grown.arm.is_long:
        at = plan.grown.arm.place + PLACE_ROOM
        words = "just below the upper arm's fullest"
        draft = draft.along("P", "E", "R", mm(at), words)
        way = "downward, square to P–E,"
        half = _corrected(_upper_half(plan), plan.grown.arm.upper / 2)
        draft = draft.toward("R", "T", half, sleeve.square, way, "the sleeve at the upper arm")
    return draft


def _hem_half(plan: TopPlan) -> Length:
    if not plan.grown.arm.is_long:
        return _upper_half(plan)
    sleeve = plan.style.sleeve
    wish = SleeveWish(sleeve.length.mm, sleeve.ease.mm, sleeve.hem_ease.mm)
    return _corrected(hem_girth(plan.body, wish) / 2, plan.grown.arm.hem / 2)


def _corrected(half: Length, drawn: float) -> Length:
    """What a line's bend takes is added, so that the finished width is as asked."""
    more = drawn - half.mm
    return half + mm(more).called("what the bend takes") if abs(more) > HAIR else half


def _upper_half(plan: TopPlan) -> Length:
    """Half the sleeve where the arm is fullest."""
    room = plan.style.figure.full_arm.called("full arm")
    return (plan.body["upper_arm"] + plan.style.sleeve.ease + room) / 2


def _underarm(draft: Draft, plan: TopPlan, sleeve: Sleeve) -> Draft:
    """The corner under the arm, rounded, and the lines that meet there."""
    lines = plan.grown.lines
    assert lines is not None, "a sleeve has lines"
    draft = _corner(draft, sleeve)
    start = "T" if plan.grown.arm.is_long else "H"
    reach = mm((sleeve.meeting - sleeve.ends).length())
    draft = draft.along("Y", start, "Y1", reach, "where the rounding of the underarm begins")
    draft = draft.toward(
        "Y", "Y2", reach, sleeve.ends - sleeve.meeting, "down along the side seam", "where it ends"
    )
    draft = _hem(draft, plan, sleeve)
    by = mm((lines.under.end - draft["Y"]).length())
    check = Passing("U", lines.under.end, "Y", by, "at its nearest: the underarm point")
    first = "H1" if "H1" in draft.paper.points else "H"
    bend = ", bent gently at T," if start == "T" else ""
    manner = said(
        f"Straight{bend} to Y1, then round towards Y2 with a radius of {{}}.", mm(sleeve.radius)
    )
    return draft.curve("underarm", lines.under, (first, "Y1"), manner, (check,))


def _corner(draft: Draft, sleeve: Sleeve) -> Draft:
    """Where the under-seam would meet the side's straight line, from a point on that line."""
    start = max(("Q1", "Q2"), key=lambda name: (sleeve.meeting - draft[name]).length())
    way = sleeve.meeting - draft[start]
    told = f"{'up' if way.y < 0 else 'down'} along the side seam's straight line"
    return draft.toward(start, "Y", mm(way.length()), way, told, "the corner under the arm")


def _hem(draft: Draft, plan: TopPlan, sleeve: Sleeve) -> Draft:
    """The hem's corner, moved along the under-seam where the sleeve narrows, and the hem."""
    way = plan.grown.hem.end - sleeve.corner
    if way.length() >= HAIR:
        called = "the hem's corner, moved because the sleeve narrows"
        told = "outwards along the under-seam, carried on"
        draft = draft.toward("H", "H1", mm(way.length()), way, told, called)
    return hem_steps(draft, plan, front=False)


def hem_steps(draft: Draft, plan: TopPlan, *, front: bool) -> Draft:
    """Return the draft of back or front with half the sleeve's hem."""
    moved = plan.overarms[front].runs_out is not None
    path, plain = plan.hem(front=front), plan.grown.hem
    start, end = "E2" if moved else "E", "H1" if "H1" in draft.paper.points else "H"
    if plan.grown.cap:
        names = [name for name in ("Y1", "Y2") if name in draft.paper.points]
        return draft.curve("sleeve_hem", path, (start, *names, "Q1"), _cap_manner(plan.grown.cap))
    if len(plain.segments) == 1 and not moved:
        return draft.rule("sleeve_hem", start, end)
    straight = mm(STRAIGHT_HEM * (plain.end - plain.start).length())
    words = "Square to the overarm for the first {}, then bent to meet the under-seam square."
    return draft.curve("sleeve_hem", path, (start, end), said(words, straight))


def _cap(draft: Draft, plan: TopPlan, cap: Cap) -> Draft:
    """A cap's hem: straight down from the overarm and round into the side seam at Q1."""
    by = mm((cap.knee - cap.hem_top).length())
    draft = draft.square(("P", "E"), "H", by, "straight below on the underarm's level")
    first, rest = cap.hem.start, cap.hem.segments[1].start
    assert (rest - first).length() > 0, "a cap's hem begins straight"
    reach = (cap.knee - rest).length()
    draft = draft.along("H", "E", "Y1", mm(reach), "where the rounding begins")
    if cap.knee.x - reach - cap.underarm.x > HAIR:
        draft = draft.inward("H", "Y2", mm(reach), "where it ends")
    return hem_steps(draft, plan, front=False)


def _cap_manner(cap: Cap) -> Told:
    words = "Straight to Y1, then round with a radius of {} into the level of the underarm."
    return said(words, mm(cap.radius))
