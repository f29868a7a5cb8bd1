"""A shoulder that opens from the neck: its strips, its band, the head through it."""

from __future__ import annotations

from functools import cache

import pytest
from making import person as measured
from seams_made_up import SAMPLES

from tapewise_core.drafting.seam import SeamKind
from tapewise_core.errors import DraftError, OptionError
from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.minding import for_children
from tapewise_core.sewing.order import operations
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.people import person

GARMENTS = ("jersey-top", "set-in-top")
STRIPS = ("placket_facing", "placket_underlap")


@cache
def made(garment: str, **asked: str) -> Drafted:
    """A top of an example person."""
    options = {key.replace("_", "-"): word for key, word in asked.items()}
    return draft(person("Marta Lindqvist"), garment, options)


def opened(garment: str = "jersey-top", side: str = "left", **asked: str) -> Drafted:
    """The same with a placket."""
    return made(garment, shoulder_placket=side, **asked)


def head(drafted: Drafted) -> Proof:
    """Whether the head passes."""
    return next(proof for proof in drafted.proofs if proof.id is ProofId.HEAD)


@pytest.mark.parametrize("garment", GARMENTS)
@pytest.mark.parametrize("side", ["left", "right"])
def test_two_strips_are_added_and_the_halves_stay_on_the_fold(garment: str, side: str) -> None:
    """Each is cut once; back and front are cut along the same lines as without a placket."""
    drafted = opened(garment, side)
    assert drafted.failing == ()
    pattern, plain = drafted.pattern, made(garment).pattern
    assert {p.name for p in pattern.pieces} - {p.name for p in plain.pieces} == set(STRIPS)
    for name in ("back", "front"):
        assert pattern.piece(name).on_fold
        assert pattern.piece(name).cut == plain.piece(name).cut
    assert {seam.where for seam in pattern.seams if seam.kind is SeamKind.PLACKET} == {side}


@pytest.mark.parametrize("garment", GARMENTS)
def test_a_placket_is_as_long_and_has_as_many_buttons_as_asked(garment: str) -> None:
    """The strips are as long as the part of the shoulder that is left open; one button of all is
    the band's."""
    pattern = opened(garment, placket_length="9", placket_buttons="4").pattern
    for name, strip in zip(("front", "back"), STRIPS, strict=True):
        end = next(n for n in pattern.piece(name).notches if n.pair == "end of the placket")
        assert end.distance == pytest.approx(90)
        piece = pattern.piece(strip)
        assert piece.length("shoulder") == pytest.approx(90)
        assert piece.length("end") == pytest.approx(50)
        at = [point.x for key, point in piece.points.items() if key.startswith("button")]
        assert at == pytest.approx([15, 45, 75])


def test_the_band_reaches_over_the_underlap_and_is_no_ring() -> None:
    """Its length is its ratio of neckline and underlap; its marks lie where the body's do."""
    pattern = opened().pattern
    ratio = pattern.facts.neck.ratio if pattern.facts.neck else None
    assert ratio is not None
    back, front = (pattern.piece(name).length("neckline") for name in ("back", "front"))
    band = pattern.piece("neckband")
    assert band.length("neckline") == pytest.approx(ratio * (2 * (back + front) + 25))
    marks = {n.pair: n.distance for n in band.notches if n.edge == "neckline"}
    assert marks == pytest.approx(
        {"centre front": ratio * front, "centre back": ratio * (2 * front + back)}
    )
    assert all(seam.kind is not SeamKind.BAND_JOIN for seam in pattern.seams)


CHILD = {
    "bust": 58.0, "waist": 54.0, "hip": 60.0, "upper_arm": 18.0, "head": 51.0, "neck": 27.0,
    "back_waist_length": 24.0, "hip_depth": 12.0, "armscye_depth": 12.0, "shoulder_length": 8.0,
    "shoulder_drop": 2.2, "arm_length": 36.0, "wrist": 12.5, "height": 105.0,
}  # fmt: skip
"""A child of four, invented: a large head for her neck [cm]."""


