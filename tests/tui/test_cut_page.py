"""Cutting out and sewing, one thing a page."""

from __future__ import annotations

import pytest
from walking import Walk, walk

from tapewise_core.tasks import work
from tapewise_core.tasks.people import person, store
from tapewise_tui.leaf_page import LeafPage
from tapewise_tui.widgets.leaf import Leaf

NAME = "Marta Lindqvist"


def begin(page: str, garment: str = "set-in-top") -> None:
    """Keep a person and what is made for her."""
    store.save(person(NAME))
    work.save(work.Work(NAME, garment=garment, page=page, when="2026-11-01T10:00:00"))


def leaves(at: Walk) -> LeafPage:
    """Return the page on show, one thing a page."""
    assert isinstance(at.page, LeafPage)
    return at.page


def test_enter_goes_through_the_pieces_and_on_to_the_first_step() -> None:
    """Each piece is cut, then marked, then comes the next; a second run goes on where the first
    stopped; F10 goes to the list and back to the same piece; F4 goes on to sewing."""
    begin("sew")

    async def first(at: Walk) -> None:
        await at.press("enter", "f4")
        assert "Piece 1 of 4: Back" in at.text()
        assert "on the fold" in at.text()
        await at.press("enter")
        assert "[x] cut out" in at.text()
        assert "Piece 1 of 4" in at.text()
        await at.press("enter")
        assert "Piece 2 of 4: Front" in at.text()
        await at.press("ctrl+z", "left")
        assert "[x] cut out" in at.text()
        assert "[ ] marked" in at.text()
        await at.press("enter", "right")
        assert "Piece 3 of 4: Sleeve" in at.text()
        await at.press("f10")
        assert at.page.NAME == "sew"
        await at.press("f10")
        assert "Piece 3 of 4: Sleeve" in at.text()

    async def second(at: Walk) -> None:
        await at.press("enter")
        assert "Piece 2 of 4: Front" in at.text()
        await at.press("enter", "enter", "enter", "enter")
        await at.press(*("enter" for key, _ in leaves(at).all[3].boxes))
        assert "F4 goes on to sewing" in at.said
        await at.press("home")
        assert "Piece 1 of 4" in at.text()
        await at.press("f4", "enter")
        assert "Step 2 of" in at.text()
        await at.press("f3")
        assert at.page.NAME == "cut"

    walk(first)
    walk(second)


def test_the_steps_end_with_a_garment_that_is_sewn_and_with_notes() -> None:
    """Enter through all of them; a step left out is found open; the last page takes notes, in the
    narrowest terminal too."""
    begin("stitch")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        many = len(leaves(at).all)
        await at.press("right", *["enter"] * (many - 2))
        assert not at.app.desk.work.sewn
        assert "Notes for the next time" in at.text()
        await at.press("home", "enter")
        assert at.app.desk.work.sewn
        await at.press("end", "enter")
        await at.type("neck higher")
        await at.press("escape")
        assert at.app.desk.work.notes == "neck higher"
        assert "neck higher" in at.text()

    walk(steps, (60, 15))


def test_a_step_shows_which_edges_meet_and_how() -> None:
    """The pieces by their names, which side is up, what Enter does; where several edges meet, each
    pair has its letter."""
    begin("stitch")

    async def steps(at: Walk) -> None:
        await at.press("enter", "f5")
        await at.type("sew the neckband on", "enter")
        told = " ".join(at.text().split())
        for words in ("Sew the neckband on", "Front", "Back", "Neckband", "[ ] done ← Enter"):
            assert words in told, words
        assert "right side" in told
        await at.press("f5")
        await at.type("close the sides", "enter")
        assert "wrong side" in at.text()
        assert " B " in at.text()

    walk(steps)


@pytest.mark.parametrize("size", [(60, 15), (80, 24)], ids=str)
def test_what_to_do_is_seen_without_a_key(size: tuple[int, int]) -> None:
    """The name of the piece, how many, the fold, and what Enter does."""
    begin("cut")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        told = at.text()
        for words in ("Piece 1 of 4: Back", "Cut 1, on the fold.", "[ ] cut out ← Enter"):
            assert words in told, words
        if size == (80, 24):
            assert "Blades" in told
            assert " fold " in told

    walk(steps, size)


def test_words_are_not_set_on_a_page_that_was_left() -> None:
    """What waited to be set once a page is drawn comes to nothing where the page is gone."""
    begin("cut")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        leaf = at.page.query_one(Leaf)
        at.app.go("sew")
        await at.settle()
        leaf._spread()
        assert not leaf.query("#leaf-words")

    walk(steps)
