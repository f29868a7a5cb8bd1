"""What sheets and checklists tell of a style: the skirt it has, only what is at work, as drawn."""

from __future__ import annotations

from functools import cache

import pytest
from read_aloud import steps

from tapewise_core.garments.shelf import garment
from tapewise_core.proofs.proof import ProofId
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.order import operations
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.people import person
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

Asked = tuple[tuple[str, str], ...]


@cache
def made(name: str, *asked: tuple[str, str]) -> Drafted:
    """A garment of an example person."""
    return draft(person("Marta Lindqvist"), name, dict(asked))


@pytest.mark.parametrize(
    ("asked", "says"),
    [
        ((), "half"),
        ((("skirt", "gathered"),), "gathered skirt"),
        ((("skirt", "straight"), ("sleeve", "none")), "straight skirt"),
    ],
)
def test_every_sheet_says_which_skirt_it_is_of(asked: Asked, says: str) -> None:
    """A dress with another skirt is no part of a circle."""
    told = made("skirted-dress", *asked).label.looks
    assert ("circle" in told) == (says == "half")
    assert (says in told) == (says != "half")


def at_work(drafted: Drafted) -> set[str]:
    """The options that have something to do."""
    style = drafted.style
    return {one.key for one in garment(drafted.garment.name).options if one.at_work(style)}


SIZES = {
    "band": {"armhole-band-width", "armhole-band-ratio"},
    "turned": set(),
    "facing": {"armhole-facing-width"},
}


@pytest.mark.parametrize("finish", SIZES)
def test_an_armhole_has_the_sizes_of_its_own_finish(finish: str) -> None:
    """A turned edge has no band to be wide or long; with sleeves there is none of them."""
    every = set.union(*SIZES.values())
    bare = made("set-in-top", ("sleeve", "none"), ("armhole-finish", finish))
    assert at_work(bare) & every == SIZES[finish]
    assert not at_work(made("set-in-top")) & every


def test_a_dress_without_sleeves_has_no_options_of_sleeves() -> None:
    """Neither caps to shorten nor sleeves to sew in or to turn up."""
    sleeves = {"cap-shortening", "sleeve-sewn", "hem-allowance"}
    cut = ("sleeve-cut", "set-in")
    assert at_work(made("skirted-dress", cut)) >= sleeves
    assert not at_work(made("skirted-dress", cut, ("sleeve", "none"))) & sleeves


@pytest.mark.parametrize(
    ("asked", "key", "piece", "edges"),
    [
        ((("sleeve", "none"),), "armhole-band-ratio", "armband", ("armhole", 2)),
        ((("sleeve", "long"), ("sleeve-finish", "cuff")), "cuff-ratio", "cuff", ("sleeve_hem", 1)),
        ((("hem-finish", "band"),), "hem-band-ratio", "hem_band", ("hem", 4)),
    ],
)
def test_a_bands_ratio_is_told_as_it_was_drawn(
    asked: Asked, key: str, piece: str, edges: tuple[str, int]
) -> None:
    """Its length as a share of the edge it is sewn to, and as chosen where it was."""
    drafted = made("set-in-top", *asked)
    name, halves = edges
    pieces = [one for one in drafted.pattern.pieces if one.has_edge(name) and one.name != piece]
    edge = sum(one.length(name) for one in pieces) * halves / (2 if len(pieces) == 2 else 1)
    band = drafted.pattern.piece(piece)
    long = max(p.x for p in band.points.values()) - min(p.x for p in band.points.values())
    assert drafted.style.number(key) == pytest.approx(long / edge, abs=0.002)
    assert made("set-in-top", *asked, (key, "0.95")).style.number(key) == 0.95


def test_no_crown_is_marked_where_no_sleeve_is() -> None:
    """The armhole's mark at its top is the shoulder's seam, on body, band and facing."""
    for finish in ("band", "facing"):
        drafted = made("set-in-top", ("sleeve", "none"), ("armhole-finish", finish))
        pairs = {notch.pair for piece in drafted.pattern.pieces for notch in piece.notches}
        assert "shoulder seam" in pairs
        assert not any("crown" in pair for pair in pairs)


def test_two_panels_are_both() -> None:
    """And what is gathered to a seam is told as a sentence."""
    drafted = made("skirted-dress", ("skirt", "gathered"))
    assert "One pattern serves for both panels" in " ".join(steps(drafted.pattern))
    seam = next(one for one in drafted.proofs if one.of == "waist seam")
    assert drafted.reader.spell(seam.says).startswith("Waist seam: ")


