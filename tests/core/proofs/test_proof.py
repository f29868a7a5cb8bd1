"""What a proof is: its name, and a mend as data until somebody types it."""

from __future__ import annotations

import pytest
from hand_made import case, style

from tapewise_core.proofs.limits import (
    HAIR,
    at_least,
    at_most,
    in_cm,
    keeps_to,
    off_by,
    reaches,
    rounded,
)
from tapewise_core.proofs.proof import LACKS, Proof, ProofId, lacking
from tapewise_core.text.told import Reader
from tapewise_core.units import Length, Unit, mm


@pytest.mark.parametrize(
    ("about", "of", "name"),
    [
        (ProofId.HEAD, "", "head through the neck"),
        (ProofId.OUTLINE, "back", "back outline"),
        (ProofId.FOLD, "front hem", "front hem square to the fold"),
        (ProofId.GIRTH, "bust", "bust of the garment"),
        (ProofId.WAIST, "waistband", "waistband over the body"),
        (ProofId.SEAM, "panel seams", "panel seams"),
        (ProofId.LINE, "hem across the side seam", "hem across the side seam"),
    ],
)
def test_a_name_is_read_from_id_and_subject(about: ProofId, of: str, name: str) -> None:
    """A few words for a person."""
    assert Proof(about, of, 0.0, 0.0, "1", True, ()).name == name


def test_a_length_is_recorded_in_cm_to_the_hundredth_of_a_millimetre() -> None:
    """Never as minus nothing."""
    proof = in_cm(ProofId.HEAD, "back", -0.0001, 123.456, True, ("words",))
    assert (str(proof.value), proof.limit, proof.unit) == ("0.0", 12.346, "cm")
    other = in_cm(ProofId.HEAD, "", 98.7654, 1.0, True, ())
    assert (other.value, other.limit) == (9.877, 0.1)
    assert (proof.of, proof.holds, proof.says, proof.mend) == ("back", True, ("words",), None)


def test_an_offer_is_typed_as_options_take_it() -> None:
    """Lengths in cm to the millimetre, words and numbers as they are; none stays none."""
    mend: dict[str, Length | str] = {"ease": mm(-23.0), "waist-finish": "band"}
    proof = in_cm(ProofId.WAIST, "", 1.0, 2.0, False, (), mend)
    assert proof.offered == {"ease": "-2.3 cm", "waist-finish": "band"}
    assert in_cm(ProofId.WAIST, "", 1.0, 2.0, False, ()).offered is None


@pytest.mark.parametrize("size", [12.01, 12.5, 12.99, -7.3, 0.4])
def test_a_mend_is_rounded_to_the_safe_side(size: float) -> None:
    """To the whole millimetre above or below, never more than one away."""
    more, less = at_least(size).mm, at_most(size).mm
    assert size <= more <= size + 1
    assert size - 1 <= less <= size
    assert (more, less) == (pytest.approx(round(more)), pytest.approx(round(less)))


def test_what_fails_is_never_told_as_nothing() -> None:
    """A hair is a millimetre, in inches a sixteenth; what is plain to see is told as it is."""
    told = [Reader(unit).spell((off_by(0.04),)) for unit in Unit]
    assert told == ["0.1 cm", "1/16 in"]
    assert Reader(Unit.CM).spell((off_by(12.4),)) == "1.2 cm"


def test_nothing_that_was_proved_can_be_changed_afterwards() -> None:
    """Proof, silence and case are frozen, and take no names but their own."""
    made = case(style=style(ease=1.0))
    proof = in_cm(ProofId.HEAD, "", 1.0, 2.0, False, ())
    for one, own in ((lacking(ProofId.CAP, "cap"), "id"), (made, "style"), (proof, "holds")):
        for name in (own, "another"):
            with pytest.raises(AttributeError, match="immutable"):
                setattr(one, name, None)
    assert made.offers("ease")
    assert not made.offers("waist-ease")


def test_a_silence_of_the_garment_names_what_it_lacks() -> None:
    """So that it can be told from a silence of the style."""
    silent = lacking(ProofId.CAP, "set-in sleeve")
    assert silent.id is ProofId.CAP
    assert "".join(map(str, silent.reason)) == f"{LACKS}set-in sleeve."


def test_rounding_alone_breaks_no_limit() -> None:
    """A hair is let off on the wrong side of a limit, two are not."""
    assert reaches(5.0 - HAIR, 5.0)
    assert not reaches(5.0 - 2 * HAIR, 5.0)
    assert reaches(5.1, 5.0)
    assert keeps_to(5.0 + HAIR, 5.0)
    assert not keeps_to(5.0 + 2 * HAIR, 5.0)
    assert keeps_to(4.9, 5.0)
    assert pytest.approx(1e-6) == HAIR


def test_a_value_is_never_recorded_as_minus_nothing() -> None:
    """It reads 0.0, and other values keep their digits."""
    assert str(rounded(-0.0004, 3)) == "0.0"
    assert rounded(-1.2345, 2) == -1.23
