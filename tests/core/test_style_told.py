"""What sheets and checklists tell of a style: the skirt it has, only what is at work, as drawn."""

from __future__ import annotations

from functools import cache

import pytest
from read_aloud import steps

from tapewise_core.garments.shelf import garment
from tapewise_core.tasks.drafting import Drafted, draft
from tapewise_core.tasks.people import person

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
