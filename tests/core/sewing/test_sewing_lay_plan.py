"""The lay plan shows every piece once for each time it is cut, none over another, on the cloth."""

from __future__ import annotations

from functools import reduce
from itertools import combinations

import pytest
import shapely
from making import DAY, person
from pictures_seen import overlaps, texts
from seams_made_up import pattern_of, rectangle

from tapewise_core.drafting.cloth import SELVEDGES, Cloth
from tapewise_core.drafting.labels import LabelHead, title
from tapewise_core.garments.shelf import garments
from tapewise_core.geometry.outline import box_of
from tapewise_core.paper.drawing import Drawing, TextLine
from tapewise_core.sewing.cloth_needed import cloth_needed
from tapewise_core.sewing.lay_plan import lay_plan, lying
from tapewise_core.sewing.laying import Lying
from tapewise_core.tasks import people
from tapewise_core.tasks.drafting import Drafted, draft
from tapewise_core.units import Unit

CLOTH = Cloth(stretch=0.5, seam=0.6, band=0.5, width=1030.0)
"""1 m between its selvedges."""

LABEL = LabelHead("Top", "Ada", "2026-01-31", "0", Unit.CM)


def _plan(made: Drafted) -> Drawing:
    plan = lay_plan(made.pattern, made.cloth, made.label)
    assert plan is not None
    return plan


def _area(one: Lying) -> shapely.Geometry:
    lines = [shapely.Polygon([(p.x, p.y) for p in line]) for line in one.outlines()]
    whole = reduce(shapely.symmetric_difference, lines)
    assert whole.is_valid
    return whole


@pytest.mark.parametrize("garment", [page.name for page in garments()])
def test_pieces_lie_on_the_cloth_and_none_on_another(garment: str) -> None:
    """Opened out, between the selvedges, within the length that is reckoned with."""
    for who in (people.person("Marta Lindqvist"), people.person("Gwen Abernathy"), person()):
        made = draft(who, garment, {}, made=DAY)
        pieces = tuple(lying(made.pattern, made.cloth))
        assert len(pieces) == sum(piece.count for piece in made.pattern.pieces)
        areas = [_area(one) for one in pieces]
        for one, other in combinations(areas, 2):
            assert one.intersection(other).area < 1
        box = box_of(p for one in pieces for line in one.outlines() for p in line)
        edge = SELVEDGES / 2
        assert box.left >= edge - 0.1
        assert box.right <= made.cloth.width - edge + 0.1
        assert box.top >= -0.1
        assert box.bottom <= cloth_needed(made.pattern, made.cloth).length


@pytest.mark.parametrize("panels", ["2", "4", "6", "8"])
def test_panels_lie_head_to_tail_without_touching(panels: str) -> None:
    """However many there are, upright or across."""
    made = draft(person(), "circle-skirt", {"panels": panels}, made=DAY)
    areas = [_area(one) for one in lying(made.pattern, made.cloth)]
    assert all(one.intersection(other).area < 1 for one, other in combinations(areas, 2))


@pytest.mark.parametrize("unit", list(Unit))
@pytest.mark.parametrize("garment", [page.name for page in garments()])
def test_every_piece_is_named_and_no_name_lies_over_anything(garment: str, unit: Unit) -> None:
    """Once for each time it is cut; width and length of the cloth are written beside it."""
    made = draft(people.person("Rosa Benítez"), garment, {}, unit=unit, made=DAY)
    plan, there = _plan(made), texts(_plan(made))
    assert list(overlaps(plan)) == []
    for piece in made.pattern.pieces:
        assert there[title(piece.name)] == piece.count
    assert there[unit.spell(made.cloth.width)] == 1
    assert min(ink.size for ink in plan.inks if isinstance(ink, TextLine)) >= 2.5


def test_the_second_of_a_pair_is_its_image() -> None:
    """Left and right are cut, not two left ones."""
    made = draft(people.person("Rosa Benítez"), "set-in-top", {"sleeve": "long"}, made=DAY)
    one, other = (one for one in lying(made.pattern, made.cloth) if one.piece.name == "sleeve")
    assert (one.image, other.image) == (False, True)


def test_there_is_no_plan_on_cloth_that_is_too_narrow() -> None:
    """It would show what cannot be cut."""
    assert lay_plan(pattern_of((rectangle("back", 1200, 400),)), CLOTH, LABEL) is None
    assert lay_plan(pattern_of((rectangle("back", 900, 400),)), CLOTH, LABEL) is not None
