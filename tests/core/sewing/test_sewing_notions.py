"""Tapes, elastics, needles, and the allowance of a seam."""

from __future__ import annotations

import pytest
from seams_made_up import SAMPLES, pattern_of, rectangle, seam

from tapewise_core.drafting.making import How
from tapewise_core.drafting.piece import EdgeRun, Seam, SeamKind
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.notions import needles, stays
from tapewise_core.sewing.work import Work, apart, sewn_at
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit


def needed(name: str, unit: Unit = Unit.CM) -> list[str]:
    """Return what a sample asks for."""
    return [Reader(unit).spell(told) for told in stays(SAMPLES[name])]


@pytest.mark.parametrize(
    ("name", "tapes"),
    [
        ("shoulders", ["clear elastic or woven tape for the shoulders"]),
        ("turned-neck", ["clear elastic or fusible knit tape for the neckline"]),
        ("turned-v", ["clear elastic or fusible knit tape for the neckline"]),
        ("pocket", ["woven tape for the pockets' openings"]),
        ("casing", ["elastic 1.5 cm wide, 71 cm long; a safety pin"]),
        ("stayed-waist",
         ["clear elastic 0.6 to 1 cm wide for the waist seam, 70 cm and an end to hold"]),
        ("hem", []),
    ],
)  # fmt: skip
def test_every_tape_that_is_sewn_is_on_the_list(name: str, tapes: list[str]) -> None:
    """And none where no seam asks for it."""
    assert needed(name) == tapes


def test_elastic_is_told_in_the_readers_unit() -> None:
    """As it is sold: a quarter to half an inch for a stay."""
    assert needed("stayed-waist", Unit.IN)[0].startswith("clear elastic 1/4 to 1/2 in wide")
    assert needed("casing", Unit.IN) == ["elastic 9/16 in wide, 28 in long; a safety pin"]


@pytest.mark.parametrize(
    ("machines", "twin"),
    [
        ("zigzag", True),
        ("zigzag, overlocker", True),
        ("overlocker", False),
        ("zigzag, coverstitch", False),
    ],
)
def test_a_twin_needle_is_for_whoever_hems_with_one(machines: str, twin: bool) -> None:
    """Not beside a coverstitch, and not without a machine to put it in."""
    assert ("twin" in needles(stitching(read_machines(machines)))) is twin


def test_a_seam_is_sewn_at_its_own_allowance() -> None:
    """That of the first edge there is, not of another edge of the piece."""
    piece = rectangle("front", 100, 100, {"right": 12.0, "top": 5.0})
    run = EdgeRun("front", ("underarm", "right"))
    pattern = pattern_of((piece,), (Seam(SeamKind.SIDE, (run,), ()),))
    assert sewn_at(pattern, pattern.seams[0]).mm == 12
    assert Work(pattern.seams, pattern, stitching(read_machines("zigzag"))).at.mm == 12


def test_sides_apart_are_measured_from_the_first() -> None:
    """More than nothing where the first is longer, less where the second is."""
    pieces = (rectangle("front", 104, 100), rectangle("back", 100, 100))
    one = seam(SeamKind.SHOULDER, How.STAYED, "front top", "back top")
    other = seam(SeamKind.SHOULDER, How.STAYED, "back top", "front top")
    pattern = pattern_of(pieces, (one, other))
    assert [apart(pattern, each) for each in pattern.seams] == pytest.approx([4, -4])
