"""The lay plan as it is drawn: every piece named, no name over anything, folds told."""

from __future__ import annotations

import pytest
from making import DAY
from msgspec.structs import replace
from pictures_seen import overlaps, texts
from seams_made_up import pattern_of, rectangle

from tapewise_core.drafting.cloth import Cloth, Spread
from tapewise_core.drafting.labels import LabelHead, title
from tapewise_core.garments.shelf import garments
from tapewise_core.lay.lay import lay_of
from tapewise_core.paper.drawing import Drawing, TextLine
from tapewise_core.sewing.lay_plan import lay_plan
from tapewise_core.tasks import people
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.units import Unit

CLOTH = Cloth(stretch=0.5, seam=0.6, band=0.5, width=1030.0)
"""1 m between its selvedges."""

LABEL = LabelHead("Top", "Ada", "2026-01-31", "0", Unit.CM)


def _plan(made: Drafted, spread: Spread = Spread.OPEN) -> Drawing:
    cloth = replace(made.cloth, spread=spread)
    plan = lay_plan(lay_of(made.pattern, cloth), cloth, made.label)
    assert plan is not None
    return plan


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
    assert there[unit.spell(made.lay.length)] == 1
    assert min(ink.size for ink in plan.inks if isinstance(ink, TextLine)) >= 2.5


@pytest.mark.parametrize(
    ("spread", "folds"), [(Spread.OPEN, 0), (Spread.FOLDED, 1), (Spread.TUBE, 2)]
)
def test_folds_of_the_cloth_are_named(spread: Spread, folds: int) -> None:
    """Where the cloth lies double, its width is that of one layer."""
    made = draft(people.person("Rosa Benítez"), "set-in-top", {}, made=DAY)
    plan = _plan(made, spread)
    there = texts(plan)
    assert there["fold"] == folds
    assert there["75 cm" if folds else "150 cm"] == 1
    assert list(overlaps(plan)) == []


def test_there_is_no_plan_on_cloth_that_is_too_narrow() -> None:
    """It would show what cannot be cut."""

    def plan(wide: float) -> Drawing | None:
        pattern = pattern_of((rectangle("back", wide, 400),))
        return lay_plan(lay_of(pattern, CLOTH), CLOTH, LABEL)

    assert plan(1200) is None
    assert plan(900) is not None
