"""Necklines and their finishes, sleeves, hems and fits of the jersey top."""

import math

import pytest
from people_made_up import body

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.garments.shelf import garment
from tapewise_core.proofs.all import prove
from tapewise_core.proofs.case import Case
from tapewise_core.style.settle import settle
from tapewise_core.style.style import Style
from tapewise_core.units import Unit

TOP = garment("jersey-top")
JERSEY = Cloth(stretch=0.5, seam=0.6, band=0.5, width=1800.0)
"""Wide enough for long sleeves in one with the body."""


def made(**asked: str) -> Pattern:
    """Return a top for a body of average build."""
    one = body()
    typed = {key.replace("_", "-"): value for key, value in asked.items()}
    return TOP.draft(one, settle(TOP.options, typed, one, Unit.CM))


@pytest.mark.parametrize("neckline", ["round", "scoop", "v", "boat"])
@pytest.mark.parametrize("finish", ["band", "turned", "facing"])
def test_every_neckline_with_every_finish_is_proved(neckline: str, finish: str):
    """All proofs hold on 50 % stretch, the head among them; a boat takes no band."""
    if (neckline, finish) == ("boat", "band"):
        finish = "facing"
    pattern = made(neckline=neckline, neck_finish=finish)
    proofs = prove(Case(pattern, Style({}), JERSEY)).proofs
    assert [proof.says for proof in proofs if not proof.holds] == []
    assert "head through the neck" in {proof.name for proof in proofs}


def test_necklines_differ_as_their_names_say():
    """A scoop is wider and deeper than a round one, a boat the widest and shallowest, a V deep."""
    fronts = {name: made(neckline=name).piece("front") for name in ("round", "scoop", "v", "boat")}
    width = {name: front.points["side_neck"].x for name, front in fronts.items()}
    depth = {name: front.points["centre_front"].y for name, front in fronts.items()}
    assert width["round"] < width["v"] < width["scoop"] < width["boat"]
    assert depth["boat"] < depth["round"] < depth["scoop"] < depth["v"]


def test_a_wider_neckline_leaves_the_shoulder_point_where_it_is():
    """The body's shoulder does not move; only less of it is covered."""
    plain, boat = made().piece("back"), made(neckline="boat").piece("back")
    apart = plain.points["shoulder_point"] - boat.points["shoulder_point"]
    assert apart.length() < 1e-6


def test_a_v_band_is_mitred_at_the_points_own_angle():
    """The free edge is shorter than the seam by the band's width over the tangent, at each end."""
    pattern = made(neckline="v", band_width="2")
    angle = math.radians(pattern.facts.neck.point)
    band = pattern.piece("neckband")
    short = 2 * 20.0 / math.tan(angle)
    assert pattern.facts.neck.opening == pytest.approx(band.length("neckline") - short)
    assert band.inner["mitre"].segments[0].length() == pytest.approx(20.0 / math.sin(angle))


def test_a_v_band_is_joined_in_front_and_any_other_at_the_back():
    """The band's middle is notched to the other centre."""
    assert {n.pair for n in made(neckline="v").piece("back").notches} >= {"centre back"}
    assert {n.pair for n in made().piece("front").notches} >= {"centre front"}


def test_a_facing_is_sewn_to_the_same_neckline():
    """Its inner edge is the garment's own, its depth the one asked for."""
    pattern = made(neckline="boat", neck_finish="facing", facing_width="6")
    for name in ("back", "front"):
        facing, half = pattern.piece(f"{name}_facing"), pattern.piece(name)
        assert facing.length("neckline") == pytest.approx(half.length("neckline"))
        assert facing.length("shoulder") == pytest.approx(60)
        assert facing.length("centre") == pytest.approx(90)
    assert SeamKind.FACING in {seam.kind for seam in pattern.seams}


def test_without_a_band_the_neckline_is_the_opening():
    """The head is judged by it."""
    pattern = made(neckline="boat")
    assert pattern.facts.neck.opening == pytest.approx(pattern.lengths["neckline"])


def test_named_sleeves_follow_the_arm():
    """From a cap to the wrist, each longer than the one before."""
    names = ("cap", "short", "elbow", "three-quarter", "long")
    back = {name: made(sleeve=name).piece("back") for name in names}
    lengths = [back[name].length("shoulder") for name in names]
    assert lengths == sorted(lengths)
    assert lengths[-1] == pytest.approx(128 + 580)


def test_long_sleeves_taper_to_the_wrist():
    """The wrist and 3 cm of ease at the hem; the whole ease at the upper arm."""
    pattern = made(sleeve="long")
    girths = {girth.name: girth.garment for girth in pattern.girths}
    assert girths["sleeve hem"] == pytest.approx(160 + 30, abs=0.5)
    assert girths["upper arm"] == pytest.approx(290 + 60, abs=0.5)


def test_sleeve_length_overrides_the_named_sleeve():
    """What is asked for in numbers counts."""
    pattern = made(sleeve="long", sleeve_length="25")
    assert pattern.piece("back").length("shoulder") == pytest.approx(128 + 250)


def test_a_curved_hem_rises_to_the_side():
    """By what is asked for, square to centre and side."""
    straight, curved = made().piece("back"), made(hem="curved", hem_rise="6").piece("back")
    rise = straight.points["hem_side"].y - curved.points["hem_side"].y
    assert rise == pytest.approx(60, abs=6)
    assert straight.points["centre_hem"] == curved.points["centre_hem"]


def test_a_split_hem_has_a_slit_with_an_allowance_to_turn_back():
    """The side seam ends above it, alike on both pieces."""
    pattern = made(hem="split", split_length="10")
    for name in ("back", "front"):
        piece = pattern.piece(name)
        assert piece.length("split") == pytest.approx(100)
        assert piece.edge("split").allowance == 15
    whole = made().piece("back").length("side")
    assert pattern.piece("back").length("side") == pytest.approx(whole - 100)


def test_fits_differ_by_ease_and_shaping():
    """Fitted is the closest at the waist, eased the widest at the bust."""
    waist, bust = {}, {}
    for fit in ("fitted", "straight", "eased"):
        girths = {girth.name: girth.garment for girth in made(fit=fit).girths}
        waist[fit], bust[fit] = girths["waist"], girths["bust"]
    assert waist["fitted"] < min(waist["straight"], waist["eased"])
    assert bust["fitted"] < bust["straight"] < bust["eased"]


def test_every_combination_of_choices_is_drafted_without_a_crossing():
    """Necklines, sleeves, hems and fits go together; only a low underarm may be said."""
    for neckline in ("round", "scoop", "v", "boat"):
        for sleeve in ("cap", "short", "elbow", "three-quarter", "long"):
            for hem, fit in (("straight", "eased"), ("curved", "fitted"), ("split", "straight")):
                pattern = made(neckline=neckline, sleeve=sleeve, hem=hem, fit=fit)
                failing = {
                    p.name for p in prove(Case(pattern, Style({}), JERSEY)).proofs if not p.holds
                }
                assert failing <= {"underarm above halfway to the waist"}
