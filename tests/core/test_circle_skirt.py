"""Circle skirts: what is drawn, told, proved and cut."""

from __future__ import annotations

import math

import pytest
from read_aloud import remarks, spelt

from tapewise_core.errors import OptionError
from tapewise_core.geometry.outline import area, box_of
from tapewise_core.lay.lay import lay_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.mending import mended
from tapewise_core.tasks.people import person
from tapewise_core.units import Unit

PEOPLE = ("Marta Lindqvist", "Adaeze Nwosu", "Gwen Abernathy", "Noor Haddad", "Tomasz Wieczorek")
PARTS = {"1": 1.0, "3/4": 0.75, "1/2": 0.5, "1/4": 0.25}


def skirt(who: str = PEOPLE[0], /, **asked: str) -> Drafted:
    """Draft a skirt for one of the example people."""
    options = {key.replace("_", "-"): value for key, value in asked.items()}
    return draft(person(who), "circle-skirt", options)


@pytest.mark.parametrize("who", PEOPLE)
@pytest.mark.parametrize("circle", PARTS)
@pytest.mark.parametrize("finish", ["elastic", "band"])
def test_every_skirt_can_be_worn(who: str, circle: str, finish: str) -> None:
    """Every build gets every fraction with either finish, all proofs holding."""
    made = skirt(who, circle=circle, waist_finish=finish)
    assert [proof.says for proof in made.failing] == []


@pytest.mark.parametrize("who", PEOPLE)
@pytest.mark.parametrize("panels", ["1", "2", "6"])
def test_what_is_told_is_what_is_drawn(who: str, panels: str) -> None:
    """Every distance in the instructions is the distance between the points on the paper."""
    wide = {"cloth_width": "320 cm", "skirt_length": "50 cm"}
    for drawn in skirt(who, panels=panels, waist_finish="band", **wide).pattern.drafts:
        for step in drawn.steps:
            for start, end, by in step.stated():
                assert (drawn[end] - drawn[start]).length() == pytest.approx(by.mm, abs=0.01)
            assert spelt(step)


@pytest.mark.parametrize("circle", PARTS)
@pytest.mark.parametrize("panels", ["1", "2", "4"])
def test_pieces_make_up_the_ring(circle: str, panels: str) -> None:
    """The stitched area of all pieces is the ring's, whatever it is cut into."""
    made = skirt(circle=circle, panels=panels, cloth_width="320")
    inner = made.pattern.lengths["waist edge"] / (2 * math.pi * PARTS[circle])
    outer = inner + made.pattern.lengths["skirt length"]
    ring = math.pi * PARTS[circle] * (outer**2 - inner**2)
    pieces = made.pattern.pieces
    drawn = sum(area(p.stitch_line()) * p.count * (2 if p.on_fold else 1) for p in pieces)
    assert drawn == pytest.approx(ring, rel=1e-4)


def test_a_whole_circle_lies_on_the_fold_without_a_seam() -> None:
    """One piece, both of its straight edges on the fold."""
    made = skirt(skirt_length="50")
    (piece,) = made.pattern.pieces
    assert piece.on_fold
    assert [edge.name for edge in piece.edges if edge.fold] == ["centre_2", "centre"]
    assert all(abs(p.x) < 1e-6 for e in piece.edges if e.fold for p in (e.path.start, e.path.end))
    assert min(p.x for p in piece.cut) > -0.01


def test_allowances_lie_outside_the_sector() -> None:
    """The seam's allowance is a strip beside the sector; the waist stays as long as it is."""
    (piece,) = skirt(circle="1/2", seam_allowance="1").pattern.pieces
    seam = piece.edge("centre_back")
    highest = box_of(piece.cut).top
    assert seam.path.start.y == pytest.approx(seam.path.end.y)
    assert highest == pytest.approx(seam.path.start.y - 10, abs=0.01)


def test_too_narrow_a_cloth_means_more_pieces() -> None:
    """A longer skirt or a narrower cloth is cut in more pieces, each of which fits the cloth."""
    counts = []
    for length, width in (("55", "150"), ("75", "150"), ("75", "90"), ("100", "80")):
        made = skirt(skirt_length=length, cloth_width=width)
        needed = lay_of(made.pattern, made.cloth)
        assert needed.too_wide == ()
        counts.append(sum(piece.count for piece in made.pattern.pieces))
    assert counts == sorted(counts)
    assert counts[0] == 1
    assert counts[-1] > 2


