"""Straight and gathered skirts against published directions, typed in as printed there.

- "Handout for drafting skirt block", WikiEducator: half of the hips and 2.5 cm across both
  quarters at the hip line, the sides as straight from there to the hem, the waist 1 cm higher at
  the side than on the centre lines.
- "Tiered skirt math", Sound Stitches: a waist of 23 in, 1.5 times it in the first tier, 34.5 in,
  and each tier 1.5 times the one before.
- "Ratio of gathers", Erica Bunker: an edge of 30 in gathered two to one, 60 in, which are 30 in in
  front and 30 in at the back, cut on the fold as 15 in.
"""

from __future__ import annotations

import pytest
from making import DAY, person

from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft

BLOCK = {"waist": 70.0, "hip": 96.0, "hip_depth": 20.0, "waist_to_knee": 60.0}
"""A woman for whom the directions are worked out [cm]."""


def straight(**asked: str) -> Drafted:
    """Draft the straight skirt for her."""
    options = {key.replace("_", "-"): value for key, value in asked.items()}
    return draft(person(BLOCK), "straight-skirt", options, made=DAY)


def test_both_quarters_of_the_hip_make_up_the_handouts_half() -> None:
    """Half of 96 and 2.5 cm, which is 5 cm of ease all round: 50.5 cm, and as much at the hem."""
    made = straight(hip_ease="5", skirt_length="60")
    back, front = (made.pattern.piece(name) for name in ("skirt_back", "skirt_front"))
    assert back.points["side_at_hip"].x + front.points["side_at_hip"].x == pytest.approx(505.0)
    assert back.length("hem") + front.length("hem") == pytest.approx(505.0)
    assert back.points["side_at_hip"].y == pytest.approx(200.0)


def test_the_side_stands_about_as_high_as_the_handouts() -> None:
    """1 cm above the waist line, within half a centimetre."""
    corner = straight(hip_ease="5", skirt_length="60").pattern.piece("skirt_front").points
    assert -corner["side_at_waist"].y == pytest.approx(10.0, abs=5.0)


INCH = 2.54
"""Centimetres."""


def gathered(waist: float, **asked: str) -> Drafted:
    """Draft a gathered skirt whose edge is a waist in inches."""
    options = {key.replace("_", "-"): value for key, value in asked.items()}
    return draft(person({**BLOCK, "waist": waist * INCH}), "gathered-skirt", options, made=DAY)


def test_tiers_are_as_wide_as_the_worked_example() -> None:
    """23 in, 34.5 in and once more by half; 17 in long in three tiers of the same height."""
    made = gathered(23, fullness="1.5", tiers="3", tier_fullness="1.5", skirt_length=f"{17 * INCH}")
    wide = [34.5, 34.5 * 1.5, 34.5 * 1.5**2]
    for piece, whole in zip(made.pattern.pieces, wide, strict=True):
        upper = piece.edges[0].path.length() * 2 * piece.count
        assert upper / 10 / INCH == pytest.approx(whole)
        assert piece.length("side") / 10 / INCH == pytest.approx(17 / 3)


def test_two_to_one_is_fifteen_inches_on_the_fold() -> None:
    """For an edge of 30 in, in front and at the back."""
    (panel,) = gathered(30, fullness="2").pattern.pieces
    assert (panel.count, panel.on_fold) == (2, True)
    assert panel.length("waist") / 10 / INCH == pytest.approx(15)
