"""The checklist's other sections: cutting out, marks, what to mind, and the whole of it."""

from __future__ import annotations

import re

import pytest
from making import DAY, MIDDLE, person, top
from seams_made_up import SAMPLES, SASH, SKIRT, pattern_of, rectangle, seam

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.sewing.cutting_out import cut_out
from tapewise_core.sewing.edges import TURNED_UP
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.marks import marks
from tapewise_core.sewing.minding import at_machine, at_pressing, cautions, for_children, of_weight
from tapewise_core.sewing.operation import Operation
from tapewise_core.sewing.order import operations
from tapewise_core.sewing.stitches import MILLIMETRES
from tapewise_core.tasks.documents import checklist_of
from tapewise_core.tasks.drafting import draft
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_core.writers.markdown import markdown


def chain(pattern: Pattern) -> tuple[Operation, ...]:
    """Return the order on a sewing machine with a zigzag."""
    return operations(pattern, stitching(read_machines("zigzag")))


def marked(pattern: Pattern, unit: Unit = Unit.CM) -> list[str]:
    """Return what is said of a pattern's marks."""
    return [Reader(unit).spell(told) for told in marks(pattern)]


def notched(**allowances: float) -> Pattern:
    """Return a pattern of a piece notched on each of some edges, by allowance [mm]."""
    notches = tuple(Notch(edge, 10.0, edge) for edge in allowances)
    return pattern_of((rectangle("front", 100, 200, allowances, notches=notches),))


def test_a_snip_leaves_half_the_allowance() -> None:
    """Deeper, and the seam would be cut when it is sewn a little wide."""
    assert marked(notched(top=8.0))[0] == "Front: top; snip no more than half the allowance"


def test_a_narrow_allowance_is_marked_with_chalk() -> None:
    """Under 5 mm nothing is snipped; only the narrow edges are chalked where others are wide."""
    assert marked(notched(top=4.9), Unit.IN)[0] == (
        "Front: top; with chalk: less than 1/4 in of allowance is not snipped"
    )
    assert marked(notched(top=5.0, left=4.0))[0] == (
        "Front: top, left; snip no more than half the allowance, but mark left with chalk, where "
        "it is less than 0.5 cm"
    )


def test_a_piece_without_notches_has_no_mark_but_its_wrong_side() -> None:
    """And that keeps it from being sewn inside out."""
    only = marked(pattern_of((SASH,)))
    assert len(only) == 1
    assert only[0].endswith("so that none is sewn inside out")


@pytest.mark.parametrize(
    ("piece", "says"),
    [
        (SASH, "Belt: cut 1, single, its length along the grain, joined from strips if the cloth "
               "is short"),
        (rectangle("neckband", 480, 40), "Neckband: cut 1, single, its length across the cloth"),
        (rectangle("front", 300, 600, count=2),
         "Front: cut 2, single, its grain line along the cloth"),
        (rectangle("back", 100, 600, {"left": 0}, on_fold=True, notches=(Notch("top", 1, "a"),)),
         "Back: cut 1 on the fold, the straight edge marked so on the fold; 1 notch"),
        (rectangle("back", 300, 600, notches=(Notch("top", 1, "a"), Notch("top", 2, "b"))),
         "Back: cut 1, single, its grain line along the cloth; 2 notches"),
    ],
)  # fmt: skip
def test_a_piece_is_cut_as_its_grain_arrow_says(piece: Piece, says: str) -> None:
    """Strips by their length, whole pieces by their grain, halves by their fold."""
    assert cut_out(piece) == says


def test_only_a_circle_is_told_of_its_weight() -> None:
    """By how its hem is made: a straight skirt of the same name is not."""
    assert len(of_weight(chain(SAMPLES["hung-hem"]))) == 1
    straight = pattern_of((SKIRT,), (seam(SeamKind.HEM, TURNED_UP, "skirt bottom"),))
    assert of_weight(chain(straight)) == ()


