"""Drawing a straight skirt's back and front, each a half on the fold.

::

      A───────B  S     A  the waist line on the fold     K  the waist itself there
      K  .  ˙ .˙ |     B  its quarter                    S  the side at the waist
      |         / |    H  the hip line                   Q  the side there
      H───────────Q    D  the hem                        G  the side there
      |           |
      |           |    Of a vent at the centre back: T its top on the centre, V and P the
      D___________G    hem's and the upper corner of its underlap.

The front is traced from the back; K is F there.
"""

from __future__ import annotations

from tapewise_core.blocks.skirt.straight_plan import StraightPlan
from tapewise_core.blocks.skirt.straight_style import Vent
from tapewise_core.drafting.draft import Draft
from tapewise_core.parts.seam_steps import set_off
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.text.amounts import About
from tapewise_core.text.told import Told, said
from tapewise_core.units import Length, cm, mm

ABOVE, BESIDE = 100.0, 80.0
"""How far from the paper's edges a draft begins, so that its side rises and a vent's underlap and
the allowances find room [mm] (our choice)."""

UNDERLAP = cm(4)
"""How wide a vent's underlap is (common practice)."""

SLOPED = UNDERLAP
"""The underlap's upper edge slopes up to the seam at 45 degrees (common practice)."""


def draft_back(plan: StraightPlan) -> Draft:
    """Return the back half as drawn by hand."""
    style, shape = plan.style, plan.half(front=False)
    fold = "centre back" + ("" if plan.vented else ", on the fold")
    draft = _side(_levels("Skirt back", plan, fold, "centre back"), plan, front=False)
    centre = "A"
    if abs(style.dip.mm) > HAIR:
        centre, called = "K", "the waist at the centre back"
        lower = style.dip.mm > 0
        way, by = (draft.down, style.dip) if lower else (draft.up, mm(-style.dip.mm))
        draft = way("A", "K", by, called)
    draft = draft.curve("waist", shape.back_waist, (centre, "S"))
    draft = draft.curve("hem", shape.hem, ("D", "G"))
    return _vent(_slit(draft, plan), plan, centre)


def _levels(title: str, plan: StraightPlan, fold: str, centre: str) -> Draft:
    """The waist line, hip line and hem, marked on the fold; a vent's underlap lies beyond it."""
    at = said("near the top left of the paper, {} from its top", About(ABOVE))
    if plan.vented and centre == "centre back":
        at = (*at, " and ", About(BESIDE), " from its left edge")
    return (
        Draft(title)
        .start("A", said("the waist line on the {}, {}", fold, at))
        .down("A", "H", plan.depth, "the hip line")
        .down("A", "D", plan.style.length, f"the hem at the {centre}")
    )


def _side(draft: Draft, plan: StraightPlan, *, front: bool) -> Draft:
    """Set off the side's points from the centre and draw it."""
    shape = plan.half(front=front)
    flare, corner = shape.side.end.x - shape.hip.x, shape.corner
    out = _exact(_quarter(plan, plan.edge, front), corner.x, "what its curve is longer")
    rises = -corner.y > HAIR
    draft = draft.across("A", "B" if rises else "S", out, "a quarter of the waist's edge")
    if rises:
        draft = draft.up("B", "S", mm(-corner.y), "the side at the waist")
    wide = _exact(_quarter(plan, plan.hip, front), shape.hip.x, "")
    draft = draft.across("H", "Q", wide, _hip_words(plan))
    words = "the side at the hem"
    if flare > HAIR:
        words += ", flared out"
    elif flare < -HAIR:
        words += ", pegged in"
    draft = set_off(draft, "Q", "G", shape.side.end, words)
    return draft.curve("side", shape.side, ("S", "Q", "G"))


def _quarter(plan: StraightPlan, whole: Length, front: bool) -> Length:
    """A quarter of a girth, and what the front has more and the back less of it."""
    if not plan.further:
        return whole / 4
    more = plan.further if front else -plan.further
    return whole / 4 + mm(more).called("the bodice's side seam")


def _hip_words(plan: StraightPlan) -> Told:
    if plan.shape.hip.x > plan.shape.wish.hip + HAIR or plan.shape.hip.x > plan.hip.mm / 4 + HAIR:
        return ("the side on the hip line, let out to hang from what is wider above it",)
    return ("the side on the hip line, a quarter of the hip with its ease",)


def _exact(told: Length, drawn: float, less: str) -> Length:
    """A quarter with its working where it is what is drawn, or what is taken off it."""
    off = told.mm - drawn
    if abs(off) < 0.01:
        return told
    return told - mm(off).called(less) if less and 0 < off < MOST_OFF else mm(drawn)


MOST_OFF = 15.0
"""A quarter is told as less a little no further than this [mm] (our choice)."""


def _slit(draft: Draft, plan: StraightPlan) -> Draft:
    if plan.style.vent is not Vent.SLITS:
        return draft
    return draft.note(
        "Mark the top of the slit: from G measure ", plan.style.vent_length,
        " up along the side. The side seam is sewn down to there.",
    )  # fmt: skip


def _vent(draft: Draft, plan: StraightPlan, centre: str) -> Draft:
    """The underlap beside the centre back, and the seam above it."""
    if not plan.vented:
        return draft
    long = plan.style.vent_length
    return (
        draft.up("D", "T", long, "the top of the vent")
        .inward("D", "V", UNDERLAP, "the underlap at the hem")
        .up("V", "P", long - SLOPED, "the underlap's upper corner")
        .rule("vent_hem", "D", "V")
        .rule("vent", "V", "P")
        .rule("vent_top", "P", "T")
        .rule("centre_back", "T", centre)
    )


def draft_front(back: Draft, plan: StraightPlan) -> Draft:
    """Return the front half: the back's side and hem, with a waist of its own."""
    draft, centre = _front_side(back, plan), "A"
    if plan.style.belly.mm > HAIR:
        centre = "F"
        draft = draft.up("A", "F", plan.style.belly, "the waist at the centre front")
    draft = draft.curve("waist", plan.half(front=True).front_waist, (centre, "S"))
    return _slit(draft, plan) if plan.further else draft


def _front_side(back: Draft, plan: StraightPlan) -> Draft:
    """The back traced, or drawn anew where the side seam does not lie halfway."""
    if plan.further:
        draft = _levels("Skirt front", plan, "centre front, on the fold", "centre front")
        draft = _side(draft, plan, front=True)
        return draft.curve("hem", plan.half(front=True).hem, ("D", "G"))
    known = [name for name in back.paper.points if name in ("A", "S", "Q", "G", "D")]
    paper = back.paper.only(known, ("side", "hem"))
    fold = "centre back from A to D as the front's fold" if plan.vented else "fold"
    return Draft("Skirt front").trace(back.title, paper, fold)
