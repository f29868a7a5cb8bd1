"""How much cloth to buy for a lay: longer by what it shrinks, in the steps shops cut by."""

from __future__ import annotations

import math

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.frozen import Frozen
from tapewise_core.lay.lay import Lay
from tapewise_core.units import MM_PER_YARD, Unit

STEPS = {Unit.CM: 50.0, Unit.IN: MM_PER_YARD / 8}
"""Cloth is bought by this much [mm]: 5 cm, or 1/8 yd (common practice)."""

PRICED = {Unit.CM: 1000.0, Unit.IN: MM_PER_YARD}
"""What a price is asked for [mm]: a metre, or a yard."""

COTTON = 0.08
"""What cotton jersey may lose in length, a fraction (common practice, 0.05 to 0.08)."""


class Purchase(Frozen):
    """``length`` that is laid on, what must be bought at ``least`` and what to ``buy`` [mm];
    ``price`` of it in whatever a metre or a yard is priced in, None where that was not said."""

    length: float
    least: float
    buy: float
    price: float | None = None


def purchase(lay: Lay, cloth: Cloth, unit: Unit, price: float | None = None) -> Purchase:
    """Return what to buy; ``price`` is that of a metre, or of a yard for who reads inches.

    Where a pattern repeats, one repeat more is bought: shops cut wherever it happens to be
    (common practice).
    """
    least = before_washing(lay.length + cloth.repeat, cloth.shrinkage)
    buy = bought(lay.length + cloth.repeat, cloth.shrinkage, unit)
    asked = None if price is None else price * buy / PRICED[unit]
    return Purchase(lay.length, least, buy, asked)


def before_washing(length: float, shrinkage: float) -> float:
    """Return what is left as a length after washing [mm], before it.

    >>> round(before_washing(2000, 0.05)), round(before_washing(2000, 0.08))
    (2105, 2174)
    """
    return length / (1 - shrinkage)


def bought(length: float, shrinkage: float, unit: Unit) -> float:
    """Return what to buy so that a length is left after washing [mm], in whole steps.

    >>> bought(2000, 0.05, Unit.CM), bought(2000, 0.05, Unit.IN) / MM_PER_YARD
    (2150.0, 2.375)
    """
    steps = math.ceil(before_washing(length, shrinkage) / STEPS[unit] - 1e-9)
    return steps * STEPS[unit]
