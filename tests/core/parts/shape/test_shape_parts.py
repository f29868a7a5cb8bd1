"""Levels, shares, room, bands and posture, one by one."""

from __future__ import annotations

import math

import pytest
from msgspec.structs import replace
from shape_people import AVERAGE, width_at

from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.parts.shape.band import armband, close_fit, hand_girth, neckband
from tapewise_core.parts.shape.bust_room import Wish, bust_room, worth_measuring
from tapewise_core.parts.shape.levels import kept_between, levels
from tapewise_core.parts.shape.posture import Figure, Posture, shoulder_angle, suggestions
from tapewise_core.parts.shape.shares import across, share
from tapewise_core.text.told import Reader, Told
from tapewise_core.units import Unit

TRUNK = AVERAGE.trunk


def spelt(told: Told) -> str:
    """A sentence in centimetres."""
    return Reader(Unit.CM).spell(told)


def test_the_bust_level_by_what_is_measured() -> None:
    """Exact from both lengths, by regression from one, by share from none."""
    assert levels(TRUNK).bust.depth == pytest.approx(410 - (436 - 276))
    one = levels(replace(TRUNK, front_waist=None)).bust
    assert one.depth == pytest.approx(-105 + 0.634 * 276 + 0.456 * 410)
    none = levels(replace(TRUNK, front_waist=None, neck_to_bust_point=None)).bust
    assert none.depth == pytest.approx(186 + 0.29 * (410 - 186))
    assert "estimated" in spelt(none.how)


def test_the_bust_level_by_waist_site_and_reference() -> None:
    """A man's lies higher, a narrow waist's estimate lower; not said lies between."""
    bare = replace(TRUNK, front_waist=None, neck_to_bust_point=None)

    def depth(reference: Reference, site: WaistSite = WaistSite.MIDWAY) -> float:
        return levels(replace(bare, reference=reference, waist_site=site)).bust.depth

    women, men = depth(Reference.WOMEN), depth(Reference.MEN)
    assert men < depth(Reference.NOT_SAID) < women
    assert depth(Reference.WOMEN, WaistSite.NARROWEST) == pytest.approx(186 + 0.35 * 224)
    assert depth(Reference.WOMEN, WaistSite.NOT_SAID) == women


def test_the_bust_level_keeps_its_distance() -> None:
    """1.2 below the underarm, which decides, and 9 above the waist."""
    assert kept_between(250, 196, 410) == 250
    assert kept_between(200, 196, 410) == 208
    assert kept_between(350, 196, 410) == 320
    assert kept_between(320, 315, 410) == 327


def test_girths_between_levels_follow_an_s() -> None:
    """Halfway from waist to hip the body is midway between the two."""
    found = levels(TRUNK)
    assert found.girth(found.high_hip.depth) == pytest.approx((740 + 980) / 2)
    assert found.girth(found.waist.depth) == 740
    assert [level.depth for level in found.all()] == sorted(level.depth for level in found.all())
    assert found.under_bust.girth == pytest.approx(82 + 0.22 * 920 + 0.32 * 890 + 0.28 * 740)


def test_shares_of_a_full_bust() -> None:
    """16 more than the high bust: a cup of 6, 25 more at the bust and 5 at the hip."""
    found = share(1120, 960, 250, 610)
    assert (found.cup, found.bust, found.hip) == (60, 25, 5)
    assert found.at(200) == 25
    assert found.at(430) == pytest.approx(15)
    assert found.at(900) == 5
    assert share(920, 890, 250, 610, cupped=False).bust == 0


def test_front_and_back_are_traced_from_one_seam() -> None:
    """Their sum is the seam's at every height, their difference the share's."""
    found = share(1120, 960, 250, 610)
    seam = ruled(Point(280, 196), Point(280, 250), Point(200, 410), Point(260, 610))
    for y in (210, 251, 333, 409, 500, 609):
        front, back = width_at(found.front(seam), y), width_at(found.back(seam), y)
        assert front + back == pytest.approx(2 * width_at(seam, y), abs=1e-3)
        assert front - back == pytest.approx(2 * found.at(y), abs=0.05)


def test_across_widths() -> None:
    """The front narrower than the back, less so for a cup; measured where it is measured."""
    assert across(350, 30).front == pytest.approx(178 - 7.5 + 30 / 16)
    assert across(350, 200).front == pytest.approx(178 - 2.5)
    assert across(350, 30, across_front=330).front == 168
    assert across(350, 0, surplus=-29).back == pytest.approx(178 + 3)


