"""A waist that passes the body, a casing that turns down, a band that stretches."""

from __future__ import annotations

import pytest
from hand_made import case, in_cm, in_inches, judged, only, reason, sewn, strip, style
from msgspec.structs import replace

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.facts import Casing, Facts, Passage, Waist
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.proofs.case import Case
from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.proofs.waist import casing_turns, waist_passes, waistband_fits
from tapewise_core.style.style import Style
from tapewise_core.units import mm


def passes(
    what: Passage,
    opening: float,
    chosen: Style | None = None,
    edge: float = 0.0,
    band: float | None = None,
) -> Proof:
    """Judge a waist's opening against a way in of 980 mm; seams give 40 %."""
    waist = Waist(what, opening, 980.0, edge or opening, band)
    return only(waist_passes(case(facts=Facts(waist=waist), style=chosen)))


@pytest.mark.parametrize("what", Passage)
@pytest.mark.parametrize(
    ("opening", "stretched", "holds"), [(700.0, 98.0, True), (699.9, 97.986, False)]
)
def test_the_waist_stretches_over_the_body(
    what: Passage, opening: float, stretched: float, holds: bool
) -> None:
    """70 cm and 40 % are 98."""
    proof = passes(what, opening)
    assert judged(proof) == (stretched, 98.0, "cm", holds)
    assert (proof.id, proof.of, proof.name) == (ProofId.WAIST, what, f"{what} over the body")
    assert proof.offer is None


def test_what_it_says_of_a_waist() -> None:
    """What there is, what is needed; if not enough, by how much which option helps."""
    good = passes(Passage.EDGE, 750.0)
    assert in_cm(good) == (
        "The waist edge of 75 cm stretches to 105 cm; the easier way in needs 98 cm."
    )
    assert in_inches(good) == (
        "The waist edge of 29 1/2 in stretches to 41 3/8 in; the easier way in needs 38 5/8 in."
    )
    bad = passes(Passage.JOINED, 650.0)
    assert in_cm(bad) == (
        "The joined waist of 65 cm stretches to 91 cm; the easier way in needs 98 cm. It is 5 "
        "cm too short: make it longer, or take a cloth and seam that stretch 51 %."
    )
    assert "It is 2 in too short: make it longer" in in_inches(bad)
    assert in_cm(passes(Passage.JOINED, 500.0)).endswith("that stretch 96 %.")


@pytest.mark.parametrize(
    ("what", "edge", "band", "mend"),
    [
        (Passage.JOINED, 0.0, None, {"waist-ease": "8.1 cm"}),
        (Passage.EDGE, 0.0, None, {"waist-ease": "8.1 cm"}),
        (Passage.BAND, 720.0, 650.0, {"band-length": "70.1 cm"}),
        (Passage.BAND, 700.0, 650.0, {"band-length": "70.1 cm"}),
        (Passage.BAND, 660.0, 650.0, {"band-length": "70.1 cm", "waist-ease": "7.1 cm"}),
        (Passage.BAND, 650.0, 900.0, {"waist-ease": "8.1 cm"}),
        (Passage.BAND, 650.0, 700.0, {"waist-ease": "8.1 cm"}),
    ],
)
def test_each_waist_is_widened_by_its_own_options(
    what: Passage, edge: float, band: float | None, mend: dict[str, str]
) -> None:
    """By what is missing: 5 cm; a band and the waist it is sewn to each by its own."""
    chosen = style(ease=mm(-9.6), waist_ease=mm(30.4), band_length=mm((band or 0) + 0.4))
    proof = passes(what, 650.0, chosen, edge, band)
    assert proof.offered == mend
    assert passes(what, 750.0, chosen, edge, band).offered is None


def test_only_an_option_of_the_garment_is_offered() -> None:
    """The band, where its waist cannot be changed."""
    proof = passes(Passage.BAND, 650.0, style(band_length=mm(650.0)), 660.0, 650.0)
    assert "It is 5 cm too short: make it longer, or take" in in_cm(proof)
    assert proof.offer is not None
    assert set(proof.offer) == {"band-length"}


def turned(seam: float, chosen: Style | None = None) -> Case:
    """Return a casing of 500 mm turned down to a seam [mm]."""
    return case(facts=Facts(casing=Casing(500.0, seam)), style=chosen)


