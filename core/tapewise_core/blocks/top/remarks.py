"""What the drafter of a top should read: amounts taken from the body, a sleeve that is changed."""

from __future__ import annotations

from tapewise_core.blocks.top.cut import NARROW
from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.parts.bust_told import room_told
from tapewise_core.parts.figure_told import taken_told
from tapewise_core.parts.shape.bust_room import Wish, worth_measuring
from tapewise_core.parts.trunk_levels import hangs_told
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import mm


def remarks(plan: TopPlan) -> tuple[Told, ...]:
    """Return the sentences, with their lengths not yet spelt."""
    style = plan.style
    return (
        *taken_told(style.fullness),
        *_bust(plan),
        *_chosen(style),
        *_sleeve(plan),
        *_side(plan),
    )


def _bust(plan: TopPlan) -> tuple[Told, ...]:
    """How the front's own length is drawn, what is left of it, and when to measure it."""
    room, found = plan.front.room, [room_told(plan.front.room)]
    body = plan.body
    if body.has("high_bust") and plan.style.trunk.bust_room is not Wish.NONE:
        measured = body.has("front_waist_length") and body.has("back_waist_length")
        longer_by = room.surplus if measured else None
        found.append(worth_measuring(body["bust"].mm, body["high_bust"].mm, longer_by))
    return tuple(words for words in (*found, *plan.front.told) if words)


CHOSEN_SAYS = {
    "round-back": "The back is drafted for a round (or, with a minus, flat) back: the side neck "
    "lies that much lower against the nape",
    "forward-shoulder": "The shoulder seam lies further to the front at the shoulder point, for "
    "shoulders that stand forward",
    "broad-neck": "Each side of the neck is drafted broader than its girth tells",
    "full-arm": "The sleeve has more room round the upper arm",
}


def _chosen(style: TopStyle) -> tuple[Told, ...]:
    return tuple(
        said("{}: {}.", says, style.figure.amount(key))
        for key, says in CHOSEN_SAYS.items()
        if abs(style.figure.amount(key).mm) > 0.05
    )


def _sleeve(plan: TopPlan) -> tuple[Told, ...]:
    """A cap that had to be longer than asked, a hem that had to be wider."""
    cap, sleeve, found = plan.grown.cap, plan.grown.sleeve, []
    if cap:
        words = "The cap's hem is the armhole: {} round, more than the arm and its ease."
        found.append(said(words, mm(cap.opening)))
    if cap and cap.longer > 0.5:
        words = "The cap is {} longer than asked, so that its hem stands outside the body."
        found.append(said(words, mm(cap.longer)))
    if cap and plan.style.allowances.along("sleeve_hem") > NARROW:
        words = "The cap's hem bends in under the arm, so it has only {} to turn or to bind."
        found.append(said(words, mm(NARROW)))
    if sleeve and sleeve.wider > 0.1:
        words = "The sleeve is {} wider than asked, so that it meets the body under the arm."
        found.append(said(words, mm(2 * sleeve.wider)))
    return tuple(found)


def _side(plan: TopPlan) -> tuple[Told, ...]:
    """What the side seam could not give, and the darts it needs."""
    seam = plan.grown.line
    found = [seam.held_back, seam.hip_held_back]
    if not plan.side.bodice:
        found.append(hangs_told(plan.body, plan.style.trunk))
    if plan.back_dart:
        words = "Waist darts of {} in each half of back and front; set {} to none for none."
        found.append(said(words, mm(plan.back_dart.intake), OptionKey("waist-darts")))
    return tuple(words for words in found if words)
