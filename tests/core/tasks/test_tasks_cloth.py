"""Questions about the cloth: does it fit, how long can it be, which width is cheaper; and pieces
drawn larger for a wash to come."""

from __future__ import annotations

from collections.abc import Mapping

import pytest
from making import DAY

from tapewise_core.drafting.larger import larger
from tapewise_core.errors import OptionError
from tapewise_core.geometry.outline import box_of
from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.tasks import people
from tapewise_core.tasks.cloth import cloth_answer, longest
from tapewise_core.tasks.cloth_offers import Offer, cheapest, cheapest_words, compared
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.judging import judged
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit


def made(garment: str, asked: Mapping[str, str]) -> Drafted:
    """Return a garment for an invented person."""
    return draft(people.person("Marta Lindqvist"), garment, asked, made=DAY)


def of_the_length(drafted: Drafted) -> Proof:
    """Return the proof of the length of cloth."""
    return next(proof for proof in drafted.proofs if proof.id is ProofId.CLOTH_LENGTH)


def test_the_length_there_is_is_proved_with_what_washing_takes() -> None:
    """A circle 144.4 cm wide needs 152 cm that shrink by 5 %, and 151 are too little."""
    enough, short = (made("circle-skirt", {"cloth-length": cm}) for cm in ("152", "151"))
    assert of_the_length(enough).holds
    assert not of_the_length(short).holds
    assert (cloth_answer(enough).fits, cloth_answer(short).fits) == (True, False)
    assert "152 cm would do" in Reader(Unit.CM).spell(of_the_length(short).says)


@pytest.mark.parametrize("wash", ["before", "after"])
@pytest.mark.parametrize("length", range(94, 126, 4))
def test_the_proof_and_what_is_said_of_the_cloth_agree(wash: str, length: int) -> None:
    """Whenever it is washed, to the last centimetres."""
    asked = {"sleeve": "long", "shrinkage-across": "3", "wash": wash}
    drafted = made("set-in-top", {**asked, "cloth-length": str(length)})
    answer = cloth_answer(drafted)
    assert of_the_length(drafted).holds is answer.fits
    assert Reader(Unit.CM).spell(answer.says).startswith("DO NOT CUT YET") is not answer.fits


def test_too_little_cloth_is_mended_by_a_change_that_was_tried() -> None:
    """The mend, drafted again, fits."""
    asked = {"sleeve": "long", "cloth-length": "90"}
    proof = of_the_length(judged(made("set-in-top", asked)))
    assert proof.settings is not None
    assert of_the_length(made("set-in-top", {**asked, **proof.settings})).holds


def test_the_longest_skirt_fits_and_a_longer_one_does_not() -> None:
    """From a metre and a half of cloth."""
    found = longest(made("circle-skirt", {"cloth-length": "140", "panels": "1"}))
    assert found is not None
    assert found.length is not None

    def fits(mm: float) -> bool:
        style = {"cloth-length": "140", "panels": "1", "skirt-length": f"{mm / 10:.1f}"}
        return cloth_answer(made("circle-skirt", style)).fits

    assert fits(found.length)
    assert not fits(found.length + 10)
    assert longest(made("circle-skirt", {})) is None


def test_not_even_the_shortest_is_said() -> None:
    """From 20 cm of cloth there is no top."""
    found = longest(made("jersey-top", {"cloth-length": "20"}))
    assert found is not None
    assert found.length is None
    assert "Not even the shortest" in Reader(Unit.CM).spell(found.says)


def test_the_cheapest_width_is_the_one_that_costs_least() -> None:
    """By price where all have one, else by what is bought; one that is too narrow never is."""
    top = made("set-in-top", {"centre-seams": "none"})
    dear = compared(top, (Offer(1400.0, 9.0), Offer(1800.0, 20.0), Offer(500.0, 0.1)))
    best = cheapest(dear)
    assert best is not None
    assert best.width == 1400.0
    assert [answer.fits for answer in dear] == [True, True, False]
    other = cheapest(compared(top, (Offer(1400.0, 30.0), Offer(1800.0, 20.0))))
    assert other is not None
    assert other.width == 1800.0
    assert "prices were not named" in Reader(Unit.CM).spell(
        cheapest_words(compared(top, (Offer(1400.0), Offer(1800.0, 2.0))))
    )


def test_what_a_narrow_cloth_has_cut_in_halves_is_said() -> None:
    """So that nobody takes it for the cheapest unawares."""
    wide, narrow = compared(made("set-in-top", {}), (Offer(1400.0), Offer(500.0)))
    assert narrow.fits
    assert (
        Reader(Unit.CM).spell(narrow.says).endswith(" For it the back and front are cut in halves.")
    )
    assert "halves" not in Reader(Unit.CM).spell(wide.says)


def test_a_width_on_which_nothing_can_be_drafted_is_refused() -> None:
    """With the width that was asked about."""
    with pytest.raises(OptionError, match="for a cloth 5 cm wide"):
        compared(made("jersey-top", {}), (Offer(50.0), Offer(1500.0)))


def test_cloth_washed_later_has_larger_pieces_and_the_same_proofs() -> None:
    """5 % along and 3 % across: 1/0.95 longer, 1/0.97 wider; allowances stay, and so does the
    garment as it is worn."""
    plain = made("jersey-top", {"shrinkage-across": "3"})
    later = made("jersey-top", {"shrinkage-across": "3", "wash": "after"})
    old, new = plain.cut.piece("back"), later.cut.piece("back")
    a, b = (box_of(piece.stitch_line()) for piece in (old, new))
    assert b.height == pytest.approx(a.height / 0.95, abs=0.01)
    assert b.width == pytest.approx(a.width / 0.97, abs=0.01)
    assert [edge.allowance for edge in old.edges] == [edge.allowance for edge in new.edges]
    assert later.pattern.piece("back").stitch_line() == old.stitch_line()
    same = [(proof.which, proof.value) for proof in plain.proofs if proof.id is not ProofId.CLOTH]
    assert same == [(p.which, p.value) for p in later.proofs if p.id is not ProofId.CLOTH]
    assert plain.fingerprint != later.fingerprint
    assert "not washed yet" in later.label.looks


def test_notches_stay_where_they_were_when_a_piece_is_drawn_larger() -> None:
    """At the same places of the cloth, and seams still meet at them."""
    piece = made("set-in-top", {"sleeve": "long"}).pattern.piece("sleeve")
    new = larger(piece, 0.08, 0.03)
    for before, after in zip(piece.notches, new.notches, strict=True):
        at, _ = piece.edge(before.edge).path.at(before.distance)
        there, _ = new.edge(after.edge).path.at(after.distance)
        assert there.x == pytest.approx(at.x / 0.97, abs=0.05)
        assert there.y == pytest.approx(at.y / 0.92, abs=0.05)


def test_how_the_cloth_is_laid_changes_no_sheet() -> None:
    """The six signs stay: the pieces are the same."""
    signs = {
        made("jersey-top", asked).fingerprint
        for asked in ({}, {"lay": "folded"}, {"nap": "yes"}, {"cloth-length": "200"})
    }
    assert len(signs) == 1
