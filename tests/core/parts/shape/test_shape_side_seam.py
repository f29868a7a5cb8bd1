"""The side seam of two circles and a ruler, measured again from its drawn points."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest
from msgspec.structs import replace
from shape_people import AVERAGE, BUSTY, bends_of, people, turns, width_at, wish

from tapewise_core.geometry.segments import Cubic
from tapewise_core.parts.shape.bends import Bend
from tapewise_core.parts.shape.curves import curvature
from tapewise_core.parts.shape.levels import kept_between
from tapewise_core.parts.shape.set_in import SetInWish
from tapewise_core.parts.shape.side_hem import levelled
from tapewise_core.parts.shape.side_seam import SideSeam, side_seam
from tapewise_core.parts.shape.side_slopes import SideLevels, SideQuarters, SideWish
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

WISHES = (
    SideWish(0.0),
    SideWish(0.5),
    SideWish(1.0),
    SideWish(1.0, darts=False),
    SideWish(0.6, flare=0.16),
)


def drawn(asked: SetInWish) -> SideSeam:
    """The seam of a set-in body whose underarm lies 1 cm below the armscye line."""
    at = asked.levels
    underarm = at.armscye.depth + 10
    bust = kept_between(at.bust.depth, underarm, at.waist.depth)
    hip = None if asked.hem is None else at.hip.depth
    return side_seam(SideLevels(underarm, bust, at.waist.depth, hip), asked.quarters, asked.side)


def test_the_average_woman_point_by_point() -> None:
    """Ease 4, all the shaping: the published table of points, to its own millimetre."""
    at = SideLevels(200, 264, 410, 610)
    seam = side_seam(at, SideQuarters(240, 195, 255), SideWish(1.0))
    table = {
        26.4: 24.0, 28: 23.9, 30: 23.4, 32: 22.6, 34: 21.8, 36: 21.0, 38: 20.1, 40: 19.6,
        41: 19.5, 42: 19.5, 44: 19.9, 46: 20.7, 48: 21.5, 50: 22.2, 52: 23.0, 54: 23.8,
        56: 24.6, 58: 25.1, 60: 25.4, 61: 25.5,
    }  # fmt: skip
    for y, x in table.items():
        assert width_at(seam.path, y * 10 - 1e-6) == pytest.approx(x * 10, abs=0.51)


@pytest.mark.parametrize("side", WISHES)
def test_girths_are_as_asked(side: SideWish) -> None:
    """Bust, waist and hip to 0.01 mm, read from the drawn line; what is kept is said."""
    for person in people(60):
        asked = wish(person, 20, side)
        seam = drawn(asked)
        at, wide = seam.at, asked.quarters
        assert at.hip is not None
        assert width_at(seam.path, at.bust) == pytest.approx(wide.bust, abs=0.01)
        hip = max(wide.hip, wide.waist)
        assert seam.path.end.x == pytest.approx(hip, abs=0.01)
        waist = width_at(seam.path, at.waist) - seam.dart
        assert waist == pytest.approx(seam.asked + seam.kept, abs=0.01)
        assert bool(seam.held_back) == (seam.kept > 0.2)
        if side.shaping == 1:
            assert seam.asked == pytest.approx(wide.waist)


@pytest.mark.parametrize("side", WISHES)
def test_the_cloth_can_take_it(side: SideWish) -> None:
    """Radii 60 inward and 80 outward, lean 0.8, at most one change of bend on either side."""
    for person in people(60):
        seam = drawn(wish(person, 0, side))
        bends, leans = bends_of(seam.path)
        if seam.unshaped > seam.asked:
            assert -bends.min() <= 1 / 59.5
            assert bends.max() <= 1 / 79.5
            assert np.abs(leans).max() <= 0.8 + 1e-6
        assert turns(seam.path) <= 2
        assert seam.inflections <= 2


def test_shaping_has_an_effect_all_the_way() -> None:
    """Where the unshaped seam is wider than the waist, more shaping is a closer waist."""
    for person in people(60):
        seams = [drawn(wish(person, 0, SideWish(s / 4))) for s in range(5)]
        given = [width_at(s.path, s.at.waist) - s.dart for s in seams]
        if seams[0].unshaped - seams[-1].asked > 5 and not seams[-1].kept:
            assert all(a - b > 1 for a, b in pairwise(given))


def test_most_waists_are_given_exactly() -> None:
    """With darts no more than three bodies in a hundred keep anything at full shaping."""
    kept = sum(drawn(wish(p, 0, SideWish(1.0))).kept > 0.2 for p in people(300))
    assert kept <= 9


def test_a_steep_seam_gets_darts_or_leans() -> None:
    """Busty at full shaping: a dart at 30° of lean; without darts a steeper seam, still exact."""
    dart = drawn(wish(BUSTY, 0, SideWish(1.0)))
    plain = drawn(wish(BUSTY, 0, SideWish(1.0, darts=False)))
    assert dart.dart > 2.5
    assert dart.trial.lean == pytest.approx(math.tan(math.radians(30)), abs=1e-4)
    assert plain.dart == 0
    assert plain.trial.lean > dart.trial.lean


def test_what_is_kept_is_told_with_its_reason() -> None:
    """A waist far narrower than bust and hip, on a short body and without darts."""
    at = SideLevels(200, 260, 350, 450)
    seam = side_seam(at, SideQuarters(330, 200, 330), SideWish(1.0, darts=False))
    words = Reader(Unit.CM).spell(seam.held_back)
    assert seam.kept > 10
    assert words.startswith("The waist keeps ")
    assert "39°" in words


def test_a_pencil_finds_the_seam() -> None:
    """The ruler touches both circles, square to their radii, and lies between them."""
    seam = drawn(wish(AVERAGE, 0, SideWish(0.5)))
    for part in (seam.trial.upper, seam.trial.lower):
        assert isinstance(part, Bend)
        along = (part.to_end - part.from_waist).unit()
        for centre, touch, radius in (
            (part.inner_centre, part.from_waist, part.inner),
            (part.outer_centre, part.to_end, part.outer),
        ):
            spoke = touch - centre
            assert spoke.length() == pytest.approx(radius)
            assert abs(spoke.unit().dot(along)) < 1e-9
        assert part.inner_centre.y == pytest.approx(seam.at.waist)
        assert part.inner_centre.x > part.waist.x


def test_a_bodice_ends_upright_on_its_waist() -> None:
    """Its waist is as asked, darts off, and the seam meets the waist line squarely."""
    for person in people(60):
        asked = wish(person, 20, SideWish(), bodice=True)
        seam = drawn(asked)
        given = seam.path.end.x - seam.dart
        assert given == pytest.approx(max(asked.quarters.waist, seam.asked) + seam.kept, abs=0.01)
        assert abs(seam.path.arriving().x) < 1e-6


def test_a_flare_has_no_knob() -> None:
    """Below the waist the seam never gets flatter and then steeper by more than a hair."""
    for person in people(60):
        seam = drawn(wish(person, 60, SideWish(0.5, flare=0.16)))
        _, leans = bends_of(seam.down_to(seam.path.end.y + 300))
        points = np.linspace(0, 1, len(leans))
        down = leans[points > 0.75]
        rises = np.diff(down) > 1e-6
        falls = np.diff(down) < -1e-6
        first_fall = int(np.argmax(falls)) if falls.any() else len(falls)
        assert not (rises[first_fall:].any() and down.max() > 0.17 and down.min() < 0.15)


def test_a_flared_hem_is_level() -> None:
    """The side below the hip is as long as the fold, and the hem square to both."""
    seam = drawn(wish(AVERAGE, 60, SideWish(0.5, flare=0.16)))
    cut, hem = levelled(seam, 1000)
    below = cut.length() - seam.path.length()
    assert below == pytest.approx(1000 - seam.path.end.y, abs=1e-6)
    assert abs(cut.arriving().dot(hem.leaving())) < 1e-9
    assert abs(hem.arriving().y) < 1e-9
    assert (hem.end.x, hem.end.y) == (0, 1000)


def test_a_wide_waist_draws_the_hip_out_and_it_is_said() -> None:
    """An apple's hip hangs from its waist."""
    apple = replace(AVERAGE, trunk=replace(AVERAGE.trunk, waist=1020))
    seam = drawn(wish(apple))
    assert seam.wider_hip == pytest.approx(10)
    assert "hangs" in Reader(Unit.CM).spell(seam.hip_held_back)


