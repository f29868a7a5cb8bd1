"""One side of a set-in body, planned and drawn: what drafts tell and pieces are cut by."""

from __future__ import annotations

import math
from collections.abc import Sequence

from tapewise_core.blocks.set_in.ends import Sides, at_bust, smooth
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.wish import Planned
from tapewise_core.drafting.seam import Fullness
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import distance_at_height
from tapewise_core.parts.darts import fullness
from tapewise_core.parts.shape.bust_room import easable
from tapewise_core.parts.shape.curves import least_radii
from tapewise_core.parts.shape.set_in import SetIn

WITHIN = 0.95
"""An allowance is no wider than this share of the tightest bend's radius (our choice): a wider one
would be cut into by its own other side."""


class Trunk(Frozen):
    """Back and front as drafted, with all that their pieces are cut by.

    ``armhole_allowance`` is that of armhole and cap [mm].
    """

    plan: Planned
    drawn: SetIn
    sides: Sides
    style: SetInStyle
    full: Fullness | None
    armhole_allowance: float

    def levels(self, *, front: bool) -> dict[str, float]:
        """Return the levels' heights on a piece: below its room a front is let down [mm]."""
        at, lower = self.plan.wish.levels, self.plan.room.lower if front else 0.0
        seam = self.drawn.seam.at
        part = 0.0 if self.sides.front.dart else smooth(seam.bust, seam.underarm, seam.waist)
        found = {
            "armscye": at.armscye.depth,
            "bust": seam.bust + part * lower,
            "under_bust": at.under_bust.depth + lower,
            "waist": at.waist.depth + lower,
        }
        if self.style.bodice:
            return found
        return {**found, "high_hip": at.high_hip.depth + lower, "hip": at.hip.depth + lower}


def armhole_allowance(sides: Sequence[SetIn], style: SetInStyle) -> float:
    """Return armholes' and cap's allowance [mm]: as asked, or what their tightest bend takes."""
    paths = [half.path for one in sides for half in (one.back_armhole, one.front_armhole)]
    caps = [one.cap.path for one in sides if one.cap]
    tightest = min(least_radii(path)[0] for path in (*paths, *caps))
    asked = style.bare.allowance.mm if style.bare else style.allowances.along("armhole")
    return min(asked, math.floor(tightest * WITHIN))


def trunk_of(plan: Planned, drawn: SetIn, style: SetInStyle, allowance: float) -> Trunk:
    """Return the trunk, with what the front's side is longer by and where it is taken in."""
    sides = at_bust(_ended(plan, drawn, style), drawn, plan.wish)
    back, front = sides.back, sides.front
    waist = distance_at_height(back, drawn.seam.at.waist) or back.length()
    more = front.length - back.length()
    gathered = bool(plan.room.gathered) or more > easable(plan.wish.stretch) + 1
    full = fullness(front, back.length(), waist, gathered=gathered)
    return Trunk(plan, drawn, sides, style, full, allowance)


def _ended(plan: Planned, drawn: SetIn, style: SetInStyle) -> Sides:
    """The sides down to the hem; a bodice's end at the waist as they are drawn."""
    if style.bodice:
        return Sides(drawn.back_side, drawn.front_side)
    return plan.ends(drawn, style)