def test_room_in_its_order() -> None:
    """Raise to 1.5, then ease by the stretch, then a dart; nothing is made up."""
    assert bust_room(None, 50).lower == 0
    assert bust_room(10, 50).raised == 10
    eased = bust_room(28, 50)
    assert (eased.raised, eased.eased, eased.dart) == (15, 13, 0)
    firm = bust_room(28, 20)
    assert (firm.eased, firm.dart) == (0, 13)
    assert bust_room(38, 60).eased == 23
    assert bust_room(31, 50).dart == 16
    too_much = bust_room(90, 50)
    assert (too_much.dart, too_much.left) == (60, 15)
    assert "second dart" in spelt(too_much.told[0])


def test_room_by_wish() -> None:
    """What is left undrawn is said, whichever way was asked for."""
    assert bust_room(40, 50, Wish.GATHERS).gathered == 25
    assert bust_room(80, 50, Wish.GATHERS).left == pytest.approx(17)
    assert bust_room(40, 50, Wish.SIDE_EASE).left == 10
    assert bust_room(40, 50, Wish.RAISE).left == 25
    nothing = bust_room(40, 50, Wish.NONE)
    assert (nothing.raised, nothing.left) == (0, 40)
    assert nothing.told


def test_a_round_back_is_no_small_bust() -> None:
    """The front's neck point down by 2 at most, then the back's up, the rest said."""
    assert bust_room(-12, 50).raised == -12
    far = bust_room(-45, 50)
    assert (far.raised, far.back_raised, far.left) == (-20, 15, -10)
    assert "measure it again" in spelt(far.told[0])


def test_a_full_bust_without_a_front_length_asks_for_it() -> None:
    """From 6 more than the high bust on."""
    assert worth_measuring(1000, 930, None)
    assert not worth_measuring(1000, 930, 20.0)
    assert not worth_measuring(1000, 960, None)


def test_neckband_ratios() -> None:
    """50 × 2 gives 0.81; a narrow neck in firm rib cannot, and it is said."""
    assert neckband(500, 20, 0.6).ratio == pytest.approx(0.81, abs=0.002)
    wide = neckband(460, 25, 0.25)
    assert wide.ratio == pytest.approx(1 / 1.15)
    assert "stand up" in spelt(wide.held_back)
    four = neckband(520, 40, 1.0)
    assert 270 <= four.ratio * 520 <= 335
    assert armband(450, 15, 0.5).ratio == pytest.approx(1 - math.pi * 15 / 450)
    assert armband(300, 30, 1.0).ratio == 0.85


def test_close_fit_by_the_table() -> None:
    """Straight between its rows, never beyond half of the stretch, with the length it takes."""
    assert close_fit(0.25).across == 0
    assert close_fit(0.5).across == pytest.approx(-0.04)
    assert close_fit(0.625).across == pytest.approx(-0.06)
    assert close_fit(2.0).across == pytest.approx(-0.12)
    assert close_fit(1.0).along == pytest.approx(0.048)
    assert close_fit(0.1).across == 0


def test_hands() -> None:
    """Over the knuckles by the wrist; the thumb laid in adds 2 cm."""
    assert hand_girth(160) == pytest.approx(47 + 0.92 * 160)
    assert hand_girth(160, Reference.MEN) > hand_girth(160)
    assert hand_girth(160, Reference.NOT_SAID) == hand_girth(160, Reference.MEN)
    assert hand_girth(160, thumb=True) == pytest.approx(47 + 0.92 * 160 + 20)


def test_postures_are_read_from_measures() -> None:
    """Each with its amount and reason; nothing where nothing is measured."""
    plain = Figure(920, 890, surplus=4, across_back=350, across_front=335)
    assert suggestions(plain) == ()
    assert suggestions(Figure(920, 890)) == ()
    (back,) = suggestions(replace(plain, surplus=-28))
    assert (back.posture, back.front_lower, back.back_raise) == (Posture.ROUND, 20, 8)
    (hollow,) = suggestions(replace(plain, surplus=20))
    assert (hollow.posture, hollow.amount) == (Posture.HOLLOW, 15)
    assert suggestions(replace(plain, bust=960, surplus=20)) == ()
    (forward,) = suggestions(replace(plain, across_front=312))
    assert forward.posture is Posture.FORWARD
    assert 5 <= forward.amount <= 10
    (wide,) = suggestions(replace(plain, across_back=400, across_front=None))
    assert wide.posture is Posture.FORWARD
    (square,) = suggestions(replace(plain, shoulder_length=120, shoulder_drop=35))
    assert (square.posture, square.amount) == (Posture.SQUARE, 0)
    (sloping,) = suggestions(replace(plain, shoulder_length=120, shoulder_drop=66))
    assert sloping.posture is Posture.SLOPING
    assert shoulder_angle(120, 60) == pytest.approx(30)
