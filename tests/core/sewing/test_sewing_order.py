"""What holds for every sewing order, whatever its words."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from seams_made_up import BACK, FRONT, SAMPLES, SKIRT, pattern_of, rectangle, seam
from test_sewing_golden import SETS

from tapewise_core.drafting.making import UNNOTICED, How
from tapewise_core.drafting.piece import Pattern, Piece, SeamKind
from tapewise_core.sewing.machines import BY_HAND, MILLIMETRES, read_machines, stitching
from tapewise_core.sewing.notions import needles
from tapewise_core.sewing.order import ORDER, sewing_order
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

FOLDED = (
    How.TURNED_NECK, How.TURNED_V, How.SLEEVE_HEM, How.CASING, How.SLIT, How.HEM, How.HUNG_HEM,
)  # fmt: skip
"""The makings that sew down an edge that has been folded."""

MACHINE_OF = {
    "overedge": "overlocker",
    "overlocker's": "overlocker",
    "cover stitch": "coverstitch",
    "zigzag": "zigzag",
    "lockstitch": "zigzag",
    "straight stitches": "zigzag",
    "twin needle": "zigzag",
}
"""The machine that makes what a sentence names."""


def order(pattern: Pattern, machines: str, unit: Unit = Unit.CM) -> list[str]:
    """Return the sentences, spelt."""
    told = sewing_order(pattern, stitching(read_machines(machines)))
    return [Reader(unit).spell(sentence) for sentence in told]


def every(machines: str) -> list[str]:
    """Return the sentences of every sample."""
    return [said for pattern in SAMPLES.values() for said in order(pattern, machines)]


def test_the_table_has_every_making() -> None:
    """A seam made in any way is told."""
    assert set(ORDER) == set(How)


@pytest.mark.parametrize("how", FOLDED)
def test_an_overlocker_alone_holds_nothing_folded(how: How) -> None:
    """It would cut the fold: by hand or on another machine, and no overedge stitch."""
    pattern = next(p for p in SAMPLES.values() if how in {s.making.how for s in p.seams})
    only = replace(pattern, seams=tuple(s for s in pattern.seams if s.making.how is how))
    said = " ".join(order(only, "overlocker"))
    assert BY_HAND in said
    assert "overedge" not in said


@pytest.mark.parametrize("machines", SETS)
def test_every_stitch_can_be_made_on_what_is_there(machines: str) -> None:
    """No sentence and no needle asks for a machine that is not at hand."""
    ways = stitching(read_machines(machines))
    for said in (*every(machines), needles(ways)):
        asked = {machine for word, machine in MACHINE_OF.items() if word in said}
        assert asked <= set(machines.split(", ")), said


@pytest.mark.parametrize("machines", SETS)
def test_a_slit_stays_open(machines: str) -> None:
    """The side is sewn as far as the slit's top and no further, and the slit is left open."""
    side, slit = order(SAMPLES["sides-above-a-slit"], machines)
    assert "from the sleeve's hem to the top of the slit, 8 cm above the hem" in side
    assert "to the hem," not in side
    assert slit.startswith("The slits stay open")


def test_a_straight_skirt_is_hemmed_at_once_and_a_circle_hangs() -> None:
    """How a hem is made decides, not what its piece is called."""
    straight = pattern_of((SKIRT,), (seam(SeamKind.HEM, How.HEM, "skirt bottom"),))
    assert "24 hours" not in " ".join(order(straight, "zigzag"))
    assert "24 hours" in order(SAMPLES["hung-hem"], "zigzag")[0]


def test_a_surplus_is_told_only_where_there_is_one() -> None:
    """A front 4 mm longer is eased in, by that much; equal ones and a hair are not."""
    assert not any("eased" in said for said in order(SAMPLES["shoulders"], "zigzag"))
    eased = order(SAMPLES["shoulders-eased"], "zigzag")[1]
    assert "the front's extra 0.4 cm eased in between the notches" in eased
    for longer, told in ((UNNOTICED, False), (UNNOTICED + 0.5, True)):
        pattern = SAMPLES["shoulders"]
        wide = replace(pattern, pieces=(FRONT, _widened(longer)))
        assert ("the back's extra" in order(wide, "zigzag")[1]) is told


def _widened(by: float) -> Piece:
    return rectangle("back", 200 + by, 500)


def test_the_greater_of_two_surpluses_is_told() -> None:
    """Of shoulders that differ, the one with more to ease in is named."""
    pieces = (FRONT, BACK, rectangle("front_2", 209, 500))
    seams = (
        seam(SeamKind.SHOULDER, How.STAYED, "front top", "back top"),
        seam(SeamKind.SHOULDER, How.STAYED, "front_2 top", "back top"),
    )
    assert "0.9 cm" in order(pattern_of(pieces, seams), "zigzag")[1]


def test_seams_are_told_in_the_order_of_sewing() -> None:
    """Whatever order a garment lists its seams in: shoulders, neck, sleeves, sides, hem."""
    names = ("hem", "sides", "sleeves", "band", "band-ring", "shoulders")
    pieces = {p.name: p for name in reversed(names) for p in SAMPLES[name].pieces}
    seams = tuple(s for name in names for s in SAMPLES[name].seams)
    told = order(pattern_of(tuple(pieces.values()), seams), "overlocker")
    words = ("Sew the shoulder", "into a ring", "Sew the band", "Sew the sleeves in",
             "Sew underarm", "Turn up the hem")  # fmt: skip
    places = [next(i for i, said in enumerate(told) if word in said) for word in words]
    assert places == sorted(places)


@pytest.mark.parametrize("machines", SETS)
def test_inches_are_told_in_inches(machines: str) -> None:
    """No centimetre reaches an inch reader, and no millimetre but those machines are marked in."""
    for pattern in SAMPLES.values():
        for said in order(pattern, machines, Unit.IN):
            for words in MILLIMETRES:
                said = said.replace(words, "")
            assert not re.search(r"\d (cm|mm)\b", said)


@pytest.mark.parametrize("name", SAMPLES)
def test_elastic_is_never_pressed_without_a_warning(name: str) -> None:
    """Where clear elastic may lie under the iron, it is said to melt."""
    for said in order(SAMPLES[name], "zigzag"):
        if "clear elastic" in said and "ress" in said:
            assert "it melts" in said


def test_an_overlocked_seam_is_not_clipped() -> None:
    """Without a household machine the facing's seam is overlocked, and its threads left whole."""
    assert "Do not clip" in order(SAMPLES["facing"], "overlocker, coverstitch")[0]
    assert "Clip the allowance" in order(SAMPLES["facing"], "overlocker, zigzag")[0]
