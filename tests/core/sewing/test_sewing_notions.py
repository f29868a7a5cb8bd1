"""Tapes, elastics, needles, and the allowance of a seam."""

from __future__ import annotations

import pytest
from msgspec.structs import replace
from seams_made_up import SAMPLES, pattern_of, rectangle, seam

from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.sewing.joining import SHOULDERS
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.notions import needles, notions, stays, thread
from tapewise_core.sewing.operation import Operation
from tapewise_core.sewing.order import operations
from tapewise_core.sewing.way import Work, apart, sewn_at
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit


def chain(name: str, machines: str = "zigzag") -> tuple[Operation, ...]:
    """Return a sample's order."""
    return operations(SAMPLES[name], stitching(read_machines(machines)))


def needed(name: str, unit: Unit = Unit.CM) -> list[str]:
    """Return the tapes and elastics that a sample asks for."""
    return [Reader(unit).spell(told) for told in stays(chain(name))]


@pytest.mark.parametrize(
    ("name", "tapes"),
    [
        ("shoulders",
         ["clear elastic or woven tape, 0.6 to 1 cm wide, 20 cm long, for the shoulders"]),
        ("turned-neck",
         ["clear elastic or fusible knit tape, 0.6 to 1 cm wide, 20 cm long, for the neckline"]),
        ("pocket", ["woven tape, 0.6 to 1 cm wide, 0 cm long, for the pockets' openings"]),
        ("casing", ["elastic, 1.5 cm wide, 71 cm long, for the casing",
                    "a safety pin, for drawing the elastic in"]),
        ("stayed-waist",
         ["clear elastic, 0.6 to 1 cm wide, 70 cm long, for the waist seam"]),
        ("hem", []),
    ],
)  # fmt: skip
def test_every_tape_that_is_sewn_is_on_the_list(name: str, tapes: list[str]) -> None:
    """Measured on the pattern; none where no seam asks for it."""
    assert needed(name) == tapes


def test_elastic_is_told_in_the_readers_unit() -> None:
    """As it is sold: a quarter to half an inch for a stay."""
    assert needed("stayed-waist", Unit.IN)[0].startswith("clear elastic, 1/4 to 1/2 in wide")
    assert needed("casing", Unit.IN)[0] == "elastic, 9/16 in wide, 28 in long, for the casing"


@pytest.mark.parametrize(
    ("machines", "twin"),
    [
        ("zigzag", True),
        ("straight", True),
        ("zigzag, overlocker", True),
        ("overlocker", False),
        ("zigzag, coverstitch", False),
        ("hand", False),
    ],
)
def test_a_twin_needle_is_for_whoever_hems_with_one(machines: str, twin: bool) -> None:
    """Not beside a coverstitch, and not without a machine to put it in."""
    there = read_machines(machines)
    assert ("twin" in needles(chain("hem", machines), there)) is twin


def test_a_machine_that_sews_nothing_is_not_asked_for() -> None:
    """A seam that is overlocked needs no cover machine, and a hand-sewer no machine at all."""
    there = read_machines("overlocker, coverstitch")
    ways = chain("sides", "overlocker, coverstitch")
    assert notions(SAMPLES["sides"], ways, there)[0] == ("machines: overlocker",)
    by_hand = notions(SAMPLES["sides"], chain("sides", "hand"), read_machines("hand"))
    assert by_hand[0] == ("a fine sewing needle for what is sewn by hand",)


@pytest.mark.parametrize(
    ("name", "machines", "unit", "says"),
    [
        # two sides of 0.5 m at 18 m a metre, a share to spare and 3 m to thread: 23.7 m
        ("sides", "overlocker", Unit.CM, "polyester thread, about: overlocker 30 m"),
        ("sides", "overlocker", Unit.IN, "polyester thread, about: overlocker 33 yd"),
        ("sides", "zigzag", Unit.CM, "polyester thread, about: sewing machine 10 m"),
        ("sides", "hand", Unit.CM, "polyester thread, about: by hand 10 m"),
    ],
)
def test_thread_follows_from_the_seams_and_their_stitch(
    name: str, machines: str, unit: Unit, says: str
) -> None:
    """By machine, rounded up to 10 m, in yards for whoever reads inches."""
    pattern = SAMPLES[name]
    doubled = replace(pattern, pieces=tuple(replace(p, count=2) for p in pattern.pieces))
    told = thread(doubled, chain(name, machines), read_machines(machines))
    assert Reader(unit).spell(told) == says


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
    one = seam(SeamKind.SHOULDER, SHOULDERS, "front top", "back top")
    other = seam(SeamKind.SHOULDER, SHOULDERS, "back top", "front top")
    pattern = pattern_of(pieces, (one, other))
    assert [apart(pattern, each) for each in pattern.seams] == pytest.approx([4, -4])
