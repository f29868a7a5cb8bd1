"""As wide as was asked for at every level, or held back with a reason."""

from __future__ import annotations

import pytest
from hand_made import case, in_cm, judged, only, reason, style

from tapewise_core.drafting.facts import Facts, Level, Passage, Waist
from tapewise_core.proofs.case import Case
from tapewise_core.proofs.levels import ASKED, as_asked
from tapewise_core.proofs.proof import LACKS, ProofId
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

WHY: Told = said("the shoulder reaches {} beyond it.", mm(20.0))


def level(given: float, name: str = "bust", held_back: Told | None = None) -> Level:
    """Return a level of 900 round, 60 of ease asked for [mm]."""
    return Level(name, 260.0, 900.0, 60.0, 960.0, given, held_back)


def at(*levels: Level, **options: float) -> Case:
    """Return a draft with these levels."""
    return case(facts=Facts(levels=levels), style=style(**options))


@pytest.mark.parametrize(
    ("given", "off", "holds"),
    [
        (960.0, 0.0, True),
        (962.99, 0.299, True),
        (957.01, 0.299, True),
        (963.01, 0.301, False),
        (956.99, 0.301, False),
    ],
)
@pytest.mark.parametrize("about", ASKED)
def test_three_millimetres_need_no_reason(
    about: ProofId, given: float, off: float, holds: bool
) -> None:
    """More or less than that fails where nothing says why, at every level."""
    proof = only(as_asked(about)(at(level(given, ASKED[about].level))))
    assert judged(proof) == (off, 0.3, "cm", holds)
    assert (proof.id, proof.of, proof.offer) == (about, "", None)


def test_what_is_held_back_holds_with_its_reason() -> None:
    """The reason is the sentence's end."""
    proof = only(as_asked(ProofId.BUST)(at(level(990.0, held_back=WHY))))
    assert judged(proof) == (3.0, 0.3, "cm", True)
    assert in_cm(proof) == (
        "The bust is 99 cm round, 3 cm wider than asked: the shoulder reaches 2 cm beyond it."
    )


def test_a_reason_without_a_full_stop_gets_one() -> None:
    """Whatever follows begins a sentence of its own."""
    why = said("the hem is bent")
    proof = only(as_asked(ProofId.BUST)(at(level(990.0, held_back=why))))
    assert in_cm(proof).endswith("3 cm wider than asked: the hem is bent.")


def test_what_it_says() -> None:
    """As asked with its ease; off without a reason."""
    assert in_cm(only(as_asked(ProofId.BUST)(at(level(961.0))))) == (
        "The bust is 96.1 cm round, as asked: 6.1 cm of ease on 90 cm."
    )
    arm = level(940.0, "upper_arm")
    assert in_cm(only(as_asked(ProofId.UPPER_ARM)(at(arm)))) == (
        "The upper arm is 94 cm round, 2 cm narrower than asked, and nothing says why."
    )


def test_a_level_that_is_shown_only_is_no_proof() -> None:
    """What nothing was asked for is not compared."""
    shown = Level("bust", 260.0, 900.0, None, None, 980.0)
    assert reason(as_asked(ProofId.BUST)(at(shown))).startswith(LACKS)


def test_a_garment_that_could_reach_a_level_says_why_it_does_not() -> None:
    """It has the option of its ease; one that has not, has no such thing."""
    short = at(level(960.0), hip_ease=0.0)
    assert reason(as_asked(ProofId.HIP)(short)) == "It ends above the hip."
    assert reason(as_asked(ProofId.UPPER_ARM)(short)) == (
        "This garment has no upper arm to be compared with what was asked."
    )


def test_a_skirt_sewn_on_has_no_hip_that_was_asked_for() -> None:
    """By its style, or because there is no such option at all."""
    waist = Waist(Passage.JOINED, 700.0, 900.0, 700.0)
    joined = case(facts=Facts(levels=(level(960.0),), waist=waist), style=style(hip_ease=0.0))
    assert reason(as_asked(ProofId.HIP)(joined)).startswith("A full skirt is as wide")
    without = case(facts=Facts(levels=(level(960.0),), waist=waist), style=style())
    assert reason(as_asked(ProofId.HIP)(without)).startswith(LACKS)
