"""Machines as they are typed, the stitches they make, and what is refused."""

from __future__ import annotations

import pytest

from tapewise_core.errors import OptionError
from tapewise_core.sewing.machines import Machine, read_machines, stitching
from tapewise_core.sewing.stitches import BY_HAND, CATCH

OVERLOCKER, COVER, ZIGZAG, STRAIGHT, HAND = Machine

KNOWN = "Machines are any of overlocker, coverstitch, zigzag, straight, hand, joined by commas"


def test_machines_are_read_whatever_their_case_and_spaces() -> None:
    """Commas part them; empty places and repeats do not matter."""
    assert read_machines(" Overlocker,, ZIGZAG ,zigzag") == {OVERLOCKER, ZIGZAG}


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (
            "",
            KNOWN + ", not none.",
        ),
        (
            " , ",
            KNOWN + ", not none.",
        ),
        (
            "zigzag, loom, anvil",
            KNOWN + ", not loom, anvil.",
        ),
        (
            "coverstitch",
            "A coverstitch alone can't join seams; add overlocker, zigzag, straight or hand.",
        ),
        (
            "coverstitch, coverstitch",
            "A coverstitch alone can't join seams; add overlocker, zigzag, straight or hand.",
        ),
    ],
)
def test_what_can_not_sew_is_refused(text: str, says: str) -> None:
    """No machine, an unknown one, or a coverstitch alone: one sentence says what would do."""
    with pytest.raises(OptionError) as refused:
        read_machines(text)
    assert str(refused.value) == says


def test_seams_stretch_as_far_as_their_stitch() -> None:
    """An overlocker's seam gives 60 %, a narrow zigzag's 30 %, a straight one's 10 %."""
    assert stitching(frozenset({OVERLOCKER, ZIGZAG})).seam_stretch == 0.6
    assert stitching(frozenset({ZIGZAG, COVER})).seam_stretch == 0.3
    assert stitching(frozenset({STRAIGHT, HAND})).seam_stretch == 0.1


@pytest.mark.parametrize(
    ("machines", "hem", "topstitch"),
    [
        ({OVERLOCKER}, BY_HAND.words, ""),
        ({HAND}, CATCH.words, ""),
        ({STRAIGHT}, "twin needle", ""),
        ({ZIGZAG}, "twin needle", "narrow zigzag"),
        ({OVERLOCKER, COVER}, "cover stitch", "cover stitch"),
        ({ZIGZAG, COVER}, "cover stitch", "cover stitch"),
    ],
)
def test_a_hem_goes_to_the_best_machine_there_is(
    machines: set[Machine], hem: str, topstitch: str
) -> None:
    """The coverstitch before the twin needle, and a hand before an overlocker."""
    ways = stitching(frozenset(machines))
    assert hem in ways.hem.words
    assert topstitch in str(ways.topstitch)
    assert bool(ways.topstitch) is bool(topstitch)


def test_an_edge_is_held_by_hand_where_nothing_topstitches() -> None:
    """A folded edge needs some stitch even on an overlocker alone."""
    assert stitching(frozenset({OVERLOCKER})).edge == BY_HAND
    assert stitching(frozenset({ZIGZAG})).edge == stitching(frozenset({ZIGZAG})).topstitch
