"""What a grown-on top gives at each level beside what was asked, measured on its pieces."""

from __future__ import annotations

from tapewise_core.blocks.top.foot import curve_end
from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.drafting.facts import Level
from tapewise_core.drafting.pattern import Girth
from tapewise_core.drafting.piece import Piece
from tapewise_core.parts.arm import arm_at
from tapewise_core.parts.shape.grown_drawn import PLACE_ROOM
from tapewise_core.parts.shape.reach import reach
from tapewise_core.parts.trunk_levels import FLARES, HANGS, sleeve_level, trunk_levels
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

Quarters = tuple[Piece, ...]
"""Back and front of the side that the plan is of, then of the other."""


def trunk_given(halves: Quarters) -> dict[str, float]:
    """Return the finished girths at bust, waist and hip, darts closed [mm]."""
    found = {}
    for name in ("bust", "waist", "hip"):
        at = [half.points[f"{name}_side"].x for half in halves if f"{name}_side" in half.points]
        if len(at) == len(halves):
            found[name] = sum(at)
    if "waist" in found:
        found["waist"] -= sum(dart.intake for half in halves for dart in half.darts)
    return found


def levels_of(halves: Quarters, plan: TopPlan) -> tuple[Level, ...]:
    """Return the facts of every level that the top covers, from the top down."""
    seam, given = plan.grown.line, trunk_given(halves)
    asked = seam.asked * 4
    why = {"bust": _bust_why(plan), "waist": _waist_why(plan), "hip": _hip_why(plan)}
    shown = {**given, **_shown(plan)}
    trunk = trunk_levels(plan.side.levels, plan.style.trunk, asked, shown, why)
    return (*trunk, *_sleeve(halves[:2], plan))


def _shown(plan: TopPlan) -> dict[str, float]:
    """The levels that are shown and never aimed at, where the side seam passes them."""
    found, side, front = {}, plan.foot.side, plan.front.room.lower
    if front or plan.side.bodice:
        return {}
    for level in (plan.side.levels.under_bust, plan.side.levels.high_hip):
        if curve_end(plan.grown) <= level.depth <= side.end.y:
            found[level.name] = 4 * plan.grown.line.width(level.depth)
    return found


def _bust_why(plan: TopPlan) -> Told:
    """A bust line above the underarm point is measured on its curve: higher up is the sleeve."""
    bust, top = plan.side.levels.bust.depth, plan.foot.side.start.y
    if 0 < top - bust < NOTHING:
        return said("the underarm lies at the bust line, which is measured on its curve")
    if bust < top:
        words = "the underarm lies {} below the bust line, which is measured on its curve"
        return said(words, mm(top - bust))
    words = "the curve under the arm ends {} below the bust line, so that line is wider"
    return said(words, mm(max(curve_end(plan.grown) - bust, 0.0)))


NOTHING = 1.0
"""A difference [mm] that a tape would show as none (our choice)."""


def _waist_why(plan: TopPlan) -> Told:
    seam = plan.grown.line
    return seam.held_back or said("the side seam stays smooth from the underarm down")


def _hip_why(plan: TopPlan) -> Told:
    return HANGS if plan.grown.line.hip_held_back else FLARES


def _sleeve(halves: Quarters, plan: TopPlan) -> tuple[Level, ...]:
    """The sleeve's levels: at the upper arm and at the hem.

    A cap ends above the upper arm: its hem is the armhole, which is shown and not aimed at.
    """
    given = arm_girths(halves, plan)
    upper, ease = _upper_asked(plan)
    if plan.grown.cap:
        return (sleeve_level("upper_arm", upper, None, given["upper_arm"]),)
    why = _wider_why(plan)
    found = sleeve_level("upper_arm", upper, ease, given["upper_arm"], why)
    at_hem, hem_ease = _hem_asked(plan)
    if given["sleeve_hem"] < at_hem + hem_ease - SLANTED:
        why = SLANTS
    return found, sleeve_level("sleeve_hem", at_hem, hem_ease, given["sleeve_hem"], why or BENT)


SLANTS, SLANTED = said("the sleeve's seams may slant no more than they do"), 5.0
"""Why a hem is narrower than asked, and by how much at the least [mm]."""

