"""Hem bands and cuffs: part of the length asked for, as long as body and cloth ask."""

from __future__ import annotations

from functools import cache

import pytest
from read_aloud import spelt

from tapewise_core.errors import OptionError
from tapewise_core.parts.band_ways import HEM_HALVES_RING
from tapewise_core.proofs.proof import ProofId
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.mending import mended
from tapewise_core.tasks.missing import missing
from tapewise_core.tasks.people import person

TOPS = ("jersey-top", "set-in-top", "flared-dress")


@cache
def made(garment: str, **asked: str) -> Drafted:
    """A top or a dress of an example person, whose bust is 92 and hip 99.5 [cm]."""
    return draft(person("Marta Lindqvist"), garment, typed(asked))


def typed(asked: dict[str, str]) -> dict[str, str]:
    """Options as they are typed."""
    return {key.replace("_", "-"): asked[key] for key in asked}


@pytest.mark.parametrize("garment", TOPS)
def test_the_band_is_part_of_the_length(garment: str) -> None:
    """The body ends 6 cm higher, and the finished length is as asked."""
    plain, banded = made(garment), made(garment, hem_finish="band")
    assert banded.failing == ()
    ends = [one.pattern.piece("back").points["centre_hem"].y for one in (plain, banded)]
    assert ends[1] == pytest.approx(ends[0] - 60)
    name = "centre back length"
    assert banded.pattern.lengths[name] == pytest.approx(plain.pattern.lengths[name])
    assert banded.pattern.piece("hem_band").length("join") == pytest.approx(2 * 60)
    assert not banded.pattern.piece("back").edge("hem").turned
    assert banded.pattern.piece("back").edge("hem").allowance == pytest.approx(8)


@pytest.mark.parametrize("garment", TOPS)
def test_the_cuff_is_part_of_the_sleeve(garment: str) -> None:
    """Two cuffs, as close as the wrist but wide enough for the hand; nothing is turned up."""
    plain = made(garment, sleeve="long")
    cuffed = made(garment, sleeve="long", sleeve_finish="cuff")
    assert cuffed.failing == ()
    assert cuffed.pattern.piece("cuff").count == 2
    grown = garment != "set-in-top"
    name = "overarm length" if grown else "sleeve length"
    assert cuffed.pattern.lengths[name] == pytest.approx(plain.pattern.lengths[name], abs=0.5)
    cuff = cuffed.pattern.piece("cuff").length("sleeve_hem")
    hand = cuffed.pattern.facts.hand
    assert hand is not None
    assert cuff * 1.3 >= hand - 1
    assert cuff < plain.pattern.piece("back" if grown else "sleeve").length("sleeve_hem") * (
        2 if grown else 1
    )


@pytest.mark.parametrize("cut", ["grown-on", "set-in"])
def test_a_skirted_dress_has_cuffs_with_either_sleeve(cut: str) -> None:
    """Two of them, and every proof holds."""
    dress = made("skirted-dress", sleeve="long", sleeve_finish="cuff", sleeve_cut=cut)
    assert dress.failing == ()
    assert dress.pattern.piece("cuff").count == 2


def test_a_straight_skirt_ends_in_a_band_that_is_part_of_its_length() -> None:
    """The skirt is 6 cm shorter and its finished length as asked; what it weighs has the band."""
    plain = made("skirted-dress", skirt="straight")
    banded = made("skirted-dress", skirt="straight", hem_finish="band")
    assert banded.failing == ()
    ends = [one.pattern.piece("skirt_back").points["centre_hem"].y for one in (plain, banded)]
    assert ends[1] == pytest.approx(ends[0] - 60, abs=0.5)
    bodices = [one.pattern.lengths["centre back length"] for one in (plain, banded)]
    assert bodices[1] == pytest.approx(bodices[0], abs=2)
    lengths = [one.pattern.lengths["skirt length"] for one in (plain, banded)]
    assert lengths[1] == pytest.approx(lengths[0])
    hem = banded.pattern.facts.hem
    assert hem is not None
    assert hem.round == pytest.approx(banded.pattern.piece("hem_band").length("hem"))
    assert hem.below_waist == pytest.approx(lengths[0])
    assert not banded.pattern.piece("skirt_front").edge("hem").turned
    weights = [remark for remark in spelt_remarks(plain, banded) if "weighs" in remark]
    first, last = (int(weight.split("about ")[1].split(" g")[0]) for weight in weights)
    assert 0 < last - first < 0.12 * first


def spelt_remarks(*dresses: Drafted) -> list[str]:
    """What is said of them, one after the other."""
    return [one.reader.spell(remark) for one in dresses for remark in one.pattern.remarks]


def test_a_band_below_the_knee_lets_one_stride() -> None:
    """It is longer than nine tenths where a stride needs that, and the stride is proved of it."""
    dress = made("flared-dress", hem_finish="band", body_length="103", flare="3")
    hem = dress.pattern.facts.hem
    assert hem is not None
    edge = sum(2 * dress.pattern.piece(name).length("hem") for name in ("back", "front"))
    found = next(one for one in dress.proofs if one.id is ProofId.STRIDE)
    assert found.holds
    assert found.value == pytest.approx(hem.round / 10)
    assert 0.93 < hem.round / edge < 1
    short = made("flared-dress", hem_finish="band", body_length="103", flare="3",
                 hem_band_ratio="0.9")  # fmt: skip
    assert not next(one for one in short.proofs if one.id is ProofId.STRIDE).holds