@pytest.mark.parametrize("garment", GARMENTS)
def test_the_open_placket_counts_for_the_head(garment: str) -> None:
    """A child's tight neck lets her head through with it alone; both its edges are counted."""
    tight = {"neck-half-width": "6", "neck-depth": "6", "stretch": "30", "sleeve": "short"}
    closed = draft(measured(CHILD), garment, tight)
    wide = draft(measured(CHILD), garment, {**tight, "shoulder-placket": "left"})
    assert [one.id for one in closed.failing] == [ProofId.HEAD]
    assert wide.failing == ()
    neck = wide.pattern.facts.neck
    assert neck is not None
    stretched = neck.opening * (1 + wide.cloth.usable)
    twice = 2 * wide.style.length("placket-length").mm
    assert head(wide).value * 10 == pytest.approx(stretched + twice, abs=0.6)


@pytest.mark.parametrize("garment", GARMENTS)
def test_a_band_need_not_be_longer_for_a_head_that_the_placket_lets_through(garment: str) -> None:
    """Without one it is held back for the head, with one it lies flat."""
    plain = draft(measured(CHILD), garment, {}).pattern.facts.neck
    open_one = draft(measured(CHILD), garment, {"shoulder-placket": "left"}).pattern.facts.neck
    assert plain is not None
    assert open_one is not None
    assert "head" in str(plain.held_back)
    assert open_one.held_back == ()
    assert (open_one.ratio or 1) < (plain.ratio or 0)


@pytest.mark.parametrize(
    ("asked", "right"),
    [
        ({"neckline": "v"}, "set neckline to round or scoop"),
        ({"neckline": "boat"}, "set neckline to round or scoop"),
        ({"neck_finish": "turned"}, "set neck-finish to band"),
        ({"band_sewn": "flat"}, "set band-sewn to round"),
        ({"lower_shoulder": "left"}, "set lower-shoulder to none"),
        ({"placket_length": "14"}, "this shoulder leaves"),
    ],
)
@pytest.mark.parametrize("garment", GARMENTS)
def test_what_it_does_not_go_with_is_refused(
    garment: str, asked: dict[str, str], right: str
) -> None:
    """The sentence names what would be right."""
    with pytest.raises(OptionError, match=right):
        opened(garment, **asked)


def test_a_placket_is_no_longer_than_the_shoulder_as_it_is_drawn() -> None:
    """A child's set-in shoulder is shorter than is known before: so is the placket, which the
    style tells, unless a length was chosen, which is refused."""
    drafted = draft(measured(CHILD), "set-in-top", {"shoulder-placket": "left"})
    shoulder = drafted.pattern.piece("back").length("shoulder")
    told = drafted.style.length("placket-length").mm
    assert told == pytest.approx(drafted.pattern.piece("placket_facing").length("shoulder"))
    assert shoulder - 6 <= told <= shoulder - 5
    with pytest.raises(DraftError, match=r"drawn leaves 5\.9 cm at the most"):
        draft(measured(CHILD), "set-in-top", {"shoulder-placket": "left", "placket-length": "6.5"})


@pytest.mark.parametrize("garment", GARMENTS)
def test_the_opened_part_of_a_shoulder_is_not_stayed(garment: str) -> None:
    """The tape is as much shorter as the placket is long, and it is said on which side."""
    taped = []
    for drafted in (made(garment), opened(garment)):
        chain = operations(drafted.pattern, drafted.stitching)
        (stay,) = [one for one in chain if one.key == "shoulder-stay"]
        (length,) = [one.length for one in stay.uses if one.length]
        taped.append(length.mm)
    assert taped[0] - taped[1] == pytest.approx(70, abs=0.1)
    assert drafted.reader.spell(stay.do).endswith("the placket's end and is 7 cm shorter.")


@pytest.mark.parametrize("machines", ["zigzag", "straight"])
def test_a_placket_is_sewn_without_stretching_it(machines: str) -> None:
    """Its strips are stayed, and its edges are not to ripple."""
    chain = operations(opened().pattern, stitching(read_machines(machines)))
    (strips,) = [one for one in chain if one.key == "placket"]
    assert "short straight stitches" in str(strips.do)


def test_a_child_is_told_of_small_parts() -> None:
    """Only where there are buttons."""
    ways = stitching(read_machines("zigzag"))
    told = {name: str(for_children(operations(SAMPLES[name], ways))) for name in ("placket", "hem")}
    assert "Buttons are small parts" in told["placket"]
    assert "Buttons" not in told["hem"]
