"""Cutting out, piece by piece: what is told of each, and what is then ticked."""

from __future__ import annotations

import pytest
from making import DAY, MIDDLE, person
from msgspec.structs import replace

from tapewise_core.garments.shelf import PAGES
from tapewise_core.sewing.in_hand import grain, how_many, which_way
from tapewise_core.tasks.chores import CUT, MARK, chores
from tapewise_core.tasks.cutting import cuttings
from tapewise_core.tasks.drafting import draft

BODY = {**MIDDLE, "across_back": 34.5, "across_front": 32.5}


@pytest.mark.parametrize("garment", PAGES)
def test_every_piece_is_cut_and_marked_once(garment: str) -> None:
    """Each thing under both headings has its place with a piece, but for the wrong sides."""
    made = draft(person(BODY), garment, {}, made=DAY)
    parts = chores(made)
    found = cuttings(made, parts)
    assert [one.piece for one in found] == list(made.pattern.pieces)
    keys = [key for one in found for key, _ in one.done]
    listed = {part.heading: [c.key for c in part.items] for part in parts}
    assert sorted(keys) == sorted([*listed[CUT], *listed[MARK][:-1]])
    for one in found:
        assert all(says.endswith(".") for says in one.says)
        assert len(one.done) == 1 + bool(one.piece.notches)


def test_words_follow_how_a_piece_is_cut() -> None:
    """On the fold, as a pair, or from one layer; strips along and across."""
    made = draft(person(BODY), "set-in-top", {}, made=DAY)
    piece = made.pattern.piece
    assert how_many(piece("back")) == "Cut 1, on the fold."
    assert "do not cut" in which_way(piece("back"))
    assert how_many(piece("sleeve")) == "Cut 2: a left and a right."
    assert "half down" in which_way(piece("sleeve"))
    assert how_many(replace(piece("sleeve"), count=4)) == "Cut 4: 2 left and 2 right."
    single = replace(piece("sleeve"), mirrored=False, count=1)
    assert how_many(single) == "Cut 1, single: from one layer."
    assert "up" in which_way(single)
    assert which_way(piece("neckband")) == ""
    assert "across the cloth" in grain(piece("neckband"))
    assert "across" not in grain(piece("back"))
