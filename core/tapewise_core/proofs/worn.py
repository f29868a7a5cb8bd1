"""A garment as it is cut, worn by other bodies than the one it was cut for.

What estimates turn out to be changes no line that is cut: it changes the body within. So what a
proof compares with the body is asked again with the pattern as it is and the body's side of the
comparison as it may be; a proof that compares lines with each other stays as it is.
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
from numpy.typing import NDArray

from tapewise_core.drafting.facts import Level
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.proofs.bare import LIES, above_bust
from tapewise_core.proofs.case import Case
from tapewise_core.proofs.fit import least_share
from tapewise_core.proofs.levels import ASKED, HALF_A_FIT
from tapewise_core.proofs.neck import HEAD_ROOM
from tapewise_core.proofs.proof import ProofId, Which
from tapewise_core.proofs.side import HALFWAY
from tapewise_core.proofs.sleeve import hand_share
from tapewise_core.proofs.stride import least_round

Many = NDArray[np.float64]
"""One number for each of many bodies."""

Bodies = Mapping[str, Many]
"""The numbers of many bodies, by name."""


def body_side(pattern: Pattern) -> dict[str, float]:
    """Return everything a draft compares with that is the body's own [mm], by name."""
    facts, hem = pattern.facts, pattern.facts.hem
    found: dict[str, float | None] = {"head": facts.head, "hand": facts.hand}
    if facts.underarm:
        found |= {"armscye": facts.underarm.armscye, "waist": facts.underarm.waist}
    if facts.bare:
        found[ABOVE] = next((one.body for one in facts.levels if one.name == "armscye"), None)
    if facts.waist:
        found["way in"] = facts.waist.way_in
    if hem:
        found |= {"knee": hem.knee, "ankle": hem.ankle}
    if hem and hem.below_nape is not None:
        found["nape to waist"] = hem.below_nape - hem.below_waist
    for level in filter(lambda one: one.asked is not None, facts.levels):
        found |= {f"{level.name} girth": level.body, f"{level.name} height": level.below_nape}
    found |= {f"{girth.name} round": girth.body for girth in pattern.girths}
    return {name: value for name, value in found.items() if value is not None}


def rooms(case: Case, bodies: Bodies) -> dict[Which, Many]:
    """Return what is left before each proof fails [mm] where other bodies wear the garment.

    ``bodies`` is the :func:`body_side` of many at once. A proof holds for those with no less
    than nothing left; proofs that know no body are left out.
    """
    asked = (level for level in case.facts.levels if level.asked is not None)
    moved = {level.name: _moved(level, case, bodies) for level in asked}
    return {
        **_ways_in(case, bodies),
        **_stride(case, bodies),
        **_underarm(case, bodies),
        **_girths(case, bodies, moved),
        **_as_asked(case, bodies, moved),
        **_bare(case, bodies),
    }


ABOVE = "above the bust"
"""The body's girth at the armholes."""


def _bare(case: Case, bodies: Bodies) -> dict[Which, Many]:
    """An armhole without a sleeve lies on the body."""
    bare = case.facts.bare
    if bare is None or ABOVE not in bodies:
        return {}
    girths = above_bust(case.facts)
    if girths is None:
        return {}
    return {(ProofId.GAPE, ""): bare.taken + LIES - (girths[0] - bodies[ABOVE]) / 2}


def _ways_in(case: Case, bodies: Bodies) -> dict[Which, Many]:
    """The head through the neck, and the hips or shoulders through the waist."""
    found, facts = {}, case.facts
    if facts.neck and facts.head:
        stretched = facts.neck.opening * (1 + case.cloth.usable) + facts.neck.opens
        found[ProofId.HEAD, ""] = stretched - bodies["head"] - HEAD_ROOM
    if facts.waist:
        stretched = facts.waist.opening * (1 + case.cloth.usable)
        found[ProofId.WAIST, facts.waist.what.value] = stretched - bodies["way in"]
    return found


def _stride(case: Case, bodies: Bodies) -> dict[Which, Many]:
    """A hem hangs from the shoulders or from the waist; above the knee the leg is free."""
    hem = case.facts.hem
    if hem is None or hem.knee is None or hem.ankle is None:
        return {}
    below = np.full_like(bodies["knee"], hem.below_waist)
    if hem.below_nape is not None:
        below = hem.below_nape - bodies["nape to waist"]
    least = least_round(below, bodies["knee"], bodies["ankle"])
    free = (below < bodies["knee"]) | ((hem.slit > 0) & (hem.above_slit is None))
    room = hem.round - least
    if hem.slit > 0 and hem.above_slit is not None:
        top = below - hem.slit
        there = hem.above_slit - least_round(top, bodies["knee"], bodies["ankle"])
        room = np.maximum(room, np.where(top < bodies["knee"], np.inf, there))
    return {(ProofId.STRIDE, ""): np.where(free, np.inf, room)}


def _underarm(case: Case, bodies: Bodies) -> dict[Which, Many]:
    under = case.facts.underarm
    if under is None:
        return {}
    armscye = bodies["armscye"]
    lowest = armscye + (bodies["waist"] - armscye) * HALFWAY
    return {
        (ProofId.UNDERARM_TOP, ""): under.level - armscye,
        (ProofId.UNDERARM_FOOT, ""): lowest - under.level,
    }


def _girths(case: Case, bodies: Bodies, moved: Bodies) -> dict[Which, Many]:
    """Each girth over the least that the cloth allows for these bodies, and a hand through it."""
    found: dict[Which, Many] = {}
    for one in case.pattern.girths:
        given = one.garment + moved.get(one.name.replace(" ", "_"), 0.0)
        least = bodies[f"{one.name} round"] * least_share(one.name, case.cloth)
        found[ProofId.GIRTH, one.name] = given - least
        if one.name == "sleeve hem" and case.facts.hand:
            found[ProofId.HAND, ""] = given - bodies["hand"] * hand_share(case.cloth)
    return found


def _as_asked(case: Case, bodies: Bodies, moved: Bodies) -> dict[Which, Many]:
    """How far the ease at each level may still move before it is another fit."""
    levels = {level.name: level for level in case.facts.levels}
    found: dict[Which, Many] = {}
    for about, asked in ASKED.items():
        if asked.level in moved:
            more = bodies[f"{asked.level} girth"] - levels[asked.level].body
            off = moved[asked.level] - more
            found[about, ""] = np.where(np.isinf(off), np.inf, HALF_A_FIT - np.abs(off))
    return found


def _moved(level: Level, case: Case, bodies: Bodies) -> Many:
    """How much wider the garment as cut is where the level really lies on these bodies [mm].

    It is straight from each of its levels to the next, and as wide as there beyond the last;
    a level that lies below its hem has all the room there is.
    """
    if level.below_nape is None:
        return np.zeros_like(bodies[f"{level.name} girth"])
    height, hem = bodies[f"{level.name} height"], case.facts.hem
    known = [(one.below_nape, one.given) for one in case.facts.levels if one.below_nape is not None]
    heights, given = zip(*known, strict=True)
    moved = np.interp(height, heights, given) - level.given
    reach = hem.below_nape if hem and hem.below_nape is not None else np.inf
    return np.where(height > max(reach, level.below_nape), np.inf, moved)
