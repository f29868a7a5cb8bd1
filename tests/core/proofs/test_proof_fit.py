"""Girths against the body's, and ease where a cloth gives little."""

from __future__ import annotations

import pytest
from hand_made import CLOTH, case, in_cm, in_inches, judged, oblong, only, reason, style

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.facts import Facts, Hem
from tapewise_core.drafting.pattern import Girth
from tapewise_core.proofs.case import Case
from tapewise_core.proofs.fit import ease_for_cloth, girths_fit
from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.style.style import Style
from tapewise_core.units import mm


def fits(name: str, garment: float, body: float, chosen: Style | None = None) -> Proof:
    """Judge one girth [mm]."""
    return only(girths_fit(case(girths=(Girth(name, garment, body),), style=chosen)))


@pytest.mark.parametrize(
    ("name", "body", "garment", "limit", "holds"),
    [
        ("bust", 1000.0, 800.0, 80.0, True),
        ("bust", 1000.0, 799.9, 80.0, False),
        ("hip", 1000.0, 800.1, 80.0, True),
        ("upper arm", 270.0, 240.0, 24.0, True),
        ("upper arm", 270.0, 239.9, 24.0, False),
        ("sleeve hem", 180.0, 160.0, 16.0, True),
        ("sleeve hem", 180.0, 159.9, 16.0, False),
    ],
)
def test_a_girth_uses_up_a_share_of_the_stretch(
    name: str, body: float, garment: float, limit: float, holds: bool
) -> None:
    """Half of 50 % round the body, a quarter of it round an arm."""
    proof = fits(name, garment, body)
    assert judged(proof) == (round(garment / 10, 3), limit, "cm", holds)
    assert (proof.id, proof.of, proof.name) == (ProofId.GIRTH, name, f"{name} of the garment")
    assert proof.offer is None


def test_what_it_says_of_a_girth() -> None:
    """Garment, body and ease; if too close, by how much on which cloth."""
    proof = fits("bust", 960.0, 1000.0)
    assert in_cm(proof) == "Finished bust 96 cm, on 100 cm of body: −4 cm of ease."
    assert in_inches(proof) == "Finished bust 37 3/4 in, on 39 3/8 in of body: −1 5/8 in of ease."
    close = fits("bust", 780.0, 1000.0)
    assert in_cm(close).endswith(
        " That is 2 cm too close for a cloth of 50 % stretch; give it that much more ease."
    )
    assert " That is 13/16 in too close for" in in_inches(close)


@pytest.mark.parametrize(
    ("name", "chosen", "mend"),
    [
        ("bust", style(ease=mm(-32.0), waist_ease=mm(7.0)), {"ease": "-0.2 cm"}),
        ("waist", style(waist_ease=mm(11.0), sleeve_ease=mm(0)), {"waist-ease": "4.1 cm"}),
        ("upper arm", style(ease=mm(0.0), sleeve_ease=mm(-60.0)), {"sleeve-ease": "-3.0 cm"}),
        ("sleeve hem", style(sleeve_ease=mm(10.0)), {"sleeve-ease": "4.0 cm"}),
        ("upper arm", style(ease=mm(0.0)), None),
    ],
)
def test_more_ease_is_offered_where_there_is_an_option(
    name: str, chosen: Style, mend: dict[str, str] | None
) -> None:
    """What was chosen and what is missing, 2.97 cm, to the next millimetre."""
    arm = name not in ("bust", "waist")
    body = 799.7 * (1.125 if arm else 1.25)
    assert fits(name, 770.0, body, chosen).offered == mend
    assert fits(name, 800.0, body, chosen).offered is None


def test_every_girth_is_judged() -> None:
    """In the pattern's order."""
    answer = girths_fit(case(girths=(Girth("bust", 900, 900), Girth("hip", 700, 900))))
    assert isinstance(answer, tuple)
    assert [(proof.of, proof.holds) for proof in answer] == [("bust", True), ("hip", False)]


def test_without_girths_it_is_silent() -> None:
    """A skirt that ends above the hip line is its style; a strip has none at all."""
    assert reason(girths_fit(case(oblong("strip", 10, 10)))) == (
        "This garment has no level of the body to be compared with."
    )
    skirt = case(facts=Facts(hem=Hem(900.0, 100.0)))
    assert reason(girths_fit(skirt)) == (
        "It reaches no level of the body whose height and girth are known."
    )


def eased(ease: float, stretch: float, *girths: Girth) -> Case:
    """Return a garment with ease [mm] in a cloth of some stretch."""
    cloth = Cloth(stretch=stretch, seam=0.4, band=stretch)
    return case(facts=Facts(ease=ease), girths=girths, cloth=cloth)


@pytest.mark.parametrize(
    ("stretch", "ease", "limit", "holds"),
    [
        (0.0, 50.0, 5.0, True),
        (0.0, 49.9, 5.0, False),
        (0.1, 30.0, 3.0, True),
        (0.1, 29.9, 3.0, False),
        (0.249, 0.2, 0.02, True),
        (0.25, -100.0, -10.0, True),
        (0.25, -100.1, -10.0, False),
        (0.5, -180.0, -18.0, True),
        (0.5, -180.1, -18.0, False),
    ],
)
def test_ease_stands_in_for_stretch(stretch: float, ease: float, limit: float, holds: bool) -> None:
    """Five cm without any, in proportion below 25 %, half the stretch round the bust from there."""
    proof = only(ease_for_cloth(eased(ease, stretch, Girth("hip", 1, 1), Girth("bust", 900, 900))))
    assert judged(proof) == (pytest.approx(ease / 10), limit, "cm", holds)
    assert (proof.id, proof.of) == (ProofId.EASE, "")


@pytest.mark.parametrize(("ease", "holds"), [(0.0, True), (-0.1, False)])
def test_without_a_bust_no_ease_at_all_is_the_limit(ease: float, holds: bool) -> None:
    """On cloth that stretches well."""
    assert judged(only(ease_for_cloth(eased(ease, 0.5))))[1:] == (0.0, "cm", holds)


def test_what_it_says_of_ease() -> None:
    """What the cloth wants, what it has, and both ways out."""
    good = only(ease_for_cloth(eased(60.0, 0.1)))
    assert in_cm(good) == "The cloth's 10 % stretch is enough for 6 cm of ease."
    assert in_inches(good) == "The cloth's 10 % stretch is enough for 2 3/8 in of ease."
    assert good.offer is None
    assert "The cloth's 80 % stretch" in in_cm(only(ease_for_cloth(eased(60.0, 0.8))))
    poor = only(ease_for_cloth(eased(0.0, 0.1)))
    assert in_cm(poor) == (
        "A cloth of 10 % stretch wants at least 3 cm of ease and has 0 cm; give it more, or "
        "take a cloth that stretches 25 %."
    )
    assert "at least 1 1/8 in of ease and has 0 in; give it more" in in_inches(poor)
    assert poor.offered == {"ease": "3.0 cm"}


def test_the_ease_it_offers_is_enough() -> None:
    """Rounded up: 4.02 cm are asked for, 4.1 offered, and with them it holds."""
    proof = only(ease_for_cloth(eased(0.0, 0.049)))
    assert proof.limit == 4.02
    assert proof.offered == {"ease": "4.1 cm"}
    assert only(ease_for_cloth(eased(41.0, 0.049))).holds


def test_a_garment_that_is_not_close_has_no_ease_to_judge() -> None:
    """A skirt that hangs."""
    assert reason(ease_for_cloth(case(cloth=CLOTH))) == (
        "This garment has no ease round the body that stretch could stand in for."
    )