@pytest.mark.parametrize(
    ("garment", "more"),
    [("set-in-top", {}), ("flared-dress", {}), ("skirted-dress", {"skirt": "straight"})],
)
def test_a_band_longer_than_the_cloth_is_wide_is_cut_in_halves(
    garment: str, more: dict[str, str]
) -> None:
    """Two, each half as long, joined at centre back and centre front; the same for every proof."""
    wide = made(garment, hem_finish="band", **more)
    narrow = made(garment, hem_finish="band", cloth_width="80", **more)
    bands = [one.pattern.piece("hem_band") for one in (wide, narrow)]
    assert [band.count for band in bands] == [1, 2]
    assert bands[1].length("hem") == pytest.approx(bands[0].length("hem") / 2)
    openings = [one.pattern.facts.ends[0].opening for one in (wide, narrow)]
    assert openings[1] == pytest.approx(openings[0])
    joins = [seam for seam in narrow.pattern.seams if seam.making.name == HEM_HALVES_RING.name]
    assert len(joins) == 2
    assert all(seam.first == seam.second for seam in joins)
    assert {one.id for one in narrow.failing} <= {ProofId.CLOTH}
    narrowest = [one for one in narrow.proofs if one.id is ProofId.CLOTH]
    assert not any("hem band" in narrow.reader.spell(one.says) for one in narrowest)


def test_a_band_is_closed_where_a_skirt_would_have_a_vent() -> None:
    """Below the knee a straight skirt has a vent unasked, with a band none: then the stride fails,
    and a turned hem is what mends it."""
    asked = {"skirt": "straight", "skirt_length": "75"}
    assert made("skirted-dress", **asked).style.choice("vent") == "back"
    banded = mended(made("skirted-dress", hem_finish="band", **asked))
    assert banded.style.choice("vent") == "none"
    found = next(one for one in banded.proofs if one.id is ProofId.STRIDE)
    assert not found.holds
    assert found.mend is not None


def test_a_dress_flares_less_above_a_band() -> None:
    """5 cm from the hip in place of 10, unless slim hips need more for a stride."""
    assert made("flared-dress", hem_finish="band").style.length("flare").mm == 50
    assert made("flared-dress").style.length("flare").mm == 100
    slim = person("Marta Lindqvist").with_value("hip", 82.0).with_value("waist", 62.0)
    for start, least in (("hip", 50), ("waist", 70)):
        dress = draft(slim, "flared-dress", {"hem-finish": "band", "flare-from": start})
        assert dress.style.length("flare").mm > least
        assert dress.failing == ()


def test_a_bands_marks_are_drawn_by_hand_too() -> None:
    """Side seams and centre front are marked on the drafts of back and front."""
    dress = made("jersey-top", hem_finish="band")
    steps = [spelt(step) for draft in dress.told for step in draft.steps]
    assert sum("hem at the side seam" in step for step in steps) == 2


def test_in_stiff_cloth_the_band_is_longer() -> None:
    """At 10 % the hips pass only a band that is nearly as long as they are; at 50 % it is 0.9."""
    for stretch, share in (("50", 0.9), ("10", 1 / 1.06)):
        top = made("set-in-top", hem_finish="band", stretch=stretch, ease="4")
        hem = 2 * sum(top.pattern.piece(name).length("hem") for name in ("back", "front"))
        band = top.pattern.piece("hem_band").length("hem")
        assert band / hem == pytest.approx(share, abs=0.011)


def test_a_band_that_is_too_short_fails_for_the_seam_and_for_the_body() -> None:
    """Half of the hem cannot be sewn on, nor pulled over the hips."""
    short = made("set-in-top", hem_finish="band", hem_band_ratio="0.5")
    found = {one.id: one for one in short.proofs}
    assert not found[ProofId.BAND].holds
    assert not found[ProofId.BAND_OVER].holds
    assert found[ProofId.BAND_OVER].limit == pytest.approx(99.5)
    assert found[ProofId.BAND].offer == {"hem-band-ratio": "0.77"}


REFUSED = (
    ("jersey-top", {"hem_finish": "band", "hem": "curved"}, "set hem to straight"),
    ("jersey-top", {"hem_finish": "band", "lower_shoulder": "left"}, "set lower-shoulder to none"),
    ("jersey-top", {"sleeve_finish": "cuff", "sleeve": "cap"}, "takes no cuff"),
    ("flared-dress", {"hem_finish": "band", "hem": "split"}, "set hem to straight"),
    ("flared-dress", {"hem_finish": "band", "flare": "12"}, "balloon; set flare to 7 cm or less"),
    ("skirted-dress", {"hem_finish": "band"}, "balloon; set skirt to straight"),
    ("skirted-dress", {"hem_finish": "band", "skirt": "gathered"}, "set skirt to straight"),
    ("skirted-dress", {"hem_finish": "band", "skirt": "straight", "flare": "9"}, "balloon"),
    ("skirted-dress", {"hem_finish": "band", "skirt": "straight", "vent": "back"}, "vent to none"),
)


@pytest.mark.parametrize(("garment", "asked", "says"), REFUSED)
def test_what_does_not_go_together_is_refused(
    garment: str, asked: dict[str, str], says: str
) -> None:
    """One sentence with the options and what would be right; which measures are still to take is
    found all the same, by drafting what was asked."""
    with pytest.raises(OptionError, match=says):
        made(garment, **asked)
    assert missing(person("Marta Lindqvist"), garment, typed(asked)) == ()
