"""What holds for every sewing order, whatever its words."""

from __future__ import annotations

import re

import pytest
from machine_sets import SETS
from msgspec.structs import replace
from seams_made_up import BACK, FRONT, SAMPLES, SKIRT, pattern_of, rectangle, seam

from tapewise_core.drafting.making import UNNOTICED
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.sewing.edges import HUNG_HEM, SLEEVE_HEM, SLIT, TURNED_UP
from tapewise_core.sewing.joining import SHOULDERS
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.neck_edge import TURNED_NECK, TURNED_V
from tapewise_core.sewing.order import sewing_order
from tapewise_core.sewing.stitches import BY_HAND, MILLIMETRES
from tapewise_core.sewing.way import Way
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

FOLDED = (TURNED_NECK, TURNED_V, SLEEVE_HEM, SLIT, TURNED_UP, HUNG_HEM)
"""The ways that sew down an edge that has been folded, and do nothing else with an overlocker."""

MACHINE_OF = {
    "overedge": {"overlocker"},
    "overlocker's": {"overlocker"},
    "cover stitch": {"coverstitch"},
    "zigzag": {"zigzag"},
    "straight stitch (": {"zigzag", "straight"},
    "straight stitches": {"zigzag", "straight"},
    "twin needle": {"zigzag", "straight"},
}
"""The machines that make what a sentence names."""


def order(pattern: Pattern, machines: str, unit: Unit = Unit.CM) -> list[str]:
    """Return the sentences, spelt."""
    told = sewing_order(pattern, stitching(read_machines(machines)))
    return [Reader(unit).spell(sentence) for sentence in told]


def sentence(name: str, machines: str, words: str) -> str:
    """Return the sentence of a sample that says something."""
    return next(said for said in order(SAMPLES[name], machines) if words in said)


def every(machines: str) -> list[str]:
    """Return the sentences of every sample."""
    return [said for pattern in SAMPLES.values() for said in order(pattern, machines)]


@pytest.mark.parametrize("way", FOLDED)
def test_an_overlocker_alone_holds_nothing_folded(way: Way) -> None:
    """It would cut the fold: by hand or on another machine, and no overedge stitch."""
    pattern = next(p for p in SAMPLES.values() if way in {s.making for s in p.seams})
    only = replace(pattern, seams=tuple(s for s in pattern.seams if s.making == way))
    said = " ".join(order(only, "overlocker"))
    assert BY_HAND.words in said
    assert "overedge" not in said


@pytest.mark.parametrize("machines", SETS)
def test_every_stitch_can_be_made_on_what_is_there(machines: str) -> None:
    """No sentence names a machine that is not at hand."""
    there = set(machines.split(", "))
    for said in every(machines):
        for word, makers in MACHINE_OF.items():
            assert word not in said or makers & there, said


@pytest.mark.parametrize("machines", SETS)
def test_a_slit_stays_open(machines: str) -> None:
    """The side is sewn as far as the slit's top and no further, and the slit is left open."""
    side, _, slit = order(SAMPLES["sides-above-a-slit"], machines)
    assert "to the top of the slit, 8 cm above the hem" in side
    assert "to the hem," not in side
    assert slit.startswith("The slits stay open")


def test_a_straight_skirt_is_hemmed_at_once_and_a_circle_hangs() -> None:
    """How a hem is made decides, not what its piece is called."""
    straight = pattern_of((SKIRT,), (seam(SeamKind.HEM, TURNED_UP, "skirt bottom"),))
    assert "24 hours" not in " ".join(order(straight, "zigzag"))
    assert "24 hours" in " ".join(order(SAMPLES["hung-hem"], "zigzag"))


def test_a_surplus_is_told_only_where_there_is_one() -> None:
    """A front 4 mm longer is eased in, by that much; equal ones and a hair are not."""
    assert not any("eased" in said for said in order(SAMPLES["shoulders"], "zigzag"))
    eased = sentence("shoulders-eased", "zigzag", "Sew the shoulder")
    assert "the front's extra 0.4 cm eased in evenly" in eased
    for longer, told in ((UNNOTICED, False), (UNNOTICED + 0.5, True)):
        wide = replace(SAMPLES["shoulders"], pieces=(FRONT, _widened(longer)))
        assert ("the back's extra" in " ".join(order(wide, "zigzag"))) is told


def test_notches_are_matched_where_there_are_any() -> None:
    """And what is eased in lies between them."""
    assert "matched" not in sentence("shoulders-eased", "zigzag", "Sew the shoulder")
    notch = (Notch("top", 40.0, "a"), Notch("top", 160.0, "b"))
    pieces = tuple(replace(piece, notches=notch) for piece in SAMPLES["shoulders-eased"].pieces)
    said = " ".join(order(replace(SAMPLES["shoulders-eased"], pieces=pieces), "zigzag"))
    assert "right sides together, notches matched" in said
    assert "eased in between the notches" in said


def _widened(by: float) -> Piece:
    return rectangle("back", 200 + by, 500)


def test_the_greater_of_two_surpluses_is_told() -> None:
    """Of shoulders that differ, the one with more to ease in is named."""
    pieces = (FRONT, BACK, rectangle("front_2", 209, 500))
    seams = (
        seam(SeamKind.SHOULDER, SHOULDERS, "front top", "back top"),
        seam(SeamKind.SHOULDER, SHOULDERS, "front_2 top", "back top"),
    )
    assert "0.9 cm eased" in " ".join(order(pattern_of(pieces, seams), "zigzag"))


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
    told = order(SAMPLES[name], "zigzag")
    if any("clear elastic" in said for said in told) and any("ress" in said for said in told):
        assert any("it melts" in said for said in told)


def test_an_overlocked_seam_is_not_clipped() -> None:
    """Without a household machine the facing's seam is overlocked, and its threads left whole."""
    assert "Do not clip" in order(SAMPLES["facing"], "overlocker, coverstitch")[0]
    assert "Clip the allowance" in order(SAMPLES["facing"], "overlocker, zigzag")[0]


def test_an_edge_is_neatened_only_where_something_neatens() -> None:
    """A straight stitch alone leaves a facing's edge raw, and says why that may be."""
    assert "jersey does not fray" in order(SAMPLES["facing-ring"], "straight")[0]
    assert "zigzag over the edge" in order(SAMPLES["facing-ring"], "zigzag")[0]