@pytest.mark.parametrize(("asked", "wide"), [((), 12.0), ((("neck-allowance", "0.6"),), 6.0)])
def test_a_turned_armhole_has_an_edge_to_turn(asked: Asked, wide: float) -> None:
    """As wide as any turned edge, beside a band at the neck too, unless another is asked for."""
    drafted = made("set-in-top", ("sleeve", "none"), ("armhole-finish", "turned"), *asked)
    sides = [drafted.pattern.piece(name).edge("armhole") for name in ("back", "front")]
    assert [edge.allowance for edge in sides] == [wide, wide]
    assert drafted.failing == ()


@pytest.mark.parametrize(("measured", "word"), [(False, "estimated"), (True, "measured")])
def test_an_estimate_is_not_called_measured(measured: bool, word: str) -> None:
    """Where the shoulder ends before the width across the back does."""
    who = person("Marta Lindqvist").with_value("shoulder_length", 9.0)
    who = who.with_value("across_back", 46.0) if measured else who
    says = " ".join(map(Reader(Unit.CM).spell, draft(who, "set-in-top", {}).pattern.remarks))
    assert f"narrower than {word}: the shoulder ends there." in says


def test_a_closer_bust_is_what_lays_a_bare_armhole_close() -> None:
    """As the mend that is tried says; with a sleeve a looser fit hides it."""
    full = {"bust": 116.0, "high_bust": 98.0, "front_waist_length": 49.5}
    who = person("Marta Lindqvist")
    for key, value in full.items():
        who = who.with_value(key, value)
    for sleeve, says in (("none", "or less ease at the bust would"), ("short", "or a looser fit")):
        drafted = draft(who, "set-in-top", {"sleeve": sleeve})
        assert says in " ".join(map(drafted.reader.spell, drafted.pattern.remarks))


def test_no_seam_is_sewn_stretched_and_without_pulling() -> None:
    """A straight stitch must be stretched to hold; all others are sewn as the cloth lies."""
    pattern = made("gathered-skirt").pattern
    for name, pulled in (("straight", True), ("overlocker", False)):
        order = operations(pattern, stitching(read_machines(name)))
        does = Reader(Unit.CM).spell(next(one.do for one in order if one.key == "panels"))
        assert ("stretched" in does, "without pulling" in does) == (pulled, not pulled)


def test_a_narrow_hem_is_told_what_its_own_skirt_can_have() -> None:
    """A gathered skirt has no flare and no slit, nor has a circle."""
    styles: dict[tuple[tuple[str, str], ...], str] = {
        (("skirt", "gathered"), ("fullness", "1.1"), ("waist-ease", "0")): "give it more fullness",
        (("skirt", "straight"), ("vent", "none")): "give it more flare, a slit",
    }
    for asked, says in styles.items():
        drafted = made("skirted-dress", *asked, ("skirt-length", "70"))
        proof = next(one for one in drafted.failing if one.id is ProofId.STRIDE)
        assert f"too narrow: {says}" in drafted.reader.spell(proof.says)


def test_a_close_bust_is_told_a_cloth_that_gives_enough() -> None:
    """With the stretch that is named it holds; with a little less it does not."""
    failing = made("jersey-top", ("ease", "-18"), ("stretch", "30")).failing
    says = Reader(Unit.CM).spell(next(one.says for one in failing if one.id is ProofId.EASE))
    named = int(says.split("a cloth that stretches ")[1].split(" %")[0])
    assert named > 30
    for stretch, holds in ((named, True), (named - 2, False)):
        trial = made("jersey-top", ("ease", "-18"), ("stretch", str(stretch)))
        assert (ProofId.EASE not in {one.id for one in trial.failing}) is holds


@pytest.mark.parametrize("name", ["jersey-top", "flared-dress", "set-in-top", "skirted-dress"])
def test_every_armhole_can_be_cut_deeper(name: str) -> None:
    """As deep as asked wherever there is an armhole; a sleeve that is grown on has none."""
    deep = made(name, ("sleeve", "none"), ("armhole-drop", "2"))
    under = deep.pattern.facts.underarm
    assert under is not None
    assert under.level - under.armscye == pytest.approx(20.0, abs=0.1)
    assert "armhole-drop" in at_work(deep)
    assert ("armhole-drop" in at_work(made(name))) is (name == "set-in-top")