def test_a_grown_on_seam_runs_straight_into_the_underarm() -> None:
    """It leaves the bust line in the ruler's own line, bust as asked."""
    asked = wish(AVERAGE, 0, SideWish(1.0, grown_on=True))
    seam = drawn(asked)
    upper = seam.trial.upper
    assert isinstance(upper, Bend)
    assert upper.outer == 0
    assert width_at(seam.path, seam.at.bust) == pytest.approx(asked.quarters.bust, abs=0.01)
    assert seam.path.leaving().x / seam.path.leaving().y == pytest.approx(-upper.lean)


def test_a_waist_between_bust_and_hip_bends_alike_on_both_sides() -> None:
    """A straight figure's seam: the two cubics have one bend where they meet."""
    at = SideLevels(160, 200, 310, 460)
    seam = side_seam(at, SideQuarters(160, 150, 190), SideWish(0.0))
    above, below = seam.path.segments[1], seam.path.segments[2]
    assert isinstance(above, Cubic)
    assert isinstance(below, Cubic)
    assert above.end.y == pytest.approx(at.waist)
    assert curvature(above, 1) == pytest.approx(curvature(below, 0), rel=1e-6)


def test_below_the_hip_the_seam_bends_to_its_flare() -> None:
    """A parabola of 12 cm from one slope to the other, then straight: both tell the width."""
    seam = drawn(wish(AVERAGE, 60, SideWish(0.5, flare=0.3)))
    hip, slope = seam.path.end, seam.trial.slope
    assert slope < 0.29
    out = hip.x + 120 * (slope + 0.3) / 2 + 80 * 0.3
    assert width_at(seam.down_to(hip.y + 201), hip.y + 200) == pytest.approx(out, abs=0.01)
    _, leans = bends_of(seam.down_to(hip.y + 200))
    assert leans[-1] == pytest.approx(0.3)
    assert np.abs(np.diff(leans)).max() < 0.06
