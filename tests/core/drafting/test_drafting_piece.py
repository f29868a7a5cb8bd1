"""Pieces, their edges and what is walked along them."""

from __future__ import annotations

import pytest
from making import top
from seams_made_up import pattern_of, rectangle

from tapewise_core.drafting import piece as pieces_cut
from tapewise_core.drafting.making import PLAIN
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.geometry.outline import box_of


def test_every_edge_has_its_own_allowance_outside_it() -> None:
    """Top 5, right 10, bottom 20, left 3: the cut line lies so far out on each side."""
    piece = rectangle("a", 100, 200, {"top": 5.0, "right": 10.0, "bottom": 20.0, "left": 3.0})
    box = box_of(piece.cut)
    assert (box.left, box.top, box.right, box.bottom) == pytest.approx((-3, -5, 110, 220))


def test_a_fold_gets_no_allowance() -> None:
    """The cloth goes on beyond it."""
    piece = rectangle("a", 100, 200, {"left": 0.0}, on_fold=True)
    assert box_of(piece.cut).left == pytest.approx(0)


def test_lengths_of_several_edges_are_added_and_absent_ones_count_nothing() -> None:
    """A run may name an edge that a piece lacks, such as the underarm of a wide top."""
    piece = rectangle("a", 100, 200)
    assert piece.length("top", "right", "underarm") == pytest.approx(300)
    assert piece.has_edge("top")
    assert not piece.has_edge("underarm")


def test_an_unknown_edge_or_piece_is_an_error() -> None:
    """A misspelt name is not taken for an empty one."""
    pattern = pattern_of((rectangle("a", 100, 200),))
    with pytest.raises(KeyError, match="hem"):
        pattern.piece("a").edge("hem")
    with pytest.raises(KeyError, match="b"):
        pattern.piece("b")


def test_the_stitch_line_closes_without_its_first_point_again() -> None:
    """Four corners of a rectangle are four points, clockwise."""
    points = rectangle("a", 100, 200).stitch_line()
    assert [(p.x, p.y) for p in points] == [(0, 0), (100, 0), (100, 200), (0, 200)]


def test_a_run_counts_as_often_as_it_occurs() -> None:
    """Twice for both halves of a body, and every edge of it."""
    pattern = pattern_of((rectangle("a", 100, 200), rectangle("b", 30, 40)))
    runs = (EdgeRun("a", ("top", "right"), 2), EdgeRun("b", ("top",)))
    assert pattern.run_length(runs) == pytest.approx(2 * 300 + 30)


def test_a_seam_is_plain_until_it_is_made_otherwise() -> None:
    """Whoever draws a seam says more only where there is more to say."""
    assert Seam(SeamKind.SIDE, (), ()).making is PLAIN


def test_a_draft_draws_no_cut_line_until_it_is_asked_for(monkeypatch: pytest.MonkeyPatch) -> None:
    """One that is only compared with another never asks; each is drawn once, whoever asks."""
    drawn: list[int] = []
    true = pieces_cut.cut_line
    monkeypatch.setattr(pieces_cut, "cut_line", lambda edges: drawn.append(1) or true(edges))
    done = top()
    drawn.clear()
    pattern = done.garment.draft(done.body, done.style)
    assert not drawn
    for draft, piece in zip(pattern.drafts, pattern.pieces, strict=True):
        line = draft.paper.lines["cutting_line"]
        assert tuple(path.start for path in line.segments) == piece.cut
    assert len(drawn) == len(pattern.pieces)
