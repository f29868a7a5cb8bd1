"""What is bought: longer by what washing takes, in the steps shops cut by."""

from __future__ import annotations

import pytest
from msgspec.structs import replace

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.lay.buying import before_washing, bought, purchase
from tapewise_core.lay.lay import Lay
from tapewise_core.text.amounts import Yardage
from tapewise_core.units import MM_PER_YARD, Unit

CLOTH = Cloth(stretch=0.5, seam=0.6, band=0.5)


def lay(length: float) -> Lay:
    """Return a lay of which only the length matters [mm]."""
    return Lay((), length, 0.7, (), 0.0)


@pytest.mark.parametrize(("shrinkage", "before"), [(0.05, 210.5), (0.08, 217.4)])
def test_cloth_is_longer_before_it_shrinks(shrinkage: float, before: float) -> None:
    """200 cm at 5 % are 210.5 before washing, at 8 % 217.4."""
    assert before_washing(2000, shrinkage) / 10 == pytest.approx(before, abs=0.05)


def test_cloth_is_bought_in_the_steps_of_a_shop() -> None:
    """5 cm, or an eighth of a yard; what is just enough is not rounded up."""
    assert bought(950, 0.05, Unit.CM) == 1000
    assert bought(950.1, 0.05, Unit.CM) == 1050
    assert bought(MM_PER_YARD * 0.95, 0.05, Unit.IN) == pytest.approx(MM_PER_YARD)
    assert bought(MM_PER_YARD * 0.95 + 1, 0.05, Unit.IN) == pytest.approx(MM_PER_YARD * 9 / 8)


def test_a_price_is_that_of_a_metre_or_of_a_yard() -> None:
    """Of what is bought, not of what is laid on."""
    assert purchase(lay(950), CLOTH, Unit.CM).price is None
    assert purchase(lay(950), CLOTH, Unit.CM, 12.0).price == pytest.approx(12.0)
    assert purchase(lay(MM_PER_YARD * 0.95), CLOTH, Unit.IN, 12.0).price == pytest.approx(12.0)


def test_a_repeat_is_bought_besides() -> None:
    """One, so that the first piece begins where the pattern does."""
    plain = purchase(lay(950), CLOTH, Unit.CM)
    assert purchase(lay(950), replace(CLOTH, repeat=190.0), Unit.CM).least == pytest.approx(
        plain.least + 200
    )


@pytest.mark.parametrize(
    ("eighths", "spelt"), [(6, "3/4 yd"), (8, "1 yd"), (13, "1 5/8 yd"), (0, "0 yd")]
)
def test_yards_are_told_in_eighths(eighths: int, spelt: str) -> None:
    """As they are asked for in a shop."""
    assert Yardage(eighths * MM_PER_YARD / 8).tell(Unit.IN) == spelt
