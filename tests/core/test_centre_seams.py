"""Seams at the centre: halves for a cloth on which the whole piece does not lie."""

from __future__ import annotations

from functools import cache

import pytest

from tapewise_core.drafting.extent import least_across
from tapewise_core.errors import OptionError
from tapewise_core.proofs.proof import ProofId
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.mending import mended
from tapewise_core.tasks.people import person

TOPS = ("jersey-top", "set-in-top")
BODIES = (*TOPS, "flared-dress", "skirted-dress")
GROWN_ON = ("jersey-top", "flared-dress", "skirted-dress")


@cache
def made(garment: str, **asked: str) -> Drafted:
    """A top of an example person."""
    options = {key.replace("_", "-"): asked[key] for key in asked}
    return draft(person("Marta Lindqvist"), garment, options)


@pytest.mark.parametrize("garment", BODIES)
@pytest.mark.parametrize(("chosen", "names"), [("back", {"back"}), ("both", {"back", "front"})])
def test_halves_are_cut_twice_with_an_allowance(garment: str, chosen: str, names: set[str]) -> None:
    """Nothing else changes: the same lines, the same girths, all proofs hold."""
    plain, seamed = made(garment), made(garment, centre_seams=chosen)
    assert seamed.failing == ()
    for before, after in zip(plain.pattern.pieces, seamed.pattern.pieces, strict=True):
        halved = after.name in names
        assert (after.on_fold, after.count, after.mirrored) == (
            (False, 2, True) if halved else (before.on_fold, before.count, before.mirrored)
        )
        for edge in after.edges:
            assert edge.path.flattened() == before.edge(edge.name).path.flattened()
        if halved:
            assert after.edge("centre").allowance == pytest.approx(8)
            assert min(at.x for at in after.cut) == pytest.approx(-8, abs=0.01)
    assert plain.pattern.girths == seamed.pattern.girths


def test_a_long_grown_on_sleeve_fits_by_centre_seams() -> None:
    """A shorter sleeve is tried first; where the sleeve was chosen, seams make it fit."""
    wide = made("jersey-top", sleeve="long", cloth_width="110", centre_seams="none")
    assert ProofId.CLOTH in {proof.id for proof in wide.failing}
    assert made("jersey-top", sleeve="long", cloth_width="110", centre_seams="both").failing == ()
    found = next(one for one in mended(wide).proofs if one.id is ProofId.CLOTH)
    assert found.settings is not None


@pytest.mark.parametrize("garment", GROWN_ON)
def test_only_a_piece_wider_than_the_cloth_has_a_seam_unasked(garment: str) -> None:
    """Without it, just those pieces fail; all else is as it is drawn for a wider cloth."""
    width = f"{(least_across(plain(garment, '320').pattern.piece('front')) + 31) / 10:.1f}"
    seamed, whole = made(garment, sleeve="long", cloth_width=width), plain(garment, width)
    assert [seamed.pattern.piece(name).on_fold for name in ("back", "front")] == [False, True]
    assert seamed.failing == ()
    assert [proof.id for proof in whole.failing] == [ProofId.CLOTH]
    told = [seamed.reader.spell(one) for one in seamed.pattern.remarks]
    assert any(one.startswith("Opened out, the back would be wider than the") for one in told)


def plain(garment: str, width: str) -> Drafted:
    """A long-sleeved garment cut on the fold, on a cloth of some width [cm]."""
    return made(garment, sleeve="long", cloth_width=width, centre_seams="none")


def test_in_two_layers_a_fold_stays() -> None:
    """A half with an allowance would take more of a layer than a half on its fold."""
    folded = made("jersey-top", sleeve="long", lay="folded")
    assert folded.pattern.piece("back").on_fold
    assert ProofId.CLOTH in {proof.id for proof in folded.failing}


def test_one_lower_shoulder_is_refused() -> None:
    """Its pieces are whole already."""
    with pytest.raises(OptionError, match="set lower-shoulder to none"):
        made("set-in-top", centre_seams="back", lower_shoulder="left")


def test_all_that_needs_shoulders_alike_is_refused_in_one_sentence() -> None:
    """With every way out."""
    with pytest.raises(OptionError) as refused:
        made(
            "set-in-top", centre_seams="back", hem_finish="band", shoulder_placket="left",
            lower_shoulder="left",
        )  # fmt: skip
    told = str(refused.value)
    assert told.startswith("A shoulder placket, a hem band and seams at the centre can be had only")
    assert told.count("lower-shoulder") == 1
    assert told.endswith("hem-finish to turned and centre-seams to none.")
