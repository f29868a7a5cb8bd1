"""Worked examples: flares, mirrored corners, a waist over the shoulders, stretch used up."""

import math

import pytest
from making import DAY, MIDDLE, person, top

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.pattern import Girth
from tapewise_core.geometry.crossings import distance_at_height
from tapewise_core.geometry.cutting import cut_line
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.rows import points
from tapewise_core.proofs.fit import least
from tapewise_core.tasks.drafting import draft


@pytest.mark.parametrize("flare", ["8", "15", "20"])
def test_a_flared_side_is_as_long_below_the_hip_as_the_fold(flare: str) -> None:
    """Exact: so the hem of a side that slants hangs level, however far it goes out."""
    back = draft(person(), "flared-dress", {"flare": flare}, made=DAY).pattern.piece("back")
    side, hip = back.edge("side").path, back.levels["hip"]
    below = side.length() - (distance_at_height(side, hip) or 0.0)
    assert below == pytest.approx(back.points["centre_hem"].y - hip, abs=0.5)


def test_a_hem_of_2_cm_at_10_degrees_ends_0_35_cm_farther_in() -> None:
    """Exact: a mirrored corner of h tan t."""
    out = 300 * math.tan(math.radians(10))
    a, b, c, d = Point(0, 0), Point(200, 0), Point(200 + out, 300), Point(0, 300)
    margins = [
        Margin(ruled(a, b), 0),
        Margin(ruled(b, c), 0),
        Margin(ruled(c, d), 20, turned=True),
        Margin(ruled(d, a), 0, fold=True),
    ]
    lowest = max(p.x for p in points(cut_line(margins)) if p.y > 319.9)
    assert (c.x - lowest) / 10 == pytest.approx(0.35, abs=0.005)


@pytest.mark.parametrize(("hip", "way_in"), [(96.0, 96.0), (110.0, 0.95 * 102.9)])
def test_a_joined_waist_takes_the_easier_way_in(hip: float, way_in: float) -> None:
    """[astm-d5585], misses size 8: waist 71.1, round both shoulders 102.9.

    Over the hips, or over 0.95 of the shoulders (common practice), whichever is easier.
    """
    body = person({**MIDDLE, "waist": 71.1, "hip": hip, "over_shoulder_girth": 102.9})
    drafted = draft(body, "skirted-dress", {}, made=DAY)
    proof = next(proof for proof in drafted.proofs if proof.name.startswith("joined waist"))
    assert proof.limit == pytest.approx(way_in, abs=0.05)


@pytest.mark.parametrize(("stretch", "share"), [(0.5, 0.80), (1.0, 0.667)])
def test_a_close_fit_never_takes_more_than_half_the_stretch(stretch: float, share: float) -> None:
    """Common practice: body / (1 + s/2), 0.80 of the body at 50 % and 0.667 at 100 %."""
    body = Girth("bust", 0.0, 1000.0)
    assert least(body, Cloth(stretch, 0.6, stretch)) / 1000 == pytest.approx(share, abs=0.0005)


def test_the_usual_band_of_2_cm_lies_within_the_trade_s_ratios() -> None:
    """Common practice: 0.80 to 0.85 for bands of 2 to 2.5 cm on necklines of 48 to 60."""
    pattern = top().pattern
    ratio = pattern.piece("neckband").length("neckline") / pattern.lengths["neckline"]
    assert 48 <= pattern.lengths["neckline"] / 10 <= 60
    assert 0.80 <= ratio <= 0.85
