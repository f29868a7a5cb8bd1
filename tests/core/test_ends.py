"""A hem band and cuffs: part of the length asked for, as long as body and cloth ask."""

from __future__ import annotations

from functools import cache

import pytest

from tapewise_core.errors import OptionError
from tapewise_core.proofs.proof import ProofId
from tapewise_core.tasks.drafting import Drafted, draft
from tapewise_core.tasks.people import person

TOPS = ("jersey-top", "set-in-top")


@cache
def made(garment: str, **asked: str) -> Drafted:
    """A top of an example person, whose bust is 92 and hip 99.5 [cm]."""
    options = {key.replace("_", "-"): asked[key] for key in asked}
    return draft(person("Marta Lindqvist"), garment, options)


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
    name = "overarm length" if garment == "jersey-top" else "sleeve length"
    assert cuffed.pattern.lengths[name] == pytest.approx(plain.pattern.lengths[name], abs=0.5)
    cuff = cuffed.pattern.piece("cuff").length("sleeve_hem")
    hand = cuffed.pattern.facts.hand
    assert hand is not None
    assert cuff * 1.3 >= hand - 1
    assert cuff < plain.pattern.piece("back" if garment == "jersey-top" else "sleeve").length(
        "sleeve_hem"
    ) * (2 if garment == "jersey-top" else 1)


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


@pytest.mark.parametrize(
    ("asked", "says"),
    [
        ({"hem_finish": "band", "hem": "curved"}, "set hem to straight"),
        ({"hem_finish": "band", "lower_shoulder": "left"}, "set lower-shoulder to none"),
        ({"sleeve_finish": "cuff", "sleeve": "cap"}, "takes no cuff"),
    ],
)
def test_what_does_not_go_together_is_refused(asked: dict[str, str], says: str) -> None:
    """One sentence with the options and what would be right."""
    with pytest.raises(OptionError, match=says):
        made("jersey-top", **asked)