@pytest.mark.parametrize(
    ("seam", "needed", "holds"), [(650.0, 30.0, True), (650.123, 30.02, False), (500.0, 0.0, True)]
)
def test_a_casing_stretches_as_it_is_turned_down(seam: float, needed: float, holds: bool) -> None:
    """By six tenths of the cloth's 50 % at the most."""
    proof = only(casing_turns(turned(seam, style(waist_finish="elastic"))))
    assert judged(proof) == (needed, 30.0, "%", holds)
    assert (proof.id, proof.of) == (ProofId.CASING, "")
    assert proof.offered == (None if holds else {"waist-finish": "band"})


def test_what_it_says_of_a_casing() -> None:
    """How far, what the cloth gives, and three ways out."""
    assert in_cm(only(casing_turns(turned(600.0)))) == (
        "The casing's edge is stretched by 20 % as it is turned down."
    )
    bad = only(casing_turns(turned(710.0)))
    assert in_cm(bad) == (
        "The casing's edge is stretched by 42 % as it is turned down. This cloth gives 30 % there: "
        "take a narrower elastic-width, waist-finish band, or a cloth that stretches 70 %."
    )
    assert bad.mend is None
    worse = in_cm(only(casing_turns(turned(950.0))))
    assert worse.startswith("The casing's edge is stretched by 90 % as")
    soft = Cloth(stretch=1.5, seam=0.4, band=0.5)
    softer = only(casing_turns(replace(turned(950.01), cloth=soft)))
    assert "This cloth gives 90 % there" in in_cm(softer)


def test_the_record_has_what_a_cloth_gives_to_the_hundredth() -> None:
    """Six tenths of 33.43 %."""
    cloth = Cloth(stretch=0.3343, seam=0.4, band=0.5)
    assert only(casing_turns(replace(turned(500.0), cloth=cloth))).limit == 20.06


def banded(band: float, chosen: Style | None = None) -> Case:
    """Return a band sewn to a waist of 780 mm."""
    pieces = strip("waistband", "waist", band), strip("skirt", "waist", 780.0)
    seam = sewn(SeamKind.WAISTBAND, "waistband.waist", "skirt.waist", band / 780)
    panel = sewn(SeamKind.PANEL, "skirt.end", "skirt.start")
    return case(*pieces, seams=(panel, seam), style=chosen)


@pytest.mark.parametrize(("band", "holds"), [(600.0, True), (599.9, False)])
def test_a_waistband_stretches_to_its_waist(band: float, holds: bool) -> None:
    """By six tenths of the band's 50 %: 78 / 1.3 are 60."""
    proof = only(waistband_fits(banded(band, style(band_length=mm(band)))))
    assert judged(proof) == (round(band / 10, 3), 60.0, "cm", holds)
    assert (proof.id, proof.of) == (ProofId.WAISTBAND, "")
    assert (proof.offer is None) is holds


def test_what_it_says_of_a_waistband() -> None:
    """Both lengths, and the length that would do."""
    good = only(waistband_fits(banded(650.0)))
    assert in_cm(good) == "The waistband of 65 cm is stretched to 78 cm of waist."
    assert in_inches(good) == "The waistband of 25 5/8 in is stretched to 30 3/4 in of waist."
    bad = only(waistband_fits(banded(550.0)))
    assert in_cm(bad).endswith(" This cloth can't give that: it is 5 cm too short.")
    assert in_inches(bad).endswith(" it is 2 in too short.")
    assert bad.mend is None


def test_the_band_that_is_offered_is_long_enough() -> None:
    """To the next millimetre: 60.08 cm are 60.1."""
    pieces = strip("waistband", "waist", 550.0), strip("skirt", "waist", 781.0)
    seam = sewn(SeamKind.WAISTBAND, "waistband.waist", "skirt.waist")
    made = case(*pieces, seams=(seam,), style=style(band_length=mm(550.0)))
    assert only(waistband_fits(made)).offered == {"band-length": "60.1 cm"}


def test_without_such_a_waist_they_are_silent() -> None:
    """By the style where another finish can be had, by the garment where not."""
    skirt, top = case(style=style(waist_finish="band")), case()
    assert reason(casing_turns(skirt)) == "The waist has a band, and no casing."
    assert reason(waistband_fits(skirt)) == "The waist has an elastic in a casing, and no band."
    assert reason(casing_turns(top)) == "This garment has no casing."
    assert reason(waistband_fits(top)) == "This garment has no waistband."
    assert reason(waist_passes(top)) == "This garment has no waist that is drawn in."
