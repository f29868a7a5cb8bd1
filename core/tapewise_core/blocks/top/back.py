"""The back of the grown-on-sleeve jersey top.

::

          S____P________E        N  nape, centre back      A  armscye line
      N__/     |        |        S  side neck              G  bust line
      |                 |        P  shoulder point         W  waist line
      A      U__________H        E  end of the overarm     J  hip line
      G     Q2                   H  end of the sleeve's hem
      W     Q3                   U  underarm, where the rounded corner is halfway round
      J      Q4                  Q2 to Q4  the side at bust, waist and hip
      B______M                   M  side at the hem        B  hem

A neckline wider than the neck begins at N2 on the overarm line, a lower one at
N1 below N. Numbers without another source are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.blocks.top.foot import hem_to
from tapewise_core.blocks.top.overarm import back_overarm
from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.blocks.top.sleeve import sleeve_steps
from tapewise_core.drafting.draft import Draft
from tapewise_core.parts.dart_steps import waist_dart_steps
from tapewise_core.parts.grown_body import lift_of
from tapewise_core.parts.hem import HEM, centre_back, mark_corner, slit_told
from tapewise_core.parts.neckline import back_neckline, neck_of, neckline_off
from tapewise_core.parts.seam_steps import Fold, SeamQuarters, seam_steps
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.parts.side_draft import NAPE_AT
from tapewise_core.text.told import LineName, said
from tapewise_core.units import Length, mm


def draft_back(plan: TopPlan, title: str = "Back") -> Draft:
    """Return the back, drafted with the centre back on a fold."""
    draft = back_overarm(_lines_across(plan, title), plan)
    draft = _neckline(draft, plan)
    draft, fold = _fold(draft, plan)
    seam, side = plan.grown.line, plan.foot.side
    draft, names = seam_steps(draft, seam, side, fold, _quarters(plan))
    draft = sleeve_steps(draft, plan, fold.underarm)
    draft = _side(draft, plan, names)
    if plan.back_dart:
        draft = waist_dart_steps(draft, plan.back_dart, fold.waist)
    fullness, shorter = plan.style.fullness, plan.style.fitted.back_shorter
    draft, centre = centre_back(draft, plan.lower, fullness.full_seat, shorter)
    return hem_steps(draft, plan, plan.back_hem_fold, centre, "M")


def _lines_across(plan: TopPlan, title: str) -> Draft:
    """The levels; a round back lifts the nape off a waist that was not measured from it."""
    body, style = plan.body, plan.style
    longer = 1 + style.trunk.lengthened

    def below(key: str) -> Length:
        length = body[key]
        if longer != 1:
            length = (length * longer).called(f"{body.name(key)}, lengthened for a close fit,")
        return length

    lift = lift_of(body, style.figure)
    bust = plan.side.levels.bust
    draft = (
        Draft(title)
        .start("N", NAPE_AT)
        .down("N", "A", below("armscye_depth") + lift, "the armscye line")
        .down("N", "G", mm(bust.depth), said("the bust line, {}", bust.how))
        .down("N", "W", below("back_waist_length") + lift, "the waist line")
    )
    if not plan.side.bodice:
        draft = draft.down("W", "J", below("hip_depth"), "the hip line")
    return draft.down("N", "B", style.trunk.length + lift, said("the {}", LineName(plan.lower)))


def _fold(draft: Draft, plan: TopPlan) -> tuple[Draft, Fold]:
    """The points on the fold from which the side is set off: a low underarm moves two of them."""
    at, levels = plan.grown.line.at, plan.side.levels
    underarm, bust = "A", "G"
    if at.underarm - levels.armscye.depth > HAIR:
        underarm = "V"
        draft = draft.down("N", "V", mm(at.underarm), "the underarm's level")
    if at.bust - levels.bust.depth > HAIR:
        bust = "V1"
        words = "where the side begins to go in, below the underarm's curve"
        draft = draft.down("N", "V1", mm(at.bust), words)
    if plan.side.bodice:
        return draft, Fold(underarm, bust, "B", None)
    return draft, Fold(underarm, bust, "W", "J")


def _quarters(plan: TopPlan) -> SeamQuarters:
    """Bust and hip in quarters, with their working."""
    body, trunk = plan.body, plan.style.trunk
    return SeamQuarters((body["bust"] + trunk.bust_ease) / 4, (body["hip"] + trunk.hip_ease) / 4)


def _neckline(draft: Draft, plan: TopPlan) -> Draft:
    """Square to the centre back and flat there, nearly square to the overarm."""
    depth, start = plan.style.neck.back_depth, "N"
    if abs(depth.mm) > HAIR:
        draft, start = neckline_off(draft, depth), "N1"
    neck = neck_of(draft)
    path = back_neckline(draft[start], draft[neck], draft.paper.line("shoulder").leaving())
    return draft.curve("neckline", path, (start, neck))


def _side(draft: Draft, plan: TopPlan, names: tuple[str, ...]) -> Draft:
    """The side from the underarm down to the hem."""
    path = plan.foot.side
    draft = mark_corner(draft, path.end, plan.lower)
    top = () if plan.grown.cap else ("U",)
    below = [name for name in names if draft[name].y < path.end.y - HAIR]
    draft = draft.curve("side", path, (*top, *below, "M"))
    return slit_told(draft, plan.style.hem)


def hem_steps(draft: Draft, plan: TopPlan, fold: float, centre: str, corner: str) -> Draft:
    """Return the draft with its lower edge, from the fold to the side."""
    sides = [name for name in ("side_2", "side") if name in draft.paper.lines]
    path = hem_to(draft.paper.line(sides[0]), fold, plan.style.hem)
    if plan.lower == HEM or abs(path.start.y - path.end.y) > HAIR:
        return draft.curve(plan.lower, path, (centre, corner))
    return draft.rule(plan.lower, centre, corner)
