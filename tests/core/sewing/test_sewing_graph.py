"""The sewing order as a graph, for every garment, its options that matter, and every machine."""

from __future__ import annotations

import pytest
from msgspec.structs import replace
from sewing_faults import faults, impossible, moved_first, unfinished
from sewing_styles import CASES, STYLES, drafted, orders

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.garments.shelf import PAGES
from tapewise_core.sewing.edges import TAKEN_OUT
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.notions import machines_used, needles, stays, used
from tapewise_core.sewing.operation import Sort
from tapewise_core.sewing.order import operations, words
from tapewise_core.sewing.stitches import OVEREDGE
from tapewise_core.sewing.trying_on import TRY_ON
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit


@pytest.mark.parametrize(("garment", "style"), CASES)
def test_nothing_is_closed_before_what_lies_flat_in_it(garment: str, style: int) -> None:
    """Darts, joins and shoulders while the pieces lie flat; hems and bands across what is sewn."""
    for pattern, machines, chain in orders(garment, style):
        assert not faults(pattern, chain), machines
        keys = [operation.key for operation in chain]
        assert len(set(keys)) == len(keys), "two operations under one key"
        if "sleeves" in keys:
            flat = "sleeve-seams" not in keys
            assert keys.index("shoulders") < keys.index("sleeves")
            assert (keys.index("sleeves") < keys.index("sides")) is flat
            assert flat or keys.index("sleeve-seams") < keys.index("sleeves")
        if "second-shoulder" in keys:
            assert keys.index("neckband") < keys.index("second-shoulder") < keys.index("sides")
        if "pockets" in keys:
            assert keys.index("pockets") < keys.index("sides")
        if "waist-darts" in keys:
            assert keys.index("waist-darts") == 0


def test_every_garment_on_the_shelf_is_among_these() -> None:
    """A new one has to say in which styles its sewing differs."""
    assert set(STYLES) == set(PAGES)


def test_every_way_of_the_garments_is_among_these() -> None:
    """The styles above leave out nothing that a garment on the shelf can ask for."""
    keys = {one.key for case in CASES for _, _, chain in orders(*case) for one in chain}
    assert keys >= {
        "side-darts", "waist-darts", "sleeves", "slits", "pockets", "belt", "neck-point",
        "facing", "neckline", "neckband", "elastic", "waistband", "waist", "panels", "hang", "vent",
    }  # fmt: skip


@pytest.mark.parametrize(("garment", "style"), CASES)
def test_tests_come_before_what_they_test(garment: str, style: int) -> None:
    """The head before the neck is finished and before the band is closed, trying on before hems."""
    _, _, chain = orders(garment, style)[0]
    at = {operation.key: i for i, operation in enumerate(chain)}
    for test, then in (
        ("head", "neckband"), ("head", "neckline"), ("head", "facing"), ("shoulders", "head"),
        ("neckband-head", "neckband-ring"), ("waistband-hips", "waistband-ring"),
        ("neckband-head", "neckband"), ("sides", "try-on"), ("try-on", "hem"),
        ("try-on", "sleeve-hems"), ("slits", "hem"),
        ("hang", "hem"), ("waist", "hang"), ("elastic", "hang"), ("panels", "waist"),
    ):  # fmt: skip
        if test in at and then in at:
            assert at[test] < at[then], (test, then)
    assert any(operation.sort is Sort.TEST for operation in chain)


@pytest.mark.parametrize(("garment", "style"), CASES)
def test_every_edge_is_finished_exactly_once(garment: str, style: int) -> None:
    """No raw edge is left and none is sewn twice; a fold of the paper is no edge."""
    for pattern, machines, chain in orders(garment, style):
        assert not unfinished(pattern, chain), machines


@pytest.mark.parametrize(("garment", "style"), CASES)
def test_every_machine_named_is_there_and_can_do_it(garment: str, style: int) -> None:
    """An overlocker holds nothing that is folded, and no stitch needs what is not at hand."""
    for _, machines, chain in orders(garment, style):
        assert not impossible(chain, read_machines(machines))