BENT = said("the hem is bent to meet the seam under the arm square")
"""Why a hem is a little longer than the sleeve is wide."""


def _upper_asked(plan: TopPlan) -> tuple[float, float]:
    """The arm and its ease where the sleeve leaves the body [mm]: the upper arm's own, or less on
    a sleeve that tapers and leaves it further down."""
    body, style, arm = plan.body, plan.style, plan.grown.arm
    upper = body["upper_arm"].mm
    ease = style.sleeve.ease.mm + style.figure.full_arm.mm
    past = _past_upper(plan)
    if past <= 0:
        return upper, ease
    at_hem, hem_ease = _hem_asked(plan)
    full, hem = upper + ease, at_hem + hem_ease
    first = arm.place + PLACE_ROOM
    asked = full + (hem - full) * past / (arm.length - first)
    there = arm_at(body, first + past).mm
    return there, asked - there


def _hem_asked(plan: TopPlan) -> tuple[float, float]:
    """The arm at the sleeve's hem, and the ease there [mm]."""
    body, style, arm = plan.body, plan.style, plan.grown.arm
    short = arm.length <= arm.place
    ease = style.sleeve.ease.mm + style.figure.full_arm.mm
    return arm_at(body, arm.length).mm, ease if short else style.sleeve.hem_ease.mm


def _past_upper(plan: TopPlan) -> float:
    """How far beyond the upper arm's fullest a long sleeve leaves the body [mm]."""
    if not plan.grown.arm.is_long:
        return 0.0
    return _station(plan) - plan.grown.arm.place - PLACE_ROOM


def _wider_why(plan: TopPlan) -> Told:
    sleeve = plan.grown.sleeve
    if sleeve is None or not plan.grown.lines:
        return ()
    if sleeve.wider > 0.1:
        return said("the hem is {} wider, so that the sleeve meets the body", mm(2 * sleeve.wider))
    return said("the under-seam bends there, and its bend is softened") if sleeve.deeper else ()


def arm_girths(halves: Quarters, plan: TopPlan) -> dict[str, float]:
    """Return one sleeve's girths at the upper arm and at its hem, measured on the pieces [mm]."""
    hem = sum(half.length("sleeve_hem") for half in halves)
    if plan.grown.cap:
        return {"upper_arm": hem}
    arm = plan.grown.arm
    at = _station(plan) if arm.is_long else arm.length - AT_HEM
    upper = sum(_half_at(half, plan, at) for half in halves)
    return {"upper_arm": upper, "sleeve_hem": hem}


def _station(plan: TopPlan) -> float:
    """Where the upper arm is measured past the shoulder's end: where the sleeve leaves the body
    at the least [mm]."""
    arm, sleeve = plan.grown.arm, plan.grown.sleeve
    assert sleeve is not None, "a long sleeve is no cap"
    begins = (sleeve.begins - arm.shoulder).dot(plan.along)
    return max(arm.place + PLACE_ROOM, begins)


AT_HEM = 0.01
"""A short sleeve's width is taken so far before its hem [mm]."""


def _half_at(half: Piece, plan: TopPlan, past: float) -> float:
    """Half a sleeve's girth square to the overarm, so far past the shoulder's end [mm]."""
    start, way = plan.shoulder.end + plan.along * past, plan.along.square()
    found = [reach(start, way, half.edge(name).path) for name in ("underarm", "side")]
    return min((value for value in found if value is not None), default=half.length("sleeve_hem"))


def girths_of(levels: tuple[Level, ...], plan: TopPlan) -> tuple[Girth, ...]:
    """Return the closed girths beside the body's, from the levels that the top covers."""
    body, arm, given = plan.body, plan.grown.arm, {level.name: level.given for level in levels}
    names = [name for name in ("bust", "waist", "hip") if name in given]
    trunk = (Girth(name, given[name], body[name].mm) for name in names)
    upper = Girth("upper arm", given["upper_arm"], _upper_asked(plan)[0])
    hem = given.get("sleeve_hem", given["upper_arm"])
    return (*trunk, upper, Girth("sleeve hem", hem, arm_at(body, arm.length).mm))
