"""A set-in sleeve's cap against its armhole of 40 cm."""

from __future__ import annotations

import pytest
from hand_made import case, in_cm, in_inches, judged, only, reason, sewn, strip, style

from tapewise_core.drafting.seam import SeamKind
from tapewise_core.proofs.cap import cap_fits
from tapewise_core.proofs.case import Case
from tapewise_core.proofs.proof import ProofId

OFFERED = style(cap_shortening=0.0)


def sleeve(cap: float, chosen=OFFERED) -> Case:
    """Return a cap of a length [mm] sewn into an armhole of 400 mm."""
    pieces = strip("sleeve", "cap", cap), strip("back", "armhole", 400.0)
    seam = sewn(SeamKind.SLEEVE, "sleeve.cap", "back.armhole")
    side = sewn(SeamKind.SIDE, "sleeve.end", "sleeve.start")
    return case(*pieces, seams=(side, seam), style=chosen)


@pytest.mark.parametrize(
    ("cap", "shorter", "holds"),
    [
        (400.0, 0.0, True),
        (396.0, 1.0, True),
        (398.0, 0.5, True),
        (396.333, 0.917, True),
        (395.9, 1.025, False),
        (400.1, -0.025, False),
    ],
)
def test_a_cap_is_none_to_one_percent_shorter(cap: float, shorter: float, holds: bool) -> None:
    """Just inside and just outside both ends; the record tells the share."""
    proof = only(cap_fits(sleeve(cap)))
    assert judged(proof) == (shorter, 1.0, "%", holds)
    assert (proof.id, proof.of) == (ProofId.CAP, "")
    assert proof.offered == (None if holds else {"cap-shortening": "0.5"})


def test_what_it_says_of_a_cap_that_fits() -> None:
    """Both lengths, in either unit."""
    proof = only(cap_fits(sleeve(396.0)))
    assert in_cm(proof) == "The sleeve's cap of 39.6 cm goes into an armhole of 40 cm."
    assert in_inches(proof) == "The sleeve's cap of 15 5/8 in goes into an armhole of 15 3/4 in."


def test_what_it_says_of_a_cap_too_short() -> None:
    """The share it is shorter by, what is right, and the option to set."""
    assert in_cm(only(cap_fits(sleeve(392.0)))) == (
        "The sleeve's cap of 39.2 cm goes into an armhole of 40 cm. It is 2.0 % shorter; a cap is "
        "0 to 1 % shorter."
    )


def test_what_it_says_of_a_cap_too_long() -> None:
    """How much too long, in either unit."""
    proof = only(cap_fits(sleeve(408.0)))
    assert " It is 0.8 cm too long; a cap is 0 to 1 % shorter" in in_cm(proof)
    assert " It is 5/16 in too long; a cap is 0 to 1 % shorter" in in_inches(proof)


def test_a_mend_is_offered_only_where_the_option_is() -> None:
    """A garment that has no cap-shortening is not told to set it by a key."""
    assert only(cap_fits(sleeve(392.0, style()))).offer is None


def test_without_a_set_in_sleeve_it_is_silent() -> None:
    """No sleeve is sewn in."""
    assert reason(cap_fits(case(strip("back", "side", 100)))) == (
        "This garment has no set-in sleeve."
    )