def test_only_a_long_skirt_can_be_trodden_on() -> None:
    """Whatever its hem; nobody in a short one is told to lift it on stairs."""
    someone = person({**MIDDLE, "waist_to_floor": 104.0, "waist_to_knee": 58.0})
    for garment in ("circle-skirt", "straight-skirt"):
        for length, there in (("55", False), ("90", True)):
            made = draft(someone, garment, {"skirt-length": length}, made=DAY)
            assert ("trodden on" in markdown(checklist_of(made))) is there


def test_a_knife_is_minded_where_there_is_one() -> None:
    """Nobody without an overlocker is warned of one."""
    for machines, there in (("zigzag", False), ("overlocker", True)):
        said = cautions(chain(SAMPLES["hem"]), stitching(read_machines(machines)), child=False)
        assert ("overlocker knife" in str(said)) is there


def test_a_childs_height_is_told_in_the_readers_unit() -> None:
    """134 cm in the standard, 52 3/4 in for whoever reads inches."""
    said = for_children(chain(SAMPLES["hem"]))
    assert "(134 cm)" in Reader(Unit.CM).spell(said[0])
    assert "(52 3/4 in)" in Reader(Unit.IN).spell(said[0])


def test_a_childs_garment_says_what_concerns_children_and_no_other_does() -> None:
    """Cords, small parts and nightwear; a belt where there is one."""
    ways = stitching(read_machines("zigzag"))
    grown = str(cautions(chain(SAMPLES["belt"]), ways, child=False))
    young = str(cautions(chain(SAMPLES["belt"]), ways, child=True))
    for word in ("drawstrings", "small parts", "nightwear", "sew the belt down"):
        assert word in young
        assert word not in grown
    assert "the belt" not in str(cautions(chain(SAMPLES["hem"]), ways, child=True))


def test_cautions_stand_where_the_danger_is() -> None:
    """Blades at cutting, the needle at sewing, the iron and what melts at pressing."""
    text = markdown(checklist_of(top()))
    parts = {part.split("\n")[0]: part for part in text.split("## ")}
    assert "Blades:" in parts["Cut"]
    assert "hands clear of needle and overlocker knife" in parts["Sew"]
    assert "The iron burns" in parts["Press and finish"]
    assert "Clear elastic melts" in parts["Press and finish"]
    assert "Follow your local rules" in parts["Mind"]
    assert "Clear elastic melts" not in at_pressing(chain(SAMPLES["belt"]))
    by_hand = at_machine(stitching(read_machines("hand")))
    assert "Machines" not in by_hand


def test_sections_stand_in_the_order_of_the_work() -> None:
    """Proofs before the shopping, the shopping before the scissors."""
    text = markdown(checklist_of(top()))
    heads = ("Proved before cutting", "Asked and given", "What you need", "Before cutting",
             "Cut", "Mark", "Sew", "Press and finish", "Mind", "Chosen style")  # fmt: skip
    assert [line[3:] for line in text.splitlines() if line.startswith("## ")] == list(heads)


@pytest.mark.parametrize(
    ("garment", "asked"),
    [
        ("flared-dress",
         {"hem": "split", "pockets": "yes", "belt": "yes", "neckline": "v",
          "neck-finish": "facing"}),
        ("circle-skirt", {"circle": "1/2"}),
        ("skirted-dress", {"neckline": "v"}),
    ],
)  # fmt: skip
def test_what_is_needed_cut_marked_and_sewn_is_told_in_inches(
    garment: str, asked: dict[str, str]
) -> None:
    """An inch reader meets no centimetre there, and no millimetre but on dials and needles."""
    more = {"waist_to_floor": 104.0, "waist_to_knee": 58.0}
    drafted = draft(person({**MIDDLE, **more}), garment, asked, unit=Unit.IN, made=DAY)
    text = markdown(checklist_of(drafted))
    work = text[text.index("## What you need") : text.index("## Chosen style")]
    for words in MILLIMETRES:
        work = work.replace(words, "")
    assert not re.findall(r"[^\n]*\d (?:cm|mm)\b[^\n]*", work)


def test_the_square_to_measure_is_the_one_that_is_printed() -> None:
    """100 mm for whoever reads centimetres, 4 in for whoever reads inches."""
    assert "Check the 100 mm square" in markdown(checklist_of(top()))
    assert "Check the 4 in square" in markdown(checklist_of(top(unit=Unit.IN)))
