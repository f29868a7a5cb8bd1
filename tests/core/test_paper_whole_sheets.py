"""Whole pieces on a copy shop's sheets."""

from __future__ import annotations

from itertools import pairwise

import pytest
from making import DAY, top
from paper_samples import pattern

from tapewise_core.paper.drawing import Layer, Stroke, TextLine, extent
from tapewise_core.paper.sizes import A0, A1, A4, PageSize
from tapewise_core.paper.tiling import large
from tapewise_core.paper.whole_sheets import whole_sheets
from tapewise_core.profiles.examples import example
from tapewise_core.tasks.contents import pattern_set
from tapewise_core.tasks.drafting import draft


@pytest.mark.parametrize("page", [A0, A1], ids=lambda page: page.name)
def test_every_piece_lies_whole_on_one_sheet(page: PageSize) -> None:
    """And every sheet is as large as its paper, names it, and has its corner marks."""
    prints = whole_sheets(pattern(times=3), page, 10.0)
    assert prints is not None
    windows = [sheet.window.seen for sheet in prints.sheets if sheet.window]
    for ink in prints.canvas.inks:
        if ink.layer is Layer.CUT:
            box = extent([ink])
            assert sum(
                seen.left <= box.left and box.right <= seen.right
                and seen.top <= box.top and box.bottom <= seen.bottom
                for seen in windows
            ) == 1  # fmt: skip
    for sheet in prints.sheets:
        assert sorted((sheet.width, sheet.height)) == [page.width, page.height]
        texts = " ".join(ink.text for ink in sheet.inks if isinstance(ink, TextLine))
        assert page.name in texts
        assert sum(isinstance(i, Stroke) and i.name == "corner" for i in sheet.inks) == 4
        box = extent(sheet.inks)
        assert box.left > 8
        assert box.bottom < sheet.height - 8


def test_the_squares_ask_for_no_sheet_of_their_own() -> None:
    """A top with its squares fits one A0, which its boxes side by side would not."""
    prints = whole_sheets(pattern_set(top({"body-length": "65"})), A0, 10.0)
    assert prints is not None
    assert len(prints.sheets) == 1


def test_a_piece_that_no_sheet_holds_is_left_to_pages_that_are_joined() -> None:
    """Nothing is cut off."""
    assert whole_sheets(pattern(), A4, 10.0) is None
    assert len(large(pattern(), A4, 10.0, 12.0).sheets) > 1


def test_the_squares_never_lie_aslant() -> None:
    """Paper pulled one way leaves the sides of a square aslant as long as they were together."""
    skirt = draft(example("Rosa Benítez"), "circle-skirt", {"panels": "4"}, made=DAY)
    prints = whole_sheets(pattern_set(skirt), A0, 10.0)
    assert prints is not None
    scale = [i for i in prints.canvas.inks if isinstance(i, Stroke) and i.layer is Layer.SCALE]
    assert len(scale) >= 2
    for ink in scale:
        corners = ink.corners()
        for a, b in pairwise(corners):
            assert min(abs(a.x - b.x), abs(a.y - b.y)) < 1e-6
