"""A hem wide enough to walk in."""

from __future__ import annotations

import pytest
from hand_made import case, in_cm, in_inches, judged, only, reason, style

from tapewise_core.drafting.facts import Facts, Hem
from tapewise_core.proofs.case import Case
from tapewise_core.proofs.proof import ProofId
from tapewise_core.proofs.stride import least_round, stride
from tapewise_core.style.style import Style
from tapewise_core.units import mm


def hemmed(
    below: float, around: float, slit: float = 0.0, chosen: Style | None = None, nape: float = 0.0
) -> Case:
    """Return a hem so far below the waist [mm]: knee at 600, ankle at 1000."""
    hem = Hem(around, below, below_nape=nape or None, knee=600.0, ankle=1000.0, slit=slit)
    return case(facts=Facts(hem=hem), style=chosen)


@pytest.mark.parametrize(
    ("below", "around", "least", "holds"),
    [
        (600.0, 1100.0, 110.0, True),
        (600.0, 1099.9, 110.0, False),
        (800.0, 1250.0, 125.0, True),
        (800.0, 1249.9, 125.0, False),
        (1000.0, 1400.0, 140.0, True),
        (1000.0, 1399.9, 140.0, False),
        (1100.0, 1400.0, 140.0, True),
        (1100.0, 1399.9, 140.0, False),
    ],
)
def test_a_hem_lets_its_wearer_stride(
    below: float, around: float, least: float, holds: bool
) -> None:
    """110 cm round at the knee, 140 at the ankle and below, in proportion between them."""
    proof = only(stride(hemmed(below, around)))
    assert judged(proof) == (round(around / 10, 3), least, "cm", holds)
    assert (proof.id, proof.of) == (ProofId.STRIDE, "")


def test_a_knee_at_the_ankle_divides_by_nothing() -> None:
    """Odd measures give a number, the ankle's from a millimetre below the knee."""
    assert least_round(800.0, 800.0, 800.0) == 1100.0
    assert least_round(800.5, 800.0, 800.0) == 1250.0
    assert least_round(801.0, 800.0, 800.0) == 1400.0
    assert least_round(500.0, 600.0, 900.0) == 1100.0


def test_a_childs_leg_strides_less() -> None:
    """As much less as it is shorter than the shortest grown one; all grown ones alike."""
    assert least_round(350.0, 350.0, 385.0) == 550.0
    assert least_round(385.0, 350.0, 385.0) == 700.0
    assert least_round(500.0, 500.0, 770.0) == least_round(600.0, 600.0, 1100.0)


def test_a_slit_gives_what_is_missing() -> None:
    """And says so."""
    proof = only(stride(hemmed(800.0, 900.0, slit=100.0)))
    assert judged(proof) == (90.0, 125.0, "cm", True)
    assert only(stride(hemmed(800.0, 900.0, slit=0.5))).holds
    assert in_cm(proof) == (
        "The hem is 90 cm round; a stride needs 125 cm there. A slit gives what is missing."
    )


@pytest.mark.parametrize(
    ("slit", "above", "holds"),
    [
        (200.1, 900.0, True),
        (199.9, 900.0, False),
        (100.0, 1175.0, True),
        (100.0, 1174.9, False),
    ],
)
def test_a_slit_opens_up_to_where_a_stride_has_room(slit: float, above: float, holds: bool) -> None:
    """Above the knee the leg is free; below it the garment must be wide enough where it begins."""
    hem = Hem(900.0, 800.0, knee=600.0, ankle=1000.0, slit=slit, above_slit=above)
    proof = only(stride(case(facts=Facts(hem=hem))))
    assert judged(proof) == (90.0, 125.0, "cm", holds)
    assert ("A slit gives what is missing." in in_cm(proof)) is holds


def test_a_slit_that_is_too_short_says_where_it_ends() -> None:
    """So far below the knee."""
    hem = Hem(900.0, 800.0, knee=600.0, ankle=1000.0, slit=150.0, above_slit=900.0)
    told = in_cm(only(stride(case(facts=Facts(hem=hem)))))
    assert "It opens no higher than 5 cm below the knee." in told


def test_what_it_says_of_a_narrow_hem() -> None:
    """How much is missing, and three ways out."""
    proof = only(stride(hemmed(800.0, 1150.0)))
    assert in_cm(proof) == (
        "The hem is 115 cm round; a stride needs 125 cm there. It is 10 cm too narrow: give it "
        "more flare, a slit, or end it above the knee."
    )
    assert in_inches(proof).startswith(
        "The hem is 45 1/4 in round; a stride needs 49 1/4 in there. It is 3 7/8 in too narrow"
    )
    good = only(stride(hemmed(800.0, 1300.0)))
    assert in_cm(good) == "The hem is 130 cm round; a stride needs 125 cm there."


@pytest.mark.parametrize(
    ("chosen", "nape", "mend"),
    [
        (style(skirt_length=mm(800.0)), 0.0, {"skirt-length": "59.0 cm"}),
        (style(skirt_length=mm(800.0)), 1200.0, {"skirt-length": "59.0 cm"}),
        (style(body_length=mm(1200.0)), 1200.0, {"body-length": "99.0 cm"}),
        (style(body_length=mm(1200.0)), 0.0, None),
        (style(), 1200.0, None),
    ],
)
def test_the_length_that_ends_above_the_knee_is_offered(
    chosen: Style, nape: float, mend: dict[str, str] | None
) -> None:
    """A centimetre above it, counted from the waist or from the nape as the option is."""
    assert only(stride(hemmed(800.0, 1150.0, chosen=chosen, nape=nape))).offered == mend
    assert only(stride(hemmed(800.0, 1300.0, chosen=chosen, nape=nape))).offered is None


def test_above_the_knee_it_is_silent() -> None:
    """The leg is free; at the knee it is not."""
    assert reason(stride(hemmed(599.9, 500.0))) == (
        "The hem lies above the knee, where the leg is free."
    )


@pytest.mark.parametrize(("knee", "ankle"), [(None, 1000.0), (600.0, None), (None, None)])
def test_without_the_legs_measures_it_is_silent(knee: float | None, ankle: float | None) -> None:
    """Nor without a hem round the legs."""
    unknown = case(facts=Facts(hem=Hem(900.0, 800.0, knee=knee, ankle=ankle)))
    assert reason(stride(unknown)) == "How high knee and ankle lie is not known."
    assert reason(stride(case())) == "This garment has no hem round the legs."
