"""The sewing order as a graph, for every garment, its options that matter, and every machine."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from functools import cache
from graphlib import CycleError

import pytest
from making import DAY, MIDDLE, person
from seams_made_up import SAMPLES
from test_sewing_golden import SETS

from tapewise_core.drafting.piece import EdgeRun, Pattern, SeamKind
from tapewise_core.sewing.crossing import Place, beside, places
from tapewise_core.sewing.machines import Machine, read_machines, stitching
from tapewise_core.sewing.neck import BAND
from tapewise_core.sewing.neck_flat import BAND_FLAT
from tapewise_core.sewing.notions import machines_used, needles, stays, used
from tapewise_core.sewing.operation import Laid, Lies, Meeting, Operation, Sort, Stage
from tapewise_core.sewing.order import operations, words
from tapewise_core.sewing.sleeves import SLEEVE_FLAT
from tapewise_core.sewing.stitches import OVEREDGE
from tapewise_core.sewing.way import Way, Work
from tapewise_core.tasks.drafting import draft
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

Asked = dict[str, str]

NECKS: tuple[Asked, ...] = (
    {"neck-finish": "band"},
    {"neck-finish": "turned"},
    {"neck-finish": "band", "neckline": "v"},
    {"neck-finish": "turned", "neckline": "v"},
    {"band-sewn": "flat"},
)
FACED: tuple[Asked, ...] = ({"neck-finish": "facing"}, {"neck-finish": "facing", "neckline": "v"})
BODIES: tuple[Asked, ...] = (
    {"band-sewn": "flat", "lower-shoulder": "right"},
    {"lower-shoulder": "left", "sleeve": "long"},
    {"bust-room": "side-dart"},
    {"bust-room": "gathers"},
    {"fit": "close", "waist-darts": "auto"},
)
SLIT: Asked = {"hem": "split"}

SKIRTS = (
    {"skirt": "gathered"},
    {"skirt": "gathered", "tiers": "3"},
    {"skirt": "straight"},
    {"skirt": "straight", "skirt-length": "85"},
    {"skirt": "straight", "vent": "slits"},
    {"sleeve-cut": "set-in"},
    {"sleeve-cut": "set-in", "skirt": "straight", "sleeve": "long", "sleeve-sewn": "round"},
)
BARE: tuple[Asked, ...] = tuple(
    {"sleeve": "none", "armhole-finish": finish, **more}
    for finish in ("band", "turned", "facing")
    for more in ({}, {"lower-shoulder": "left"})
)
"""Without sleeves, both armholes alike and apart."""

STYLES: dict[str, tuple[Asked, ...]] = {
    "jersey-top": (*NECKS, *FACED, *BODIES, SLIT, {**FACED[1], **BODIES[0]}, *BARE),
    "flared-dress": (
        *NECKS, *FACED, SLIT,
        {"pockets": "yes", "belt": "yes", "bust-room": "side-dart", **SLIT},
        {"pockets": "yes", "lower-shoulder": "right"},
    ),
    "circle-skirt": tuple(
        {"circle": circle, "panels": panels, "waist-finish": finish}
        for circle, panels in (("1", "fewest"), ("1/2", "1"), ("1", "2"), ("1/2", "6"))
        for finish in ("elastic", "band")
    ),
    "straight-skirt": (
        {"vent": "none", "waist-finish": "elastic"}, {"vent": "back", "waist-finish": "band"},
        {"vent": "slits", "waist-finish": "elastic"},
    ),
    "gathered-skirt": (
        {},
        {"waist-finish": "band"},
        {"tiers": "3", "waist-finish": "band"},
        {"tiers": "4", "cloth-width": "90"},
    ),
    "skirted-dress": (*NECKS, *FACED, *BODIES[:3], {"circle": "1/2", "panels": "4"}, *SKIRTS),
    "set-in-top": (
        *NECKS, *BODIES, {"sleeve-sewn": "round"}, {"sleeve-sewn": "round", "band-sewn": "flat"},
        {"sleeve-sewn": "round", **BODIES[0]}, *BARE,
    ),
}  # fmt: skip
"""The styles in which the order differs."""

FULL = {"front_waist_length": 46.0, "bust": 104.0, "high_bust": 92.0, "back_waist_length": 38.5}
"""A full bust, which takes darts."""

CASES = [(garment, i) for garment, styles in STYLES.items() for i in range(len(styles))]


@cache
def drafted(garment: str, style: int) -> Pattern:
    """Return a garment in one of its styles."""
    more = {"waist_to_floor": 104.0, "waist_to_knee": 58.0, **FULL}
    someone = person({**MIDDLE, **more})
    return draft(someone, garment, STYLES[garment][style], made=DAY).pattern


Order = tuple[Pattern, str, tuple[Operation, ...]]


@cache
def orders(garment: str, style: int) -> tuple[Order, ...]:
    """Return the order on every set of machines."""
    pattern = drafted(garment, style)
    return tuple(
        (pattern, machines, operations(pattern, stitching(read_machines(machines))))
        for machines in SETS
    )


CLOSERS = {SeamKind.SIDE, SeamKind.PANEL}
"""Seams that close a tube: whatever lies flat beside one cannot be sewn flat afterwards."""

FLAT = {SeamKind.DART, SeamKind.BAND_JOIN, SeamKind.FACING_SHOULDER, SeamKind.SHOULDER}
"""Seams that are sewn while their pieces lie flat."""

ROUND = {
    SeamKind.NECKBAND, SeamKind.NECK_EDGE, SeamKind.FACING, SeamKind.WAIST, SeamKind.WAISTBAND,
    SeamKind.CASING, SeamKind.SLEEVE_HEM, SeamKind.HEM, SeamKind.TIER,
}  # fmt: skip
"""Seams that run across those that end at their edges."""


def owner_of(pattern: Pattern, chain: tuple[Operation, ...]) -> dict[tuple[str, str], int]:
    """Return when each edge is finished."""
    return {
        (place.piece, place.edge): at
        for at, operation in enumerate(chain)
        for place in places(pattern, operation.finished)
    }


def faults(pattern: Pattern, chain: tuple[Operation, ...]) -> list[str]:
    """Return what is closed too early or sewn across before it is there, by the seams' kinds.

    A band that is sewn on flat is neither; its order is asked for by its keys.
    """
    when, found = owner_of(pattern, chain), []
    kind = {
        (run.piece, edge): seam.kind
        for seam in pattern.seams
        if seam.making != BAND_FLAT
        for run in (*seam.first, *seam.second)
        for edge in run.edges
    }
    for (piece, edge), mine in kind.items():
        if (piece, edge) not in when:
            continue
        for near in beside(pattern, Place(piece, edge)):
            theirs = kind.get((near.piece, near.edge))
            if theirs is None or near not in when:
                continue
            one, other = when[piece, edge], when[near]
            if mine in FLAT and theirs in CLOSERS and one > other:
                found.append(f"{mine} of {piece} after {theirs}")
            if mine in ROUND and theirs in CLOSERS | FLAT and one < other:
                found.append(f"{mine} of {piece} before {theirs}")
    return found


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


def unfinished(pattern: Pattern, chain: tuple[Operation, ...]) -> list[str]:
    """Return the edges that are finished by no operation, or by more than one.

    Of a piece cut twice, as a sleeve, both copies may be told apart.
    """
    done = Counter(place for one in chain for place in places(pattern, one.finished))
    there = {Place(p.name, e.name): p.count for p in pattern.pieces for e in p.edges if not e.fold}
    return [
        f"{place} {done[place]} times"
        for place in {**there, **done}
        if done[place] not in (1, max(there.get(place, 0), 1))
    ]


@pytest.mark.parametrize(("garment", "style"), CASES)
def test_every_edge_is_finished_exactly_once(garment: str, style: int) -> None:
    """No raw edge is left and none is sewn twice; a fold of the paper is no edge."""
    for pattern, machines, chain in orders(garment, style):
        assert not unfinished(pattern, chain), machines


def impossible(chain: tuple[Operation, ...], there: frozenset[Machine]) -> list[str]:
    """Return the operations that what is there cannot sew."""
    able = there | {Machine.HAND}
    return [
        one.key
        for one in chain
        if any(not set(stitch.machines) & able for stitch in one.stitches)
        or (one.turns and (not one.stitches or any(stitch.cuts for stitch in one.stitches)))
    ]


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


def moved_first(chain: tuple[Operation, ...], key: str) -> tuple[Operation, ...]:
    """Return an order with one operation done too early."""
    first = next(one for one in chain if one.key == key)
    return (first, *(one for one in chain if one is not first))


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


def test_a_new_way_finds_its_place_by_its_edges_alone() -> None:
    """A part that names no other: a band at the armhole goes before the sides or after them."""

    def flat(work: Work) -> tuple[Operation, ...]:
        stitch = work.stitching.seam
        return (
            work.do("armhole-band", "Band", ("Sew it.",), Stage.JOIN, meets=work.joins(),
                    lies=Lies.FLAT, stitches=(stitch,), after=("shoulders",)),
        )  # fmt: skip

    def late(work: Work) -> tuple[Operation, ...]:
        stitch = work.stitching.seam
        return (
            work.do("armhole-band", "Band", ("Sew it.",), Stage.INSIDE, meets=work.joins(),
                    stitches=(stitch,)),
        )  # fmt: skip

    pattern = drafted("set-in-top", 0)
    for make, before in ((flat, True), (late, False)):
        seams = tuple(
            replace(one, making=Way("armhole band", make)) if one.making == SLEEVE_FLAT else one
            for one in pattern.seams
        )
        chain = operations(replace(pattern, seams=seams), stitching(read_machines("zigzag")))
        keys = [operation.key for operation in chain]
        assert (keys.index("armhole-band") < keys.index("sides")) is before
        assert keys.index("shoulders") < keys.index("armhole-band")


def test_operations_that_each_ask_to_be_first_are_refused() -> None:
    """A part that contradicts itself is found by its author, not by who sews."""

    def both(work: Work) -> tuple[Operation, ...]:
        one = work.do("a", "A", ("A.",), Stage.NECK, after=("b",))
        return (one, work.do("b", "B", ("B.",), Stage.NECK))

    band = SAMPLES["band"]
    seams = tuple(replace(one, making=Way("both", both)) for one in band.seams)
    assert BAND in {one.making for one in band.seams}
    with pytest.raises(CycleError):
        operations(replace(band, seams=seams), stitching(read_machines("zigzag")))


def test_an_edge_sewn_to_its_own_copy_is_finished_once() -> None:
    """A meeting of a run with itself, as a pocket's two bags, counts its edge one time."""
    runs = (EdgeRun("pocket", ("top",)),)
    assert Meeting(runs, runs).finished == runs
    assert Meeting(runs, (), Laid.TURNED).finished == runs
