"""What is tried to mend a proof: options there are, in an order that says why."""

from __future__ import annotations

import pytest

from tapewise_core.garments.shelf import garments
from tapewise_core.proofs.levels import ASKED
from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.proofs.ways import AGAINST, GIRTHS, LINES, WAYS, Way, less, more, ways_of, word

OPTIONS = [option for page in garments() for option in page.options]
EVERY = [way for ways in (*WAYS.values(), *GIRTHS.values(), LINES) for way in ways]


def failing(about: ProofId, of: str = "") -> Proof:
    """Return a proof that fails."""
    return Proof(about, of, 0.0, 1.0, "cm", False, ())


@pytest.mark.parametrize("way", EVERY, ids=str)
def test_every_option_that_is_tried_is_one_of_some_garment(way: Way) -> None:
    """Numbers go up or down, words are among its choices."""
    for move in way:
        there = [option for option in OPTIONS if option.key == move.key]
        assert there
        if move.way is None:
            assert any(move.word in option.words for option in there)
        else:
            assert all(option.bounded for option in there)


def test_every_proof_has_something_to_try() -> None:
    """But those that fail by a fault of the program alone: a level that is off without a reason."""
    for about in ProofId:
        of = "bust" if about is ProofId.GIRTH else ""
        assert bool(ways_of(failing(about, of))) is (about not in ASKED), about


def test_a_girth_is_let_out_where_it_is_too_close() -> None:
    """By its own ease before that of the whole body; an unknown one has no way."""
    assert ways_of(failing(ProofId.GIRTH, "hip")) == (more("hip-ease"), more("ease"))
    assert ways_of(failing(ProofId.GIRTH, "calf")) == ()


def test_drawn_lines_share_their_ways() -> None:
    """A neckline too deep is what spoils them most often."""
    assert ways_of(failing(ProofId.TEETH, "back"))[0] == less("back-neck-depth")
    assert ways_of(failing(ProofId.OUTLINE)) == ways_of(failing(ProofId.ALLOWANCES)) == LINES
    assert ways_of(failing(ProofId.CASING))[1] == word("waist-finish", "band")


def test_what_the_body_has_against_it_is_told_of_proofs_that_know_a_body_or_a_cloth() -> None:
    """As the subject of a sentence."""
    assert all(words.startswith(("a ", "an ", "legs ")) for words in AGAINST.values())
