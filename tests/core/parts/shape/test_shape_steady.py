"""A little more of a girth is a little more of the seam, and never less of the girth."""

from __future__ import annotations

import numpy as np
import pytest
from msgspec.structs import replace
from shape_people import people, wish

from tapewise_core.parts.shape.set_in import set_in
from tapewise_core.parts.shape.side_seam import SideSeam, side_seam
from tapewise_core.parts.shape.side_slopes import SideLevels, SideQuarters, SideWish

WISHES = (
    SideWish(0.5),
    SideWish(1.0),
    SideWish(1.0, darts=False),
    SideWish(0.6, flare=0.16),
    SideWish(1.0, grown_on=True),
)
MOST = 6.0
WRONG, WRONG_WITH_DARTS = 1.6, 2.6


def widths(seam: SideSeam) -> np.ndarray:
    """The seam's quarter at 31 heights."""
    return np.array([seam.width(y) for y in heights(seam)])


def heights(seam: SideSeam) -> np.ndarray:
    """31 heights from underarm to hip."""
    return np.linspace(seam.at.underarm, seam.path.end.y, 31)


def finished(seam: SideSeam, quarters: SideQuarters) -> np.ndarray:
    """Bust, waist without darts, and hip."""
    levels = (seam.at.bust, seam.at.waist, seam.path.end.y)
    return np.array([seam.width(y) for y in levels]) - (0, seam.dart, 0)


@pytest.mark.parametrize("side", WISHES)
def test_a_centimetre_more_moves_the_seam_little_and_never_the_wrong_way(side: SideWish) -> None:
    """At most 6 mm a quarter anywhere; the finished girths never get less.

    Below the bust line the seam may give way between the levels by 1.6 mm where another curve
    takes over, by 2.6 where a waist dart comes or goes. Above it, without darts, the underarm
    gives back what it was widened to let the seam lean, up to 4.
    """
    for person in people(20):
        asked = wish(person, 0, side)
        at, wide = asked.levels, asked.quarters
        levels = SideLevels(
            at.armscye.depth + 10, at.bust.depth + 12, at.waist.depth + 12, at.hip.depth + 12
        )
        before = side_seam(levels, wide, side)
        for key in ("bust", "waist", "hip"):
            more = replace(wide, **{key: getattr(wide, key) + 2.5})
            after = side_seam(levels, more, side)
            moved = widths(after) - widths(before)
            wrong = WRONG_WITH_DARTS if before.dart or after.dart else WRONG
            assert moved.max() <= MOST
            above = heights(before) < before.at.bust
            assert moved[~above].min() >= -wrong
            assert moved[above].min() >= -4
            assert (finished(after, more) - finished(before, wide)).min() >= -1e-3


def test_armhole_and_cap_move_little_too() -> None:
    """Ten more of the arm's or the bust's girth: no leap of depth, cap or armhole."""
    for person in people(25):
        before = set_in(wish(person))
        fuller = replace(
            person, arm=person.arm + 10, trunk=replace(person.trunk, bust=person.trunk.bust + 10)
        )
        after = set_in(wish(fuller))
        assert abs(after.drop - before.drop) <= 12
        assert before.cap
        assert after.cap
        assert abs(after.cap.height - before.cap.height) <= 12
        assert abs(after.armhole - before.armhole) <= 30
