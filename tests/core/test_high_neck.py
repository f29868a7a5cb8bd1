"""A high neck: a collar round a close neckline, standing once or folded over."""

from __future__ import annotations

from functools import cache

import pytest

from tapewise_core.errors import OptionError
from tapewise_core.proofs.proof import ProofId
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.order import operations, words
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.people import person

GARMENTS = ("jersey-top", "set-in-top", "flared-dress", "skirted-dress")


@cache
def made(garment: str = "set-in-top", **asked: str) -> Drafted:
    """A garment with a high neck for an example person, whose neck is 36 and head 56 [cm]."""
    options = {"neckline": "high", **{key.replace("_", "-"): asked[key] for key in asked}}
    return draft(person("Marta Lindqvist"), garment, options)


@pytest.mark.parametrize("garment", GARMENTS)
def test_the_collar_is_close_and_the_head_passes(garment: str) -> None:
    """The neckline lies nearer the neck than a round one's, the collar is 0.95 of it."""
    high, plain = made(garment), made(garment, neckline="round")
    assert high.failing == ()
    assert high.pattern.lengths["neckline"] < plain.pattern.lengths["neckline"] - 40
    collar = high.pattern.piece("collar").length("neckline")
    assert collar == pytest.approx(0.95 * high.pattern.lengths["neckline"], abs=0.5)
    assert ProofId.HEAD in {proof.id for proof in high.proofs}


def test_a_folded_collar_is_cut_twice_as_high() -> None:
    """Twice its height for a funnel, whose cloth is double, four times where it is folded over."""
    for collar, times in (("funnel", 2), ("folded", 4)):
        piece = made(collar=collar, collar_height="6").pattern.piece("collar")
        assert piece.length("join") == pytest.approx(times * 60)


def test_in_stiff_cloth_the_collar_is_as_long_as_the_head_needs() -> None:
    """Up to the neckline's own length; beyond that the proof fails and offers a wider neck."""
    stiff = made(stretch="25")
    ratio = stiff.style.number("band-ratio")
    assert 0.95 < ratio <= 1.0
    found = next(one for one in made(stretch="10").proofs if one.id is ProofId.HEAD)
    assert not found.holds
    assert found.offer is not None


def test_a_narrower_neckline_leaves_the_shoulder_point_where_it_is() -> None:
    """The shoulder is longer by as much, on the set-in body too."""
    points = [
        made(neckline="round", neck_half_width=width).pattern.piece("back").points["shoulder_point"]
        for width in ("8.6", "7.8")
    ]
    assert points[0].x == pytest.approx(points[1].x, abs=0.2)


def test_a_collar_is_sewn_on_in_the_round() -> None:
    """Flat is refused with what would be right."""
    with pytest.raises(OptionError, match="set band-sewn to round"):
        made(band_sewn="flat")
    for neckline, offered in (("high", False), ("round", True)):
        drafted = made(neckline=neckline)
        chain = operations(drafted.pattern, drafted.stitching)
        assert any("band-sewn" in str(words(one)) for one in chain) is offered


@pytest.mark.parametrize("finish", ["turned", "facing"])
def test_a_high_neck_takes_nothing_but_a_collar(finish: str) -> None:
    """The sentence says so."""
    with pytest.raises(OptionError, match="set neck-finish to band"):
        made("jersey-top", neck_finish=finish)


def test_a_collar_is_called_so_from_its_paper_to_its_seam() -> None:
    """On the piece, by hand, in its proof and as it is sewn; a neckband is none."""
    for neckline, named, other in (("high", "collar", "band"), ("round", "neckband", "collar")):
        drafted = made(neckline=neckline)
        assert named in {piece.name for piece in drafted.pattern.pieces}
        assert named.capitalize() in {draft.title for draft in drafted.pattern.drafts}
        proof = next(one for one in drafted.proofs if one.id is ProofId.NECKBAND)
        order = operations(drafted.pattern, stitching(read_machines("overlocker")))
        sewn = [one for one in order if one.key.startswith("neckband")]
        says = [drafted.reader.spell(one) for one in (proof.says, *(each.do for each in sewn))]
        assert says[0].startswith(f"The {named} is")
        assert len(sewn) == 4
        assert not any(f"the {other}" in one for one in says[1:])
