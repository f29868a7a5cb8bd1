"""Pieces pulled into each other's gaps."""

from __future__ import annotations

from itertools import combinations

import pytest
import shapely
from msgspec.structs import replace
from seams_made_up import pattern_of, rectangle

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.lay.lay import lay_of
from tapewise_core.lay.lying import Lying
from tapewise_core.lay.profile import GAP
from tapewise_core.lay.pulling import pulled
from tapewise_core.tasks import people
from tapewise_core.tasks.drafting import draft

CLOTH = Cloth(stretch=0.5, seam=0.6, band=0.5, width=1030.0)
"""1 m between its selvedges."""


def outermost(one: Lying) -> shapely.Polygon:
    """What a piece covers, its hole too."""
    return max((shapely.Polygon(line) for line in one.lines()), key=lambda shape: shape.area)


@pytest.mark.parametrize(
    ("name", "width"), [("Marta Lindqvist", "140"), ("Tomasz Wieczorek", "150")]
)
def test_a_sleeve_lies_in_the_waist_of_another_piece(name: str, width: str) -> None:
    """Two flared pieces head to tail overlap in width by a hem's corner and a sleeve's: they are
    laid in each other's waists and not one after the other, with room between them."""
    dress = draft(people.person(name), "flared-dress", {"cloth-width": width})
    lay = lay_of(dress.cut, dress.cloth)
    tallest = max(one.box.bottom - one.box.top for one in lay.pieces)
    assert lay.length < tallest * 1.35
    for one, other in combinations(map(outermost, lay.pieces), 2):
        assert one.distance(other) > GAP - 1e-3


def test_pieces_are_pulled_along_the_cloth_alone() -> None:
    """What is free ahead of a piece is used, whatever lies beside it, and a second time nothing
    moves."""
    (first,) = lay_of(pattern_of((rectangle("small", 100, 200),)), CLOTH).pieces
    beside = replace(first, across=first.across + 300.0)
    far = [first, replace(beside, along=500.0), replace(first, along=700.0)]
    tall, found = first.box.bottom - first.box.top, pulled(far)
    assert [round(one.along, 3) for one in found] == [0.0, 0.0, round(tall + GAP, 3)]
    assert [one.across for one in found] == [one.across for one in far]
    assert pulled(found) == found
