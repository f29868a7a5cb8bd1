"""How a draft lies on the cloth, as it is shown before anybody buys."""

from __future__ import annotations

import pytest
from making import DAY, MIDDLE, person

from tapewise_core.garments.shelf import PAGES
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.laid import laid

BODY = {**MIDDLE, "across_back": 34.5, "across_front": 32.5}


@pytest.mark.parametrize("garment", PAGES)
def test_every_piece_lies_on_the_cloth_as_often_as_it_is_cut(garment: str) -> None:
    """By its number in the checklist, within the width and the length that is told."""
    made = draft(person(BODY), garment, {}, made=DAY)
    lay = laid(made)
    assert lay.fits
    for number, piece in enumerate(made.pattern.pieces, start=1):
        assert sum(one.number == number for one in lay.pieces) == piece.count
    points = [point for one in lay.pieces for line in one.lines for point in line]
    assert min(p.x for p in points) >= 0
    assert max(p.x for p in points) <= lay.width
    assert max(p.y for p in points) <= lay.length + 1


FOLDS = {"centre-seams": "none"}
"""Nothing in halves, however narrow the cloth."""


def test_cloth_that_is_too_narrow_is_not_to_be_bought_yet() -> None:
    """That comes before all else."""
    made = draft(person(BODY), "jersey-top", {"cloth-width": "60 cm", **FOLDS}, made=DAY)
    lay = laid(made)
    assert not lay.fits
    assert lay.says.startswith("DO NOT BUY YET")