def test_the_longest_length_is_true() -> None:
    """The length said to be the longest in one piece fits, and a centimetre more does not."""
    said = next(note for note in remarks(skirt()) if "longest" in note)
    longest = float(said.split("allows is ")[1].split(" cm in one piece")[0])
    assert skirt(skirt_length=f"{longest - 0.1:.1f}", panels="1")
    with pytest.raises(OptionError, match="and one piece of a cloth"):
        skirt(skirt_length=f"{longest + 1:.1f}", panels="1")


def test_the_remark_speaks_the_readers_unit() -> None:
    """Who reads inches is told the longest skirt in inches."""
    said = next(note for note in remarks(skirt("Gwen Abernathy")) if "longest" in note)
    assert " in in one piece" in said
    assert " cm" not in said


def test_a_casing_without_a_hole_is_refused() -> None:
    """A casing as deep as the waist's circle is told what to take instead."""
    with pytest.raises(OptionError, match="take a smaller elastic-width"):
        skirt("Noor Haddad", elastic_width="6", waist_ease="-10")


@pytest.mark.parametrize(
    "asked",
    [
        {"elastic_width": "4"},
        {"waist_ease": "-5", "stretch": "20"},
        {"waist_finish": "band", "band_length": "50"},
        {"waist_finish": "band", "stretch": "12", "waist_ease": "12"},
        {"circle": "1/4", "waist_ease": "-10", "stretch": "10", "waist_finish": "band"},
    ],
)
def test_a_mend_makes_the_proof_hold(asked: dict[str, str]) -> None:
    """What a failing proof offers to change makes that proof hold, one after another."""
    options = {key.replace("_", "-"): value for key, value in asked.items()}
    made = mended(draft(person(PEOPLE[0]), "circle-skirt", options))
    assert made.failing
    for proof in made.failing:
        assert proof.mend, proof.says
        again = draft(person(PEOPLE[0]), "circle-skirt", {**options, **(proof.settings or {})})
        same = [p for p in again.proofs if p.name == proof.name]
        assert all(p.holds for p in same), proof.says


def test_the_elastic_is_told_with_its_lap() -> None:
    """The elastic is 0.92 of the waist and 2 cm to lap: 71 cm for a waist of 75."""
    made = skirt()
    assert made.pattern.lengths["elastic"] == pytest.approx(710)
    assert any("71 cm" in note for note in remarks(made))


def test_a_skirt_hangs_before_it_is_hemmed() -> None:
    """The order ends with a day on the hanger and the hem after it; a casing comes before."""
    from tapewise_core.sewing.order import sewing_order
    from tapewise_core.text.told import Reader

    made = skirt(circle="1/2")
    order = [Reader(Unit.CM).spell(said) for said in sewing_order(made.pattern, made.stitching)]
    hang = next(i for i, said in enumerate(order) if "24 hours" in said)
    assert "Turn up the hem" in order[hang + 1]
    assert any("casing" in said for said in order[:hang])
    assert "shoulder" not in " ".join(order)


def test_panels_lie_head_to_tail() -> None:
    """Six panels take less cloth than six boxes one above the other would."""
    made = skirt(panels="6", skirt_length="60")
    (panel,) = made.pattern.pieces
    needed = lay_of(made.pattern, made.cloth)
    boxes = panel.count * box_of(panel.cut).height
    assert needed.head_to_tail == ("skirt_panel",)
    assert needed.length < 0.7 * boxes
    assert 0.4 < needed.used < 0.95


def test_weight_is_area_times_cloth() -> None:
    """A full circle of 60 cm from cloth of 220 g weighs about 340 g."""
    made = skirt(waist_ease="-5", skirt_length="60", cloth_weight="220")
    said = next(note for note in remarks(made) if "weighs" in note)
    assert float(said.split("about ")[1].split(" g")[0]) == pytest.approx(341, abs=2)


@pytest.mark.parametrize("ease", range(-10, 20))
def test_no_slit_is_left_beside_a_slanting_seam(ease: int) -> None:
    """The cut line keeps its allowance along a seam at any angle, whatever the rounding."""
    made = skirt(circle="1/4", waist_finish="band", waist_ease=str(ease))
    proofs = [proof for proof in made.proofs if "allowances" in proof.name]
    assert all(proof.holds for proof in proofs)
