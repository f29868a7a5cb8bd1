"""The head through the neck, and the band round it."""

from __future__ import annotations

import pytest
from hand_made import CLOTH, case, in_cm, in_inches, judged, only, reason, sewn, strip, style
from msgspec.structs import replace

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.facts import Facts, Neck
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.proofs.case import Case
from tapewise_core.proofs.neck import band_fits, head_passes
from tapewise_core.proofs.proof import ProofId
from tapewise_core.style.style import Style


def necked(opening: float, head: float | None = 550.0, width: float | None = 80.0) -> Case:
    """Return a neck with an opening and a half width, for a head [mm]."""
    return case(facts=Facts(head=head, neck=Neck(opening, width)))


def banded(band: float, neckline: float = 600.0, chosen: Style | None = None) -> Case:
    """Return a band sewn round a neckline [mm], and another seam before it."""
    pieces = strip("neckband", "neckline", band), strip("back", "neckline", neckline)
    seam = sewn(SeamKind.NECKBAND, "neckband.neckline", "back.neckline", 0.8)
    join = sewn(SeamKind.BAND_JOIN, "neckband.start", "neckband.end")
    facts = Facts(head=600.0, neck=Neck(400.0, 80.0))
    return case(*pieces, seams=(join, seam), facts=facts, style=chosen)


@pytest.mark.parametrize(
    ("opening", "stretched", "holds"), [(400.0, 56.0, True), (399.9, 55.986, False)]
)
def test_the_opening_stretches_over_the_head_and_a_centimetre(
    opening: float, stretched: float, holds: bool
) -> None:
    """40 cm with seams that give 40 % are 56: a head of 55 and 1 more."""
    proof = only(head_passes(necked(opening)))
    assert judged(proof) == (stretched, 56.0, "cm", holds)
    assert (proof.id, proof.of) == (ProofId.HEAD, "")


@pytest.mark.parametrize(
    "cloth",
    [
        Cloth(stretch=0.2, seam=0.4, band=0.5),
        Cloth(stretch=0.5, seam=0.2, band=0.5),
        Cloth(stretch=0.5, seam=0.4, band=0.2),
    ],
)
def test_the_least_of_cloth_seam_and_band_decides(cloth: Cloth) -> None:
    """What gives least bounds the opening."""
    facts = Facts(head=550.0, neck=Neck(450.0))
    assert judged(only(head_passes(case(facts=facts, cloth=cloth))))[0] == 54.0


def test_what_it_says_of_the_head() -> None:
    """What there is, what is needed, and three ways out."""
    good = only(head_passes(necked(450.0)))
    said = "The neck opening of 45 cm stretches to 63 cm; the head needs 56 cm."
    assert in_cm(good) == said
    assert in_inches(good) == (
        "The neck opening of 17 3/4 in stretches to 24 3/4 in; the head needs 22 in."
    )
    assert good.offer is None
    small = only(head_passes(necked(370.0)))
    assert in_cm(small) == (
        "The neck opening of 37 cm stretches to 51.8 cm; the head needs 56 cm. Widen "
        "or deepen the neckline, or take a cloth and seam that stretch 52 %."
    )


def test_the_neck_is_widened_by_a_third_of_what_is_missing() -> None:
    """3 cm are missing: 1 cm a side, and through a band of 0.8 so much more."""
    small = only(head_passes(necked(370.0, width=80.4)))
    assert small.offered == {"neck-half-width": "9.1 cm"}
    tight = only(head_passes(banded(400.0)))
    assert tight.offered == {"neck-half-width": "9.5 cm"}


def test_without_a_width_to_set_no_mend_is_offered() -> None:
    """A tube has no half width."""
    assert only(head_passes(necked(370.0, width=None))).offer is None


def test_without_a_neck_or_a_head_it_is_silent() -> None:
    """The garment has no neck; or the head was not measured."""
    assert reason(head_passes(case())) == "This garment has no neck to be pulled over a head."
    assert reason(head_passes(necked(400.0, head=None))) == "The head's girth is not known."


@pytest.mark.parametrize(("band", "ratio", "holds"), [(462.0, 0.77, True), (461.5, 0.7692, False)])
def test_a_band_is_stretched_by_no_more_than_it_gives(
    band: float, ratio: float, holds: bool
) -> None:
    """Six tenths of 50 %: a band is at least 1 / 1.3 of its neckline."""
    proof = only(band_fits(banded(band, chosen=style(band_ratio=0.77))))
    assert judged(proof) == (ratio, 0.7692, "1", holds)
    assert (proof.id, proof.of) == (ProofId.NECKBAND, "")
    assert proof.offered == (None if holds else {"band-ratio": "0.77"})


def test_the_ratio_that_is_offered_is_enough() -> None:
    """To the next hundredth: at least 0.7502 is asked for, 0.76 offered."""
    made = replace(
        banded(400.0, chosen=style(band_ratio=0.67)), cloth=Cloth(stretch=0.5, seam=0.4, band=0.555)
    )
    proof = only(band_fits(made))
    assert proof.limit == 0.7502
    assert proof.offered == {"band-ratio": "0.76"}


def test_the_ratio_that_is_offered_is_the_least_hundredth_that_is_enough() -> None:
    """A band need not be longer than its cloth asks: 0.7496 is told as 0.75."""
    tight = replace(
        banded(400.0, chosen=style(band_ratio=0.67)),
        cloth=Cloth(stretch=0.5, seam=0.4, band=0.5567),
    )
    proof = only(band_fits(tight))
    assert (proof.limit, proof.offered) == (0.7496, {"band-ratio": "0.75"})


def test_what_it_says_of_a_band() -> None:
    """The share, how far it is stretched, and what would be right."""
    assert in_cm(only(band_fits(banded(480.0)))) == (
        "The neckband is 0.80 of the neckline: it is stretched by 25 % as it is sewn on."
    )
    poor = only(band_fits(banded(375.0)))
    assert in_cm(poor) == (
        "The neckband is 0.62 of the neckline: it is stretched by 60 % as it is sewn on. This "
        "cloth can't give that: take a longer band, or one that stretches 100 %."
    )
    assert poor.mend is None


def test_without_a_band_it_is_silent() -> None:
    """By the style where a band could be had, by the garment where not."""
    could = case(style=style(band_ratio=0.8), cloth=CLOTH)
    assert reason(band_fits(could)) == "The neckline is finished without a band."
    assert reason(band_fits(case())) == "This garment has no neckband."