@pytest.mark.parametrize(("garment", "style"), CASES)
def test_what_is_asked_for_is_what_is_used(garment: str, style: int) -> None:
    """Every tape in a sentence is on the list and the other way round; needles and thread too."""
    for _, machines, chain in orders(garment, style):
        there = read_machines(machines)
        told = " ".join(Reader(Unit.CM).spell(words(operation)) for operation in chain)
        asked = " ".join(map(Reader(Unit.CM).spell, stays(chain)))
        for thing in ("clear elastic", "woven tape", "fusible knit tape", "safety pin"):
            used_pinned = told.replace("keeping the iron off clear elastic", "")
            assert (thing in used_pinned) is (thing in asked), (thing, machines)
        assert ("twin needle" in told) is ("twin needle" in needles(chain, there))
        assert ("by hand" in told) is ("by hand" in needles(chain, there))
        makers = machines_used(chain, there)
        assert all(any(set(one.machines) & {m} for one in used(chain)) for m in makers)


@pytest.mark.parametrize(("garment", "style"), CASES)
def test_a_step_says_what_meets_how_and_what_to_look_at(garment: str, style: int) -> None:
    """Whatever sews an edge names its stitch, and one that joins or turns has an allowance."""
    for _, _, chain in orders(garment, style):
        for operation in chain:
            assert operation.title
            if operation.meets:
                assert operation.stitches, operation.key
                assert all(stitch.number.isdigit() for stitch in operation.stitches)
                assert operation.allowance is not None


def test_seams_are_sewn_in_their_order_however_a_garment_lists_them() -> None:
    """Shoulders, neck, sleeves, sides, hem: from the edges, not from the list."""
    pattern = drafted("set-in-top", 0)
    wanted = ["shoulders", "neckband-ring", "neckband", "sleeves", "sides", "sleeve-hems", "hem"]
    for seams in (pattern.seams, pattern.seams[::-1]):
        chain = operations(replace(pattern, seams=seams), stitching(read_machines("zigzag")))
        assert [one.key for one in chain if one.key in wanted] == wanted


def test_the_checks_above_see_a_planted_fault() -> None:
    """Sides before a dart, a hem before its sides, an edge forgotten, an overlocked hem."""
    pattern = drafted("jersey-top", STYLES["jersey-top"].index({"bust-room": "side-dart"}))
    there = read_machines("overlocker")
    chain = operations(pattern, stitching(there))
    assert "dart of front after side" in faults(pattern, moved_first(chain, "sides"))
    assert "hem of front before side" in faults(pattern, moved_first(chain, "hem"))
    assert unfinished(pattern, tuple(one for one in chain if one.key != "hem"))
    assert unfinished(pattern, (*chain, chain[-1]))
    overlocked = tuple(replace(one, stitches=(OVEREDGE,)) for one in chain)
    assert "hem" in impossible(overlocked, there)
    assert impossible(chain, read_machines("zigzag"))


@pytest.mark.parametrize(("garment", "style"), CASES)
def test_trying_on_names_what_is_still_open_and_nothing_else(garment: str, style: int) -> None:
    """Cuffs and a hem band wait for it; pins mark no hem that has first to hang."""
    for pattern, _, chain in orders(garment, style):
        keys = [operation.key for operation in chain]
        if TRY_ON not in keys:
            continue
        told = "".join(map(str, chain[keys.index(TRY_ON)].do))
        later = set(keys[keys.index(TRY_ON) :])
        assert ("the cuffs" in told) == ("cuff" in later) == ("cuff" in keys)
        assert ("the hem band" in told) == ("hem-band" in later)
        assert ("has hung" in told) == ("hang" in keys)
        assert ("where the hem" in told) == (of_hem(pattern) and "hang" not in keys)


def of_hem(pattern: Pattern) -> bool:
    """Whether a hem is turned up."""
    return any(seam.kind is SeamKind.HEM for seam in pattern.seams)


@pytest.mark.parametrize(("garment", "style"), CASES)
def test_gathers_are_drawn_up_before_their_seam_and_taken_out_after(
    garment: str, style: int
) -> None:
    """Whatever is gathered, on every set of machines."""
    for _, _, chain in orders(garment, style):
        drawn = [i for i, one in enumerate(chain) if one.key.endswith("gather")]
        out = [i for i, one in enumerate(chain) if TAKEN_OUT in "".join(map(str, one.check))]
        assert len(drawn) == len(out)
        assert all(first < then for first, then in zip(drawn, out, strict=True))
        gathered_in = [one for one in chain if "gathered in" in "".join(map(str, one.do))]
        assert all(TAKEN_OUT in one.check for one in gathered_in)
